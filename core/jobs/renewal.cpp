#include "core/jobs/renewal.h"

#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/record/happening.h"

namespace core::jobs {

// This file uses the types of the record throughout.
using namespace record;

using base::Message;

const Event* newestRenewal(const std::vector<Event>& events) {
  const std::set<std::string> voided = voidedIntents(events);
  const Event* newest = nullptr;
  for (const Event& event : events) {
    if (isA<TechniquesRenewed>(event) && !voided.contains(event.intentId)) newest = &event;
  }
  return newest;
}

Message refusedRenewal(const JobState& state, const std::vector<workflow::StepDifference>& differences) {
  if (state.readOnly()) return Message("record.read-only").with("events", base::join(state.unknownEvents, ", "));
  if (state.putAway) return Message("record.put-away");
  for (const workflow::StepDifference& difference : differences) {
    const auto index = state.plan->workflow.indexOf(difference.step);
    if (!index || !difference.contradicts) continue;
    const StepStatus status = state.steps[*index].status;
    if (status == StepStatus::Begun) return Message("renewal.step-in-hand").with("step", difference.title);
    if (status == StepStatus::Done) return Message("renewal.contradicts-done").with("step", difference.title);
  }
  return {};
}

std::string doneAfter(const JobState& state, const workflow::Workflow& after, const std::string& step) {
  const auto comes = after.indexOf(step);
  for (const workflow::WorkflowStep& later : after.steps) {
    if (!comes || std::count(later.before.begin(), later.before.end(), *comes) == 0) continue;
    const auto index = state.plan->workflow.indexOf(later.id);
    if (index && state.steps[*index].status == StepStatus::Done) return later.title;
  }
  return "";
}

EventDraft renewalDraft(const std::vector<intents::TakeIn::Technique>& techniques) {
  return draftOf(TechniquesRenewed{techniques});
}

}  // namespace core::jobs
