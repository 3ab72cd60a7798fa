#include "core/cutting/stretched_bound.h"

#include <algorithm>
#include <limits>
#include <optional>

namespace core::cutting {
namespace {

constexpr int kMostParts = 8;                 // that a side is divided into
constexpr std::size_t kMostEdges = 14;        // lengths below which a piece counts for nothing
constexpr int kRounds = 3;                    // over the kinds of sheets
constexpr std::size_t kMostWork = 4'000'000;  // shares multiplied, about; beyond, fewer stretchings are tried

// One stretching of a side of `whole`.
struct Stretching {
  enum class Kind { None, Parts, Edge, Count };
  Kind kind = Kind::None;
  int parts = 1;
  std::int64_t edge = 0;

  double shareOf(std::int64_t length, std::int64_t whole) const {
    const double plain = static_cast<double>(length) / static_cast<double>(whole);
    switch (kind) {
      case Kind::None: return plain;
      // Down to a share of so many parts, of which one less fill the whole.
      case Kind::Parts: {
        const std::int64_t times = length * (parts + 1);
        return times % whole == 0 ? plain : static_cast<double>(times / whole) / parts;
      }
      // A length below the edge counts as nothing, one that leaves less than the edge as the whole.
      case Kind::Edge: return length < edge ? 0 : whole - length < edge ? 1 : plain;
      // By how many of the edge go in, and how many go in beside a piece of more than half.
      case Kind::Count: {
        const double most = static_cast<double>(whole / edge);
        if (2 * length > whole) return 1 - static_cast<double>((whole - length) / edge) / most;
        return length < edge ? 0 : 1 / most;
      }
    }
    return plain;
  }
};

std::vector<Stretching> stretchingsOf(std::vector<std::int64_t> lengths, std::int64_t whole, std::size_t mostEdges) {
  std::vector<Stretching> all = {{}};
  for (int parts = 1; parts <= kMostParts; ++parts) all.push_back({Stretching::Kind::Parts, parts, 0});
  std::vector<std::int64_t> edges;
  for (const std::int64_t length : lengths) {
    // At a piece's own length it still counts, beyond it counts no more.
    for (const std::int64_t edge : {length, length + 1, whole - length + 1}) {
      if (edge > 0 && 2 * edge <= whole) edges.push_back(edge);
    }
  }
  std::sort(edges.begin(), edges.end());
  edges.erase(std::unique(edges.begin(), edges.end()), edges.end());
  for (std::size_t i = 0; i < std::min(edges.size(), mostEdges); ++i) {
    const std::int64_t edge = edges[edges.size() <= mostEdges ? i : i * (edges.size() - 1) / (mostEdges - 1)];
    all.push_back({Stretching::Kind::Edge, 1, edge});
    all.push_back({Stretching::Kind::Count, 1, edge});
  }
  return all;
}

// The least cost of each piece on one kind of sheet, by the stretching of the width and that of the height.
class OnSheet {
 public:
  OnSheet(const CuttingProblem& problem, const std::vector<int>& counts, std::size_t sheet, std::int64_t kerf,
          double cost, std::size_t mostEdges)
      : m_cost(cost), m_lies(problem.pieces.size()) {
    const SheetKind& kind = problem.sheets[sheet];
    m_width = kind.width + kerf;
    m_height = kind.height + kerf;
    std::vector<std::int64_t> widths, heights;
    for (std::size_t i = 0; i < m_lies.size(); ++i) {
      const PieceKind& piece = problem.pieces[i];
      if (counts[i] == 0 || !fits(piece, kind)) continue;
      const auto lies = lying(piece, kind);
      const std::int64_t width = lies->width + kerf;
      const std::int64_t height = lies->height + kerf;
      const auto isRoom = [&](std::int64_t w, std::int64_t h) { return w <= m_width && h <= m_height; };
      Ways& ways = m_lies[i].emplace();
      if (isRoom(width, height)) ways.push_back({width, height});
      if (lies->mayTurn && isRoom(height, width)) ways.push_back({height, width});
      for (const auto& [w, h] : ways) {
        widths.push_back(w);
        heights.push_back(h);
      }
    }
    tabulate(stretchingsOf(widths, m_width, mostEdges), m_width, true, m_across);
    tabulate(stretchingsOf(heights, m_height, mostEdges), m_height, false, m_down);
    choose(0, 0);
  }

