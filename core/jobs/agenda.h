#pragma once
// Lists what is still to do, at an instant, in a job that has been begun.
#include <optional>
#include <vector>

#include "core/jobs/job_state.h"
#include "core/workflow/agenda.h"

namespace core::jobs {

// Returns the room a piece is worked in and what was learned. The room is the one the job file names, otherwise the
// bench's present one; it is null where nobody has entered a room.
workflow::Bench benchFor(const design::Job& job, const shop::Shop& shop);

// A running wait and where it stands at the instant. The wait belongs to the job's state, which must outlive it.
struct RunningWaitAt {
  const RunningWait* run = nullptr;
  waits::WaitState state;
};

// Returns the job's running waits in the order of their ids: a step that is not done needs the fact of each. One that
// is over still says that its fact holds.
std::vector<RunningWaitAt> runningWaits(const JobAt& job);

// A step in hand is listed with what is left of its time. A preparation too old for the step that needs it is listed
// again. A wait found open by touch holds from now on, whatever its stated time. The agenda refers to the job's plan,
// which must outlive it.
workflow::Agenda agendaOf(const JobAt& job);

}  // namespace core::jobs
