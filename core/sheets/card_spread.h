#pragma once
// Room for the numbers of a card: beside each other along an edge, or as near as may be to a line.
#include <vector>

#include "core/geometry/rectangle.h"
#include "core/sheets/drawing.h"

namespace core::sheets {

// A number beside an edge; its row 0 is the one nearest to the board.
struct Label {
  double wanted = 0;  // where its middle would best be, along the edge
  double size = 0;    // along the edge, with the gap to the next
  double at = 0;      // where its middle is
  std::size_t row = 0;
  double through = 0;  // of row 1: where its line passes row 0
};

// Spreads labels, sorted by `wanted`, over one or two rows from `low` to `high`, each as near to its place as the
// others allow. In two rows they take turns, so that a line to the outer row passes between two of the inner one.
// Returns false where they have no room.
bool spread(std::vector<Label>& labels, double low, double high, std::size_t rows);

// Returns the place of a text nearest to the middle of a line: inside `whole`, clear of every rectangle taken, and
// clear of the lines where that does not put it far away.
geometry::Rectangle nearestRoom(const Stroke& line, double width, double height, const geometry::Rectangle& whole,
                                const std::vector<geometry::Rectangle>& taken, const std::vector<Stroke>& lines);

// Returns the point of a rectangle nearest to a point.
Point nearestOn(const geometry::Rectangle& box, Point point);

}  // namespace core::sheets
