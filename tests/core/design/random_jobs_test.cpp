// Random jobs against the equations a mount must satisfy, worked here a second way: from distances to the mount's
// edges instead of from the opening outwards.
#include <cmath>

#include "core/design/design.h"
#include "tests/core/design/figure_of.h"
#include "tests/support/catch.h"
#include "tests/support/random_mounts.h"

using namespace core;
using tests::figureOf;

TEST_CASE("random mounts satisfy every equation", "[design]") {
  tests::RandomMounts maker(2026);
  int with = 0;
  for (int round = 0; round < 1000; ++round) {
    const std::string text = maker.job();
    const auto read = design::readDesign(text);
    for (const auto& problem : read.problems.sorted()) UNSCOPED_INFO(base::dump(problem));
    INFO(text);
    REQUIRE(read.design);
    const design::Design& d = *read.design;
    const double outerWidth = figureOf(d, "outer.width");
    const double outerHeight = figureOf(d, "outer.height");
    for (std::size_t i = 0; i < d.job.boards.size(); ++i) {
      const std::string b = "board." + d.job.boards[i].id + '.';
      CHECK(figureOf(d, b + "border.left") + figureOf(d, b + "sight.width") + figureOf(d, b + "border.right") ==
            Approx(outerWidth));
      CHECK(figureOf(d, b + "border.top") + figureOf(d, b + "sight.height") + figureOf(d, b + "border.bottom") ==
            Approx(outerHeight));
      CHECK(figureOf(d, b + "mark.right") + figureOf(d, b + "border.right") == Approx(outerWidth));
      CHECK(figureOf(d, b + "mark.bottom") + figureOf(d, b + "border.bottom") == Approx(outerHeight));
      CHECK(figureOf(d, b + "face.width") - figureOf(d, b + "sight.width") ==
            Approx(2 * figureOf(d, b + "bevel.plan")).margin(1e-9));
      CHECK(std::hypot(figureOf(d, b + "bevel.plan"), figureOf(d, b + "thickness")) ==
            Approx(figureOf(d, b + "bevel.slope")));
      if (i > 0) {
        const std::string above = "board." + d.job.boards[i - 1].id + '.';
        CHECK(figureOf(d, above + "sight.width") - figureOf(d, b + "sight.width") ==
              Approx(2 * figureOf(d, b + "reveal")));
        CHECK(figureOf(d, above + "sight.height") - figureOf(d, b + "face.height") ==
              Approx(2 * figureOf(d, b + "reveal.flat")));
      }
    }
    const std::string innermost = "board." + d.job.boards.back().id + '.';
    CHECK(figureOf(d, "visible.width") == figureOf(d, innermost + "sight.width"));
    CHECK(figureOf(d, "art.left") + d.job.window.distance.inMillimetres() ==
          Approx(figureOf(d, innermost + "border.left")));
    if (d.job.bands.empty()) continue;
    ++with;
    const std::string band = "band.band0.";
    const double inner = figureOf(d, band + "inner.width") * figureOf(d, band + "inner.height");
    const double outer = figureOf(d, band + "outer.width") * figureOf(d, band + "outer.height");
    CHECK(figureOf(d, band + "area") == Approx(outer - inner));
    const std::string top = "board.a.";
    CHECK(figureOf(d, "leaf.gold.area") ==
          Approx(inner - figureOf(d, top + "face.width") * figureOf(d, top + "face.height")));
    CHECK(figureOf(d, "line.rule.horizontal") == Approx(figureOf(d, band + "outer.width") + 1.5));
  }
  CHECK(with > 400);
}
