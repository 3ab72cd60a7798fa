#include "core/cutting/fronts.h"

#include <algorithm>

#include "core/base/check.h"

namespace core::cutting {
namespace {

constexpr std::size_t kOfferedAtOnce = 2048;

// Narrowest first, each lower than the one before.
void keepLeast(std::vector<BundleSize>& sizes) {
  std::stable_sort(sizes.begin(), sizes.end(), [](const BundleSize& a, const BundleSize& b) {
    return a.width != b.width ? a.width < b.width : a.height < b.height;
  });
  std::size_t kept = 0;
  for (const BundleSize& size : sizes) {
    if (kept == 0 || size.height < sizes[kept - 1].height) sizes[kept++] = size;
  }
  sizes.resize(kept);
}

bool isCovered(const std::vector<BundleSize>& front, std::int64_t width, std::int64_t height) {
  const auto wider = std::upper_bound(front.begin(), front.end(), width,
                                      [](std::int64_t w, const BundleSize& size) { return w < size.width; });
  return wider != front.begin() && std::prev(wider)->height <= height;
}

// Returns the rooms for which no other is larger both ways.
std::vector<std::pair<std::int64_t, std::int64_t>> largest(std::vector<std::pair<std::int64_t, std::int64_t>> rooms) {
  std::sort(rooms.rbegin(), rooms.rend());
  std::vector<std::pair<std::int64_t, std::int64_t>> kept;
  for (const auto& room : rooms) {
    if (kept.empty() || room.second > kept.back().second) kept.push_back(room);
  }
  return kept;
}

}  // namespace

Fronts::Fronts(const CuttingProblem& problem, const Bundles& bundles, const SheetKind& like,
               std::vector<std::pair<std::int64_t, std::int64_t>> rooms)
    : m_bundles(bundles), m_rooms(largest(std::move(rooms))), m_fronts(bundles.size()), m_kindOf(bundles.size(), -1) {
  for (std::size_t kind = 0; kind < problem.pieces.size(); ++kind) {
    addPiece(static_cast<int>(kind), problem.pieces[kind], like);
  }
  for (int bundle = 1; bundle < bundles.size(); ++bundle) {
    if (m_bundles.pieces(bundle) > 1) addUnions(bundle);
  }
}

void Fronts::addPiece(int kind, const PieceKind& piece, const SheetKind& like) {
  const int bundle = m_bundles.one(kind);
  m_kindOf[bundle] = kind;
  const auto lies = lying(piece, like);
  if (!lies) return;
  const std::int64_t width = lies->width + like.kerf;
  const std::int64_t height = lies->height + like.kerf;
  m_front.clear();
  offer({.width = width, .height = height, .turned = lies->turned});
  if (lies->mayTurn) offer({.width = height, .height = width, .turned = !lies->turned});
  settle();
  m_fronts[bundle] = m_front;
}

void Fronts::addUnions(int bundle) {
  m_front.clear();
  for (const int* part = m_bundles.begin(bundle); *part <= bundle / 2; ++part) {
    addBeside(bundle, *part);
    addAbove(bundle, *part);
  }
  settle();
  m_fronts[bundle] = m_front;
}

// From the tallest down: whichever of the two is taller has to give way for the whole to become lower.
void Fronts::addBeside(int bundle, int part) {
  const auto& a = m_fronts[part];
  const auto& b = m_fronts[bundle - part];
  for (std::size_t i = 0, k = 0; i < a.size() && k < b.size();) {
    const std::int64_t height = std::max(a[i].height, b[k].height);
    offer({a[i].width + b[k].width, height, part, static_cast<int>(i), static_cast<int>(k), true, false});
    const bool first = a[i].height == height;
    const bool second = b[k].height == height;
    i += first;
    k += second;
  }
}

void Fronts::addAbove(int bundle, int part) {
  const auto& a = m_fronts[part];
  const auto& b = m_fronts[bundle - part];
  for (std::size_t i = a.size(), k = b.size(); i > 0 && k > 0;) {
    const std::int64_t width = std::max(a[i - 1].width, b[k - 1].width);
    offer({width, a[i - 1].height + b[k - 1].height, part, static_cast<int>(i) - 1, static_cast<int>(k) - 1, false,
           false});
    const bool first = a[i - 1].width == width;
    const bool second = b[k - 1].width == width;
    i -= first;
    k -= second;
  }
}

void Fronts::offer(const BundleSize& size) {
  if (!isRoomFor(size.width, size.height) || isCovered(m_front, size.width, size.height)) return;
  m_offered.push_back(size);
  if (m_offered.size() >= kOfferedAtOnce) settle();
}

void Fronts::settle() {
  m_front.insert(m_front.end(), m_offered.begin(), m_offered.end());
  m_offered.clear();
  keepLeast(m_front);
}

bool Fronts::isRoomFor(std::int64_t width, std::int64_t height) const {
  return std::any_of(m_rooms.begin(), m_rooms.end(),
                     [&](const auto& room) { return width <= room.first && height <= room.second; });
}

bool Fronts::fit(int bundle, std::int64_t width, std::int64_t height) const {
  return isCovered(m_fronts[bundle], width, height);
}

std::vector<Slice> Fronts::layOut(int bundle, std::int64_t width, std::int64_t height) const {
  int best = -1;
  double largestRest = -1;
  const auto& front = m_fronts[bundle];
  for (std::size_t i = 0; i < front.size(); ++i) {
    if (front[i].width > width || front[i].height > height) continue;
    const double right = static_cast<double>(width - front[i].width) * static_cast<double>(height);
    const double below = static_cast<double>(width) * static_cast<double>(height - front[i].height);
    if (std::max(right, below) > largestRest) {
      largestRest = std::max(right, below);
      best = static_cast<int>(i);
    }
  }
  ENSURE(best >= 0);
  std::vector<Slice> slices;
  build(bundle, best, slices);
  return slices;
}

int Fronts::build(int bundle, int size, std::vector<Slice>& slices) const {
  const BundleSize& made = m_fronts[bundle][static_cast<std::size_t>(size)];
  Slice slice;
  if (made.part == 0) {
    slice.kind = m_kindOf[bundle];
    slice.turned = made.turned;
  } else {
    slice.first = build(made.part, made.partSize, slices);
    slice.second = build(bundle - made.part, made.restSize, slices);
    slice.beside = made.beside;
  }
  slices.push_back(slice);
  return static_cast<int>(slices.size()) - 1;
}

}  // namespace core::cutting
