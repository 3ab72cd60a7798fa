#pragma once
// What the looks of one job say of its materials: the observations that this maker's own times are learned from.
#include <map>
#include <string>
#include <vector>

#include "core/record/job_state.h"

namespace core::record {

struct Observed {
  // By kind of material, in the order in which the waits began; ratios to the stated time once the room is taken out.
  std::map<std::string, std::vector<waits::Observation>> opening;
  std::map<std::string, std::vector<waits::Observation>> width;
};

// Waits that crossed an unknown off-time or a room outside the model's limits teach nothing.
Observed observed(const JobState& state, const waits::ClockLog& log, const waits::RoomTrack& rooms,
                  const waits::ClockReading& now);

Learning learn(const std::vector<const Observed*>& jobs);

}  // namespace core::record
