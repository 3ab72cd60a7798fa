#pragma once
// The lines of the cutter's card, once the board has its place. Only card.cpp uses this.
#include <vector>

#include "core/sheets/card.h"

namespace core::sheets::detail {

// Length of a datum edge's hatching, in cap heights.
inline constexpr double kHatchShare = 0.5;

// The board's place in its room, and the measure that lines are drawn by.
struct CardPlace {
  Point origin;               // the board's top left corner
  double scale = 0;           // of the room's units to a mm
  geometry::Rectangle edges;  // of the board
  double cap = 0;             // cap height of the numbers

  Point on(Point point) const { return origin + scale * point; }
  geometry::Segment on(const geometry::Segment& segment) const;
};

// The board as it lies: edge, opening, marked corner; of a shaped window both centre lines.
std::vector<Primitive> boardLines(const CardPlace& place, const design::Design& design, const std::string& board);

// A dimension line from its datum, which has a ring where it is inked, to the arrow's head. What is there already has a
// head at both ends.
void addDimension(std::vector<Primitive>& list, const CardPlace& place, const CardMeasure& measure, Point from,
                  Point to, bool inked);

// The edge or the line that the measure is taken from; an edge is hatched outside the board.
void addDatum(std::vector<Primitive>& list, const CardPlace& place, const CardMeasure& measure);

// What the measure gives: a line right across the board, a cross at a place, a curve.
void addGiven(std::vector<Primitive>& list, const CardPlace& place, const CardMeasure& measure);

// All lines of what was drawn, curves by chords near enough to tell whether a number lies on one.
std::vector<Stroke> chordsOf(const std::vector<Primitive>& drawn);

}  // namespace core::sheets::detail
