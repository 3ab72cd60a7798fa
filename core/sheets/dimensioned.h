#pragma once
// The piece with several of its figures at once, as a sheet to work from: dimension lines are in lanes outside the
// piece, short ones nearest, and no text touches another or a dimension line of its own direction.
#include <string>
#include <vector>

#include "core/design/design.h"
#include "core/sheets/drawing.h"

namespace core::sheets {

// The figures (by id) that are measured on that side and have a place on it; others are left out. The drawing grows to
// the right and downwards by its lanes, and by centres of arcs that lie off the piece; its origin moves with them.
Drawing drawDimensioned(const design::Design& design, Side side, const std::vector<std::string>& figureIds);

// The figures a board is marked out from on its back: its edges' marks, and of a shaped window the centre line, the
// springing line and the arcs and points of the half nearest the marked corner, of which the other is the mirror.
std::vector<std::string> markingOut(const design::Design& design, const std::string& board);

// Returns the box a text occupies: cap height and as many widths as it has characters.
geometry::Rectangle boxOf(const Text& text);

}  // namespace core::sheets
