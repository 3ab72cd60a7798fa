#include "core/sheets/card_spread.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace core::sheets {
namespace {

using geometry::Rectangle;

// Moves those of one row apart by as little as may be: those that would touch stand together about the middle of where
// they would all best be (pool adjacent violators).
bool part(const std::vector<Label*>& row, double low, double high) {
  struct Pool {
    double sum = 0;
    std::size_t count = 0;
    double mean() const { return sum / static_cast<double>(count); }
  };
  // Each label's middle when all of them stand side by side from 0.
  std::vector<double> packed;
  double end = 0;
  for (const Label* label : row) {
    packed.push_back(end + label->size / 2);
    end += label->size;
  }
  if (end > high - low + 1e-9) return false;
  std::vector<Pool> pools;
  for (std::size_t i = 0; i < row.size(); ++i) {
    pools.push_back({row[i]->wanted - packed[i], 1});
    while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean()) {
      const Pool last = pools.back();
      pools.pop_back();
      pools.back().sum += last.sum;
      pools.back().count += last.count;
    }
  }
  std::size_t i = 0;
  for (const Pool& pool : pools) {
    const double moved = std::clamp(pool.mean(), low, std::max(low, high - end));
    for (std::size_t k = 0; k < pool.count; ++k, ++i) row[i]->at = moved + packed[i];
  }
  return true;
}

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

bool spread(std::vector<Label>& labels, double low, double high, std::size_t rows) {
  std::vector<Label*> inner, outer;
  for (std::size_t i = 0; i < labels.size(); ++i) {
    labels[i].row = rows < 2 ? 0 : i % 2;
    (labels[i].row == 0 ? inner : outer).push_back(&labels[i]);
  }
  if (!part(inner, low, high)) return false;
  // The line to each of the outer row passes after its neighbour of the inner one.
  for (std::size_t i = 0; i < outer.size(); ++i) {
    const Label& before = *inner[i];
    const double end = before.at + before.size / 2;
    const double next = i + 1 < inner.size() ? inner[i + 1]->at - inner[i + 1]->size / 2 : high;
    outer[i]->through = std::clamp(outer[i]->wanted, std::min(end, next), std::max(end, next));
  }
  for (Label* label : outer) std::swap(label->wanted, label->through);
  const bool fits = part(outer, low, high);
  for (Label* label : outer) std::swap(label->wanted, label->through);
  return fits;
}

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
