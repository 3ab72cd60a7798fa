#include "core/jobs/standing.h"

#include <algorithm>

namespace core::jobs {

// This file uses the types of the record throughout.
using namespace record;
namespace {

bool everyStepDone(const JobState& state) {
  return std::all_of(state.steps.begin(), state.steps.end(),
                     [](const StepState& step) { return step.status == StepStatus::Done; });
}

bool waitedFor(const JobState& state, const std::string& fact) {
  const auto needing = state.plan->workflow.needing(fact);
  return std::any_of(needing.begin(), needing.end(),
                     [&](std::size_t step) { return state.steps[step].status != StepStatus::Done; });
}

}  // namespace

bool rests(const JobState& state) {
  if (everyStepDone(state)) return true;
  const auto& steps = state.plan->workflow.steps;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const StepStatus status = state.steps[i].status;
    if (status == StepStatus::Begun || (status == StepStatus::Done && steps[i].ofShop && steps[i].keeps)) return false;
  }
  return std::none_of(state.waits.begin(), state.waits.end(), [&](const auto& entry) {
    const workflow::WorkflowWait& wait = *entry.second.wait;
    return waitedFor(state, wait.makes) || (!wait.follows.empty() && waitedFor(state, wait.follows));
  });
}

bool settled(const JobState& state) {
  // A wait last found "not yet" teaches only once it has ended, as another batch would end it.
  return everyStepDone(state) && std::none_of(state.waits.begin(), state.waits.end(), [](const auto& entry) {
           const auto& looks = entry.second.looks;
           return !looks.empty() && looks.back().second == waits::Verdict::NotYet;
         });
}

std::set<std::string> shopSteps(const JobPlan& plan) {
  std::set<std::string> steps;
  for (const workflow::WorkflowStep& step : plan.workflow.steps) {
    if (step.ofShop) steps.insert(step.id);
  }
  return steps;
}

}  // namespace core::jobs
