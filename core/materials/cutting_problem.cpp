#include "core/materials/cutting_problem.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "core/base/check.h"

namespace core::materials {
namespace {

// What a sheet costs where every new sheet has a price, else its area in mm2.
double costOf(const StockSheet& sheet, bool byPrice) {
  if (sheet.offcut) return 0;
  return byPrice ? *sheet.price : sheet.width.inMillimetres() * sheet.height.inMillimetres();
}

// A power of ten, so that prices of few decimals and areas of whole micrometres become whole. As many sheets as there
// are pieces stay below 2^62 units.
double unitsFor(double dearest, std::size_t pieces) {
  const double most = 4e18 / static_cast<double>(std::max<std::size_t>(pieces, 2000));
  double units = 1;
  while (dearest * units * 10 <= most && units < 1e15) units *= 10;
  while (dearest * units > most) units /= 10;
  return units;
}

std::vector<PieceKind> kindsOf(const std::vector<WantedPiece>& pieces) {
  std::map<std::tuple<std::int64_t, std::int64_t, bool>, PieceKind> kinds;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    std::int64_t width = pieces[i].width.inNanometres();
    std::int64_t height = pieces[i].height.inNanometres();
    ENSURE(width > 0 && height > 0);
    const bool mayTurn = pieces[i].mayTurn && width != height;
    if (mayTurn && width < height) std::swap(width, height);
    PieceKind& kind = kinds[{width, height, mayTurn}];
    kind.width = width;
    kind.height = height;
    kind.mayTurn = mayTurn;
    kind.members.push_back(i);
  }
  std::vector<PieceKind> sorted;
  for (auto it = kinds.rbegin(); it != kinds.rend(); ++it) sorted.push_back(std::move(it->second));
  return sorted;
}

std::vector<SheetKind> kindsOf(const std::vector<StockSheet>& stock, std::size_t pieces, double& unitsInOne) {
  const auto isNew = [](const StockSheet& sheet) { return !sheet.offcut; };
  const bool byPrice =
      std::all_of(stock.begin(), stock.end(), [&](const auto& s) { return !isNew(s) || s.price.has_value(); });
  double dearest = 0;
  for (const StockSheet& sheet : stock) {
    ENSURE(sheet.width.inNanometres() > 0 && sheet.height.inNanometres() > 0 && sheet.width <= units::kLongestLength &&
           sheet.height <= units::kLongestLength);
    ENSURE(sheet.margin.inNanometres() >= 0 && sheet.margin <= units::kLongestLength);
    ENSURE(sheet.kerf.inNanometres() >= 0 && sheet.kerf <= units::kLongestLength);
    ENSURE(!sheet.quantity || *sheet.quantity >= 0);
    ENSURE(!sheet.price || (std::isfinite(*sheet.price) && *sheet.price >= 0));
    dearest = std::max(dearest, costOf(sheet, byPrice));
  }
  unitsInOne = unitsFor(dearest, pieces);
  const int most = static_cast<int>(pieces);
  using Key = std::tuple<bool, std::int64_t, std::int64_t, std::int64_t, std::int64_t>;
  std::map<Key, SheetKind> kinds;
  for (std::size_t i = 0; i < stock.size(); ++i) {
    const StockSheet& sheet = stock[i];
    const std::int64_t width = (sheet.width - 2 * sheet.margin).inNanometres();
    const std::int64_t height = (sheet.height - 2 * sheet.margin).inNanometres();
    const int quantity = std::min(sheet.quantity.value_or(most), most);
    if (width <= 0 || height <= 0 || quantity == 0) continue;
    // A blade wider than the sheet takes no more than the sheet.
    const std::int64_t kerf = std::min(sheet.kerf.inNanometres(), std::max(width, height));
    const std::int64_t worth = std::llround(costOf(sheet, byPrice) * unitsInOne);
    SheetKind& kind = kinds[{isNew(sheet), worth, width, height, kerf}];
    kind.width = width;
    kind.height = height;
    kind.kerf = kerf;
    kind.worth = worth;
    kind.offcut = sheet.offcut;
    kind.quantity = std::min(most, kind.quantity + quantity);
    kind.members.emplace_back(i, quantity);
  }
  std::vector<SheetKind> sorted;
  for (auto& [key, kind] : kinds) sorted.push_back(std::move(kind));
  return sorted;
}

}  // namespace

int CuttingProblem::pieceCount() const {
  int count = 0;
  for (const PieceKind& kind : pieces) count += kind.count();
  return count;
}

bool fits(const PieceKind& piece, const SheetKind& sheet) {
  return (piece.width <= sheet.width && piece.height <= sheet.height) ||
         (piece.mayTurn && piece.height <= sheet.width && piece.width <= sheet.height);
}

CuttingProblem problemOf(const std::vector<WantedPiece>& pieces, const std::vector<StockSheet>& stock) {
  CuttingProblem problem;
  problem.sheets = kindsOf(stock, pieces.size(), problem.unitsInOne);
  for (PieceKind& kind : kindsOf(pieces)) {
    const bool isPossible = std::any_of(problem.sheets.begin(), problem.sheets.end(),
                                        [&](const SheetKind& sheet) { return fits(kind, sheet); });
    if (isPossible) {
      problem.pieces.push_back(std::move(kind));
    } else {
      problem.tooLarge.insert(problem.tooLarge.end(), kind.members.begin(), kind.members.end());
    }
  }
  return problem;
}

}  // namespace core::materials
