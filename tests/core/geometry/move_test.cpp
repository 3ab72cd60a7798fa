// The rules of moving, each on the smallest outline that shows it.
#include "core/geometry/move.h"

#include <numbers>

#include "tests/core/geometry/forms_here.h"

using namespace core::geometry;
using tests::allOf;
using tests::arched;
using tests::cornered;
using tests::made;
using tests::plain;

namespace {

using Kind = MoveProblem::Kind;

// Through the points in order and back to the first.
Outline polygon(const std::vector<Point>& corners) {
  std::vector<Segment> sides;
  for (std::size_t i = 0; i < corners.size(); ++i)
    sides.push_back(Straight{corners[i], corners[(i + 1) % corners.size()]});
  return Outline(std::move(sides));
}

Outline movedBy(const Outline& outline, double d) {
  auto other = moved(outline, d);
  INFO("moved by " << d);
  if (!other) FAIL(name(other.error().kind));
  CHECK(tests::isClosed(other.value()));
  return std::move(other).value();
}

MoveProblem refused(const Outline& outline, double d) {
  const auto other = moved(outline, d);
  INFO("moved by " << d);
  if (other) FAIL(outlineText(other.value()));
  return other.error();
}

// A triangle with its sharp corner of the given degrees at the origin, 100 long.
Outline wedge(double degrees) {
  const double half = degrees * std::numbers::pi / 360;
  return polygon({{0, 0}, {100, -100 * std::tan(half)}, {100, 100 * std::tan(half)}});
}

}  // namespace

TEST_CASE("every side of a rectangle moves by the distance", "[geometry]") {
  const Outline before = outlineOf(Rectangle{0, 0, 30, 20});
  CHECK(tests::apart(movedBy(before, 6), outlineOf(Rectangle{-6, -6, 36, 26})) < 1e-12);
  CHECK(tests::apart(movedBy(before, -6), outlineOf(Rectangle{6, 6, 24, 14})) < 1e-12);
  CHECK(refused(before, -10).kind == Kind::Nothing);
  CHECK(refused(before, -12).kind == Kind::Nothing);
  CHECK(refused(before, -500).kind == Kind::Nothing);
}

TEST_CASE("arcs keep their centres: one that bulges out grows, one that cuts in shrinks", "[geometry]") {
  const auto rounded = allOf<Arc>(movedBy(made(cornered(Shape::Rounded, 20), 300, 200).outline, 6));
  const auto scalloped = allOf<Arc>(movedBy(made(cornered(Shape::Scalloped, 20), 300, 200).outline, 6));
  REQUIRE(rounded.size() == 4);
  REQUIRE(scalloped.size() == 4);
  for (const Arc& arc : rounded) CHECK(arc.radius == Approx(26));
  for (const Arc& arc : scalloped) CHECK(arc.radius == Approx(14));
  CHECK(rounded[0].centre == Point{-130, -80});
  CHECK(scalloped[0].centre == Point{-150, -100});
}

TEST_CASE("a corner moves along its diagonal until its sides meet", "[geometry]") {
  for (const double degrees : {30.0, 60.0, 90.0, 120.0, 170.0}) {
    INFO(degrees);
    const Outline outline = movedBy(wedge(degrees), 5);
    CHECK(outline.bounds().left == Approx(-5 / std::sin(degrees * std::numbers::pi / 360)).epsilon(1e-12));
  }
}

TEST_CASE("a corner whose sides meet within four times the distance is extended, one just sharper gets an arc",
          "[geometry]") {
  const double limit = 2 * std::asin(0.25) * 180 / std::numbers::pi;
  const Outline extended = movedBy(wedge(limit + 0.001), 5);
  CHECK(allOf<Arc>(extended).empty());
  CHECK(extended.bounds().left == Approx(-20).margin(1e-3));
  const Outline closed = movedBy(wedge(limit - 0.001), 5);
  REQUIRE(allOf<Arc>(closed).size() == 1);
  CHECK(allOf<Arc>(closed)[0].radius == Approx(5));
  CHECK(allOf<Arc>(closed)[0].centre == Point{0, 0});
  CHECK(closed.bounds().left == Approx(-5));
}

TEST_CASE("a re-entrant corner opens inwards under the same limit", "[geometry]") {
  // A spike of the frame points into the opening from the left.
  const auto spiked = [](double degrees) {
    const double half = 30 * std::tan(degrees * std::numbers::pi / 360);
    return polygon({{0, -100}, {200, -100}, {200, 100}, {0, 100}, {0, half}, {30, 0}, {0, -half}});
  };
  const double limit = 2 * std::asin(0.25) * 180 / std::numbers::pi;
  const Outline extended = movedBy(spiked(limit + 0.001), -5);
  CHECK(allOf<Arc>(extended).empty());
  CHECK(extended.distanceTo({50, 0}) == Approx(0).margin(2e-3));
  const Outline closed = movedBy(spiked(limit - 0.001), -5);
  REQUIRE(allOf<Arc>(closed).size() == 1);
  CHECK(allOf<Arc>(closed)[0].sweep < 0);
  CHECK(closed.distanceTo({35, 0}) == Approx(0).margin(1e-9));
}

