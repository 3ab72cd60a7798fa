#include "core/cutting/fill_sheet.h"

#include <algorithm>
#include <limits>

namespace core::cutting {

void SheetFilling::fill(std::int64_t width, std::int64_t height, const std::vector<PieceSize>& sizes,
                        const std::vector<int>& order, FillRule rule, const std::vector<int>& left) {
  m_rule = rule;
  m_area = 0;
  m_placed.clear();
  m_nodes.clear();
  m_free.clear();
  m_leastWidth = m_leastHeight = std::numeric_limits<std::int64_t>::max();
  for (const int kind : order) {
    if (left[kind] == 0) continue;
    const PieceSize& size = sizes[kind];
    const std::int64_t shorter = std::min(size.width, size.height);
    m_leastWidth = std::min(m_leastWidth, size.mayTurn ? shorter : size.width);
    m_leastHeight = std::min(m_leastHeight, size.mayTurn ? shorter : size.height);
  }
  m_widest = width;
  m_tallest = height;
  keep(width, height, add());
  for (const int kind : order) {
    if (m_free.empty()) break;
    for (int count = left[kind]; count > 0 && place(sizes[kind], kind); --count) {
      m_area += sizes[kind].area;
      m_placed.push_back(kind);
    }
  }
}

std::vector<Slice> SheetFilling::slices() const {
  std::vector<Slice> kept;
  kept.reserve(2 * m_placed.size());
  collect(0, kept);
  return kept;
}

bool SheetFilling::place(const PieceSize& size, int kind) {
  const bool fits = size.width <= m_widest && size.height <= m_tallest;
  const bool fitsTurned = size.mayTurn && size.height <= m_widest && size.width <= m_tallest;
  if (!fits && !fitsTurned) return false;
  switch (m_rule.choice) {
    case FillRule::Choice::SmallestPart:
      return placeBy(size, kind, [](const Free& part, std::int64_t, std::int64_t) { return part.area; });
    case FillRule::Choice::LargestPart:
      return placeBy(size, kind, [](const Free& part, std::int64_t, std::int64_t) { return -part.area; });
    case FillRule::Choice::NarrowestGap:
      return placeBy(size, kind,
                     [](const Free&, std::int64_t right, std::int64_t below) { return std::min(right, below); });
    case FillRule::Choice::ShortestLongGap:
      return placeBy(size, kind,
                     [](const Free&, std::int64_t right, std::int64_t below) { return std::max(right, below); });
  }
  return false;
}

// Into the free part with the least score.
template <typename Score>
bool SheetFilling::placeBy(const PieceSize& size, int kind, Score score) {
  const Free* best = nullptr;
  bool turned = false;
  decltype(score(Free{}, 0, 0)) least = 0;
  std::int64_t widest = 0;
  std::int64_t tallest = 0;
  const auto consider = [&](const Free& part, std::int64_t width, std::int64_t height, bool isTurned) {
    if (width > part.width || height > part.height) return;
    const auto its = score(part, part.width - width, part.height - height);
    if (best != nullptr && its >= least) return;
    least = its;
    best = &part;
    turned = isTurned;
  };
  for (const Free& part : m_free) {
    widest = std::max(widest, part.width);
    tallest = std::max(tallest, part.height);
    consider(part, size.width, size.height, false);
    if (size.mayTurn) consider(part, size.height, size.width, true);
  }
  m_widest = widest;
  m_tallest = tallest;
  if (best == nullptr) return false;
  const Free part = *best;
  m_free[static_cast<std::size_t>(best - m_free.data())] = m_free.back();
  m_free.pop_back();
  cut(part, kind, turned != size.turned, turned ? size.height : size.width, turned ? size.width : size.height);
  return true;
}

void SheetFilling::cut(const Free& part, int kind, bool turned, std::int64_t width, std::int64_t height) {
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
  keep(right, upright ? part.height : height, upright ? first : second);
  keep(upright ? width : part.width, below, upright ? second : first);
}

bool SheetFilling::isUprightFirst(std::int64_t width, std::int64_t height, std::int64_t right,
                                  std::int64_t below) const {
  switch (m_rule.split) {
    case FillRule::Split::WholeAlongLonger: return right >= below;
    case FillRule::Split::WholeAlongShorter: return right < below;
    case FillRule::Split::EvenParts:
      return static_cast<double>(right) * static_cast<double>(height) >=
             static_cast<double>(below) * static_cast<double>(width);
    case FillRule::Split::Upright: return true;
    case FillRule::Split::Level: return false;
  }
  return true;
}

int SheetFilling::add() {
  m_nodes.emplace_back();
  return static_cast<int>(m_nodes.size()) - 1;
}

void SheetFilling::keep(std::int64_t width, std::int64_t height, int node) {
  if (width < m_leastWidth || height < m_leastHeight) return;
  m_free.push_back({width, height, node, static_cast<double>(width) * static_cast<double>(height)});
}

// Without the parts that stayed free. Returns the node, or none.
int SheetFilling::collect(int node, std::vector<Slice>& kept) const {
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

}  // namespace core::cutting
