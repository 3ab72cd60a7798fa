#pragma once
// A cut through the bevels at the left of the window, half way up: boards with their sloped edges, the work behind
// them, the back mount. Drawn in millimetres of the piece, so that the painter's scale is the section's own.
#include "core/design/design.h"
#include "core/sheets/drawing.h"

namespace core::sheets {

// From the solid board to a little way into what shows. Elements are the boards' ids; "art"; "back".
Drawing drawSection(const design::Design& design);

}  // namespace core::sheets
