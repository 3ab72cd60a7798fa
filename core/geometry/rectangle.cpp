#include "core/geometry/rectangle.h"

#include <algorithm>

namespace core::geometry {

using units::Length;

Length overlap(const Ring& a, const Ring& b) {
  // To part, one ring must lie wholly outside the other, on the sides and on top and bottom alike.
  const auto depth = [](const Ring& within, const Ring& around) {
    return std::max(within.to.sides - around.from.sides, within.to.topBottom - around.from.topBottom);
  };
  return std::min(depth(a, b), depth(b, a));
}

bool touch(const Ring& a, const Ring& b) { return overlap(a, b) >= Length(); }

Rectangle outside(const Rectangle& face, const Reach& reach) {
  const double sides = reach.sides.inMillimetres();
  const double topBottom = reach.topBottom.inMillimetres();
  return {face.left - sides, face.top - topBottom, face.right + sides, face.bottom + topBottom};
}

namespace {

void addEdges(const FrameArea& frame, std::vector<double>& across, std::vector<double>& down) {
  for (const Rectangle& r : {frame.outer, frame.inner}) {
    if (r.empty()) continue;
    across.insert(across.end(), {r.left, r.right});
    down.insert(down.end(), {r.top, r.bottom});
  }
}

void sortUnique(std::vector<double>& values) {
  std::sort(values.begin(), values.end());
  values.erase(std::unique(values.begin(), values.end()), values.end());
}

bool contains(const Rectangle& r, double x, double y) {
  return !r.empty() && x > r.left && x < r.right && y > r.top && y < r.bottom;
}

bool contains(const FrameArea& frame, double x, double y) {
  return contains(frame.outer, x, y) && !contains(frame.inner, x, y);
}

}  // namespace

double area(const std::vector<FrameArea>& inside, const std::vector<FrameArea>& without) {
  std::vector<double> across;
  std::vector<double> down;
  for (const auto* frames : {&inside, &without}) {
    for (const FrameArea& frame : *frames) addEdges(frame, across, down);
  }
  sortUnique(across);
  sortUnique(down);
  double total = 0;
  for (std::size_t row = 0; row + 1 < down.size(); ++row) {
    double width = 0;
    const double y = (down[row] + down[row + 1]) / 2;
    for (std::size_t column = 0; column + 1 < across.size(); ++column) {
      const double x = (across[column] + across[column + 1]) / 2;
      const auto holds = [&](const FrameArea& frame) { return contains(frame, x, y); };
      if (std::all_of(inside.begin(), inside.end(), holds) && std::none_of(without.begin(), without.end(), holds)) {
        width += across[column + 1] - across[column];
      }
    }
    total += width * (down[row + 1] - down[row]);
  }
  return total;
}

}  // namespace core::geometry
