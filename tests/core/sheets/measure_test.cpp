#include "core/sheets/measure.h"

#include "core/sheets/piece.h"
#include "core/sheets/strip_drawing.h"
#include "tests/support/catch.h"
#include "tests/support/design_of.h"
#include "tests/support/worked_example.h"

using namespace core::sheets;
using core::geometry::Rectangle;

namespace {

std::optional<Measure> onPiece(const core::design::Design& design, const std::string& id) {
  const auto dimension = drawFigure(design, id);
  if (!dimension) return std::nullopt;
  return measureOf(dimension->primitives, *design.figures.find(id), design.layout.outerWidth,
                   design.layout.outerHeight);
}

}  // namespace

TEST_CASE("the measure of a figure is as long as the figure says", "[sheets][measure]") {
  const auto design = tests::designOf(tests::workedExample());
  int straight = 0;
  for (const auto& figure : design.figures.all()) {
    const auto measure = onPiece(design, figure.id);
    if (!measure) continue;
    ++straight;
    INFO(figure.id);
    const double length =
        std::max(std::fabs(measure->to.x - measure->from.x), std::fabs(measure->to.y - measure->from.y));
    CHECK(length == Approx(std::fabs(figure.value)).margin(1e-6));
  }
  CHECK(straight > 20);
}

TEST_CASE("what runs aslant has no measure beside the piece", "[sheets][measure]") {
  CHECK_FALSE(onPiece(tests::designOf(tests::workedExample()), "band.inner.mitre").has_value());
}

TEST_CASE("a measure begins at the edge of the board, whichever end it was drawn from", "[sheets][measure]") {
  const auto design = tests::designOf(tests::workedExample());
  const auto left = onPiece(design, "outer.width");
  REQUIRE(left.has_value());
  CHECK(left->fromEdge);
  CHECK(left->gives == Gives::Line);
  const auto window = onPiece(design, "visible.width");
  REQUIRE(window.has_value());
  CHECK_FALSE(window->fromEdge);
  CHECK(window->gives == Gives::Distance);
}

TEST_CASE("a strip is measured from its cut end", "[sheets][measure]") {
  const auto design = tests::designOf(tests::workedExample());
  const std::string id = "band.inner.strip.horizontal";
  const auto hand = drawStrip(design, id);
  REQUIRE(hand.has_value());
  const auto measure = measureOf(hand->dimension, *design.figures.find(id), hand->strip.width, hand->strip.height);
  REQUIRE(measure.has_value());
  CHECK(measure->fromEdge);
  CHECK(measure->isLevel());
  CHECK(measure->from.x == Approx(0).margin(1e-9));
  CHECK(measure->to.x == Approx(hand->strip.width));
}

TEST_CASE("the lines of a measure: ring at the datum, hatched edge, head and line at the other end",
          "[sheets][measure]") {
  const Measure measure{{10, 80}, {210, 80}, true, Gives::Line};
  const auto lines = measureLines(measure, Rectangle{10, 60, 210, 100}, 30, 20);
  int rings = 0, heads = 0, hatches = 0, made = 0;
  for (const Primitive& line : lines) {
    const auto* stroke = std::get_if<Stroke>(&line.shape);
    if (line.role == Role::Dimension && stroke == nullptr) ++rings;
    if (line.role == Role::Dimension && stroke != nullptr && stroke->closed) {
      ++heads;
      CHECK(stroke->points[0].x == Approx(210));
      CHECK(stroke->points[0].y == Approx(30));
    }
    if (line.role == Role::Waste) {
      ++hatches;
      // Outside what is drawn.
      CHECK(stroke->points[1].x < 10);
    }
    if (line.role == Role::Line) {
      ++made;
      CHECK(stroke->points[0].x == Approx(210));
      CHECK(stroke->points[0].y == Approx(60));
      CHECK(stroke->points[1].y == Approx(100));
    }
  }
  CHECK(rings == 1);
  CHECK(heads == 1);
  CHECK(hatches > 2);
  CHECK(made == 1);
}

TEST_CASE("a distance that is there already has a head at both ends and no ring", "[sheets][measure]") {
  const auto lines = measureLines({{10, 20}, {10, 120}, false, Gives::Distance}, Rectangle{0, 0, 100, 140}, 130, 20);
  int heads = 0;
  for (const Primitive& line : lines) {
    const auto* stroke = std::get_if<Stroke>(&line.shape);
    REQUIRE(stroke != nullptr);
    CHECK(line.role != Role::Line);
    if (line.role == Role::Dimension && stroke->closed) ++heads;
    // Upright, and beside the drawing.
    if (line.role == Role::Dimension && !stroke->closed) CHECK(stroke->points[0].x == Approx(130));
  }
  CHECK(heads == 2);
}
