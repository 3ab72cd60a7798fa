#pragma once
// Collects what the touch tests of one job teach about its materials: the observations that a maker's own times are
// learned from.
#include <map>
#include <string>
#include <vector>

#include "core/jobs/job_state.h"

namespace core::jobs {

// What one wait taught, without its age, which depends on when it is learned from. Bounds as in waits::Observation.
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

// Only this many of the newest lessons of a kind are used: hundreds of jobs teach no more than dozens, and an old time
// teaches less than a new one.
inline constexpr std::size_t kMostLessons = 64;

// Returns whether what was found of a wait is so far from its times (waits::farOutside) that the maker is asked to
// confirm it.
bool farOutside(const JobState& state, const RunningWait& run, const waits::ClockLog& log,
                const waits::RoomTrack& rooms);

// Waits that crossed an unknown off-time or a room outside the model's limits teach nothing; nor does a time far
// outside until the maker confirms it. The wait itself follows every look.
Observed observed(const JobState& state, const waits::ClockLog& log, const waits::RoomTrack& rooms);

// Learns with ages as of `now`. Neither the order of jobs nor of lessons matters.
waits::Learning learn(const std::vector<const Observed*>& jobs, const waits::ClockLog& log,
                      const waits::ClockReading& now);

}  // namespace core::jobs
