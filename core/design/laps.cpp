#include "core/design/laps.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace core::design {
namespace {

using geometry::Arc;
using geometry::OvalArc;
using geometry::Point;
using geometry::Segment;
using geometry::Straight;

// The point of a curve that lies furthest against a direction, where it is not an end.
struct Furthest {
  Point direction;

  double operator()(const Straight&) const { return std::numeric_limits<double>::infinity(); }
  double operator()(const Arc& arc) const {
    const Point at = arc.centre - arc.radius / geometry::length(direction) * direction;
    return geometry::angleAlong(arc, at) <= std::fabs(arc.sweep) ? geometry::dot(direction, at)
                                                                 : std::numeric_limits<double>::infinity();
  }
  double operator()(const OvalArc& oval) const {
    const double turn = 2 * std::numbers::pi;
    const double t = std::atan2(-direction.y * oval.semiY, -direction.x * oval.semiX);
    const double from = std::min(oval.start, oval.start + oval.sweep);
    const double past = t - from - turn * std::floor((t - from) / turn);
    return past <= std::fabs(oval.sweep) ? geometry::dot(direction, geometry::oval::pointAt(oval, t))
                                         : std::numeric_limits<double>::infinity();
  }
};

double leastAlong(Point direction, const Outline& outline) {
  double least = std::numeric_limits<double>::infinity();
  for (const Segment& segment : outline.segments()) {
    least = std::min(
        {least, geometry::dot(direction, geometry::startOf(segment)), std::visit(Furthest{direction}, segment)});
  }
  return least;
}

}  // namespace

Laps lapsOf(const Layout& layout) {
  const BoardLayout& window = layout.boards.back();
  const double right = layout.artLeft + layout.sheetWidth;
  const double bottom = layout.artTop + layout.sheetHeight;
  Laps laps;
  laps.edge = std::min({window.sightAt.left - layout.artLeft, window.sightAt.top - layout.artTop,
                        right - window.sightAt.right, bottom - window.sightAt.bottom});
  laps.corner = std::numeric_limits<double>::infinity();
  for (const double across : {1.0, -1.0}) {
    for (const double down : {1.0, -1.0}) {
      const Point direction = {across, down};
      const Point corner = {across > 0 ? layout.artLeft : right, down > 0 ? layout.artTop : bottom};
      laps.corner =
          std::min(laps.corner, leastAlong(direction, window.sightOutline) - geometry::dot(direction, corner));
    }
  }
  return laps;
}

}  // namespace core::design
