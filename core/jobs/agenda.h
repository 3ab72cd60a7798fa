#pragma once
// What is still to do of a job that has been begun, at an instant.
#include <optional>
#include <vector>

#include "core/jobs/job_state.h"
#include "core/workflow/agenda.h"

namespace core::jobs {

// The room a piece is worked in, and what was learned: the room its file names; where it names none, the one the bench
// stands in now; where nobody has entered one, none.
workflow::Bench benchFor(const design::Job& job, const shop::Shop& shop);

// Its waits that run: something not yet done needs their fact, and they are not over for good. In the order of their
// ids.
std::vector<const RunningWait*> runningWaits(const JobAt& job);

// Of a step in hand what is left of the time it takes. A preparation too old for what needs it is to do again. What was
// found by touch holds from now on, whatever its time says. The agenda speaks of the job's plan, which stays where it
// is.
workflow::Agenda agendaOf(const JobAt& job);

}  // namespace core::jobs
