#pragma once
// Rectangular pieces cut from stock sheets with a straightedge or a fence: every cut goes from edge to edge of the
// piece it divides (guillotine cuts). Offcuts are used first, grain is kept, the blade takes its kerf.
//
// Lengths are whole nanometres and every sum is exact. On a sheet x runs along its width from the left, y along its
// height from the top, both from the corner of what is left once its margins are trimmed off.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/units/length.h"

namespace core::materials {

using units::Length;

// A piece wanted. `width` lies along the sheet's width unless the piece is turned.
struct WantedPiece {
  std::string id;
  Length width, height;
  bool mayTurn = false;  // by a quarter, where neither grain nor pattern forbids it
};

// Sheets of one kind on hand or to be bought.
struct StockSheet {
  std::string id;
  Length width, height;
  Length margin;                // unusable along each edge, trimmed off first
  Length kerf;                  // what each cut takes; zero for a knife
  std::optional<int> quantity;  // nothing: as many as are needed
  std::optional<double> price;  // of a sheet, in the maker's money
  bool offcut = false;          // kept from earlier work: paid for, used first
};

struct PlacedPiece {
  std::size_t piece = 0;  // index into the pieces wanted
  Length x, y;
  bool turned = false;
};

struct Area {  // a rectangle of a sheet
  Length x, y, width, height;
};

// One cut, in the order in which a maker makes them: the part in hand is divided at `fence` from its left edge
// (`upright`) or from its top edge; the kerf lies beyond the fence.
struct SheetCut {
  Area part;
  bool upright = false;
  Length fence;
};

struct CutSheet {
  std::size_t stock = 0;  // index into the stock
  std::vector<PlacedPiece> pieces;
  std::vector<SheetCut> cuts;
  std::vector<Area> rest;  // what is left over, largest first; pieces + rest + kerf = the usable sheet
};

struct CuttingPlan {
  std::vector<CutSheet> sheets;       // offcuts first, in the order they are cut
  std::vector<std::size_t> unplaced;  // pieces that no sheet had room for, by index
  // True: proven best, in this order: fewest pieces left over, least worth of new sheets (their price where all have
  // one, else their area), fewest sheets. False: found by rules of thumb.
  bool exact = false;
  double worth = 0;  // of the new sheets used: price, or mm2 where not all have a price
  double bound = 0;  // proven: no cutting of the placed pieces has new sheets worth less
  double gap() const { return worth > 0 ? (worth - bound) / worth : 0; }
};

// Requires sizes above zero, margins and kerfs of zero or more, quantities of zero or more. The order of pieces and of
// stock changes nothing but the indices. With one kerf for all stock a smaller kerf never needs sheets of more worth.
CuttingPlan cutSheets(const std::vector<WantedPiece>& pieces, const std::vector<StockSheet>& stock);

}  // namespace core::materials
