#include "core/sheets/card_room.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace core::sheets {
namespace {

using geometry::Rectangle;

bool meet(const Rectangle& a, const Rectangle& b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

// Whether a straight runs through a rectangle: the part of it that lies between each pair of sides.
bool runsThrough(Point from, Point to, const Rectangle& box) {
  double low = 0;
  double high = 1;
  const auto between = [&](double start, double change, double least, double most) {
    if (change == 0) return start > least && start < most;
    const double first = (least - start) / change;
    const double second = (most - start) / change;
    low = std::max(low, std::min(first, second));
    high = std::min(high, std::max(first, second));
    return low < high;
  };
  return between(from.x, to.x - from.x, box.left, box.right) && between(from.y, to.y - from.y, box.top, box.bottom);
}

int crossings(const Rectangle& box, const std::vector<Stroke>& lines) {
  int count = 0;
  for (const Stroke& line : lines) {
    for (std::size_t i = 1; i < line.points.size(); ++i) {
      if (runsThrough(line.points[i - 1], line.points[i], box)) ++count;
    }
  }
  return count;
}

}  // namespace

Rectangle nearestRoom(const Stroke& line, double width, double height, const Rectangle& whole,
                      const std::vector<Rectangle>& taken, const std::vector<Stroke>& lines) {
  constexpr int kSteps = 60;
  const Point middle = 0.5 * (line.points.front() + line.points.back());
  const double step = height / 4;
  // A line through a number is worth going this far aside.
  const double aside = height * 3;
  Rectangle best;
  double least = std::numeric_limits<double>::infinity();
  for (int down = -kSteps; down <= kSteps; ++down) {
    for (int across = -kSteps; across <= kSteps; ++across) {
      const Point at{middle.x + across * step, middle.y + down * step};
      const double far = geometry::distance(middle, at);
      if (far >= least) continue;
      const Rectangle box{at.x - width / 2, at.y - height / 2, at.x + width / 2, at.y + height / 2};
      if (box.left < whole.left || box.right > whole.right || box.top < whole.top || box.bottom > whole.bottom)
        continue;
      if (std::any_of(taken.begin(), taken.end(), [&](const Rectangle& other) { return meet(box, other); })) continue;
      const double cost = far + aside * crossings(box, lines);
      if (cost >= least) continue;
      least = cost;
      best = box;
    }
  }
  return best;
}

Point nearestOn(const Rectangle& box, Point point) {
  return {std::clamp(point.x, box.left, box.right), std::clamp(point.y, box.top, box.bottom)};
}

}  // namespace core::sheets
