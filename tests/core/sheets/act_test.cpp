#include "core/sheets/act.h"

#include <algorithm>
#include <set>

#include "core/sheets/svg.h"
#include "tests/support/golden_drawing.h"

using namespace core::sheets;
using core::craft::Act;
using core::craft::allActs;
using core::craft::WayUp;

namespace {

constexpr WayUp kWays[] = {WayUp::None, WayUp::Face, WayUp::Back};

std::vector<Point> cornersOf(const Primitive& primitive) {
  if (const auto* frame = std::get_if<Frame>(&primitive.shape)) {
    return {frame->outerFrom, frame->outerTo, frame->innerFrom, frame->innerTo};
  }
  if (const auto* stroke = std::get_if<Stroke>(&primitive.shape)) return stroke->points;
  return {std::get<Text>(primitive.shape).at};
}

bool has(const Drawing& drawing, Role role) {
  return std::any_of(drawing.primitives.begin(), drawing.primitives.end(),
                     [role](const Primitive& primitive) { return primitive.role == role; });
}

// The one marked corner of a drawing: its right angle.
Point markOf(const Drawing& drawing) {
  for (const Primitive& primitive : drawing.primitives) {
    if (primitive.role == Role::Mark) return std::get<Stroke>(primitive.shape).points.front();
  }
  throw std::logic_error("no marked corner");
}

}  // namespace

TEST_CASE("the drawings of acts are what they were when they were looked at") {
  for (const Act act : allActs()) {
    std::string text = dump(drawAct(act, WayUp::Face));
    const std::string back = dump(drawAct(act, WayUp::Back));
    // The first line tells the side alone; a second drawing is kept only where turning the piece changes it.
    if (text.substr(text.find('\n')) != back.substr(back.find('\n'))) text += back;
    tests::checkGoldenDrawing(PROJECT_ROOT, "acts/" + std::string(name(act)) + ".txt", text);
  }
}

TEST_CASE("every act is drawn within its frame, without a word") {
  for (const Act act : allActs()) {
    for (const WayUp up : kWays) {
      INFO(name(act));
      const Drawing drawing = drawAct(act, up);
      CHECK(drawing.width == 120);
      CHECK(drawing.height == 80);
      CHECK(drawing.primitives.size() >= 4);
      for (const Primitive& primitive : drawing.primitives) {
        CHECK_FALSE(std::holds_alternative<Text>(primitive.shape));
        for (const Point& point : cornersOf(primitive)) {
          INFO(point.x << ", " << point.y);
          const bool hole = std::holds_alternative<Frame>(primitive.shape) && point == Point{};
          // A pen's width inside the edge.
          CHECK((hole || (point.x >= 1 && point.x <= 119 && point.y >= 1 && point.y <= 79)));
        }
      }
    }
  }
}

TEST_CASE("every act shows what the hand lays or which way it goes") {
  for (const Act act : allActs()) {
    INFO(name(act));
    const Drawing drawing = drawAct(act, WayUp::None);
    CHECK((has(drawing, Role::Film) || has(drawing, Role::Motion)));
  }
}

TEST_CASE("no two acts are drawn alike") {
  std::set<std::string> drawn;
  for (const Act act : allActs()) drawn.insert(dump(drawAct(act, WayUp::None)));
  CHECK(drawn.size() == allActs().size());
}

TEST_CASE("what cuts shows its blade and what falls away") {
  for (const Act act : {Act::CutSquare, Act::CutBevel, Act::CutCurve, Act::CutStrips, Act::Mitre}) {
    INFO(name(act));
    const Drawing drawing = drawAct(act, WayUp::None);
    CHECK(has(drawing, Role::Blade));
    CHECK(has(drawing, Role::Waste));
  }
}

TEST_CASE("the marked corner lies top left face up and top right back up") {
  for (const Act act : {Act::Measure, Act::MarkOut, Act::CutCurve, Act::Refit, Act::Register}) {
    INFO(name(act));
    CHECK(markOf(drawAct(act, WayUp::Face)).x < 60);
    CHECK(markOf(drawAct(act, WayUp::Back)).x > 60);
    CHECK(drawAct(act, WayUp::Back).side == Side::Back);
  }
}

