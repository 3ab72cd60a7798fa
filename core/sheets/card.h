#pragma once
// The cutter's card: the back of one board on which an act sets out or measures a window, in the order in which a hand
// does so. It is laid out for a room on the glass, so that every number keeps its size: one number at a time stands in
// its dimension, and what the others give is a line on the board.
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/design/design.h"
#include "core/sheets/drawing.h"
#include "core/workflow/workflow.h"

namespace core::sheets {

// What the hand gets of a measure: a line right across the board, a place on a line, a curve, or a distance that is
// there already.
enum class Gives { Line, Place, Curve, Distance };

// What a measure is taken from, as the board lies with its back up.
enum class Datum { RightEdge, LeftEdge, TopEdge, BottomEdge, CentreLine, SpringingLine, Centre, Opening };

// Where a measure ends on the board, as it lies; a radius, a diagonal or what is on an axis of the window is of neither
// half.
enum class Half { Neither, Left, Right, Upper, Lower };

// A figure as the hand takes it on the back: from its datum to the line or the point it gives. In mm of the piece as
// seen from the back.
struct CardMeasure {
  std::string figure;
  std::string element;
  Point from, to;
  bool fromEdge = false;  // the datum is an edge of the board
  Datum datum = Datum::Opening;
  Half half = Half::Neither;
  Gives gives = Gives::Distance;
  bool ofWindow = false;                 // its line is one of the window's own sides; otherwise it is an axis
  std::optional<geometry::Segment> arc;  // of a radius
};

// Returns nothing where the figure has no place on the back of a board.
std::optional<CardMeasure> cardMeasure(const design::Design& design, const std::string& figureId);

// Returns the board whose back these figures are taken on, "" where fewer than two of them are.
std::string boardOfCard(const design::Design& design, const std::vector<workflow::WorkflowFigure>& figures);

// Returns the figures of a card in the order of the hand: centre line and sides, as long as the rule lies at that edge,
// then the springing line and what is above and below, centres, radii, points, at last what is checked; a tool's
// settings stay where they were. Left out is what needs no measure of its own: what is on a line drawn before, sweeps,
// and the half of a shaped window that mirrors the one nearest the marked corner.
std::vector<workflow::WorkflowFigure> inOrderOfTheHand(const design::Design& design,
                                                       const std::vector<workflow::WorkflowFigure>& figures);

// What a card is laid out for. Lengths are in the units of the room: pixels, or mm of paper.
struct CardRoom {
  double width = 0;
  double height = 0;
  double capHeight = 0;                               // of the numbers
  double shortest = 0;                                // edge of the board that can still be read
  std::function<double(const std::string&)> widthOf;  // of a number as it is written there
  double side = 0;                                    // width of the longest word for a side
  double window = 0;                                  // width of the word for what falls out
};

struct CardNumber {
  std::string figure;
  std::string text;         // with its unit; a radius begins with R
  geometry::Rectangle box;  // which the text fills
  bool inside = false;      // it may lie on lines of the board, which are to be broken there
  // What the hand makes of it: centre lines have the role Guide, all else Line. Nothing where it is only measured.
  std::vector<Primitive> made;
  std::optional<Point> tick;  // the middle of the tick that says it is made
  // What is added while it is in hand: witness lines have the role Setting, the dimension with its arrows Dimension,
  // its datum BoardEdge and Waste, the line to be made Line.
  std::vector<Primitive> ink;
};

// Everything in the units of the room, from its top left corner.
struct Card {
  // Its surface with its material, what falls out of it (Waste), its edge, its opening and the marked corner.
  std::vector<Primitive> board;
  std::vector<CardNumber> numbers;       // those of `figures` that have a place, in their order
  geometry::Rectangle edges;             // of the board, which may go on below the room
  geometry::Rectangle top, left, right;  // which the words for the sides fill
  geometry::Rectangle window;            // which the word for what falls out fills; empty: it has no room
  double scale = 0;                      // of the room's units to a mm of the piece
  bool fits = false;  // every number has its place and the board is large enough to be read; otherwise nothing is drawn
};

Card drawCard(const design::Design& design, const std::vector<std::string>& figureIds, const CardRoom& room);

}  // namespace core::sheets
