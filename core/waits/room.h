#pragma once
// The air a thing dries in, as a thermometer and a hygrometer beside it show.
#include "core/units/climate.h"

namespace core::waits {

struct Room {
  units::Temperature temperature;
  units::Humidity humidity;

  friend bool operator==(const Room&, const Room&) = default;
};

}  // namespace core::waits
