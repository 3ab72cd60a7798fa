#pragma once
// What would lose its ground were an act taken back.
#include <string>

#include "core/jobs/job_state.h"

namespace core::jobs {

// Titles of the live acts that rest on an intent's events, "" for none: steps that needed what it made, touch tests and
// mends of waits it started, steps worked on the word of a touch test, measures of what it made, steps worked with a
// figure it measured.
std::string restingOn(const JobState& state, const std::string& intentId);

}  // namespace core::jobs
