#include "app/workbench/renewing.h"

#include "app/workbench/taking_in.h"
#include "core/jobs/renewal.h"

namespace app::workbench {

std::optional<Renewal> renewalOf(const core::jobs::JobState& state, const std::string& jobText, const Library& library,
                                 PlanReader& plans) {
  ReadyToTakeIn ready = readyToTakeIn(jobText, state.plan->jobHash, library);
  Renewal renewal;
  if (!ready.intent) {
    // Where even the job's own file can no longer be read, there is nothing to renew.
    if (ready.refusals.empty()) return std::nullopt;
    renewal.refused = ready.refusals.front();
    return renewal;
  }
  std::map<std::string, std::string> bodies;
  for (const core::record::StoredText& text : ready.texts) bodies.emplace(text.hash, text.body);
  const auto plan = plans.read(state.plan->id, *ready.intent, bodies);
  if (!plan) {
    renewal.refused = plan.error();
    return renewal;
  }
  renewal.differences = core::workflow::renewalOf(state.plan->workflow, plan.value()->workflow);
  if (renewal.differences.empty()) return std::nullopt;
  for (const core::workflow::StepDifference& difference : renewal.differences) {
    if (difference.change != core::workflow::StepChange::Comes) continue;
    const std::string done = core::jobs::doneAfter(state, plan.value()->workflow, difference.step);
    if (!done.empty()) renewal.comesLate.emplace(difference.step, done);
  }
  renewal.refused = core::jobs::refusedRenewal(state, renewal.differences);
  renewal.techniques = ready.intent->techniques;
  renewal.texts = std::move(ready.texts);
  return renewal;
}

}  // namespace app::workbench
