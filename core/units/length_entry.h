#pragma once
// Lengths that were entered or measured: as a job file writes them, and as they are shown.
#include <string>

#include "core/units/length.h"
#include "core/units/length_display.h"

namespace core::units {

// Returns the nearest length in whole nanometres. Requires a finite value, in mm.
Length nearestLength(double millimetres);

// Returns the length as a job file has it, exact: "69.5 mm"; with inches "2 3/4 in", where it lies on a 64th, and in
// millimetres otherwise. Requires a length that is not negative.
std::string entryText(Length length, UnitSystem system);

// The display of a length that was entered or measured. One on a 64th of an inch is shown as it is, since it says what
// the maker said; any other, and every length in millimetres, is shown like a computed one.
ShownLength showEntered(Length length, UnitSystem system, Rounding rounding);
std::string enteredText(Length length, UnitSystem system, Rounding rounding = Rounding::Nearest);
// The shown value itself, in millimetres.
double shownEntered(Length length, UnitSystem system, Rounding rounding);
// Returns whether the display has a 64th of its own for it: the length lies on one and on no 32nd.
bool isOddSixtyFourth(Length length);

// "≈ 16 1/8 in" of its parts.
std::string textOf(const ShownLength& shown);

// Returns the value moved to a step of the display (0.1 mm, 1/32 in).
Length onStep(double millimetres, UnitSystem system, Rounding rounding);

}  // namespace core::units
