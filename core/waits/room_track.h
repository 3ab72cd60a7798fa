#pragma once
// The room as it was entered or measured, over time. What has dried so far was dried by the room of its time; a
// reading changes only what comes after it.
#include <optional>
#include <vector>

#include "core/units/climate.h"
#include "core/waits/clock.h"

namespace core::waits {

struct RoomReading {
  ClockReading at;
  units::Room room;
  bool bySensor = false;
};

using RoomTrack = std::vector<RoomReading>;  // in the order they were made

// The room from a moment on, since the start of a wait.
struct RoomFrom {
  units::Duration from;
  std::optional<units::Room> room;
};

// The rooms a wait has seen, from its start to `now`: the first from 0, in order of time, no two alike in a row.
// `planned` is what holds until one is entered; nothing where nobody has said.
std::vector<RoomFrom> roomsSince(const ClockReading& started, const ClockReading& now, const RoomTrack& track,
                                 const std::optional<units::Room>& planned, const ClockLog& log);

}  // namespace core::waits
