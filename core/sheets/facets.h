#pragma once
// The slopes round an opening cut into flat facets, so that light can fall on each of them.
#include <array>
#include <vector>

#include "core/geometry/outline.h"

namespace core::sheets {

using geometry::Point;

struct Facet {
  std::array<Point, 4> corners;  // along the outline, then back farther out
  Point outwards;                // unit vector away from the opening
};

// Returns facets that reach from `inwards` inside an opening's outline to `outwards` outside it (mm), mitred where they
// meet. A straight gives one facet, a curve one for each 11 degrees or less.
std::vector<Facet> facets(const geometry::Outline& opening, double inwards, double outwards);

}  // namespace core::sheets
