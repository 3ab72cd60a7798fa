// How far the sheet lies behind the mount.
#include "core/design/laps.h"

#include <algorithm>
#include <cmath>

#include "tests/support/catch.h"
#include "tests/support/shaped_example.h"
#include "tests/support/worked_example.h"

using core::design::lapsOf;

TEST_CASE("of a rectangle the laps are the sheet's margins and the overlap", "[laps]") {
  // The sheet's margins are 10, 8, 10 and 12 mm; the overlap is 3 mm.
  const auto chart = tests::designOf(tests::workedExample());
  CHECK(lapsOf(chart.layout).edge == Approx(11).margin(1e-9));
  CHECK(lapsOf(chart.layout).corner == Approx(24).margin(1e-9));
  const auto bare = tests::designOf(
      tests::changed(tests::workedExample(),
                     R"(, "sheet": { "width": "330 mm", "height": "260 mm", "left": "10 mm", "top": "8 mm" })", ""));
  CHECK(lapsOf(bare.layout).edge == Approx(3).margin(1e-9));
  CHECK(lapsOf(bare.layout).corner == Approx(6).margin(1e-9));
}

TEST_CASE("on a float the sheet's edges show, and the laps are less than nothing", "[laps]") {
  const auto heron = tests::designOf(tests::inchExample());
  CHECK(lapsOf(heron.layout).edge < 0);
  CHECK(lapsOf(heron.layout).corner < 0);
}

TEST_CASE("of every shape the laps are the least over its whole outline", "[laps]") {
  for (const std::string& form : tests::shapedForms()) {
    const auto design = tests::designOf(tests::shapedExample(form));
    INFO(form);
    const auto& layout = design.layout;
    double edge = 1e9, corner = 1e9;
    constexpr int kSteps = 4000;
    for (const auto& segment : layout.boards.back().sightOutline.segments()) {
      for (int i = 0; i <= kSteps; ++i) {
        const auto at = core::geometry::pointAt(segment, static_cast<double>(i) / kSteps);
        const double left = at.x - layout.artLeft, top = at.y - layout.artTop;
        const double right = layout.sheetWidth - left, bottom = layout.sheetHeight - top;
        edge = std::min({edge, left, top, right, bottom});
        corner = std::min({corner, left + top, top + right, right + bottom, bottom + left});
      }
    }
    // A walk in steps passes the very least by.
    CHECK(lapsOf(layout).edge <= edge + 1e-9);
    CHECK(lapsOf(layout).edge == Approx(edge).margin(1e-3));
    CHECK(lapsOf(layout).corner <= corner + 1e-9);
    CHECK(lapsOf(layout).corner == Approx(corner).margin(1e-3));
  }
}
