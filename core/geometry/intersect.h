#pragma once
// The points where straights and arcs meet.
#include <vector>

#include "core/geometry/segment.h"

namespace core::geometry {

// Returns the points common to the whole lines or circles two segments lie on; none for parallel lines, equal circles
// or ovals. A tangency within 1e-12 mm gives one point, and a miss by 1e-9 mm gives the nearest one.
std::vector<Point> carrierMeetings(const Segment& a, const Segment& b);

// Returns how far along the segment a point of its carrier is, as a share of the segment: 0 at the start, 1 at the end,
// beyond 1 or (straights alone) below 0 outside. On an arc, a point before the start has a share of more than 1.
double shareAt(const Segment& segment, Point point);

}  // namespace core::geometry
