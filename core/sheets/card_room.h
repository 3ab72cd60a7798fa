#pragma once
// Room for a number of a card that lies on the board, as near as may be to its line.
#include <vector>

#include "core/geometry/rectangle.h"
#include "core/sheets/drawing.h"

namespace core::sheets {

// Returns the place of a text nearest to the middle of a line: inside `whole`, clear of every rectangle taken, and
// clear of the lines where that does not put it far away.
geometry::Rectangle nearestRoom(const Stroke& line, double width, double height, const geometry::Rectangle& whole,
                                const std::vector<geometry::Rectangle>& taken, const std::vector<Stroke>& lines);

// Returns the point of a rectangle nearest to a point.
Point nearestOn(const geometry::Rectangle& box, Point point);

}  // namespace core::sheets
