#pragma once
// Where straights and arcs meet, as points.
#include <vector>

#include "core/geometry/segment.h"

namespace core::geometry {

// The points common to the whole lines or circles two segments lie on; none for parallel lines, equal circles or
// ovals. A tangency within 1e-12 mm gives one point, and what misses by 1e-9 mm gives the nearest one.
std::vector<Point> carrierMeetings(const Segment& a, const Segment& b);

// How far along a point of its carrier lies, as a share of the segment: 0 at the start, 1 at the end, beyond 1 or
// (straights alone) below 0 outside. Of an arc, a point before the start has a share of more than 1.
double shareAt(const Segment& segment, Point point);

}  // namespace core::geometry
