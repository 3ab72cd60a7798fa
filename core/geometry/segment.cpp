#include "core/geometry/segment.h"

#include <algorithm>
#include <numbers>

namespace core::geometry {
namespace {

constexpr double kTurn = 2 * std::numbers::pi;

double angleOf(Point p) { return std::atan2(p.y, p.x); }

// An angle reduced to [0, 2 pi).
double reduced(double angle) {
  double rest = std::fmod(angle, kTurn);
  if (rest < 0) rest += kTurn;
  return rest >= kTurn ? 0 : rest;
}

Point onCircle(Point centre, double radius, double angle) {
  return {centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)};
}

// The unit vector of travel at a point of an arc.
Point tangent(const Arc& arc, Point at) {
  const Point out = (1 / arc.radius) * (at - arc.centre);
  return arc.sweep > 0 ? Point{-out.y, out.x} : Point{out.y, -out.x};
}

Point unit(Point p) {
  const double size = length(p);
  return size > 0 ? (1 / size) * p : Point{};
}

void include(Rectangle& box, Point p) {
  box.left = std::min(box.left, p.x);
  box.right = std::max(box.right, p.x);
  box.top = std::min(box.top, p.y);
  box.bottom = std::max(box.bottom, p.y);
}

// Distance to a parallel curve of an ellipse: the nearest of many points, closed in on by thirds.
double distanceToOval(const OvalArc& oval, Point point) {
  constexpr int kSamples = 256;
  const double step = oval.sweep / kSamples;
  int nearest = 0;
  double least = distance(oval::pointAt(oval, oval.start), point);
  for (int i = 1; i <= kSamples; ++i) {
    const double here = distance(oval::pointAt(oval, oval.start + i * step), point);
    if (here < least) {
      least = here;
      nearest = i;
    }
  }
  double low = oval.start + std::max(0, nearest - 1) * step;
  double high = oval.start + std::min(kSamples, nearest + 1) * step;
  for (int i = 0; i < 80; ++i) {
    const double a = low + (high - low) / 3;
    const double b = high - (high - low) / 3;
    if (distance(oval::pointAt(oval, a), point) < distance(oval::pointAt(oval, b), point)) {
      high = b;
    } else {
      low = a;
    }
  }
  return std::min(least, distance(oval::pointAt(oval, (low + high) / 2), point));
}

}  // namespace

Arc arcAbout(Point centre, Point from, Point to, bool positive) {
  Arc arc;
  arc.centre = centre;
  arc.from = from;
  arc.to = to;
  arc.radius = distance(centre, from);
  // The angle between the two by one arctangent: the difference of two would lose the last places of a short arc.
  const Point a = from - centre;
  const Point b = to - centre;
  const double turn = std::atan2(cross(a, b), dot(a, b));
  if (from == to) {
    arc.sweep = positive ? kTurn : -kTurn;
  } else if (positive) {
    arc.sweep = turn > 0 ? turn : turn + kTurn;
  } else {
    arc.sweep = turn < 0 ? turn : turn - kTurn;
  }
  return arc;
}

Point startOf(const Segment& segment) {
  if (const auto* oval = std::get_if<OvalArc>(&segment)) return oval::pointAt(*oval, oval->start);
  if (const auto* arc = std::get_if<Arc>(&segment)) return arc->from;
  return std::get<Straight>(segment).from;
}

Point endOf(const Segment& segment) {
  if (const auto* oval = std::get_if<OvalArc>(&segment)) {
    const bool whole = std::fabs(oval->sweep) >= kTurn;
    return whole ? oval::pointAt(*oval, oval->start) : oval::pointAt(*oval, oval->start + oval->sweep);
  }
  if (const auto* arc = std::get_if<Arc>(&segment)) return arc->to;
  return std::get<Straight>(segment).to;
}

