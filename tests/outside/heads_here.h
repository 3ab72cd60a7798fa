#pragma once
// A head on jambs, and its own length and area: the whole window's less what the jambs and the sill give.
#include <numbers>
#include <vector>

#include "tests/support/catch.h"
#include "tests/support/forms.h"

namespace tests {

inline constexpr double kDegree = std::numbers::pi / 180;

struct HeadFigures {
  double length = 0, area = 0;
  std::vector<core::geometry::Arc> arcs;  // from the left springing point over the apex
};

// `width` is the opening's; `span` lies between the springing points.
inline HeadFigures headOf(const ShapeEntry& entry, double width, double span, double rise) {
  constexpr double kJamb = 100;
  const auto form = core::geometry::construct(entry, width, rise + kJamb);
  if (!form) FAIL(core::base::dump(form.error().message));
  HeadFigures figures;
  const auto& outline = form.value().outline;
  figures.length = outline.perimeter() - 2 * kJamb - span;
  figures.area = outline.area() - span * kJamb;
  for (const auto& segment : outline.segments()) {
    if (const auto* arc = std::get_if<core::geometry::Arc>(&segment)) figures.arcs.push_back(*arc);
  }
  return figures;
}

inline HeadFigures headOf(const ShapeEntry& entry, double span, double rise) { return headOf(entry, span, span, rise); }

// Lengths and points to a millionth of a millimetre; areas to the tables' sixth decimal or 1e-9 of themselves. Where a
// rise has no end it was entered to the nearest nanometre, and `slack` is what that may do.
inline void checkLength(double got, double expected, double slack = 0) {
  CHECK(got == Approx(expected).epsilon(0).margin(1e-6 + slack));
}

inline void checkArea(double got, double expected, double slack = 0) {
  CHECK(got == Approx(expected).epsilon(1e-9).margin(1e-6 + slack));
}

// Given as the trade draws it: y upwards from the springing line.
inline void checkPoint(core::geometry::Point got, double x, double yUpwards, double slack = 0) {
  checkLength(got.x, x, slack);
  checkLength(-got.y, yUpwards, slack);
}

}  // namespace tests