TEST_CASE("a bevel is cut from the back unless the step says otherwise, and the blade leans with the side") {
  CHECK(dump(drawAct(Act::CutBevel, WayUp::None)) == dump(drawAct(Act::CutBevel, WayUp::Back)));
  // The lowest point of a blade, and the middle of its own: from the back it reaches under what is kept, to the left.
  const auto leansRight = [](const Drawing& drawing) {
    for (const Primitive& primitive : drawing.primitives) {
      if (primitive.role != Role::Blade) continue;
      const auto& points = std::get<Stroke>(primitive.shape).points;
      return points[1].x > points[0].x;
    }
    throw std::logic_error("no blade");
  };
  CHECK(leansRight(drawAct(Act::CutBevel, WayUp::Back)));
  CHECK_FALSE(leansRight(drawAct(Act::CutBevel, WayUp::Face)));
}

TEST_CASE("an act is drawn as SVG as well, hatching unfilled") {
  const std::string text = svg(drawAct(Act::CutBevel, WayUp::Back));
  CHECK(text.find("class=\"blade\" fill=\"#1B1F23\"") != std::string::npos);
  CHECK(text.find("class=\"waste\" fill=\"none\"") != std::string::npos);
}

TEST_CASE("a number stands at the part its sentence speaks of, and nowhere where the drawing has no such part") {
  using core::craft::ActPlace;
  const Drawing mitre = drawAct(Act::Mitre, WayUp::Face);
  const auto three = numerals(mitre, {ActPlace::Under, ActPlace::Work, ActPlace::Aside});
  REQUIRE(three.size() == 3);
  for (int i = 0; i < 3; ++i) CHECK(three[static_cast<std::size_t>(i)].number == i + 1);
  // The hard strip lies under the lower right of the crossing, the waste falls off at the upper left.
  CHECK(three[0].at.x > three[2].at.x);
  CHECK(three[0].at.y > three[2].at.y);
  const auto some = numerals(mitre, {std::nullopt, ActPlace::Work, ActPlace::End});
  REQUIRE(some.size() == 1);
  CHECK(some[0].number == 2);
  CHECK(numerals(mitre, {}).empty());
}

TEST_CASE("every act has places for its sentences, each once, clear of the frame") {
  for (const Act act : allActs()) {
    for (const WayUp up : kWays) {
      INFO(name(act));
      const Drawing drawing = drawAct(act, up);
      CHECK_FALSE(drawing.places.empty());
      std::set<core::craft::ActPlace> seen;
      for (const DrawnPlace& place : drawing.places) {
        INFO(name(place.place));
        CHECK(seen.insert(place.place).second);
        CHECK((place.at.x >= 5 && place.at.x <= 115 && place.at.y >= 5 && place.at.y <= 75));
      }
    }
  }
}

TEST_CASE("where an act shows a board or a paper it is the piece's own") {
  const ActPapers papers{"cream museum board", "blue wave", 3};
  const auto named = [](const Drawing& drawing, Substance substance, const std::string& what) {
    return std::any_of(drawing.primitives.begin(), drawing.primitives.end(), [&](const Primitive& primitive) {
      return primitive.matter && primitive.matter->substance == substance && primitive.matter->name == what;
    });
  };
  for (const Act act : {Act::CutBevel, Act::MarkOut, Act::BrushBevel, Act::RuleLine, Act::FloodWash}) {
    INFO(name(act));
    CHECK(named(drawAct(act, WayUp::None, papers), Substance::Board, papers.board));
  }
  for (const Act act : {Act::CutStrips, Act::FitStrips, Act::Mitre, Act::CloseCorner}) {
    INFO(name(act));
    const Drawing drawing = drawAct(act, WayUp::None, papers);
    CHECK(named(drawing, Substance::Paper, papers.paper));
    for (const Primitive& primitive : drawing.primitives) {
      if (primitive.matter && primitive.matter->run) {
        CHECK(primitive.matter->run->repeat == Approx(3 * primitive.matter->run->width));
      }
    }
  }
}
