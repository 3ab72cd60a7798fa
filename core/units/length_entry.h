#pragma once
// Lengths as a job file writes them.
#include <string>

#include "core/units/length.h"
#include "core/units/length_display.h"

namespace core::units {

// Returns the nearest length in whole nanometres. Requires a finite value, in mm.
Length nearestLength(double millimetres);

// Returns the length as a job file has it, exact: "69.5 mm"; with inches "2 3/4 in", where it lies on a 64th, and in
// millimetres otherwise. Requires a length that is not negative.
std::string entryText(Length length, UnitSystem system);

// Returns the value moved to a step of the display (0.1 mm, 1/32 in).
Length onStep(double millimetres, UnitSystem system, Rounding rounding);

}  // namespace core::units
