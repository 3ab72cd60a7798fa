#pragma once
// Where the parts of a section lie in its drawing.
#include <vector>

#include "core/design/design.h"

namespace core::sheets::detail {

struct SectionPlaces {
  double from = 0;  // what of the mount, from its left edge, the drawing begins with
  double width = 0;
  std::vector<double> levels;  // the boards' faces from the outermost down, and the lowest one's back
};

SectionPlaces sectionPlaces(const design::Design& design);

}  // namespace core::sheets::detail
