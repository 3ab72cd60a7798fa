#pragma once
// The searches' view of a cutting: pieces and sheets by kind, in an order of their own, so that the order of the input
// changes nothing, and worth in whole units, so that equal sums compare equal. Lengths are nanometres.
//
// Kerf: a part of length L is divided into a and b with a + kerf + b = L, or cut off at a where the saw runs out of the
// part. With every length made longer by the kerf both read a' + b' = L': the searches lengthen sheets and pieces alike
// and then cut without kerf.
#include <cstddef>
#include <cstdint>
#include <optional>
#include <tuple>
#include <utility>
#include <vector>

#include "core/cutting/sheet_cutting.h"

namespace core::cutting {

// Pieces that may stand for each other. Where they may be turned the width is the longer side; a square is not turned.
struct PieceKind {
  std::int64_t width = 0, height = 0;
  bool mayTurn = false;
  bool withFibres = false;           // turned on sheets whose fibres run upright
  std::size_t of = 0;                // see SheetKind::serves
  std::vector<std::size_t> members;  // pieces wanted, by index
  int count() const { return static_cast<int>(members.size()); }
};

// Sheets that may stand for each other; sizes without margins.
struct SheetKind {
  std::int64_t width = 0, height = 0, kerf = 0;
  std::int64_t worth = 0;  // of one, in units; zero for an offcut
  bool offcut = false;
  bool fibresUpright = false;                        // only where that matters to a piece
  std::vector<bool> serves;                          // pieces, by what they are made of
  int quantity = 0;                                  // never more than there are pieces
  std::vector<std::pair<std::size_t, int>> members;  // stock by index, and how many of it
};

struct CuttingProblem {
  std::vector<PieceKind> pieces;
  std::vector<SheetKind> sheets;      // offcuts first
  std::vector<std::size_t> tooLarge;  // pieces that fit no sheet on hand, by index
  bool byPrice = false;               // worth is money, not mm2
  double unitsInOne = 1;              // units of worth in one of money, or in one mm2
  int pieceCount() const;
};

// The position of a piece on a sheet: its sides there, and whether it is turned against its kind.
struct Lying {
  std::int64_t width = 0, height = 0;
  bool mayTurn = false;
  bool turned = false;
};

// Returns nothing where the sheet does not serve the piece. Sizes are not considered.
std::optional<Lying> lying(const PieceKind& piece, const SheetKind& sheet);
bool fits(const PieceKind& piece, const SheetKind& sheet);

// On sheets that agree in this, every piece is placed the same way round and has the same kerf.
using SheetManner = std::tuple<std::int64_t, bool, std::vector<bool>>;
SheetManner mannerOf(const SheetKind& sheet);

CuttingProblem problemOf(const std::vector<WantedPiece>& pieces, const std::vector<StockSheet>& stock);

}  // namespace core::cutting
