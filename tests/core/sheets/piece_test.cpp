#include "core/sheets/piece.h"

#include <map>

#include "core/materials/repeat_match.h"
#include "tests/support/richest_example.h"
#include "tests/support/worked_example.h"

using namespace core::sheets;

namespace {

double shoelace(const std::vector<Point>& points) {
  double twice = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Point& a = points[i];
    const Point& b = points[(i + 1) % points.size()];
    twice += a.x * b.y - b.x * a.y;
  }
  return std::abs(twice) / 2;
}

double areaOf(const Frame& frame) {
  const auto box = [](const Point& from, const Point& to) { return (to.x - from.x) * (to.y - from.y); };
  return box(frame.outerFrom, frame.outerTo) - box(frame.innerFrom, frame.innerTo);
}

std::vector<Point> pointsOf(const Primitive& primitive) {
  if (const auto* frame = std::get_if<Frame>(&primitive.shape)) {
    std::vector<Point> points = {frame->outerFrom, frame->outerTo};
    if (frame->innerFrom != frame->innerTo) points.insert(points.end(), {frame->innerFrom, frame->innerTo});
    return points;
  }
  if (const auto* stroke = std::get_if<Stroke>(&primitive.shape)) return stroke->points;
  return {std::get<Text>(primitive.shape).at};
}

}  // namespace

TEST_CASE("a drawing is as large as the mount and nothing on it lies beyond the mount") {
  for (const std::string& text : {tests::workedExample(), tests::inchExample()}) {
    const auto design = tests::designOf(text);
    for (const Side side : {Side::Face, Side::Back}) {
      const Drawing drawing = drawPiece(design, side);
      CHECK(drawing.width == design.layout.outerWidth);
      CHECK(drawing.height == design.layout.outerHeight);
      CHECK(drawing.side == side);
      for (const Primitive& primitive : drawing.primitives) {
        for (const Point& point : pointsOf(primitive)) {
          INFO(primitive.element << ' ' << point.x << ',' << point.y);
          CHECK(point.x >= -1e-9);
          CHECK(point.y >= -1e-9);
          CHECK(point.x <= drawing.width + 1e-9);
          CHECK(point.y <= drawing.height + 1e-9);
        }
      }
    }
  }
}

TEST_CASE("boards, bevels, flat reveals and the opening fill the face without gap or overlap") {
  for (const std::string& text : {tests::workedExample(), tests::inchExample()}) {
    const auto design = tests::designOf(text);
    double covered = design.layout.visible.area();
    for (const Primitive& primitive : drawPiece(design, Side::Face).primitives) {
      if (primitive.role == Role::BoardFace || primitive.role == Role::Bevel) {
        covered += areaOf(std::get<Frame>(primitive.shape));
      }
    }
    CHECK(covered == Approx(design.layout.outerWidth * design.layout.outerHeight));
  }
}

