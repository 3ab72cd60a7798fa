#pragma once
// What the looks of one job say of its materials: the observations that this maker's own times are learned from.
#include <map>
#include <string>
#include <vector>

#include "core/jobs/job_state.h"

namespace core::jobs {

// What one wait taught, without its age: that is for the moment it is learned from. Bounds as in waits::Observation.
struct Lesson {
  waits::ClockReading started;
  double lower = 0;
  double upper = 0;
  friend bool operator==(const Lesson&, const Lesson&) = default;
};

struct Observed {
  // By kind, in the order in which the waits began; ratios to the stated time once the room is taken out.
  std::map<waits::Kind, std::vector<Lesson>> opening;
  std::map<waits::Kind, std::vector<Lesson>> width;
  friend bool operator==(const Observed&, const Observed&) = default;
};

// Of a kind only so many of the newest are learned from: what hundreds of jobs found says no more than what dozens
// did, and an old time less than a new one.
inline constexpr std::size_t kMostLessons = 64;

// Whether what was found of a wait lies so far from what its times say (waits::farOutside) that it is asked about.
bool farOutside(const JobState& state, const RunningWait& run, const waits::ClockLog& log,
                const waits::RoomTrack& rooms);

// Waits that crossed an unknown off-time or a room outside the model's limits teach nothing, nor does what lies far
// outside until the maker says that it is so. The wait itself follows every look.
Observed observed(const JobState& state, const waits::ClockLog& log, const waits::RoomTrack& rooms);

// As of `now`. Neither the order of jobs nor of lessons matters.
waits::Learning learn(const std::vector<const Observed*>& jobs, const waits::ClockLog& log,
                      const waits::ClockReading& now);

}  // namespace core::jobs
