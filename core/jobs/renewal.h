#pragma once
// A renewal replaces the techniques of a job under way. This file has its event and the reasons to refuse it. A job is
// planned with the techniques of its newest live renewal, otherwise with those it was imported with; its other events
// stay and are folded over the new plan.
#include <vector>

#include "core/base/message.h"
#include "core/intents/intent.h"
#include "core/jobs/job_state.h"
#include "core/record/event.h"
#include "core/workflow/renewal.h"

namespace core::jobs {

// Returns the newest live renewal among a job's own events, which have to be in fold order; null for none.
const record::Event* newestRenewal(const std::vector<record::Event>& events);

// Returns why a renewal is refused: renewal.step-in-hand {step} and renewal.contradicts-done {step}, where a step begun
// or done would differ or be dropped; record.read-only and record.put-away. The message is empty where it is allowed.
// `differences`: from the state's plan to the new one.
base::Message refusedRenewal(const JobState& state, const std::vector<workflow::StepDifference>& differences);

// Returns the title of a done step that should have followed `step`, which the renewal adds; "" for none.
std::string doneAfter(const JobState& state, const workflow::Workflow& after, const std::string& step);

record::EventDraft renewalDraft(const std::vector<intents::TakeIn::Technique>& techniques);

}  // namespace core::jobs
