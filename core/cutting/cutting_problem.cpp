#include "core/cutting/cutting_problem.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "core/base/check.h"

namespace core::cutting {
namespace {

// Returns the price of a sheet where every new sheet has one, else its area in mm2.
double costOf(const StockSheet& sheet, bool byPrice) {
  if (sheet.offcut) return 0;
  return byPrice ? *sheet.price : sheet.width.inMillimetres() * sheet.height.inMillimetres();
}

bool isByPrice(const std::vector<StockSheet>& stock) {
  const auto isNew = [](const StockSheet& sheet) { return !sheet.offcut; };
  return std::any_of(stock.begin(), stock.end(), isNew) &&
         std::all_of(stock.begin(), stock.end(), [&](const auto& s) { return !isNew(s) || s.price.has_value(); });
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

bool serves(const StockSheet& sheet, const std::string& of) {
  return sheet.serves.empty() || std::find(sheet.serves.begin(), sheet.serves.end(), of) != sheet.serves.end();
}

// What pieces are made of, as far as the stock tells it apart: numbered by the first name of each, so that the order of
// the stock does not matter.
class Makings {
 public:
  Makings(const std::vector<WantedPiece>& pieces, const std::vector<StockSheet>& stock) {
    std::set<std::string> names;
    for (const WantedPiece& piece : pieces) names.insert(piece.of);
    std::map<std::vector<bool>, std::size_t> known;
    for (const std::string& one : names) {
      std::vector<bool> from;
      for (const StockSheet& sheet : stock) from.push_back(serves(sheet, one));
      const auto [place, isFresh] = known.emplace(std::move(from), m_first.size());
      if (isFresh) m_first.push_back(one);
      m_numbers[one] = place->second;
    }
  }

  std::size_t of(const WantedPiece& piece) const { return m_numbers.at(piece.of); }
  std::vector<bool> servedBy(const StockSheet& sheet) const {
    std::vector<bool> all;
    for (const std::string& one : m_first) all.push_back(serves(sheet, one));
    return all;
  }

 private:
  std::map<std::string, std::size_t> m_numbers;
  std::vector<std::string> m_first;  // one name for each number
};

std::vector<PieceKind> kindsOf(const std::vector<WantedPiece>& pieces, const Makings& makings, bool doFibresMatter) {
  std::map<std::tuple<std::int64_t, std::int64_t, bool, bool, std::size_t>, PieceKind> kinds;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    std::int64_t width = pieces[i].width.inNanometres();
    std::int64_t height = pieces[i].height.inNanometres();
    ENSURE(width > 0 && height > 0);
    ENSURE(!pieces[i].mayTurn || !pieces[i].withFibres);
    const bool mayTurn = pieces[i].mayTurn && width != height;
    const bool withFibres = pieces[i].withFibres && doFibresMatter;
    if (mayTurn && width < height) std::swap(width, height);
    const std::size_t of = makings.of(pieces[i]);
    PieceKind& kind = kinds[{width, height, mayTurn, withFibres, of}];
    kind.width = width;
    kind.height = height;
    kind.mayTurn = mayTurn;
    kind.withFibres = withFibres;
    kind.of = of;
    kind.members.push_back(i);
  }
  std::vector<PieceKind> sorted;
  for (auto it = kinds.rbegin(); it != kinds.rend(); ++it) sorted.push_back(std::move(it->second));
  return sorted;
}

std::vector<SheetKind> kindsOf(const std::vector<StockSheet>& stock, const Makings& makings, std::size_t pieces,
                               bool doFibresMatter, CuttingProblem& problem) {
  double dearest = 0;
  for (const StockSheet& sheet : stock) {
    ENSURE(sheet.width.inNanometres() > 0 && sheet.height.inNanometres() > 0 && sheet.width <= units::kLongestLength &&
           sheet.height <= units::kLongestLength);
    ENSURE(sheet.margin.inNanometres() >= 0 && sheet.margin <= units::kLongestLength);
    ENSURE(sheet.kerf.inNanometres() >= 0 && sheet.kerf <= units::kLongestLength);
    ENSURE(!sheet.quantity || *sheet.quantity >= 0);
    ENSURE(!sheet.price || (std::isfinite(*sheet.price) && *sheet.price >= 0));
    dearest = std::max(dearest, costOf(sheet, problem.byPrice));
  }
  problem.unitsInOne = unitsFor(dearest, pieces);
  const int most = static_cast<int>(pieces);
  using Key = std::tuple<bool, std::int64_t, std::int64_t, std::int64_t, std::int64_t, bool, std::vector<bool>>;
  std::map<Key, SheetKind> kinds;
  for (std::size_t i = 0; i < stock.size(); ++i) {
    const StockSheet& sheet = stock[i];
    const std::int64_t width = (sheet.width - 2 * sheet.margin).inNanometres();
    const std::int64_t height = (sheet.height - 2 * sheet.margin).inNanometres();
    const int quantity = std::min(sheet.quantity.value_or(most), most);
    if (width <= 0 || height <= 0 || quantity == 0) continue;
    // A blade wider than the sheet takes no more than the sheet.
    const std::int64_t kerf = std::min(sheet.kerf.inNanometres(), std::max(width, height));
    const std::int64_t worth = std::llround(costOf(sheet, problem.byPrice) * problem.unitsInOne);
    const bool upright = sheet.fibresUpright && doFibresMatter;
    std::vector<bool> served = makings.servedBy(sheet);
    SheetKind& kind = kinds[{!sheet.offcut, worth, width, height, kerf, upright, served}];
    kind.width = width;
    kind.height = height;
    kind.kerf = kerf;
    kind.worth = worth;
    kind.offcut = sheet.offcut;
    kind.fibresUpright = upright;
    kind.serves = std::move(served);
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

std::optional<Lying> lying(const PieceKind& piece, const SheetKind& sheet) {
  if (!sheet.serves[piece.of]) return std::nullopt;
  if (piece.withFibres && sheet.fibresUpright) return Lying{piece.height, piece.width, false, true};
  return Lying{piece.width, piece.height, piece.mayTurn, false};
}

bool fits(const PieceKind& piece, const SheetKind& sheet) {
  const auto lies = lying(piece, sheet);
  return lies && ((lies->width <= sheet.width && lies->height <= sheet.height) ||
                  (lies->mayTurn && lies->height <= sheet.width && lies->width <= sheet.height));
}

SheetManner mannerOf(const SheetKind& sheet) { return {sheet.kerf, sheet.fibresUpright, sheet.serves}; }

CuttingProblem problemOf(const std::vector<WantedPiece>& pieces, const std::vector<StockSheet>& stock) {
  CuttingProblem problem;
  problem.byPrice = isByPrice(stock);
  const Makings makings(pieces, stock);
  // Fibres that run the same way on every sheet are no more than a way round.
  const bool doFibresMatter =
      std::any_of(stock.begin(), stock.end(), [](const StockSheet& sheet) { return sheet.fibresUpright; }) &&
      std::any_of(pieces.begin(), pieces.end(), [](const WantedPiece& piece) { return piece.withFibres; });
  problem.sheets = kindsOf(stock, makings, pieces.size(), doFibresMatter, problem);
  for (PieceKind& kind : kindsOf(pieces, makings, doFibresMatter)) {
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

}  // namespace core::cutting