TEST_CASE("a pointed apex is extended along its own circles", "[geometry]") {
  // Equilateral on 200: the circles about the springing points grow to 206 and meet on the axis.
  const double rise = 100 * std::sqrt(3.0);
  const Outline outline = movedBy(made(arched(Head::Pointed, rise), 200, 300).outline, 6);
  CHECK(allOf<Arc>(outline).size() == 2);
  CHECK(-outline.bounds().top == Approx(std::sqrt(206.0 * 206 - 100.0 * 100)).margin(1e-6));
}

TEST_CASE("an ogee's apex, whose sides never meet outside, is closed by an arc about it", "[geometry]") {
  const Outline outline = movedBy(made(arched(Head::Ogee, 180, 80), 240, 400).outline, 6);
  const auto arcs = allOf<Arc>(outline);
  REQUIRE(arcs.size() == 5);
  CHECK(arcs[2].radius == Approx(6));
  CHECK(distance(arcs[2].centre, {0, -180}) < 1e-9);
  CHECK(arcs[2].sweep == Approx(std::numbers::pi).margin(1e-6));
  CHECK(outline.bounds().top == Approx(-186));
}

TEST_CASE("an ogee moved inwards is trimmed where its sides cross", "[geometry]") {
  const Outline outline = movedBy(made(arched(Head::Ogee, 180, 80), 240, 400).outline, -4);
  CHECK(allOf<Arc>(outline).size() == 4);
  // The reverse curves, of 115 about (115, 180 up), grow to 119 and cross where x = 0.
  CHECK(-outline.bounds().top == Approx(180 - std::sqrt(119.0 * 119 - 115.0 * 115)).margin(1e-9));
}

TEST_CASE("cusps are trimmed outwards", "[geometry]") {
  const Outline before = made(tests::trefoil(50, 70, 80), 240, 330).outline;
  const Outline outline = movedBy(before, 6);
  CHECK(allOf<Arc>(outline).size() == 3);
  const auto arcs = allOf<Arc>(outline);
  // The joint lies on both grown circles.
  CHECK(distance(arcs[1].to, {0, -80}) == Approx(76).margin(1e-9));
  CHECK(distance(arcs[1].to, {70, 0}) == Approx(56).margin(1e-9));
  for (const Arc& arc : arcs) CHECK(std::fabs(arc.sweep) < 2 * std::numbers::pi);
}

TEST_CASE("cusps are extended inwards while their circles still meet, and rounded about the cusp when they do not",
          "[geometry]") {
  const Outline before = made(tests::trefoil(50, 70, 80), 240, 330).outline;
  // Centres 106.3 apart: the circles of 50 - d and 70 - d meet while 120 - 2 d is more than that.
  const double parting = (120 - std::hypot(70, 80)) / 2;
  CHECK(allOf<Arc>(movedBy(before, -(parting - 0.01))).size() == 3);
  const auto arcs = allOf<Arc>(movedBy(before, -(parting + 0.01)));
  REQUIRE(arcs.size() == 5);
  CHECK(arcs[1].radius == Approx(parting + 0.01));
  CHECK(arcs[1].sweep < 0);
}

TEST_CASE("an arc that would shrink to nothing is refused with what it has room for", "[geometry]") {
  const Outline rounded = made(cornered(Shape::Rounded, 20), 300, 200).outline;
  const Outline scalloped = made(cornered(Shape::Scalloped, 20), 300, 200).outline;
  CHECK(refused(rounded, -20).kind == Kind::ArcVanishes);
  CHECK(refused(rounded, -20).room == Approx(20));
  CHECK(refused(scalloped, 20).kind == Kind::ArcVanishes);
  CHECK(refused(scalloped, 25).room == Approx(20));
  CHECK(moved(rounded, -19.999).ok());
  CHECK(moved(scalloped, 19.999).ok());
  CHECK(refused(made(plain(Shape::Round), 250, 250).outline, -125).room == Approx(125));
  const MoveProblem oval = refused(made(plain(Shape::Oval), 300, 200).outline, -70);
  CHECK(oval.kind == Kind::ArcVanishes);
  CHECK(oval.room == Approx(100.0 * 100 / 150));
  CHECK(moved(made(plain(Shape::Oval), 300, 200).outline, -66.66).ok());
}

TEST_CASE("chamfers are swallowed inwards once their neighbours meet", "[geometry]") {
  const Outline before = made(cornered(Shape::Chamfered, 20), 300, 200).outline;
  // A side of 20 root 2 loses 2 d tan 22.5 degrees.
  const double swallowed = 20 * std::sqrt(2.0) / (2 * std::tan(std::numbers::pi / 8));
  CHECK(movedBy(before, -(swallowed - 0.01)).segments().size() == 8);
  const Outline after = movedBy(before, -(swallowed + 0.01));
  CHECK(after.segments().size() == 4);
  CHECK(isRectangle(after));
  CHECK(after.bounds().left == Approx(-150 + swallowed + 0.01));
}

