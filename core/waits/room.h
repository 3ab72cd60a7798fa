#pragma once
// The air a thing dries in, as a thermometer and a hygrometer beside it show.
#include "core/units/climate.h"

namespace core::waits {

using units::Room;

}  // namespace core::waits
