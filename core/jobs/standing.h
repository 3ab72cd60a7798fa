#pragma once
// Finds whether a job has to be in memory. A job is at rest where neither the clock, the room nor what was learned can
// change it or make it call, until an event touches it.
#include <set>
#include <string>

#include "core/jobs/job_state.h"

namespace core::jobs {

// No step is in hand, no wait runs that a step not done depends on, no preparation can grow too old. May return false
// for a job that is at rest, never true for one that is not.
bool rests(const JobState& state);

// The job is at rest with every step done; what the bench makes ready later changes nothing of it but its log.
bool settled(const JobState& state);

// Returns the steps a job shares with others, such as the shop's preparations.
std::set<std::string> shopSteps(const JobPlan& plan);

}  // namespace core::jobs
