#pragma once
// Areas of what several outlines bound together: a field of leaf with bands, lines and washes left out.
#include <vector>

#include "core/geometry/outline.h"

namespace core::geometry {

// The region inside `outer` and outside `inner`; an empty inner leaves no hole, an empty outer nothing at all.
struct Patch {
  Outline outer;
  Outline inner;
  friend bool operator==(const Patch&, const Patch&) = default;
};

// Returns the area (mm2) of the region in all of `inside` and in none of `without`; zero where `inside` is empty. The
// plane is divided at every height where an outline begins, ends, turns back or crosses another, and each strip is
// counted whole, in closed form for straights and arcs: exact up to rounding (about 1e-12 of the whole area).
double area(const std::vector<Patch>& inside, const std::vector<Patch>& without);

}  // namespace core::geometry
