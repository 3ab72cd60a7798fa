#pragma once
// A run: a part of a segment over which y goes one way, so that it has one x for each y. Outlines cut into runs can
// be swept from top to bottom. Horizontal straights have no run: they bound, but nothing lies beside them.
#include <cstddef>
#include <vector>

#include "core/geometry/segment.h"

namespace core::geometry {

struct Run {
  const Segment* segment = nullptr;  // must outlive the run
  std::size_t outline = 0;           // whose it is, as given to cutIntoRuns
  double top = 0, bottom = 0;        // top < bottom
  double left = 0, right = 0;        // bounds of x
  double side = 1;                   // arcs: +1 right half of the circle, -1 left half
  double low = 0, high = 0;          // ovals: the parameters at top and bottom

  // Requires top <= y <= bottom.
  double xAt(double y) const;
  // Integral of x over y; closed form for straights and arcs, 1e-12 relative for ovals. Requires top <= y0 <= y1 <=
  // bottom.
  double integral(double y0, double y1) const;
};

void cutIntoRuns(const Segment& segment, std::size_t outline, std::vector<Run>& runs);

// Returns whether a point is inside the one outline cut into `runs`; on its edge either answer is possible.
bool isWithin(const std::vector<Run>& runs, Point point);

// Adds the heights at which two runs cross to `heights`. Where they only touch, nothing need be added.
void addCrossings(const Run& a, const Run& b, std::vector<double>& heights);

}  // namespace core::geometry
