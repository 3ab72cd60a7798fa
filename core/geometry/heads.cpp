#include "core/geometry/heads.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace core::geometry::detail {
namespace {

using base::Message;
using base::Millimetres;
using Made = base::Result<HeadOutline, ShapeProblem>;

Point mirroredPoint(Point p) { return {-p.x, p.y}; }

// The whole head from its right half, given from the apex down to the right springing point.
HeadOutline symmetrical(std::vector<Segment> right, double rise, double halfSpan) {
  HeadOutline made;
  made.rise = rise;
  made.halfSpan = halfSpan;
  for (auto at = right.rbegin(); at != right.rend(); ++at) made.segments.push_back(mirrored(*at, 0));
  made.segments.insert(made.segments.end(), right.begin(), right.end());
  return made;
}

// A head whose crown is one arc over the axis, given by the right half of that arc and what follows it.
HeadOutline crowned(const Arc& rightOfCrown, const std::vector<Segment>& below, double rise, double halfSpan) {
  HeadOutline made;
  made.rise = rise;
  made.halfSpan = halfSpan;
  for (auto at = below.rbegin(); at != below.rend(); ++at) made.segments.push_back(mirrored(*at, 0));
  made.segments.push_back(arcAbout(rightOfCrown.centre, mirroredPoint(rightOfCrown.to), rightOfCrown.to, true));
  made.segments.insert(made.segments.end(), below.begin(), below.end());
  return made;
}

ShapeProblem tooHigh(std::string key, std::string_view id, double value, double most) {
  return {std::move(key), Message(id)
                              .with("value", Millimetres{value})
                              .with("most", Millimetres{most})
                              .with("by", Millimetres{value - most})};
}

ShapeProblem tooLow(std::string key, std::string_view id, double value, double least) {
  return {std::move(key), Message(id)
                              .with("value", Millimetres{value})
                              .with("least", Millimetres{least})
                              .with("by", Millimetres{least - value})};
}

// y is downwards, so what stands `up` above the springing line has y = -up.
Point above(double x, double up) { return {x, -up}; }

Made roundHead(double span) {
  const double r = span / 2;
  return crowned(arcAbout({}, above(0, r), {r, 0}, true), {}, r, r);
}

Made segmental(double span, double rise) {
  if (rise > span / 2) return tooHigh("rise", "shape.rise-too-high", rise, span / 2);
  const double radius = span * span / (8 * rise) + rise / 2;
  return crowned(arcAbout(above(0, rise - radius), above(0, rise), {span / 2, 0}, true), {}, rise, span / 2);
}

Made pointed(double span, double rise) {
  if (rise <= span / 2) return tooLow("rise", "shape.rise-too-low", rise, span / 2);
  const double radius = rise * rise / span + span / 4;
  return symmetrical({arcAbout({span / 2 - radius, 0}, above(0, rise), {span / 2, 0}, true)}, rise, span / 2);
}

Made fourCentred(double span, double rise, double radius, double degrees) {
  if (radius >= span / 2) return tooHigh("radius", "shape.radius-too-large", radius, span / 2);
  const double angle = degrees * std::numbers::pi / 180;
  const double cosine = std::cos(angle);
  const double sine = std::sin(angle);
  const double c = span / 2 - radius;
  // Between a straight upper side and a crown that runs smoothly over the axis.
  const double most = (radius + c * cosine) / sine;
  const double least = radius + c / cosine - c * std::tan(angle);
  if (rise >= most) return tooHigh("rise", "shape.rise-too-high", rise, most);
  if (rise <= least) return tooLow("rise", "shape.rise-too-low", rise, least);
  const double q = radius + c * cosine - rise * sine;
  const double between = (c * c + rise * rise - radius * radius) / (2 * q);
  const Point joint = above(c + radius * cosine, radius * sine);
  const Point large = above(c - between * cosine, -between * sine);
  return symmetrical({arcAbout(large, above(0, rise), joint, true), arcAbout({c, 0}, joint, {span / 2, 0}, true)}, rise,
                     span / 2);
}

Made basket(double span, double rise, double radius) {
  if (rise >= span / 2) return tooHigh("rise", "shape.rise-too-high", rise, span / 2);
  if (radius >= rise) return tooHigh("radius", "shape.radius-too-large", radius, rise);
  const double c = span / 2 - radius;
  const double large = (c * c + rise * rise - radius * radius) / (2 * (rise - radius));
  const Point centre = above(0, rise - large);
  // The joint lies on the line through both centres.
  const double apart = std::hypot(c, large - rise);
  const Point joint = above(c + radius * c / apart, radius * (large - rise) / apart);
  return crowned(arcAbout(centre, above(0, rise), joint, true), {arcAbout({c, 0}, joint, {span / 2, 0}, true)}, rise,
                 span / 2);
}

Made ogee(double span, double rise, double radius) {
  // Both radii together, where the upper centres stand at the level of the apex.
  const double sum = rise * rise / span + span / 4;
  const bool low = rise < span / 2;
  // Lower still, and no radius is both small enough to stay under the apex and large enough not to dip.
  const double lowest = (1 - std::sqrt(3.0) / 2) * span;
  if (rise <= lowest) return tooLow("rise", "shape.rise-too-low", rise, lowest);
  const double most = low ? std::min(sum, rise) : sum;
  if (radius >= most) return tooHigh("radius", "shape.radius-too-large", radius, most);
  // Under half the span the reverse curve dips; it must not dip below the springing line.
  const double least = (rise - span / 2) * (rise - span / 2) / span;
  if (low && radius <= least) return tooLow("radius", "shape.radius-too-small", radius, least);
  const double upper = sum - radius;
  const double c = span / 2 - radius;
  const double share = radius / sum;
  const Point joint = above(c + share * (upper - c), share * rise);
  return symmetrical(
      {arcAbout(above(upper, rise), above(0, rise), joint, false), arcAbout({c, 0}, joint, {span / 2, 0}, true)}, rise,
      span / 2);
}

Made horseshoe(double width, double rise) {
  const double radius = width / 2;
  if (rise <= radius) return tooLow("rise", "shape.rise-too-low", rise, radius);
  if (rise >= width) return tooHigh("rise", "shape.rise-too-high", rise, width);
  const double up = rise - radius;
  const double half = std::sqrt(radius * radius - up * up);
  return crowned(arcAbout(above(0, up), above(0, rise), {half, 0}, true), {}, rise, half);
}

Made trefoil(double span, double side, double top, double up) {
  if (side > span / 2) return tooHigh("sideRadius", "shape.radius-too-large", side, span / 2);
  if (top > span / 2) return tooHigh("topRadius", "shape.radius-too-large", top, span / 2);
  const double c = span / 2 - side;
  const double apart = std::hypot(c, up);
  const auto upFor = [&](double distance) { return std::sqrt(std::max(0.0, distance * distance - c * c)); };
  if (apart >= side + top) return tooHigh("topCentre", "shape.lobes-apart", up, upFor(side + top));
  // Where the side lobes meet each other on the axis, if they do: a top lobe must cover that point.
  const double meeting = upFor(side);
  if (apart <= std::fabs(side - top)) return tooLow("topCentre", "shape.lobe-swallowed", up, meeting - top);
  const double lean = std::acos(std::clamp((apart * apart + side * side - top * top) / (2 * apart * side), -1.0, 1.0));
  const double angle = std::atan2(up, -c) - lean;
  const Point cusp = above(c + side * std::cos(angle), side * std::sin(angle));
  if (cusp.x <= 0) {
    if (up < meeting) return tooLow("topCentre", "shape.lobe-swallowed", up, meeting - top);
    return tooHigh("topCentre", "shape.lobes-apart", up, meeting + top);
  }
  const Point centre = above(0, up);
  return crowned(arcAbout(centre, above(0, up + top), cusp, true), {arcAbout({c, 0}, cusp, {span / 2, 0}, true)},
                 up + top, span / 2);
}

Made multifoil(double width, int lobes) {
  const double half = std::numbers::pi / 2 / lobes;
  // The lowest lobes reach farthest to the sides: their reach is the opening's width.
  const double reach = std::cos(half) * std::cos(half) + std::sin(half);
  const double q = width / 2 / reach;
  const auto cusp = [&](int k) {
    if (k == 0) return Point{-q, 0};
    if (k == lobes) return Point{q, 0};
    const double angle = 2 * half * k;
    return above(-q * std::cos(angle), q * std::sin(angle));
  };
  HeadOutline made;
  made.halfSpan = q;
  made.rise = q * (std::cos(half) + std::sin(half));
  for (int k = 0; k < lobes; ++k) {
    const Point from = cusp(k);
    const Point to = cusp(k + 1);
    made.segments.push_back(arcAbout(0.5 * (from + to), from, to, true));
  }
  return made;
}

}  // namespace

Made head(const ShapeEntry& entry, double width) {
  const double rise = entry.rise.inMillimetres();
  const double radius = entry.radius.inMillimetres();
  switch (entry.head) {
    case Head::Round: return roundHead(width);
    case Head::Segmental: return segmental(width, rise);
    case Head::Pointed: return pointed(width, rise);
    case Head::FourCentred: return fourCentred(width, rise, radius, entry.angle);
    case Head::Basket: return basket(width, rise, radius);
    case Head::Ogee: return ogee(width, rise, radius);
    case Head::Horseshoe: return horseshoe(width, rise);
    case Head::Trefoil:
      return trefoil(width, entry.sideRadius.inMillimetres(), entry.topRadius.inMillimetres(),
                     entry.topCentre.inMillimetres());
    case Head::Multifoil: return multifoil(width, entry.lobes);
  }
  return roundHead(width);
}

}  // namespace core::geometry::detail
