#pragma once
// Rectangular pieces cut from stock sheets with a straightedge or a fence: every cut goes from edge to edge of the
// piece it divides (guillotine cuts). The direction of the grain is respected, the blade takes its kerf.
//
// The best plan has, in this order: the fewest pieces left over; the least worth of new sheets; the fewest sheets,
// offcuts counted too. So an offcut is cut wherever that saves on new sheets. Where new sheets of the same worth must
// be opened all the same and have room for everything, the offcut stays whole: fewer sheets to fetch and set the fence
// for. Offcuts that are used are cut before new sheets.
//
// Lengths are whole nanometres and every sum is exact. On a sheet x runs along its width from the left, y along its
// height from the top, both from the corner of what is left once its margins are trimmed off.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/units/length.h"

namespace core::cutting {

using units::Length;

// A piece wanted. `width` lies along the sheet's width unless the piece is turned.
struct WantedPiece {
  std::string id;
  Length width, height;
  bool mayTurn = false;     // by a quarter, where neither grain nor pattern forbids it
  bool withFibres = false;  // its width lies along the fibres: it is turned where they run upright. Never with mayTurn
  std::string of = {};      // what it is made of, see StockSheet::serves
};

// Sheets of one kind on hand or to be bought.
struct StockSheet {
  std::string id;
  Length width, height;
  Length margin;                    // unusable along each edge, trimmed off first
  Length kerf;                      // what each cut takes; zero for a knife
  std::optional<int> quantity;      // nothing: as many as are needed
  std::optional<double> price;      // of a sheet, in the maker's money
  bool offcut = false;              // left from earlier work and paid for: its worth is zero
  bool fibresUpright = false;       // its fibres run along its height, not its width
  std::vector<std::string> serves;  // pieces made of one of these; of any where empty
};

struct PlacedPiece {
  std::size_t piece = 0;  // index into the pieces wanted
  Length x, y;
  bool turned = false;  // its width lies along the sheet's height
};

struct Area {  // a rectangle of a sheet
  Length x, y, width, height;
  friend bool operator==(const Area&, const Area&) = default;
};

// One cut, in the order in which a maker makes them: the part in hand is divided at `fence` from its left edge
// (`upright`) or from its top edge; the kerf lies beyond the fence.
struct SheetCut {
  Area part;
  bool upright = false;
  Length fence;
};

// The two parts that a cut leaves; beyond the fence nothing where the kerf takes all of it.
struct CutParts {
  Area before;
  std::optional<Area> beyond;
};
CutParts partsOf(const SheetCut& cut, Length kerf);

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
  bool byPrice = false;  // there are new sheets, and all of them have a price: worth is money; otherwise mm2
  double worth = 0;      // of the new sheets used
  double bound = 0;      // proven: no cutting of the placed pieces has new sheets worth less
  double gap() const { return worth > 0 ? (worth - bound) / worth : 0; }
};

// Returns whether the piece, alone, can be cut from a sheet of that stock, however many there are.
bool fits(const WantedPiece& piece, const StockSheet& stock);

// Requires sizes above zero, margins and kerfs of zero or more, quantities of zero or more. The order of pieces and of
// stock changes nothing but the indices. With one kerf for all stock a smaller kerf never needs sheets of more worth.
CuttingPlan cutSheets(const std::vector<WantedPiece>& pieces, const std::vector<StockSheet>& stock);

}  // namespace core::cutting
