#include "core/materials/fill_sheet.h"

#include <algorithm>
#include <limits>

namespace core::materials {
namespace {

struct Free {
  std::int64_t width, height;
  int node;
};

class Filling {
 public:
  Filling(std::int64_t width, std::int64_t height, const std::vector<PieceSize>& sizes, FillRule rule,
          const std::vector<int>& order, const std::vector<int>& left)
      : m_sizes(sizes), m_rule(rule) {
    for (const int kind : order) {
      if (left[kind] == 0) continue;
      const PieceSize& size = sizes[kind];
      m_leastWidth = std::min(m_leastWidth, size.mayTurn ? std::min(size.width, size.height) : size.width);
      m_leastHeight = std::min(m_leastHeight, size.mayTurn ? std::min(size.width, size.height) : size.height);
    }
    m_nodes.emplace_back();
    keep({width, height, 0});
  }

  bool isFull() const { return m_free.empty(); }

  bool place(int kind) {
    const PieceSize& size = m_sizes[kind];
    std::size_t best = m_free.size();
    bool turned = false;
    double bestScore = std::numeric_limits<double>::infinity();
    const auto consider = [&](std::size_t i, std::int64_t width, std::int64_t height, bool isTurned) {
      const Free& part = m_free[i];
      if (width > part.width || height > part.height) return;
      const double score = scoreOf(part, part.width - width, part.height - height);
      if (score >= bestScore) return;
      bestScore = score;
      best = i;
      turned = isTurned;
    };
    for (std::size_t i = 0; i < m_free.size(); ++i) {
      consider(i, size.width, size.height, false);
      if (size.mayTurn) consider(i, size.height, size.width, true);
    }
    if (best == m_free.size()) return false;
    const Free part = m_free[best];
    m_free[best] = m_free.back();
    m_free.pop_back();
    cut(part, kind, turned, turned ? size.height : size.width, turned ? size.width : size.height);
    return true;
  }

  std::vector<Slice> slices() const {
    std::vector<Slice> kept;
    collect(0, kept);
    return kept;
  }

 private:
  double scoreOf(const Free& part, std::int64_t right, std::int64_t below) const {
    switch (m_rule.choice) {
      case FillRule::Choice::SmallestPart: return static_cast<double>(part.width) * static_cast<double>(part.height);
      case FillRule::Choice::LargestPart: return -static_cast<double>(part.width) * static_cast<double>(part.height);
      case FillRule::Choice::NarrowestGap: return static_cast<double>(std::min(right, below));
      case FillRule::Choice::ShortestLongGap: return static_cast<double>(std::max(right, below));
    }
    return 0;
  }

  bool isUprightFirst(std::int64_t width, std::int64_t height, std::int64_t right, std::int64_t below) const {
    switch (m_rule.split) {
      case FillRule::Split::WholeAlongLonger: return right >= below;
      case FillRule::Split::WholeAlongShorter: return right < below;
      case FillRule::Split::EvenParts:
        // Upright: the part on the right is whole, and below lies as much as the piece is wide.
        return static_cast<double>(right) * static_cast<double>(height) >=
               static_cast<double>(below) * static_cast<double>(width);
      case FillRule::Split::Upright: return true;
      case FillRule::Split::Level: return false;
    }
    return true;
  }

  void cut(const Free& part, int kind, bool turned, std::int64_t width, std::int64_t height) {
    const std::int64_t right = part.width - width;
    const std::int64_t below = part.height - height;
    const bool upright = isUprightFirst(width, height, right, below);
    const int piece = add();
    m_nodes[piece].kind = kind;
    m_nodes[piece].turned = turned;
    // The part becomes (piece and what the second cut takes off it) and what the first cut takes off.
    const int inner = add();
    const int second = add();
    const int first = add();
    m_nodes[inner].first = piece;
    m_nodes[inner].second = second;
    m_nodes[inner].beside = !upright;
    m_nodes[part.node].first = inner;
    m_nodes[part.node].second = first;
    m_nodes[part.node].beside = upright;
    keep({right, upright ? part.height : height, upright ? first : second});
    keep({upright ? width : part.width, below, upright ? second : first});
  }

  int add() {
    m_nodes.emplace_back();
    return static_cast<int>(m_nodes.size()) - 1;
  }

  void keep(const Free& part) {
    if (part.width >= m_leastWidth && part.height >= m_leastHeight) m_free.push_back(part);
  }

  // Without the parts that stayed free. Returns the node, or none.
  int collect(int node, std::vector<Slice>& kept) const {
    Slice slice = m_nodes[node];
    if (slice.kind < 0) {
      if (slice.first < 0) return -1;
      slice.first = collect(slice.first, kept);
      slice.second = collect(slice.second, kept);
      if (slice.first < 0 || slice.second < 0) return std::max(slice.first, slice.second);
    }
    kept.push_back(slice);
    return static_cast<int>(kept.size()) - 1;
  }

  const std::vector<PieceSize>& m_sizes;
  FillRule m_rule;
  std::int64_t m_leastWidth = std::numeric_limits<std::int64_t>::max();
  std::int64_t m_leastHeight = std::numeric_limits<std::int64_t>::max();
  std::vector<Slice> m_nodes;
  std::vector<Free> m_free;
};

}  // namespace

std::vector<Slice> fillSheet(std::int64_t width, std::int64_t height, const std::vector<PieceSize>& sizes,
                             const std::vector<int>& order, FillRule rule, std::vector<int>& left) {
  Filling filling(width, height, sizes, rule, order, left);
  for (const int kind : order) {
    if (filling.isFull()) break;
    while (left[kind] > 0 && filling.place(kind)) --left[kind];
  }
  return filling.slices();
}

}  // namespace core::materials
