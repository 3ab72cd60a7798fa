#pragma once
// A job whose techniques are taken anew while it is under way: the event that says so, and what stands against it.
// Which techniques a job is planned with is what its newest live renewal says, or else what it was taken in with; its
// other events stay and are folded over the new plan.
#include <vector>

#include "core/base/message.h"
#include "core/intents/intent.h"
#include "core/jobs/job_state.h"
#include "core/record/event.h"
#include "core/workflow/renewal.h"

namespace core::jobs {

// The newest live renewal among a job's own events, which have to be in fold order; null for none.
const record::Event* newestRenewal(const std::vector<record::Event>& events);

// renewal.step-in-hand {step} and renewal.contradicts-done {step}, where a step begun or done would be another or be no
// more; record.read-only and record.put-away; an empty message where nothing stands against it. `differences`: from the
// state's plan to the new one.
base::Message refusedRenewal(const JobState& state, const std::vector<workflow::StepDifference>& differences);

// The title of a step that is done and that one which comes with the renewal should have gone before; "" for none.
std::string doneAfter(const JobState& state, const workflow::Workflow& after, const std::string& step);

record::EventDraft renewalDraft(const std::vector<intents::TakeIn::Technique>& techniques);

}  // namespace core::jobs
