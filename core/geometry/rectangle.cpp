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

Reach movedOut(const Reach& reach, units::Length by) { return {reach.sides + by, reach.topBottom + by}; }

Rectangle movedOut(const Rectangle& r, double by) { return {r.left - by, r.top - by, r.right + by, r.bottom + by}; }

Rectangle outside(const Rectangle& face, const Reach& reach) {
  const double sides = reach.sides.inMillimetres();
  const double topBottom = reach.topBottom.inMillimetres();
  return {face.left - sides, face.top - topBottom, face.right + sides, face.bottom + topBottom};
}

}  // namespace core::geometry
