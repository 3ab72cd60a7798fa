#pragma once
// The rooms of which something is said: a film forms too slowly in a cold one, a varnish blooms in a damp one.
#include <optional>

#include "core/units/climate.h"

namespace core::craft {

// Rooms beyond any of these; without one, every room.
struct RoomBounds {
  std::optional<units::Temperature> colder;  // than this
  std::optional<units::Temperature> warmer;
  std::optional<units::Humidity> drier;
  std::optional<units::Humidity> damper;

  friend bool operator==(const RoomBounds&, const RoomBounds&) = default;
};

// Returns whether it is said of this room. Of a room nobody knows it is: what may be so is told.
bool concerns(const RoomBounds& bounds, const std::optional<units::Room>& room);

}  // namespace core::craft
