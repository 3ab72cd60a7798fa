#pragma once
// The room as it was entered or measured, over time. A reading applies only from its own time on: earlier drying is
// computed with the room of its time.
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

// The room from a moment on; the moment is counted from the start of a wait.
struct RoomFrom {
  units::Duration from;
  std::optional<units::Room> room;
};

// Returns the rooms of a wait from its start to `now`: the first from 0, in order of time, no two alike in a row.
// `planned` applies until a room is entered; nothing where no room is known.
std::vector<RoomFrom> roomsSince(const ClockReading& started, const ClockReading& now, const RoomTrack& track,
                                 const std::optional<units::Room>& planned, const ClockLog& log);

}  // namespace core::waits
