#include "core/geometry/intersect.h"

#include <algorithm>

namespace core::geometry {
namespace {

// Circles and lines this near to touching may touch.
constexpr double kTouch = 1e-9;
// And this near they do: to cross them would be to take the root of rounding alone.
constexpr double kTangent = 1e-12;

std::vector<Point> meet(const Straight& a, const Straight& b) {
  const Point u = a.to - a.from;
  const Point v = b.to - b.from;
  const double turn = cross(u, v);
  if (std::fabs(turn) <= 1e-14 * length(u) * length(v)) return {};
  return {a.from + (cross(b.from - a.from, v) / turn) * u};
}

std::vector<Point> meet(const Straight& line, const Arc& arc) {
  const double size = distance(line.from, line.to);
  if (size == 0) return {};
  const Point along = (1 / size) * (line.to - line.from);
  const Point foot = line.from + dot(arc.centre - line.from, along) * along;
  const double off = distance(foot, arc.centre);
  if (off > arc.radius + kTouch) return {};
  const double square = arc.radius * arc.radius - off * off;
  if (square <= 0 || arc.radius - off <= kTangent) return {foot};
  const Point half = std::sqrt(square) * along;
  return {foot - half, foot + half};
}

std::vector<Point> meet(const Arc& a, const Arc& b) {
  const Point between = b.centre - a.centre;
  const double apart = length(between);
  if (apart <= kTouch) return {};
  if (apart > a.radius + b.radius + kTouch || apart < std::fabs(a.radius - b.radius) - kTouch) return {};
  const Point unit = (1 / apart) * between;
  const double along = (apart * apart + a.radius * a.radius - b.radius * b.radius) / (2 * apart);
  const Point foot = a.centre + along * unit;
  const double square = a.radius * a.radius - along * along;
  const bool tangent = a.radius + b.radius - apart <= kTangent || apart - std::fabs(a.radius - b.radius) <= kTangent;
  if (square <= 0 || tangent) return {foot};
  const Point half = std::sqrt(square) * Point{-unit.y, unit.x};
  return {foot - half, foot + half};
}

}  // namespace

std::vector<Point> carrierMeetings(const Segment& a, const Segment& b) {
  const auto* straightA = std::get_if<Straight>(&a);
  const auto* straightB = std::get_if<Straight>(&b);
  const auto* arcA = std::get_if<Arc>(&a);
  const auto* arcB = std::get_if<Arc>(&b);
  if (straightA != nullptr && straightB != nullptr) return meet(*straightA, *straightB);
  if (straightA != nullptr && arcB != nullptr) return meet(*straightA, *arcB);
  if (arcA != nullptr && straightB != nullptr) return meet(*straightB, *arcA);
  if (arcA != nullptr && arcB != nullptr) return meet(*arcA, *arcB);
  return {};
}

double shareAt(const Segment& segment, Point point) {
  if (const auto* straight = std::get_if<Straight>(&segment)) {
    const Point along = straight->to - straight->from;
    return dot(point - straight->from, along) / dot(along, along);
  }
  if (const auto* arc = std::get_if<Arc>(&segment)) return angleAlong(*arc, point) / std::fabs(arc->sweep);
  return -1;
}

}  // namespace core::geometry
