// Random jobs against the equations a mount must satisfy, worked here a second way: from distances to the mount's
// edges instead of from the opening outwards.
#include <cmath>

#include "core/design/design.h"
#include "tests/support/catch.h"
#include "tests/support/random_mounts.h"

using namespace core;

namespace {

double get(const design::Design& design, const std::string& id) {
  const auto* figure = design.figures.find(id);
  INFO(id);
  REQUIRE(figure != nullptr);
  return figure->value;
}

}  // namespace

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
    const double outerWidth = get(d, "outer.width");
    const double outerHeight = get(d, "outer.height");
    for (std::size_t i = 0; i < d.job.boards.size(); ++i) {
      const std::string b = "board." + d.job.boards[i].id + '.';
      CHECK(get(d, b + "border.left") + get(d, b + "sight.width") + get(d, b + "border.right") == Approx(outerWidth));
      CHECK(get(d, b + "border.top") + get(d, b + "sight.height") + get(d, b + "border.bottom") == Approx(outerHeight));
      CHECK(get(d, b + "mark.right") + get(d, b + "border.right") == Approx(outerWidth));
      CHECK(get(d, b + "mark.bottom") + get(d, b + "border.bottom") == Approx(outerHeight));
      CHECK(get(d, b + "face.width") - get(d, b + "sight.width") == Approx(2 * get(d, b + "bevel.plan")).margin(1e-9));
      CHECK(std::hypot(get(d, b + "bevel.plan"), get(d, b + "thickness")) == Approx(get(d, b + "bevel.slope")));
      if (i > 0) {
        const std::string above = "board." + d.job.boards[i - 1].id + '.';
        CHECK(get(d, above + "sight.width") - get(d, b + "sight.width") == Approx(2 * get(d, b + "reveal")));
        CHECK(get(d, above + "sight.height") - get(d, b + "face.height") == Approx(2 * get(d, b + "reveal.flat")));
      }
    }
    const std::string innermost = "board." + d.job.boards.back().id + '.';
    CHECK(get(d, "visible.width") == get(d, innermost + "sight.width"));
    CHECK(get(d, "art.left") + d.job.window.distance.inMillimetres() == Approx(get(d, innermost + "border.left")));
    if (d.job.bands.empty()) continue;
    ++with;
    const std::string band = "band.band0.";
    const double inner = get(d, band + "inner.width") * get(d, band + "inner.height");
    const double outer = get(d, band + "outer.width") * get(d, band + "outer.height");
    CHECK(get(d, band + "area") == Approx(outer - inner));
    const std::string top = "board.a.";
    CHECK(get(d, "leaf.gold.area") == Approx(inner - get(d, top + "face.width") * get(d, top + "face.height")));
    CHECK(get(d, "line.rule.horizontal") == Approx(get(d, band + "outer.width") + 1.5));
  }
  CHECK(with > 400);
}
