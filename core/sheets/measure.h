#pragma once
// The straight distance that a figure is: where it begins and ends on a drawing, and the lines that show it there.
#include <optional>
#include <vector>

#include "core/design/design.h"
#include "core/sheets/card.h"

namespace core::sheets {

struct Measure {
  Point from, to;         // level or upright
  bool fromEdge = false;  // the datum is an edge of what is drawn, or the cut end of a strip
  Gives gives = Gives::Distance;

  bool isLevel() const;
};

// Lets a level or upright measure begin at an edge of what is drawn, of that size, where either of its ends lies there:
// a border is taken from its edge, whichever end it was drawn from. Returns whether it does.
bool beginAtEdge(Point& from, Point& to, double width, double height);

// Returns what a dimension in mm of a drawing of that size measures; nothing where it runs aslant or round.
std::optional<Measure> measureOf(const std::vector<Primitive>& dimension, const design::Figure& figure, double width,
                                 double height);

// Returns the lines of a measure that stands beside the drawing, everything in the units of the room: its dimension at
// the height (of an upright one, at the distance) `beside`, witness lines from there to its ends, its datum and what it
// gives right across `edges`. `cap` is the cap height of the figures. Roles are those of CardNumber's lines.
std::vector<Primitive> measureLines(const Measure& measure, const geometry::Rectangle& edges, double beside,
                                    double cap);

}  // namespace core::sheets
