#include "core/craft/room_bounds.h"

namespace core::craft {

bool concerns(const RoomBounds& bounds, const std::optional<units::Room>& room) {
  if (!room || bounds == RoomBounds()) return true;
  const double celsius = room->temperature.inCelsius();
  const double percent = room->humidity.inPercent();
  return (bounds.colder && celsius < bounds.colder->inCelsius()) ||
         (bounds.warmer && celsius > bounds.warmer->inCelsius()) ||
         (bounds.drier && percent < bounds.drier->inPercent()) ||
         (bounds.damper && percent > bounds.damper->inPercent());
}

}  // namespace core::craft
