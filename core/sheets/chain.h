#pragma once
// Dimension chains beside a drawing: along an edge one measure follows the other without a gap, and together they come
// to the whole. What is asked for by its place in the job file is the measure in hand.
#include <string>
#include <vector>

#include "core/design/design.h"
#include "core/sheets/drawing.h"

namespace core::sheets {

enum class ChainEdge { Top, Right, Bottom, Left };

// An end of a measure: where it stands along the edge, and how far from there, across, what is measured lies.
struct ChainStop {
  double along = 0;
  double across = 0;
};

struct ChainMeasure {
  std::string shown;  // as every length is shown; without its unit, which the drawing tells once
  bool inHand = false;
};

// In mm of the drawing. `measures` lie between neighbouring stops, one less than these.
struct Chain {
  ChainEdge edge = ChainEdge::Bottom;
  std::vector<ChainStop> stops;
  std::vector<ChainMeasure> measures;
};

// Returns the chains of drawPiece of that side: above and at the left the whole mount, below and at the right what is
// at `hand`, a place in the job file; the opening where it is "" or has no measure on the mount. On the back they are
// of the board at that place, of the outermost where it is none.
std::vector<Chain> chainsOf(const design::Design& design, Side side, const std::string& hand);

// Returns the chains of drawSection: above how much of each board's bevel and face shows, below the reveals from sight
// edge to sight edge, at the left the boards' thicknesses.
std::vector<Chain> sectionChainsOf(const design::Design& design, const std::string& hand);

}  // namespace core::sheets