Point pointAt(const Segment& segment, double share) {
  if (share <= 0) return startOf(segment);
  if (share >= 1) return endOf(segment);
  if (const auto* oval = std::get_if<OvalArc>(&segment)) return oval::pointAt(*oval, oval->start + share * oval->sweep);
  if (const auto* arc = std::get_if<Arc>(&segment)) {
    return onCircle(arc->centre, arc->radius, angleOf(arc->from - arc->centre) + share * arc->sweep);
  }
  const auto& straight = std::get<Straight>(segment);
  return straight.from + share * (straight.to - straight.from);
}

Point directionAtStart(const Segment& segment) {
  if (const auto* oval = std::get_if<OvalArc>(&segment)) {
    return unit((oval->sweep > 0 ? 1.0 : -1.0) * oval::rateAt(*oval, oval->start));
  }
  if (const auto* arc = std::get_if<Arc>(&segment)) return tangent(*arc, arc->from);
  const auto& straight = std::get<Straight>(segment);
  return unit(straight.to - straight.from);
}

Point directionAtEnd(const Segment& segment) {
  if (const auto* oval = std::get_if<OvalArc>(&segment)) {
    return unit((oval->sweep > 0 ? 1.0 : -1.0) * oval::rateAt(*oval, oval->start + oval->sweep));
  }
  if (const auto* arc = std::get_if<Arc>(&segment)) return tangent(*arc, arc->to);
  return directionAtStart(segment);
}

double lengthOf(const Segment& segment) {
  if (const auto* oval = std::get_if<OvalArc>(&segment)) {
    // A parallel curve is longer than its ellipse by `out` times the angle its normal turns.
    if (std::fabs(oval->sweep) >= kTurn) return oval::perimeter(oval->semiX, oval->semiY) + kTurn * oval->out;
    return std::fabs(oval::length(*oval, oval->start, oval->start + oval->sweep));
  }
  if (const auto* arc = std::get_if<Arc>(&segment)) return arc->radius * std::fabs(arc->sweep);
  const auto& straight = std::get<Straight>(segment);
  return distance(straight.from, straight.to);
}

double areaUnder(const Segment& segment) {
  if (const auto* oval = std::get_if<OvalArc>(&segment)) {
    if (std::fabs(oval->sweep) >= kTurn) {
      // Steiner's formula for the parallel curve of a convex outline.
      const double inside = std::numbers::pi * oval->semiX * oval->semiY +
                            oval::perimeter(oval->semiX, oval->semiY) * oval->out +
                            std::numbers::pi * oval->out * oval->out;
      return oval->sweep > 0 ? inside : -inside;
    }
    const Point from = startOf(segment);
    const Point to = endOf(segment);
    // Integral of x dy, made symmetric: half of (x dy - y dx) differs from it by half the change of x y.
    const double xdy =
        oval::integralXdY(*oval, oval->start, oval->start + oval->sweep) + oval->centre.x * (to.y - from.y);
    return xdy - (to.x * to.y - from.x * from.y) / 2;
  }
  if (const auto* arc = std::get_if<Arc>(&segment)) {
    return (cross(arc->from, arc->to) + arc->radius * arc->radius * (arc->sweep - std::sin(arc->sweep))) / 2;
  }
  const auto& straight = std::get<Straight>(segment);
  return cross(straight.from, straight.to) / 2;
}

Rectangle boundsOf(const Segment& segment) {
  const Point from = startOf(segment);
  const Point to = endOf(segment);
  Rectangle box{from.x, from.y, from.x, from.y};
  include(box, to);
  constexpr double kQuarter = std::numbers::pi / 2;
  for (int quarter = 0; quarter < 4; ++quarter) {
    if (const auto* arc = std::get_if<Arc>(&segment)) {
      const Point far[] = {{arc->centre.x + arc->radius, arc->centre.y},
                           {arc->centre.x, arc->centre.y + arc->radius},
                           {arc->centre.x - arc->radius, arc->centre.y},
                           {arc->centre.x, arc->centre.y - arc->radius}};
      if (angleAlong(*arc, far[quarter]) <= std::fabs(arc->sweep)) include(box, far[quarter]);
    } else if (const auto* oval = std::get_if<OvalArc>(&segment)) {
      const double along =
          oval->sweep > 0 ? reduced(quarter * kQuarter - oval->start) : reduced(oval->start - quarter * kQuarter);
      const double x = oval->semiX + oval->out;
      const double y = oval->semiY + oval->out;
      const Point far[] = {{x, 0}, {0, y}, {-x, 0}, {0, -y}};
      if (along <= std::fabs(oval->sweep)) include(box, oval->centre + far[quarter]);
    }
  }
  return box;
}

