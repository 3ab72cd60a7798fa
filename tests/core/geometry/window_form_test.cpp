#include "core/geometry/window_form.h"

#include <numbers>

#include "tests/core/geometry/forms_here.h"

using namespace core::geometry;
using tests::allOf;
using tests::arched;
using tests::cornered;
using tests::made;
using tests::plain;

namespace {

void checkPoint(Point got, double x, double y) {
  CHECK(got.x == Approx(x).margin(1e-9));
  CHECK(got.y == Approx(y).margin(1e-9));
}

}  // namespace

TEST_CASE("a rectangle has its corners, and its springing is its top", "[geometry]") {
  const WindowForm form = made(plain(Shape::Rectangle), 300, 200);
  CHECK(form.outline == outlineOf(Rectangle{-150, -100, 150, 100}));
  CHECK(form.springing == -100);
}

TEST_CASE("rounded corners bulge out, scalloped ones cut in about the corner, chamfers are straight", "[geometry]") {
  const auto rounded = allOf<Arc>(made(cornered(Shape::Rounded, 20), 300, 200).outline);
  const auto scalloped = allOf<Arc>(made(cornered(Shape::Scalloped, 20), 300, 200).outline);
  REQUIRE(rounded.size() == 4);
  REQUIRE(scalloped.size() == 4);
  for (const Arc& arc : rounded) CHECK(arc.sweep == Approx(std::numbers::pi / 2));
  for (const Arc& arc : scalloped) CHECK(arc.sweep == Approx(-std::numbers::pi / 2));
  checkPoint(rounded[0].centre, -130, -80);
  checkPoint(scalloped[0].centre, -150, -100);
  checkPoint(scalloped[1].centre, 150, -100);
  const WindowForm chamfered = made(cornered(Shape::Chamfered, 20), 300, 200);
  CHECK(allOf<Straight>(chamfered.outline).size() == 8);
  CHECK(chamfered.springing == -80);
}

TEST_CASE("corners that take half a side leave no straight there", "[geometry]") {
  const WindowForm form = made(cornered(Shape::Rounded, 100), 300, 200);
  CHECK(allOf<Straight>(form.outline).size() == 2);
  CHECK(tests::isClosed(form.outline));
  CHECK(allOf<Straight>(made(cornered(Shape::Scalloped, 100), 200, 200).outline).empty());
}

TEST_CASE("ovals and rounds are one segment about the middle", "[geometry]") {
  const WindowForm oval = made(plain(Shape::Oval), 300, 200);
  REQUIRE(oval.outline.segments().size() == 1);
  const auto& ellipse = std::get<OvalArc>(oval.outline.segments().front());
  CHECK(ellipse.semiX == 150);
  CHECK(ellipse.semiY == 100);
  CHECK(ellipse.out == 0);
  CHECK(oval.springing == 0);
  const WindowForm round = made(plain(Shape::Round), 250, 250);
  CHECK(std::get<Arc>(round.outline.segments().front()).radius == 125);
}

TEST_CASE("jambs run from the springing line down, and are left out where the head takes the whole height",
          "[geometry]") {
  const WindowForm tall = made(arched(Head::Round), 200, 350);
  CHECK(allOf<Straight>(tall.outline).size() == 3);
  CHECK(tall.outline.bounds().bottom == 250);
  CHECK(tall.outline.bounds().top == -100);
  CHECK(tall.springing == 0);
  const WindowForm head = made(arched(Head::Round), 200, 100);
  REQUIRE(allOf<Straight>(head.outline).size() == 1);
  checkPoint(allOf<Straight>(head.outline)[0].from, 100, 0);
}

TEST_CASE("each head joins its pieces smoothly but at its apex and its cusps", "[geometry]") {
  for (const auto& form : tests::everyForm()) {
    if (form.entry.shape != Shape::Arch) continue;
    INFO(form.name);
    const auto arcs = allOf<Arc>(made(form).outline);
    for (std::size_t i = 0; i + 1 < arcs.size(); ++i) {
      const Point before = directionAtEnd(arcs[i]);
      const Point after = directionAtStart(arcs[i + 1]);
      const double turn = std::atan2(cross(before, after), dot(before, after));
      const bool cusped = form.entry.head == Head::Trefoil || form.entry.head == Head::Multifoil;
      const bool apex = std::fabs(arcs[i].to.x) < 1e-9;
      if (cusped) {
        CHECK(turn < -0.1);
      } else if (!apex) {
        CHECK(turn == Approx(0).margin(1e-9));
      } else if (form.entry.head != Head::Ogee) {
        CHECK(turn > 0.1);
      } else {
        CHECK(std::fabs(turn) == Approx(std::numbers::pi).margin(1e-6));
      }
    }
  }
}

TEST_CASE("heads that bear it spring upright from their jambs", "[geometry]") {
  for (const auto& form : tests::everyForm()) {
    if (form.entry.shape != Shape::Arch) continue;
    const bool leans =
        form.entry.head == Head::Segmental || form.entry.head == Head::Horseshoe || form.entry.head == Head::Multifoil;
    if (leans) continue;
    INFO(form.name);
    const auto arcs = allOf<Arc>(made(form).outline);
    CHECK(directionAtStart(arcs.front()).y == Approx(-1).margin(1e-12));
    CHECK(directionAtEnd(arcs.back()).y == Approx(1).margin(1e-12));
  }
}

TEST_CASE("a low ogee's sides come down to the springing line at least", "[geometry]") {
  // At its least radius the reverse curve touches the line and no more.
  const double least = (80.0 - 120) * (80.0 - 120) / 240;
  const auto form = made(arched(Head::Ogee, 80, least + 1e-3), 240, 300);
  double lowest = -INFINITY;
  for (const Arc& arc : allOf<Arc>(form.outline)) {
    if (arc.sweep < 0) lowest = std::max(lowest, boundsOf(arc).bottom);
  }
  CHECK(lowest <= 0);
  CHECK(lowest == Approx(0).margin(0.01));
}

TEST_CASE("a horseshoe's circle is as wide as the opening and its jambs stand further in", "[geometry]") {
  const auto form = made(arched(Head::Horseshoe, 150), 220, 330);
  const auto arcs = allOf<Arc>(form.outline);
  REQUIRE(arcs.size() == 1);
  CHECK(arcs[0].radius == Approx(110).epsilon(1e-15));
  checkPoint(arcs[0].centre, 0, -40);
  checkPoint(arcs[0].to, std::sqrt(110.0 * 110 - 40 * 40), 0);
}
