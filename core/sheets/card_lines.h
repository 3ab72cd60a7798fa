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

// The board as it lies: its surface, what falls out, edge, opening, marked corner.
std::vector<Primitive> boardLines(const CardPlace& place, const design::Design& design, const std::string& board);

// Returns the box of a board's opening.
geometry::Rectangle openingOf(const CardPlace& place, const design::Design& design, const std::string& board);

// Returns what the hand makes of a measure, on both halves of the window where it is taken from the centre line: a
// centre line right across the board, a side of the window that goes on past its corners, a cross at a place, a curve.
std::vector<Primitive> madeLines(const CardPlace& place, const design::Design& design, const CardMeasure& measure,
                                 const geometry::Rectangle& opening);

// Returns where a tick stands by a line that was made: near its upper or left end, beside it, between the edge of the
// board and the opening. Nothing where there is no room for it.
std::optional<Point> tickOf(const CardPlace& place, const CardMeasure& measure, const std::vector<Primitive>& made,
                            const geometry::Rectangle& opening);

// A dimension line with a ring at its datum and an arrow's head at its end. What is there already has a head at both
// ends. Where they have no room between the ends the heads point at them from outside.
void addDimension(std::vector<Primitive>& list, const CardPlace& place, const CardMeasure& measure, Point from,
                  Point to);

// The edge or the line that the measure is taken from; an edge is hatched outside the board.
void addDatum(std::vector<Primitive>& list, const CardPlace& place, const CardMeasure& measure);

// What the measure gives: a line right across the board, a cross at a place, a curve.
void addGiven(std::vector<Primitive>& list, const CardPlace& place, const CardMeasure& measure);

// All lines of what was drawn, curves by chords near enough to tell whether a number lies on one.
std::vector<Stroke> chordsOf(const std::vector<Primitive>& drawn);

}  // namespace core::sheets::detail
