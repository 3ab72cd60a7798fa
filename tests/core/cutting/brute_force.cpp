#include "tests/core/cutting/brute_force.h"

#include <algorithm>
#include <map>
#include <tuple>

using namespace core::cutting;

namespace tests {
namespace {

int wholeMm(Length length) { return static_cast<int>(length.inNanometres() / 1'000'000); }

class Counting {
 public:
  Counting(const CuttingTask& task, const WaysOn& waysOn)
      : m_task(task), m_waysOn(waysOn), m_used(task.stock.size(), 0) {
    for (const StockSheet& stock : task.stock) m_areAllPriced = m_areAllPriced && (stock.offcut || stock.price);
    m_best.unplaced = static_cast<int>(task.pieces.size()) + 1;
    assign(0);
  }

  BestCutting best() const { return m_best; }

 private:
  struct Opened {
    std::size_t stock;
    unsigned pieces;  // bits
  };

  // Piece after piece to a sheet begun, to a new one, or left over.
  void assign(std::size_t piece) {
    if (isWorse()) return;
    if (piece == m_task.pieces.size()) {
      m_best = m_current;
      return;
    }
    for (std::size_t i = 0; i < m_opened.size(); ++i) {
      m_opened[i].pieces |= 1u << piece;
      if (holds(m_opened[i])) assign(piece + 1);
      m_opened[i].pieces &= ~(1u << piece);
    }
    for (std::size_t i = 0; i < m_task.stock.size(); ++i) {
      const StockSheet& stock = m_task.stock[i];
      if (stock.quantity && m_used[i] == *stock.quantity) continue;
      m_opened.push_back({i, 1u << piece});
      const BestCutting before = m_current;
      ++m_used[i];
      ++m_current.sheets;
      m_current.worth += worthOf(stock);
      if (holds(m_opened.back())) assign(piece + 1);
      m_current = before;
      --m_used[i];
      m_opened.pop_back();
    }
    ++m_current.unplaced;
    assign(piece + 1);
    --m_current.unplaced;
  }

  bool isWorse() const {
    return std::tie(m_current.unplaced, m_current.worth, m_current.sheets) >=
           std::tie(m_best.unplaced, m_best.worth, m_best.sheets);
  }

  double worthOf(const StockSheet& stock) const {
    if (stock.offcut) return 0;
    return m_areAllPriced ? *stock.price : stock.width.inMillimetres() * stock.height.inMillimetres();
  }

  bool holds(const Opened& sheet) {
    const StockSheet& stock = m_task.stock[sheet.stock];
    m_stock = sheet.stock;
    return holds(wholeMm(stock.width - 2 * stock.margin), wholeMm(stock.height - 2 * stock.margin), wholeMm(stock.kerf),
                 sheet.pieces);
  }

  bool holds(int width, int height, int kerf, unsigned pieces) {
    if (pieces == 0) return true;
    if (width <= 0 || height <= 0) return false;
    if ((pieces & (pieces - 1)) == 0) return holdsOne(width, height, pieces);
    const auto [known, isFresh] = m_known[m_stock].emplace(std::make_tuple(width, height, kerf, pieces), false);
    if (!isFresh) return known->second;
    bool can = false;
    for (unsigned share = (pieces - 1) & pieces; share != 0 && !can; share = (share - 1) & pieces) {
      for (int at = 1; at < width && !can; ++at) {
        can = holds(at, height, kerf, share) && holds(width - at - kerf, height, kerf, pieces & ~share);
      }
      for (int at = 1; at < height && !can; ++at) {
        can = holds(width, at, kerf, share) && holds(width, height - at - kerf, kerf, pieces & ~share);
      }
    }
    m_known[m_stock][{width, height, kerf, pieces}] = can;
    return can;
  }

  bool holdsOne(int width, int height, unsigned pieces) const {
    std::size_t index = 0;
    while ((pieces >> index) != 1) ++index;
    const auto ways = m_waysOn(index, m_stock);
    return std::any_of(ways.begin(), ways.end(),
                       [&](const auto& way) { return way.first <= width && way.second <= height; });
  }

  const CuttingTask& m_task;
  const WaysOn& m_waysOn;
  std::vector<int> m_used;
  bool m_areAllPriced = true;
  std::vector<Opened> m_opened;
  BestCutting m_current, m_best;
  std::size_t m_stock = 0;                                                             // that is being cut
  std::map<std::size_t, std::map<std::tuple<int, int, int, unsigned>, bool>> m_known;  // of each stock
};

}  // namespace

BestCutting countedOut(const CuttingTask& task, const WaysOn& waysOn) { return Counting(task, waysOn).best(); }

BestCutting countedOut(const CuttingTask& task) {
  return countedOut(task, [&](std::size_t piece, std::size_t stock) {
    const WantedPiece& one = task.pieces[piece];
    const StockSheet& sheet = task.stock[stock];
    std::vector<std::pair<int, int>> ways;
    if (!serves(sheet, one)) return ways;
    const int width = wholeMm(one.width);
    const int height = wholeMm(one.height);
    const bool isTurned = one.withFibres && sheet.fibresUpright;
    if (!isTurned) ways.emplace_back(width, height);
    if (isTurned || one.mayTurn) ways.emplace_back(height, width);
    return ways;
  });
}

}  // namespace tests
