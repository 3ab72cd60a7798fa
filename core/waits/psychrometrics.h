#pragma once
// Computes how much water the air can still take up. Pressures are in Pa, the barometer is fixed at 101325 Pa, water is
// liquid (below freezing: supercooled). Valid for rooms between -20 and 60 degrees Celsius and from 0 to 100 %; beyond
// that, values are still computed and become less and less meaningful.
//
// Source of every formula here: ASHRAE Handbook, Fundamentals, chapter Psychrometrics (Hyland and Wexler's saturation
// pressure over liquid water; humidity ratio from the wet bulb). It agrees with other published formulations within
// 0.03 %, far closer than any hygrometer reads.
#include "core/waits/room.h"

namespace core::waits {

// Returns the pressure of water vapour over water of this temperature.
double saturationPressure(units::Temperature temperature);

// Returns how far the room's vapour is from saturation at the room's own temperature.
double vapourPressureDeficit(const Room& room);

// Returns the temperature of a wet thing whose vapour takes its heat from the air alone. Exact to 1e-9 K of the
// formula's own root.
units::Temperature wetBulb(const Room& room);

// Returns how far the room's vapour is from saturation at the wet bulb's temperature.
double wetBulbDeficit(const Room& room);

}  // namespace core::waits
