#pragma once
// Whether a job has to be at hand: one that rests looks the same whatever the clock, the room and what was learned say,
// and calls for nothing, until an event touches it.
#include <set>
#include <string>

#include "core/jobs/job_state.h"

namespace core::jobs {

// No step is in hand, no wait runs that a step not done rests on, no preparation can grow too old. May say no of a job
// that does rest, never yes of one that does not.
bool rests(const JobState& state);

// It rests with every step done, and what the bench makes ready later changes nothing of it but its log.
bool settled(const JobState& state);

// The steps a job shares with others, as the shop's preparations.
std::set<std::string> shopSteps(const JobPlan& plan);

}  // namespace core::jobs
