#include "core/geometry/outline.h"

#include <algorithm>
#include <limits>

#include "core/geometry/run.h"

namespace core::geometry {

double Outline::perimeter() const {
  double sum = 0;
  for (const Segment& segment : m_segments) sum += lengthOf(segment);
  return sum;
}

double Outline::area() const {
  double sum = 0;
  for (const Segment& segment : m_segments) sum += areaUnder(segment);
  return sum;
}

Rectangle Outline::bounds() const {
  Rectangle box;
  bool first = true;
  for (const Segment& segment : m_segments) {
    const Rectangle one = boundsOf(segment);
    if (first) {
      box = one;
      first = false;
      continue;
    }
    box = {std::min(box.left, one.left), std::min(box.top, one.top), std::max(box.right, one.right),
           std::max(box.bottom, one.bottom)};
  }
  return box;
}

bool Outline::contains(Point point) const {
  std::vector<Run> runs;
  for (const Segment& segment : m_segments) cutIntoRuns(segment, 0, runs);
  return isWithin(runs, point);
}

double Outline::distanceTo(Point point) const {
  double least = std::numeric_limits<double>::infinity();
  for (const Segment& segment : m_segments) least = std::min(least, geometry::distanceTo(segment, point, least));
  return least;
}

Outline Outline::shifted(Point by) const {
  std::vector<Segment> segments;
  segments.reserve(m_segments.size());
  for (const Segment& segment : m_segments) segments.push_back(geometry::shifted(segment, by));
  return Outline(std::move(segments));
}

Outline Outline::mirrored(double axis) const {
  std::vector<Segment> segments;
  segments.reserve(m_segments.size());
  for (auto at = m_segments.rbegin(); at != m_segments.rend(); ++at) {
    segments.push_back(geometry::mirrored(*at, axis));
  }
  return Outline(std::move(segments));
}

Outline outlineOf(const Rectangle& r) {
  const Point tl{r.left, r.top}, tr{r.right, r.top}, br{r.right, r.bottom}, bl{r.left, r.bottom};
  return Outline({Straight{tl, tr}, Straight{tr, br}, Straight{br, bl}, Straight{bl, tl}});
}

bool isRectangle(const Outline& outline) {
  if (outline.segments().size() != 4) return false;
  return std::all_of(outline.segments().begin(), outline.segments().end(), [](const Segment& segment) {
    const auto* straight = std::get_if<Straight>(&segment);
    return straight != nullptr && (straight->from.x == straight->to.x || straight->from.y == straight->to.y);
  });
}

}  // namespace core::geometry