TEST_CASE("a narrow notch closes up outwards and leaves no trace but its mouth's", "[geometry]") {
  const Outline before = polygon({{0, 0}, {100, 0}, {100, 100}, {55, 100}, {55, 60}, {45, 60}, {45, 100}, {0, 100}});
  CHECK(movedBy(before, 4).segments().size() == 8);
  const Outline after = movedBy(before, 6);
  CHECK(after.area() == Approx(112.0 * 112).epsilon(1e-12));
}

TEST_CASE("a lobe is swallowed by its neighbours where they grow over it", "[geometry]") {
  // A small lobe between two large ones.
  const Arc left = arcAbout({0, 0}, {-50, 0}, {30, -40}, true);
  const Arc lobe = arcAbout({35, -40}, {30, -40}, {40, -40}, true);
  const Arc right = arcAbout({70, 0}, {40, -40}, {120, 0}, true);
  const Outline before({left, lobe, right, Straight{{120, 0}, {120, 90}}, Straight{{120, 90}, {-50, 90}},
                        Straight{{-50, 90}, {-50, 0}}});
  CHECK(allOf<Arc>(movedBy(before, 1)).size() == 3);
  const Outline after = movedBy(before, 80);
  const auto arcs = allOf<Arc>(after);
  REQUIRE(arcs.size() == 2);
  CHECK(distance(arcs[0].to, {35, -std::sqrt(130.0 * 130 - 35 * 35)}) < 1e-9);
}

TEST_CASE("an opening that would fall into parts is refused, and so is one that would close round a hole",
          "[geometry]") {
  // Two rooms and a passage of 10 between them.
  const Outline rooms = polygon({{0, 0},
                                 {40, 0},
                                 {40, 15},
                                 {80, 15},
                                 {80, 0},
                                 {120, 0},
                                 {120, 40},
                                 {80, 40},
                                 {80, 25},
                                 {40, 25},
                                 {40, 40},
                                 {0, 40}});
  CHECK(moved(rooms, -4.9).ok());
  CHECK(refused(rooms, -5.1).kind == Kind::Parts);
  CHECK(refused(rooms, -25).kind == Kind::Nothing);
  // A C whose mouth closes before its inside does.
  const Outline open = polygon({{0, 0},
                                {100, 0},
                                {100, 45},
                                {80, 45},
                                {80, 20},
                                {20, 20},
                                {20, 80},
                                {80, 80},
                                {80, 55},
                                {100, 55},
                                {100, 100},
                                {0, 100}});
  CHECK(moved(open, 4.9).ok());
  CHECK(refused(open, 6).kind == Kind::Parts);
  CHECK(movedBy(open, 31).area() == Approx(162.0 * 162));
}

TEST_CASE("a corner that hardly turns is moved like any other", "[geometry]") {
  // From one that bends by a hair to one that bends by a degree, re-entrant and not.
  for (double bend = 1e-9; bend < 0.02; bend *= 1.7) {
    INFO("bend " << bend);
    for (const double side : {1.0, -1.0}) {
      const Outline bent = polygon({{0, 0}, {100, side * 100 * bend}, {200, 0}, {200, 100}, {0, 100}});
      for (const double d : {6.0, -6.0}) {
        const Outline after = movedBy(bent, d);
        CHECK(after.area() == Approx((200 + 2 * d) * (100 + 2 * d) - side * 10'000 * bend).epsilon(2e-3));
        CHECK(std::fabs(tests::apart(movedBy(after, -d), bent)) < 1e-6);
      }
    }
  }
}

TEST_CASE("a pointed head that is hardly pointed is trimmed like any other", "[geometry]") {
  for (double above = 1e-6; above < 1; above *= 2) {
    INFO("rise " << above << " above half the span");
    const Outline before = made(arched(Head::Pointed, 100 + above), 200, 300).outline;
    for (const double d : {6.0, -6.0}) {
      const Outline after = movedBy(before, d);
      CHECK(-after.bounds().top == Approx(100 + above + d).margin(0.01));
    }
  }
}

TEST_CASE("a horseshoe's jambs may be swallowed, never turned inside out", "[geometry]") {
  const Outline before = made(arched(Head::Horseshoe, 218), 220, 330).outline;
  for (double d = -0.5; d > -109; d -= 0.5) {
    const auto after = moved(before, d);
    if (!after) continue;
    INFO(d << ": " << outlineText(after.value()));
    CHECK(after.value().area() > 0);
    CHECK(after.value().area() < before.area());
    for (const Segment& segment : after.value().segments()) {
      CHECK(before.distanceTo(pointAt(segment, 0.5)) >= -d - 1e-6);
      CHECK(before.contains(pointAt(segment, 0.5)));
    }
  }
}

TEST_CASE("the names of what may go wrong are told", "[geometry]") {
  CHECK(name(Kind::ArcVanishes) == "arc-vanishes");
  CHECK(name(Kind::Nothing) == "nothing");
  CHECK(name(Kind::Parts) == "parts");
}
