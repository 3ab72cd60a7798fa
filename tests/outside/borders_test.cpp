// Source: United States Navy, Illustrator Draftsman training manual NAVEDTRA 14066, page 2-32: a mount is weighted at
// the bottom in the ratio 3:4, top to bottom. The other figures are worked by hand beside each.
#include "tests/outside/job_with.h"

using tests::figureOf;
using tests::Plain;
using tests::plainJob;

TEST_CASE("three inches at the top want four at the bottom") {
  Plain plain;
  plain.borders = R"({"sides": "3 in", "weighting": "4:3"})";
  CHECK(figureOf(plainJob(plain), "board.only.border.top") == Approx(3 * 25.4).epsilon(1e-15));
  CHECK(figureOf(plainJob(plain), "board.only.border.bottom") == Approx(4 * 25.4).epsilon(1e-15));
  CHECK(figureOf(plainJob(plain), "outer.height") == Approx(300 + 7 * 25.4));
}

TEST_CASE("an outer height of 500 round an opening of 300 divides as worked by hand") {
  Plain plain;
  // 200 to divide in seven: three sevenths above, four below.
  plain.borders = R"({"outer": {"width": "460 mm", "height": "500 mm"}, "weighting": "4:3"})";
  CHECK(figureOf(plainJob(plain), "board.only.border.top") == Approx(85.714286).margin(5e-7));
  CHECK(figureOf(plainJob(plain), "board.only.border.bottom") == Approx(114.285714).margin(5e-7));
  CHECK(figureOf(plainJob(plain), "board.only.border.left") == Approx(80));
  // 200 less 13 in two halves, and the 13 below.
  plain.borders = R"({"outer": {"width": "460 mm", "height": "500 mm"}, "weighting": "+13 mm"})";
  CHECK(figureOf(plainJob(plain), "board.only.border.top") == Approx(93.5));
  CHECK(figureOf(plainJob(plain), "board.only.border.bottom") == Approx(106.5));
}
