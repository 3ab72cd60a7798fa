#include "core/waits/room_track.h"

#include <algorithm>

namespace core::waits {

std::vector<RoomFrom> roomsSince(const ClockReading& started, const ClockReading& now, const RoomTrack& track,
                                 const std::optional<units::Room>& planned, const ClockLog& log) {
  const units::Duration end = elapsedBetween(started, now, log).time;
  std::vector<RoomFrom> rooms;
  // From the newest back: a track of years is not walked for a wait of an hour.
  for (auto reading = track.rbegin(); reading != track.rend(); ++reading) {
    const units::Duration at = elapsedBetween(started, reading->at, log).time;
    if (at > end) continue;
    if (rooms.empty() || at < rooms.back().from) rooms.push_back({at, reading->room});
    if (at == units::Duration()) break;
  }
  if (rooms.empty() || rooms.back().from > units::Duration()) rooms.push_back({units::Duration(), planned});
  std::reverse(rooms.begin(), rooms.end());
  rooms.erase(std::unique(rooms.begin(), rooms.end(),
                          [](const RoomFrom& earlier, const RoomFrom& later) { return earlier.room == later.room; }),
              rooms.end());
  return rooms;
}

}  // namespace core::waits
