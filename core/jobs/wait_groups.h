#pragma once
// Waits of one kind that were begun within minutes of each other, over several things, are one wait to the maker: one
// line on the shelf, one call, one answer. Four strips laid one after another set together. A window is never shared:
// each is caught for itself.
#include <vector>

#include "core/jobs/job_state.h"

namespace core::jobs {

// Waits begun this close to the first of them belong together.
inline constexpr units::Duration kBegunTogether = units::Duration::minutes(20);

// Those that still matter, by the time they were begun; the last begun is the one that speaks for all, since what it
// finds holds for those begun before it. Ordered by the id of the first.
using WaitGroup = std::vector<const RunningWait*>;
std::vector<WaitGroup> waitGroups(const JobAt& job);

// Returns the group that a running wait is in; the wait alone where it does not matter any more.
WaitGroup groupOf(const JobAt& job, const RunningWait& run);

}  // namespace core::jobs
