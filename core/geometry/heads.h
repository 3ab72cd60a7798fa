#pragma once
// The heads of arched windows. Only window_form.cpp calls this.
#include <vector>

#include "core/geometry/window_form.h"

namespace core::geometry::detail {

// A head from its left springing point over the apex to the right one, on a springing line y = 0 about x = 0.
struct HeadOutline {
  std::vector<Segment> segments;
  double rise = 0;
  double halfSpan = 0;  // between the springing points
};

// A head as wide as the opening. Checks everything but whether the rise leaves room in the opening's height.
base::Result<HeadOutline, ShapeProblem> head(const ShapeEntry& entry, double width);

}  // namespace core::geometry::detail
