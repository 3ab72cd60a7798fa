#pragma once
// The cutter's card: the back of one board with all the numbers of an act at once, in the order in which a hand takes
// them. It is laid out for a room on the glass or on paper, so that every number keeps its size.
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

// A figure as the hand takes it on the back: from its datum to the line or the point it gives. In mm of the piece as
// seen from the back.
struct CardMeasure {
  std::string figure;
  std::string element;
  Point from, to;
  bool fromEdge = false;  // the datum is an edge of the board
  Gives gives = Gives::Distance;
  std::optional<geometry::Segment> arc;  // of a radius
};

// Returns nothing where the figure has no place on the back of a board.
std::optional<CardMeasure> cardMeasure(const design::Design& design, const std::string& figureId);

// Returns the board whose back these figures are taken on, "" where fewer than two of them are.
std::string boardOfCard(const design::Design& design, const std::vector<workflow::WorkflowFigure>& figures);

// Returns the figures of a card in the order of the hand: centre line, springing line, the sides of the opening,
// centres, radii, points, then what is checked; a tool's settings stay where they were. Left out is what needs no
// measure of its own: what is on a line drawn before, sweeps, and the half of a shaped window that mirrors the one
// nearest the marked corner.
std::vector<workflow::WorkflowFigure> inOrderOfTheHand(const design::Design& design,
                                                       const std::vector<workflow::WorkflowFigure>& figures);

// What a card is laid out for. Lengths are in the units of the room: pixels, or mm of paper.
struct CardRoom {
  double width = 0;
  double height = 0;
  double capHeight = 0;                               // of the numbers
  double shortest = 0;                                // edge of the board that can still be read
  std::function<double(const std::string&)> widthOf;  // of a number as it is written there
};

struct CardNumber {
  std::string figure;
  std::string text;         // without its unit; a radius begins with R
  geometry::Rectangle box;  // which the text fills
  bool inside = false;      // it may lie on lines of the board, which are to be broken there
  // The number's lines while another one is in hand, and while it is: witness lines have the role Setting, the
  // dimension with its arrows Dimension, its datum BoardEdge and Waste, the line to be made Line.
  std::vector<Primitive> pencil, ink;
};

// Everything in the units of the room, from its top left corner.
struct Card {
  std::vector<Primitive> board;     // its edge, its opening, the marked corner; of a shaped window both centre lines
  std::vector<CardNumber> numbers;  // those of `figures` that have a place, in their order
  double scale = 0;                 // of the room's units to a mm of the piece
  Point origin;                     // the board's top left corner
  bool fits = false;  // every number has its place and the board is large enough to be read; otherwise nothing is drawn
};

Card drawCard(const design::Design& design, const std::vector<std::string>& figureIds, const CardRoom& room);

}  // namespace core::sheets
