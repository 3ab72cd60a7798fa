#pragma once
// Finds the later acts that depend on an act, which has to be known before it is taken back.
#include <string>

#include "core/jobs/job_state.h"

namespace core::jobs {

// Returns the titles of the live acts that depend on an intent's events, "" for none: steps that needed what it made,
// touch tests and mends of waits it started, steps that relied on a touch test, measures of what it made, steps worked
// with a figure it measured.
std::string restingOn(const JobState& state, const std::string& intentId);

}  // namespace core::jobs
