#include "core/sheets/strip_drawing.h"

#include <set>

#include "tests/support/richest_example.h"
#include "tests/support/worked_example.h"

using namespace core::sheets;

namespace {

const std::vector<Point>& cornersOf(const StripInHand& hand) {
  return std::get<Stroke>(hand.strip.primitives.front().shape).points;
}

// From where to where the dimension of the figure runs.
std::pair<double, double> spanOf(const StripInHand& hand) {
  const auto& points = std::get<Stroke>(hand.dimension.front().shape).points;
  return {points.front().x, points.back().x};
}

}  // namespace

TEST_CASE("a strip in the hand is as long as it is cut, its ends square") {
  const auto design = tests::designOf(tests::workedExample());
  const auto& band = design.layout.bands.front();
  for (const bool upright : {false, true}) {
    const std::string lies = upright ? "vertical" : "horizontal";
    const auto hand = drawStrip(design, "band.inner.strip." + lies);
    REQUIRE(hand.has_value());
    const double length = design.figures.find("band.inner.strip." + lies)->value;
    CHECK(hand->strip.width == length);
    CHECK(hand->strip.height == band.width);
    REQUIRE(hand->strip.primitives.size() == 1);
    std::set<double> x, y;
    for (const Point& corner : cornersOf(*hand)) x.insert(corner.x), y.insert(corner.y);
    CHECK(x == std::set<double>{0, length});
    CHECK(y == std::set<double>{0, band.width});
    CHECK(spanOf(*hand) == std::pair(0.0, length));
  }
}

TEST_CASE("its motif stands where the figure says, counted from the end, and its pattern is that of the piece") {
  for (const std::string& text : {tests::workedExample(), tests::richestExample()}) {
    const auto design = tests::designOf(text);
    for (std::size_t i = 0; i < design.job.bands.size(); ++i) {
      const auto& band = design.job.bands[i];
      if (band.motif != core::design::Motif::Mirror) continue;
      for (const char* lies : {"horizontal", "vertical"}) {
        const std::string id = "band." + band.id + ".firstMotif." + lies;
        const auto hand = drawStrip(design, id);
        REQUIRE(hand.has_value());
        const Run& run = *hand->strip.primitives.front().matter->run;
        const double first = design.figures.find(id)->value;
        CHECK(std::remainder(run.from.x - first, run.repeat) == Approx(0).margin(1e-9));
        CHECK(run.along == Point{1, 0});
        CHECK(run.outwards == Point{0, -1});
        CHECK(spanOf(*hand).second == Approx(first));
      }
    }
  }
}

TEST_CASE("the width of a strip is measured across it, before its end") {
  const auto hand = drawStrip(tests::designOf(tests::workedExample()), "band.inner.strip.width");
  REQUIRE(hand.has_value());
  const auto& points = std::get<Stroke>(hand->dimension.front().shape).points;
  CHECK(points.front().x < 0);
  CHECK(points.front().x == points.back().x);
  CHECK(points.back().y - points.front().y == Approx(14));
}

TEST_CASE("what is kept dry is measured from the mitre, and figures of other things have no strip") {
  const auto design = tests::designOf(tests::workedExample());
  const auto hand = drawStrip(design, "band.inner.dryEnd");
  REQUIRE(hand.has_value());
  CHECK(spanOf(*hand).first == Approx(6));
  CHECK(spanOf(*hand).second == Approx(6 + design.figures.find("band.inner.dryEnd")->value));
  CHECK(spanOf(*drawStrip(design, "band.inner.glueFrom")).second == Approx(spanOf(*hand).second));
  for (const char* other : {"band.inner.outer.width", "board.top.mark.left", "line.inside.horizontal", "no.such"})
    CHECK_FALSE(drawStrip(design, other).has_value());
}