double distanceTo(const Segment& segment, Point point, double below) {
  if (const auto* oval = std::get_if<OvalArc>(&segment)) return distanceToOval(*oval, point);
  const double ends = std::min(distance(startOf(segment), point), distance(endOf(segment), point));
  if (const auto* arc = std::get_if<Arc>(&segment)) {
    const double off = std::fabs(distance(arc->centre, point) - arc->radius);
    if (off >= std::min(below, ends)) return ends;
    return angleAlong(*arc, point) <= std::fabs(arc->sweep) ? off : ends;
  }
  const auto& straight = std::get<Straight>(segment);
  const Point along = straight.to - straight.from;
  const double size = dot(along, along);
  const double share = size > 0 ? dot(point - straight.from, along) / size : 0;
  if (share <= 0 || share >= 1) return ends;
  return std::fabs(cross(along, point - straight.from)) / std::sqrt(size);
}

Segment reversed(const Segment& segment) {
  if (auto oval = std::get_if<OvalArc>(&segment)) {
    OvalArc other = *oval;
    other.start = oval->start + oval->sweep;
    other.sweep = -oval->sweep;
    return other;
  }
  if (auto arc = std::get_if<Arc>(&segment)) return Arc{arc->centre, arc->radius, arc->to, arc->from, -arc->sweep};
  const auto& straight = std::get<Straight>(segment);
  return Straight{straight.to, straight.from};
}

Segment shifted(const Segment& segment, Point by) {
  if (auto oval = std::get_if<OvalArc>(&segment)) {
    OvalArc other = *oval;
    other.centre = oval->centre + by;
    return other;
  }
  if (auto arc = std::get_if<Arc>(&segment)) {
    return Arc{arc->centre + by, arc->radius, arc->from + by, arc->to + by, arc->sweep};
  }
  const auto& straight = std::get<Straight>(segment);
  return Straight{straight.from + by, straight.to + by};
}

Segment mirrored(const Segment& segment, double axis) {
  const auto turned = [axis](Point p) { return Point{2 * axis - p.x, p.y}; };
  if (auto oval = std::get_if<OvalArc>(&segment)) {
    OvalArc other = *oval;
    other.centre = turned(oval->centre);
    // The mirror image of t is pi - t; run backwards it starts where this one ends.
    other.start = std::numbers::pi - (oval->start + oval->sweep);
    return other;
  }
  if (auto arc = std::get_if<Arc>(&segment)) {
    return Arc{turned(arc->centre), arc->radius, turned(arc->to), turned(arc->from), arc->sweep};
  }
  const auto& straight = std::get<Straight>(segment);
  return Straight{turned(straight.to), turned(straight.from)};
}

double angleAlong(const Arc& arc, Point point) {
  const Point a = arc.from - arc.centre;
  const Point b = point - arc.centre;
  const double turn = std::atan2(cross(a, b), dot(a, b));
  return reduced(arc.sweep > 0 ? turn : -turn);
}

Segment part(const Segment& segment, double fromShare, double toShare) {
  if (fromShare <= 0 && toShare >= 1) return segment;
  const Point from = pointAt(segment, fromShare);
  const Point to = pointAt(segment, toShare);
  if (auto oval = std::get_if<OvalArc>(&segment)) {
    OvalArc other = *oval;
    other.start = oval->start + fromShare * oval->sweep;
    other.sweep = (toShare - fromShare) * oval->sweep;
    return other;
  }
  if (auto arc = std::get_if<Arc>(&segment)) {
    return Arc{arc->centre, arc->radius, from, to, (toShare - fromShare) * arc->sweep};
  }
  return Straight{from, to};
}

}  // namespace core::geometry
