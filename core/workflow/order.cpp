#include "core/workflow/order.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace core::workflow {
namespace {

using Edges = std::vector<std::set<std::size_t>>;  // for each step, those that come before it

Edges edgesOf(const std::vector<DraftStep>& drafts) {
  std::map<std::string, std::vector<std::size_t>> makers;
  std::map<std::string, std::vector<std::size_t>> needers;
  for (std::size_t i = 0; i < drafts.size(); ++i) {
    const WorkflowStep& step = drafts[i].step;
    for (const std::string& fact : step.makes) makers[fact].push_back(i);
    for (const WorkflowWait& wait : step.waits) makers[wait.makes].push_back(i);
    for (const std::string& fact : step.needs) needers[fact].push_back(i);
  }
  Edges before(drafts.size());
  const auto come = [&](std::size_t first, std::size_t second) {
    if (first != second) before[second].insert(first);
  };
  for (std::size_t i = 0; i < drafts.size(); ++i) {
    for (const std::string& fact : drafts[i].step.needs) {
      for (const std::size_t maker : makers[fact]) come(maker, i);
    }
    for (const std::string& fact : drafts[i].step.ends) {
      for (const std::size_t maker : makers[fact]) come(maker, i);
      for (const std::size_t needer : needers[fact]) come(needer, i);
    }
  }
  return before;
}

// A cycle among the steps that could not be placed, as they are called, in the order in which each is waited for.
std::string cyclePath(const std::vector<DraftStep>& drafts, const Edges& before, const std::vector<bool>& placed) {
  const auto first = std::find(placed.begin(), placed.end(), false);
  std::size_t at = static_cast<std::size_t>(first - placed.begin());
  std::vector<std::size_t> path;
  // Each unplaced step has an unplaced one before it, so walking back must meet the path again.
  while (std::find(path.begin(), path.end(), at) == path.end()) {
    path.push_back(at);
    at = *std::find_if(before[at].begin(), before[at].end(), [&](std::size_t step) { return !placed[step]; });
  }
  path.erase(path.begin(), std::find(path.begin(), path.end(), at));
  std::reverse(path.begin(), path.end());
  // Start from the smallest id, so that the same cycle is always told the same way.
  std::rotate(path.begin(),
              std::min_element(path.begin(), path.end(),
                               [&](std::size_t a, std::size_t b) { return drafts[a].step.id < drafts[b].step.id; }),
              path.end());
  std::string text;
  const auto called = [&](std::size_t step) {
    const WorkflowStep& one = drafts[step].step;
    return one.title + (one.thingName.empty() ? " (" : " (" + one.thingName + ", ") + one.techniqueTitle + ')';
  };
  for (const std::size_t step : path) text += called(step) + " \u2192 ";
  return text + called(path.front());
}

}  // namespace

base::Result<Workflow, base::Message> inOrder(std::vector<DraftStep> drafts) {
  std::sort(drafts.begin(), drafts.end(), [](const DraftStep& a, const DraftStep& b) {
    return std::tie(a.rank, a.thingOrder, a.step.technique, a.stepOrder, a.step.id) <
           std::tie(b.rank, b.thingOrder, b.step.technique, b.stepOrder, b.step.id);
  });
  const Edges before = edgesOf(drafts);
  std::vector<bool> placed(drafts.size(), false);
  std::vector<std::size_t> newIndex(drafts.size());
  Workflow workflow;
  while (workflow.steps.size() < drafts.size()) {
    std::size_t next = drafts.size();
    for (std::size_t i = 0; i < drafts.size() && next == drafts.size(); ++i) {
      if (placed[i]) continue;
      if (std::all_of(before[i].begin(), before[i].end(), [&](std::size_t step) { return placed[step]; })) next = i;
    }
    if (next == drafts.size()) return base::Message("compose.cycle").with("path", cyclePath(drafts, before, placed));
    placed[next] = true;
    newIndex[next] = workflow.steps.size();
    WorkflowStep step = drafts[next].step;
    for (const std::size_t earlier : before[next]) step.before.push_back(newIndex[earlier]);
    std::sort(step.before.begin(), step.before.end());
    workflow.steps.push_back(std::move(step));
  }
  workflow.index();
  return workflow;
}

}  // namespace core::workflow
