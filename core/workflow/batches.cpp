#include "core/workflow/batches.h"

#include <algorithm>
#include <set>

namespace core::workflow {
namespace {

std::vector<std::size_t> usersOf(const Workflow& workflow, const std::vector<std::size_t>& makers) {
  std::set<std::size_t> users;
  const std::string& technique = workflow.steps[makers.front()].technique;
  const auto add = [&](const std::string& fact) {
    for (const std::size_t user : workflow.needing(fact)) {
      if (workflow.steps[user].technique != technique) users.insert(user);
    }
  };
  for (const std::size_t maker : makers) {
    for (const std::string& fact : workflow.steps[maker].makes) add(fact);
    for (const WorkflowWait& wait : workflow.steps[maker].waits) add(wait.makes);
  }
  return {users.begin(), users.end()};
}

}  // namespace

std::vector<Batch> batchesOf(const Workflow& workflow) {
  std::vector<Batch> batches;
  for (std::size_t i = 0; i < workflow.steps.size(); ++i) {
    const WorkflowStep& step = workflow.steps[i];
    if (!step.ofShop || !step.keeps) continue;
    auto batch =
        std::find_if(batches.begin(), batches.end(), [&](const Batch& one) { return one.technique == step.technique; });
    if (batch == batches.end()) batch = batches.insert(batch, {step.technique, {}, {}, *step.keeps});
    batch->steps.push_back(i);
  }
  for (Batch& batch : batches) batch.users = usersOf(workflow, batch.steps);
  return batches;
}

}  // namespace core::workflow
