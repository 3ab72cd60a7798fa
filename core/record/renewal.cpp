#include "core/record/renewal.h"

#include <algorithm>
#include <set>

#include "core/base/text.h"

namespace core::record {

using base::Message;
using base::Value;

const Event* newestRenewal(const std::vector<Event>& events) {
  const std::set<std::string> voided = voidedIntents(events);
  const Event* newest = nullptr;
  for (const Event& event : events) {
    if (event.type != type::kTechniquesRenewed || event.version != 1 || voided.contains(event.intentId)) continue;
    newest = &event;
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
  EventDraft draft;
  draft.type = type::kTechniquesRenewed;
  Value hashes = Value::object();
  for (const auto& technique : techniques) hashes.set(technique.id, Value::text(technique.hash));
  draft.payload = Value::object().set("techniques", std::move(hashes));
  return draft;
}

}  // namespace core::record
