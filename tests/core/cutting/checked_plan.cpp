#include "tests/core/cutting/checked_plan.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <sstream>
#include <tuple>

using namespace core::cutting;

namespace tests {
namespace {

using Rectangle = std::tuple<std::int64_t, std::int64_t, std::int64_t, std::int64_t>;  // x, y, width, height

Rectangle rectangleOf(const Area& area) {
  return {area.x.inNanometres(), area.y.inNanometres(), area.width.inNanometres(), area.height.inNanometres()};
}

// A sum of products in two limbs of base 1e9: lengths of ten metres make areas beyond 64 bits.
class ExactArea {
 public:
  void add(std::int64_t a, std::int64_t b) {
    constexpr std::int64_t kBase = 1'000'000'000;
    const std::int64_t low = a % kBase * (b % kBase);
    m_low += low % kBase;
    m_high += low / kBase + a / kBase * (b % kBase) + a % kBase * (b / kBase) + a / kBase * (b / kBase) * kBase;
    m_high += m_low / kBase;
    m_low %= kBase;
  }
  bool operator==(const ExactArea&) const = default;

 private:
  std::int64_t m_high = 0, m_low = 0;
};

Rectangle placeOf(const CuttingTask& task, const PlacedPiece& placed) {
  const WantedPiece& piece = task.pieces[placed.piece];
  const std::int64_t width = (placed.turned ? piece.height : piece.width).inNanometres();
  const std::int64_t height = (placed.turned ? piece.width : piece.height).inNanometres();
  return {placed.x.inNanometres(), placed.y.inNanometres(), width, height};
}

bool overlap(const Rectangle& a, const Rectangle& b) {
  const auto& [ax, ay, aw, ah] = a;
  const auto& [bx, by, bw, bh] = b;
  return ax < bx + bw && bx < ax + aw && ay < by + bh && by < ay + ah;
}

std::string faultOfSheet(const CuttingTask& task, const CutSheet& sheet) {
  const StockSheet& stock = task.stock[sheet.stock];
  const std::int64_t kerf = stock.kerf.inNanometres();
  const std::int64_t width = (stock.width - 2 * stock.margin).inNanometres();
  const std::int64_t height = (stock.height - 2 * stock.margin).inNanometres();
  if (sheet.pieces.empty()) return "a sheet without pieces";
  std::multiset<Rectangle> inHand{{0, 0, width, height}};
  ExactArea counted, usable;
  usable.add(width, height);
  for (const SheetCut& cut : sheet.cuts) {
    const auto part = inHand.find(rectangleOf(cut.part));
    if (part == inHand.end()) return "a cut through a part that is not in hand";
    auto [x, y, w, h] = *part;
    inHand.erase(part);
    const std::int64_t fence = cut.fence.inNanometres();
    const std::int64_t whole = cut.upright ? w : h;
    if (fence <= 0 || fence >= whole) return "a fence outside the part";
    const std::int64_t sawn = std::min(kerf, whole - fence);
    counted.add(sawn, cut.upright ? h : w);
    const std::int64_t beyond = whole - fence - sawn;
    inHand.insert(cut.upright ? Rectangle{x, y, fence, h} : Rectangle{x, y, w, fence});
    if (beyond == 0) continue;
    inHand.insert(cut.upright ? Rectangle{x + fence + sawn, y, beyond, h} : Rectangle{x, y + fence + sawn, w, beyond});
  }
  std::multiset<Rectangle> named;
  for (const PlacedPiece& piece : sheet.pieces) named.insert(placeOf(task, piece));
  std::vector<double> rests;
  for (const Area& rest : sheet.rest) {
    named.insert(rectangleOf(rest));
    rests.push_back(rest.width.inMillimetres() * rest.height.inMillimetres());
  }
  for (std::size_t i = 1; i < rests.size(); ++i) {
    if (rests[i] > rests[i - 1] * (1 + 1e-12)) return "the largest rest does not come first";
  }
  if (named != inHand) return "the parts in hand are not the pieces and the rest";
  for (auto a = named.begin(); a != named.end(); ++a) {
    counted.add(std::get<2>(*a), std::get<3>(*a));
    if (std::get<2>(*a) <= 0 || std::get<3>(*a) <= 0) return "a part of no size";
    for (auto b = std::next(a); b != named.end(); ++b) {
      if (overlap(*a, *b)) return "two parts overlap";
    }
  }
  if (!(counted == usable)) return "areas do not make the sheet";
  for (const PlacedPiece& piece : sheet.pieces) {
    const WantedPiece& wanted = task.pieces[piece.piece];
    if (!serves(stock, wanted)) return "a piece on a sheet that does not serve it";
    if (!wanted.mayTurn && piece.turned != (wanted.withFibres && stock.fibresUpright))
      return "a piece against its grain";
  }
  return "";
}

bool hasRoom(WantedPiece piece, const StockSheet& stock) {
  if (!serves(stock, piece)) return false;
  if (piece.withFibres && stock.fibresUpright) std::swap(piece.width, piece.height);
  const Length width = stock.width - 2 * stock.margin;
  const Length height = stock.height - 2 * stock.margin;
  return (piece.width <= width && piece.height <= height) ||
         (piece.mayTurn && piece.height <= width && piece.width <= height);
}

bool isByPrice(const CuttingTask& task) {
  bool isAnyNew = false;
  for (const StockSheet& stock : task.stock) {
    if (!stock.offcut && !stock.price) return false;
    isAnyNew = isAnyNew || !stock.offcut;
  }
  return isAnyNew;
}

double worthOf(const CuttingTask& task, const CuttingPlan& plan) {
  bool areAllPriced = true;
  for (const StockSheet& stock : task.stock) areAllPriced = areAllPriced && (stock.offcut || stock.price);
  double worth = 0;
  for (const CutSheet& sheet : plan.sheets) {
    const StockSheet& stock = task.stock[sheet.stock];
    if (stock.offcut) continue;
    worth += areAllPriced ? *stock.price : stock.width.inMillimetres() * stock.height.inMillimetres();
  }
  return worth;
}

}  // namespace

std::string faultOf(const CuttingTask& task, const CuttingPlan& plan) {
  std::vector<int> met(task.pieces.size(), 0);
  std::vector<int> used(task.stock.size(), 0);
  bool wasNew = false;
  for (const CutSheet& sheet : plan.sheets) {
    if (const std::string fault = faultOfSheet(task, sheet); !fault.empty()) return fault;
    for (const PlacedPiece& piece : sheet.pieces) ++met.at(piece.piece);
    ++used.at(sheet.stock);
    if (wasNew && task.stock[sheet.stock].offcut) return "an offcut after a new sheet";
    wasNew = !task.stock[sheet.stock].offcut;
  }
  for (std::size_t i = 0; i < used.size(); ++i) {
    if (task.stock[i].quantity && used[i] > *task.stock[i].quantity) return "more sheets than there are";
  }
  for (const std::size_t index : plan.unplaced) {
    ++met.at(index);
    for (std::size_t i = 0; i < used.size(); ++i) {
      const bool isLeft = !task.stock[i].quantity || used[i] < *task.stock[i].quantity;
      if (isLeft && hasRoom(task.pieces[index], task.stock[i])) return "a piece left over beside a sheet it fits";
    }
  }
  if (std::any_of(met.begin(), met.end(), [](int count) { return count != 1; })) return "a piece not placed just once";
  if (std::abs(plan.worth - worthOf(task, plan)) > 1e-9 * plan.worth + 1e-9) return "a worth of other sheets";
  if (plan.byPrice != isByPrice(task)) return "a worth in another measure";
  if (plan.bound > plan.worth) return "a bound above the worth";
  if (plan.exact && plan.bound != plan.worth) return "exact, but with a gap";
  return "";
}

std::string layoutOf(const CuttingTask& task, const CuttingPlan& plan) {
  std::multiset<std::string> sheets;
  for (const CutSheet& sheet : plan.sheets) {
    const StockSheet& stock = task.stock[sheet.stock];
    std::ostringstream text;
    text << stock.width.inNanometres() << ' ' << stock.height.inNanometres() << ' ' << stock.margin.inNanometres()
         << ' ' << stock.kerf.inNanometres() << ' ' << stock.offcut << stock.fibresUpright << ':';
    for (const PlacedPiece& piece : sheet.pieces) {
      const auto [x, y, width, height] = placeOf(task, piece);
      text << ' ' << x << ',' << y << ',' << width << ',' << height << (task.pieces[piece.piece].mayTurn ? "t" : "");
    }
    for (const SheetCut& cut : sheet.cuts) {
      const auto [x, y, width, height] = rectangleOf(cut.part);
      text << " cut " << x << ',' << y << ',' << width << ',' << height << (cut.upright ? '|' : '-')
           << cut.fence.inNanometres();
    }
    sheets.insert(text.str());
  }
  std::multiset<std::string> left;
  for (const std::size_t index : plan.unplaced) {
    const WantedPiece& piece = task.pieces[index];
    const auto sides = std::minmax({piece.width.inNanometres(), piece.height.inNanometres()});
    left.insert(std::to_string(sides.first) + "x" + std::to_string(sides.second));
  }
  std::ostringstream text;
  for (const std::string& sheet : sheets) text << sheet << '\n';
  for (const std::string& piece : left) text << "left " << piece << '\n';
  text << plan.worth << ' ' << plan.bound << ' ' << plan.exact;
  return text.str();
}

}  // namespace tests