  std::size_t across() const { return m_across.size(); }
  std::size_t down() const { return m_down.size(); }
  void choose(std::size_t across, std::size_t down) {
    m_chosen.assign(m_lies.size(), kNoWay);
    for (std::size_t i = 0; i < m_lies.size(); ++i) m_chosen[i] = costOf(i, across, down);
  }
  double chosen(std::size_t piece) const { return m_chosen[piece]; }

  static constexpr double kNoWay = std::numeric_limits<double>::infinity();
  double costOf(std::size_t piece, std::size_t across, std::size_t down) const {
    if (!m_lies[piece]) return kNoWay;
    double least = kNoWay;
    for (std::size_t way = 0; way < m_lies[piece]->size(); ++way) {
      least = std::min(least, m_across[across][2 * piece + way] * m_down[down][2 * piece + way]);
    }
    return least * m_cost;
  }

 private:
  using Ways = std::vector<std::pair<std::int64_t, std::int64_t>>;

  void tabulate(const std::vector<Stretching>& all, std::int64_t whole, bool isWidth,
                std::vector<std::vector<double>>& table) const {
    for (const Stretching& one : all) {
      std::vector<double>& shares = table.emplace_back(2 * m_lies.size(), 0.0);
      for (std::size_t i = 0; i < m_lies.size(); ++i) {
        if (!m_lies[i]) continue;
        for (std::size_t way = 0; way < m_lies[i]->size(); ++way) {
          const auto& [w, h] = (*m_lies[i])[way];
          shares[2 * i + way] = one.shareOf(isWidth ? w : h, whole);
        }
      }
    }
  }

  double m_cost = 0;
  std::int64_t m_width = 0, m_height = 0;
  std::vector<std::optional<Ways>> m_lies;            // of each kind of piece; none: it does not go on the sheet
  std::vector<std::vector<double>> m_across, m_down;  // by stretching: shares of each piece, both ways round
  std::vector<double> m_chosen;
};

}  // namespace

double stretchedBound(const CuttingProblem& problem, const std::vector<int>& counts,
                      const std::vector<std::int64_t>& kerfs, const std::vector<double>& costs) {
  std::size_t mostEdges = kMostEdges;
  const auto work = [&] {
    const std::size_t tried = 1 + kMostParts + 2 * mostEdges;
    return tried * tried * counts.size() * problem.sheets.size() * kRounds;
  };
  while (mostEdges > 2 && work() > kMostWork) --mostEdges;
  if (work() > kMostWork) return 0;
  std::vector<OnSheet> sheets;
  for (std::size_t t = 0; t < problem.sheets.size(); ++t) {
    sheets.emplace_back(problem, counts, t, kerfs[t], costs[t], mostEdges);
  }
  // Any stretchings of the kinds of sheets make a bound: a piece costs at least the least of what it costs on any. One
  // kind after the other takes those that raise it most.
  double best = 0;
  std::vector<double> elsewhere(counts.size());
  for (int round = 0; round < (sheets.size() > 1 ? kRounds : 1); ++round) {
    const double before = best;
    for (std::size_t t = 0; t < sheets.size(); ++t) {
      for (std::size_t i = 0; i < counts.size(); ++i) {
        elsewhere[i] = OnSheet::kNoWay;
        for (std::size_t other = 0; other < sheets.size(); ++other) {
          if (other != t) elsewhere[i] = std::min(elsewhere[i], sheets[other].chosen(i));
        }
      }
      std::pair<std::size_t, std::size_t> chosen{0, 0};
      double most = -1;
      for (std::size_t across = 0; across < sheets[t].across(); ++across) {
        for (std::size_t down = 0; down < sheets[t].down(); ++down) {
          double sum = 0;
          for (std::size_t i = 0; i < counts.size(); ++i) {
            if (counts[i] > 0) sum += counts[i] * std::min(elsewhere[i], sheets[t].costOf(i, across, down));
          }
          if (sum > most) {
            most = sum;
            chosen = {across, down};
          }
        }
      }
      sheets[t].choose(chosen.first, chosen.second);
      best = std::max(best, most);
    }
    if (round > 0 && best <= before) break;
  }
  return best;
}

}  // namespace core::cutting
