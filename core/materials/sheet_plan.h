#pragma once
// The layout of a job's pieces on its stock. This is the one planning: the list of a job's materials, what it lacks and
// the sheets cut up at the bench all come from it. Pieces that may be cut from the same stock are cut together, each
// from the sheets that serve it and turned as each sheet requires. The order of the stock changes neither the shortage
// nor the worth.
//
// On a sheet x runs along its width from the left, y along its height from the top, both from the corner of what is
// left once its margins are trimmed off. The directions of fibres and pattern are respected: a piece whose grain is
// stated lies with the fibres of each sheet, patterned strips lie along the pattern, all one way and none turned. Where
// a sheet states only one of the two, that one serves for both; where it states neither, its long side does. A note
// reports the assumption.
#include <string>
#include <vector>

#include "core/cutting/sheet_cutting.h"
#include "core/materials/stock_match.h"

namespace core::materials {

// The least sizes of a rest that is worth keeping. Common practice, no source: a board that makes a small window or a
// backing, a paper that makes the strip of a small band.
inline constexpr Length kKeptBoard = Length::wholeMillimetres(100);  // both sides
inline constexpr Length kKeptPaper = Length::wholeMillimetres(30);   // the shorter side
inline constexpr Length kKeptPaperLong = Length::wholeMillimetres(150);

struct PieceOnSheet {
  std::size_t piece = 0;  // index into the cutting list
  int number = 1;         // of its count, from 1
  cutting::Area at;       // with a strip's allowance
  bool turned = false;    // its width lies along the sheet's height
};

struct PlanSheet {
  std::size_t stock = 0;  // index into the sheets there
  int number = 1;         // of the sheets of that stock, from 1
  std::vector<PieceOnSheet> pieces;
  std::vector<cutting::SheetCut> cuts;  // in the order they are made, after the margins
  std::vector<cutting::Area> offcuts;   // worth keeping, largest first
};

struct LeftOver {
  std::size_t piece = 0;
  int count = 0;
  bool tooLarge = false;  // no sheet that serves it would hold it, used up or not; otherwise there are too few
};

struct StockGroup {
  std::vector<std::size_t> stock;   // indices into the sheets there, ascending; no other group uses them
  std::vector<std::size_t> pieces;  // indices into the cutting list, ascending
  std::vector<PlanSheet> sheets;    // offcuts first, in the order they are cut
  std::vector<LeftOver> unplaced;
  bool byPrice = false;  // see CuttingPlan: `worth` and `bound` are money; otherwise mm2
  bool exact = false;    // see CuttingPlan
  double worth = 0, bound = 0, gap = 0;
  std::vector<base::Message> notes;
};

struct SheetPlan {
  std::vector<StockMatch> matches;  // one a piece of the cutting list
  std::vector<StockGroup> groups;   // by their first piece

  bool isShort() const;  // something was left over
};

SheetPlan planSheets(const std::vector<CutPiece>& pieces, const SheetsThere& there);

}  // namespace core::materials
