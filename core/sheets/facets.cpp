#include "core/sheets/facets.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace core::sheets {
namespace {

constexpr double kFacet = 11 * std::numbers::pi / 180;
// At an acute corner a mitre would run far out; it ends at this many times the width.
constexpr double kLongestMitre = 4;

double sweepOf(const geometry::Segment& segment) {
  if (const auto* arc = std::get_if<geometry::Arc>(&segment)) return std::fabs(arc->sweep);
  if (const auto* oval = std::get_if<geometry::OvalArc>(&segment)) return std::fabs(oval->sweep);
  return 0;
}

std::vector<Point> knotsOf(const geometry::Outline& opening) {
  std::vector<Point> knots;
  for (const geometry::Segment& segment : opening.segments()) {
    const int parts = std::max(1, static_cast<int>(std::ceil(sweepOf(segment) / kFacet - 1e-9)));
    for (int i = 0; i < parts; ++i) {
      const Point knot = geometry::pointAt(segment, static_cast<double>(i) / parts);
      // Pieces that were trimmed to nothing have no direction.
      if (knots.empty() || geometry::distance(knots.back(), knot) > 1e-6) knots.push_back(knot);
    }
  }
  while (knots.size() > 1 && geometry::distance(knots.back(), knots.front()) <= 1e-6) knots.pop_back();
  return knots;
}

// Outlines run clockwise as seen: outside lies to the left of the way.
Point outwardsOf(Point from, Point to) {
  const Point way = to - from;
  const double length = geometry::length(way);
  return {way.y / length, -way.x / length};
}

}  // namespace

std::vector<Facet> facets(const geometry::Outline& opening, double inwards, double outwards) {
  const std::vector<Point> knots = knotsOf(opening);
  if (knots.size() < 3) return {};
  const std::size_t count = knots.size();
  std::vector<Point> normals(count), mitres(count);
  for (std::size_t i = 0; i < count; ++i) normals[i] = outwardsOf(knots[i], knots[(i + 1) % count]);
  for (std::size_t i = 0; i < count; ++i) {
    const Point before = normals[(i + count - 1) % count];
    const Point both = before + normals[i];
    const double open = 1 + geometry::dot(before, normals[i]);
    mitres[i] = 1 / std::max(open, 2 / (kLongestMitre * kLongestMitre)) * both;
  }
  std::vector<Facet> result;
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t next = (i + 1) % count;
    result.push_back({{knots[i] - inwards * mitres[i], knots[next] - inwards * mitres[next],
                       knots[next] + outwards * mitres[next], knots[i] + outwards * mitres[i]},
                      normals[i]});
  }
  return result;
}

}  // namespace core::sheets