TEST_CASE("the four mitred strips together have the area of their band") {
  const auto design = tests::designOf(tests::workedExample());
  std::map<std::string, double> areas;
  int mitres = 0;
  double total = 0;
  for (const Primitive& primitive : drawPiece(design, Side::Face).primitives) {
    if (primitive.role == Role::Band) {
      areas[primitive.element] = shoelace(std::get<Stroke>(primitive.shape).points);
      total += areas[primitive.element];
    }
    if (primitive.role == Role::Mitre) {
      ++mitres;
      const auto points = std::get<Stroke>(primitive.shape).points;
      CHECK(std::hypot(points[1].x - points[0].x, points[1].y - points[0].y) == Approx(14 * std::sqrt(2.0)));
    }
  }
  CHECK(areas.size() == 4);
  CHECK(mitres == 4);
  CHECK(total == Approx(17'808));
  CHECK(areas.at("inner.top") == Approx(areas.at("inner.bottom")));
  CHECK(areas.at("inner.top") > areas.at("inner.left"));
}

TEST_CASE("a ruled line is drawn at its true width about its path") {
  const auto design = tests::designOf(tests::workedExample());
  for (const Primitive& primitive : drawPiece(design, Side::Face).primitives) {
    if (primitive.role != Role::Line) continue;
    const auto& frame = std::get<Frame>(primitive.shape);
    CHECK(frame.innerFrom.x - frame.outerFrom.x == Approx(1));
    CHECK(areaOf(frame) == Approx(design.layout.line(primitive.element)->path.perimeter() * 1));
  }
}

TEST_CASE("the back shows edges, sight lines and the mark turned left to right, and nothing of the face") {
  const auto design = tests::designOf(tests::inchExample());
  const Drawing back = drawPiece(design, Side::Back);
  const auto& layout = design.layout;
  bool sight = false;
  bool mark = false;
  for (const Primitive& primitive : back.primitives) {
    INFO(primitive.element);
    const Role role = primitive.role;
    CHECK((role == Role::BoardFace || role == Role::BoardEdge || role == Role::BoardSight || role == Role::Mark));
    CHECK((!primitive.matter || primitive.matter->substance == Substance::Board));
    const auto points = pointsOf(primitive);
    double least = points[0].x;
    for (const Point& point : points) least = std::min(least, point.x);
    if (role == Role::BoardSight) {
      sight = true;
      CHECK(least == Approx(layout.boards[0].borderRight));
    }
    if (role == Role::Mark) {
      mark = true;
      CHECK(points[0] == Point{layout.outerWidth, 0});
    }
  }
  CHECK(sight);
  CHECK(mark);
}

TEST_CASE("a float shows the whole sheet with air round it, a covered work only what the window shows") {
  const auto find = [](const core::design::Design& design) {
    for (const Primitive& primitive : drawPiece(design, Side::Face).primitives) {
      if (primitive.role == Role::Artwork) return std::get<Frame>(primitive.shape);
    }
    return Frame{};
  };
  const Frame floats = find(tests::designOf(tests::inchExample()));
  CHECK(floats.outerTo.x - floats.outerFrom.x == Approx(9.375 * 25.4));
  const Frame covered = find(tests::designOf(tests::workedExample()));
  CHECK(covered.outerTo.x - covered.outerFrom.x == Approx(304));
}

TEST_CASE("a strip belongs to its band, a field to each of its parts, and everything to the job") {
  CHECK(belongsTo("inner", "inner"));
  CHECK(belongsTo("inner.top", "inner"));
  CHECK(belongsTo("inner.corner.tl", "inner"));
  CHECK(belongsTo("inner.corner.tl", "inner.corner.tl"));
  CHECK_FALSE(belongsTo("inner", "inner.top"));
  CHECK_FALSE(belongsTo("inner.top", "inner.left"));
  CHECK_FALSE(belongsTo("innermost", "inner"));
  CHECK(belongsTo("field", "field#2"));
  CHECK(belongsTo("inner.top", ""));
}

TEST_CASE("a directional pattern runs on round the mount, and fails to meet at the bottom left corner alone") {
  const auto design = tests::designOf(tests::richestExample());
  const auto& band = design.job.bands.front();
  REQUIRE(band.motif == core::design::Motif::Directional);
  const double repeat = band.repeat->inMillimetres();
  const auto round = core::materials::runRound(band, design.layout.bands.front());
  using Along = core::materials::RunRound::Along;
  const double width = design.layout.bands.front().width;
  const double out = round->best == Along::Outer ? width : round->best == Along::Mean ? width / 2 : 0;
  std::map<std::string, Primitive> strips;
  for (const Primitive& primitive : drawPiece(design, Side::Face).primitives) {
    if (primitive.role == Role::Band) strips.emplace(primitive.element, primitive);
  }
  // By how much a motif is off the one before the corner, along the line on which the repeats are counted.
  const auto gap = [&](const std::string& from, const std::string& to) {
    const auto ends = [&](const std::string& side) {
      const Primitive& strip = strips.at(band.id + '.' + side);
      const auto& run = *strip.matter->run;
      const auto& points = std::get<Stroke>(strip.shape).points;
      // Inner corners: the fourth point begins the strip, the third ends it.
      const auto along = [&](const Point& point) { return core::geometry::dot(point - run.from, run.along); };
      return std::pair(along(points[3]), along(points[2]));
    };
    const double rest = ends(from).second + out + (out - ends(to).first);
    return std::remainder(rest, repeat);
  };
  CHECK(gap("left", "top") == Approx(0).margin(1e-9));
  CHECK(gap("top", "right") == Approx(0).margin(1e-9));
  CHECK(gap("right", "bottom") == Approx(0).margin(1e-9));
  CHECK(std::fabs(gap("bottom", "left")) == Approx(std::fabs(round->rest)).margin(1e-9));
}

TEST_CASE("a motif stands where the figure for cutting says, from the end of the strip") {
  for (const char* centre : {"motif", "ground"}) {
    const auto design = tests::designOf(
        tests::changed(tests::workedExample(), "\"motif\": \"mirror\",",
                       std::string("\"motif\": \"mirror\", \"centre\": { \"horizontal\": \"") + centre + "\" },"));
    const auto& placed = design.layout.bands.front();
    for (const Primitive& primitive : drawPiece(design, Side::Face).primitives) {
      if (primitive.element != "inner.top" || primitive.role != Role::Band) continue;
      const auto& points = std::get<Stroke>(primitive.shape).points;
      const double fromEnd =
          primitive.matter->run->from.x - points[0].x + (placed.stripHorizontal - placed.outer.width) / 2;
      const double first = design.figures.find("band.inner.firstMotif.horizontal")->value;
      CHECK(std::remainder(fromEnd - first, 24.0) == Approx(0).margin(1e-9));
    }
  }
}
