#pragma once
// A rectangle with an opening cut into it from below: the paper of a spandrel.
#include "core/geometry/outline.h"

namespace core::geometry {

// Returns the region inside the rectangle and outside the hole, as one outline. Where the hole reaches below the
// rectangle its part within is a notch in the lower edge; a hole that does not reach down to the rectangle leaves it
// whole. Requires the hole to lie within the rectangle's left, right and top. A hole that crosses the lower edge more
// than twice is cut at its outermost crossings.
Outline notched(const Rectangle& rectangle, const Outline& hole);

}  // namespace core::geometry
