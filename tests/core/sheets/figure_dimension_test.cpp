#include <cmath>
#include <set>

#include "core/sheets/piece.h"
#include "tests/support/shaped_example.h"

using namespace core::sheets;

namespace {

// The dimension line itself: the first stroke, in front of its two ends.
const Stroke& lineOf(const FigureDimension& dimension) {
  for (const Primitive& primitive : dimension.primitives) {
    if (primitive.role == Role::Dimension) return std::get<Stroke>(primitive.shape);
  }
  throw std::logic_error("no dimension line");
}

double lengthOf(const Stroke& stroke) {
  return std::hypot(stroke.points[1].x - stroke.points[0].x, stroke.points[1].y - stroke.points[0].y);
}

FigureDimension drawn(const core::design::Design& design, const std::string& id) {
  INFO(id);
  auto dimension = drawFigure(design, id);
  REQUIRE(dimension.has_value());
  return *dimension;
}

}  // namespace

TEST_CASE("a dimension line is as long as its figure says") {
  for (const std::string& text : {tests::workedExample(), tests::inchExample()}) {
    const auto design = tests::designOf(text);
    int lines = 0;
    for (const auto& figure : design.figures.all()) {
      const auto dimension = drawFigure(design, figure.id);
      if (!dimension) continue;
      ++lines;
      INFO(figure.id);
      CHECK(lengthOf(lineOf(*dimension)) == Approx(figure.value).margin(1e-9));
      const Primitive& last = dimension->primitives.back();
      REQUIRE(last.role == Role::DimensionText);
      CHECK(std::get<Text>(last.shape).text == figure.display);
    }
    CHECK(lines > 40);
  }
}

TEST_CASE("every length lies on the drawing except totals, depths, slopes and what belongs to the frame") {
  const std::set<std::string> without = {
      "board.thickness", "board.sight.perimeter", "board.face.perimeter", "board.bevel.slope", "band.corner.phase",
      "line.total",      "line.width",            "board.bevel.overrun",  "rebate.width",      "rebate.height",
      "rebate.depth",    "package.depth"};
  const auto design = tests::designOf(tests::workedExample());
  for (const auto& figure : design.figures.all()) {
    INFO(figure.id);
    const bool placed = figure.unit == core::design::FigureUnit::Millimetre && without.count(figure.kind) == 0;
    CHECK(drawFigure(design, figure.id).has_value() == placed);
  }
}

TEST_CASE("of a shaped window every length is drawn as long as it is, or is none of the drawing") {
  // Ways round, depths and strings have no place; nor has a distance of nothing.
  const std::set<std::string> without = {
      "board.thickness", "board.sight.perimeter", "board.face.perimeter", "board.bevel.slope",
      "line.total",      "rebate.width",          "rebate.height",        "rebate.depth",
      "package.depth",   "band.corner.phase",     "board.oval.string",    "board.bevel.overrun", "line.width"};
  for (const std::string& form : tests::shapedForms()) {
    const auto design = tests::designOf(tests::shapedExample(form));
    INFO(form);
    for (const auto& figure : design.figures.all()) {
      if (figure.unit != core::design::FigureUnit::Millimetre || std::fabs(figure.value) < 1e-9) continue;
      INFO(figure.id);
      const auto dimension = drawFigure(design, figure.id);
      REQUIRE(dimension.has_value() == (without.count(figure.kind) == 0));
      if (!dimension) continue;
      double drawnLength = 0;
      for (const Primitive& primitive : dimension->primitives) {
        const auto* stroke = std::get_if<Stroke>(&primitive.shape);
        if (primitive.role != Role::Dimension || stroke == nullptr) continue;
        drawnLength = lengthOf(*stroke);
        break;
      }
      CHECK(drawnLength == Approx(std::fabs(figure.value)).margin(1e-6));
    }
  }
}

TEST_CASE("a figure no design has is not drawn") {
  CHECK_FALSE(drawFigure(tests::designOf(tests::workedExample()), "board.other.mark.left").has_value());
}

TEST_CASE("marks are drawn on the back and start at the edges of the marked corner") {
  const auto design = tests::designOf(tests::workedExample());
  for (const char* side : {"left", "right"}) {
    const auto dimension = drawn(design, std::string("board.under.mark.") + side);
    CHECK(dimension.side == Side::Back);
    // Top left seen from the face is top right seen from the back.
    CHECK(lineOf(dimension).points[0].x == design.layout.outerWidth);
  }
  for (const char* side : {"top", "bottom"}) {
    const auto dimension = drawn(design, std::string("board.under.mark.") + side);
    CHECK(dimension.side == Side::Back);
    CHECK(lineOf(dimension).points[0].y == 0);
  }
}

TEST_CASE("the back's left border is the face's right border") {
  const auto design = tests::designOf(tests::inchExample());
  const auto back = drawn(design, "board.face.back.left");
  CHECK(back.side == Side::Back);
  CHECK(std::min(lineOf(back).points[0].x, lineOf(back).points[1].x) == Approx(0).margin(1e-9));
  const auto face = drawn(design, "board.face.border.right");
  CHECK(face.side == Side::Face);
  CHECK(lengthOf(lineOf(back)) == Approx(lengthOf(lineOf(face))));
}

TEST_CASE("strips are measured from cut end to cut end, and glue starts inside both the trim and the dry end") {
  const auto design = tests::designOf(tests::workedExample());
  const Stroke strip = lineOf(drawn(design, "band.inner.strip.horizontal"));
  const Stroke glue = lineOf(drawn(design, "band.inner.glueFrom"));
  const Stroke dry = lineOf(drawn(design, "band.inner.dryEnd"));
  CHECK(glue.points[0].x == strip.points[0].x);
  CHECK(dry.points[0].x == Approx(strip.points[0].x + 6));
  CHECK(glue.points[1].x == Approx(dry.points[1].x));
}
