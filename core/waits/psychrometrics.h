#pragma once
// What the air can still take up. Pressures are in Pa, the barometer stands at 101325 Pa, water is liquid (below
// freezing: supercooled). Good for rooms between -20 and 60 degrees Celsius and from 0 to 100 %; what is outside is
// computed all the same and means less and less.
//
// Source of every formula here: ASHRAE Handbook, Fundamentals, chapter Psychrometrics (Hyland and Wexler's saturation
// pressure over liquid water; humidity ratio from the wet bulb). Against other published formulations it stands
// within 0.03 %, far closer than any hygrometer reads.
#include "core/waits/room.h"

namespace core::waits {

// The pressure of water vapour over water of this temperature.
double saturationPressure(units::Temperature temperature);

// How far the room's vapour is from saturation at the room's own temperature.
double vapourPressureDeficit(const Room& room);

// The temperature a wet thing takes that gives its vapour's heat out of the air alone. Exact to 1e-9 K of the
// formula's own root.
units::Temperature wetBulb(const Room& room);

// How far the room's vapour is from saturation at the wet bulb's temperature.
double wetBulbDeficit(const Room& room);

}  // namespace core::waits
