#include "core/geometry/segment.h"

#include <numbers>
#include <random>

#include "tests/support/catch.h"

using namespace core::geometry;

namespace {

bool near(Point a, Point b, double within = 1e-12) { return distance(a, b) <= within; }

std::vector<Segment> oneOfEachKind() {
  OvalArc oval;
  oval.centre = {5, -3};
  oval.semiX = 90;
  oval.semiY = 40;
  oval.out = 4;
  oval.start = 0.3;
  oval.sweep = 2.5;
  OvalArc back = oval;
  back.sweep = -1.1;
  return {Straight{{1, 2}, {31, -38}},
          arcAbout({0, 0}, {10, 0}, {0, 10}, true),
          arcAbout({0, 0}, {10, 0}, {0, 10}, false),
          arcAbout({-4, 7}, {-4, 2}, {-4, 2}, true),
          oval,
          back};
}

// Length, area under and distance, from chords alone.
struct Chords {
  double length = 0, area = 0;
};

Chords chords(const Segment& segment, int count) {
  Chords sum;
  Point last = startOf(segment);
  for (int i = 1; i <= count; ++i) {
    const Point next = pointAt(segment, double(i) / count);
    sum.length += distance(last, next);
    sum.area += cross(last, next) / 2;
    last = next;
  }
  return sum;
}

}  // namespace

TEST_CASE("an arc turns clockwise as seen where its sweep is positive", "[geometry]") {
  // y is downwards: from the right to below is clockwise.
  const Arc quarter = arcAbout({0, 0}, {10, 0}, {0, 10}, true);
  CHECK(quarter.sweep == Approx(std::numbers::pi / 2).epsilon(1e-15));
  CHECK(quarter.radius == 10);
  CHECK(arcAbout({0, 0}, {10, 0}, {0, 10}, false).sweep == Approx(-3 * std::numbers::pi / 2).epsilon(1e-15));
  CHECK(near(directionAtStart(quarter), {0, 1}));
  CHECK(near(directionAtEnd(quarter), {-1, 0}));
  CHECK(near(pointAt(quarter, 0.5), {10 * std::sqrt(0.5), 10 * std::sqrt(0.5)}));
}

TEST_CASE("an arc from a point to itself is the whole circle", "[geometry]") {
  const Segment circle = arcAbout({1, 1}, {4, 5}, {4, 5}, true);
  CHECK(lengthOf(circle) == Approx(10 * std::numbers::pi).epsilon(1e-15));
  CHECK(areaUnder(circle) == Approx(25 * std::numbers::pi).epsilon(1e-14));
  const Rectangle box = boundsOf(circle);
  CHECK(box.left == -4);
  CHECK(box.bottom == 6);
}

TEST_CASE("length and area under are those of many chords", "[geometry]") {
  for (const Segment& segment : oneOfEachKind()) {
    // Two counts of chords, extrapolated: the error falls with the square of the chord.
    const Chords some = chords(segment, 2000);
    const Chords many = chords(segment, 4000);
    CHECK(lengthOf(segment) == Approx((4 * many.length - some.length) / 3).epsilon(1e-11));
    CHECK(areaUnder(segment) == Approx((4 * many.area - some.area) / 3).epsilon(1e-10));
  }
}

TEST_CASE("bounds hold every point and are reached on every side", "[geometry]") {
  for (const Segment& segment : oneOfEachKind()) {
    const Rectangle box = boundsOf(segment);
    Rectangle met{1e9, 1e9, -1e9, -1e9};
    for (int i = 0; i <= 4000; ++i) {
      const Point p = pointAt(segment, i / 4000.0);
      met = {std::min(met.left, p.x), std::min(met.top, p.y), std::max(met.right, p.x), std::max(met.bottom, p.y)};
    }
    CHECK(box.left <= met.left + 1e-12);
    CHECK(box.left == Approx(met.left).margin(1e-4));
    CHECK(box.top <= met.top + 1e-12);
    CHECK(box.top == Approx(met.top).margin(1e-4));
    CHECK(box.right >= met.right - 1e-12);
    CHECK(box.right == Approx(met.right).margin(1e-4));
    CHECK(box.bottom >= met.bottom - 1e-12);
    CHECK(box.bottom == Approx(met.bottom).margin(1e-4));
  }
}

TEST_CASE("the distance to a segment is the least of many", "[geometry]") {
  std::mt19937 random(5);
  std::uniform_real_distribution<double> coordinate(-120, 120);
  for (const Segment& segment : oneOfEachKind()) {
    for (int i = 0; i < 40; ++i) {
      const Point point{coordinate(random), coordinate(random)};
      double least = INFINITY;
      for (int k = 0; k <= 20'000; ++k) least = std::min(least, distance(pointAt(segment, k / 20'000.0), point));
      CHECK(distanceTo(segment, point) <= least + 1e-9);
      CHECK(distanceTo(segment, point) == Approx(least).margin(1e-2));
    }
    // A point of the segment is at no distance from it.
    for (const double share : {0.0, 0.2, 0.77, 1.0}) CHECK(distanceTo(segment, pointAt(segment, share)) < 1e-8);
  }
}

TEST_CASE("run backwards a segment has the same points, and less area becomes more", "[geometry]") {
  for (const Segment& segment : oneOfEachKind()) {
    const Segment back = reversed(segment);
    CHECK(near(startOf(back), endOf(segment)));
    CHECK(near(pointAt(back, 0.3), pointAt(segment, 0.7)));
    CHECK(near(directionAtStart(back), -1 * directionAtEnd(segment)));
    CHECK(areaUnder(back) == Approx(-areaUnder(segment)));
    CHECK(near(pointAt(reversed(back), 0.4), pointAt(segment, 0.4)));
  }
}

TEST_CASE("a mirrored segment has each point across the line, last to first", "[geometry]") {
  for (const Segment& segment : oneOfEachKind()) {
    const Segment other = mirrored(segment, 3);
    for (const double share : {0.0, 0.25, 0.6, 1.0}) {
      const Point p = pointAt(segment, share);
      CHECK(near(pointAt(other, 1 - share), {6 - p.x, p.y}, 1e-11));
    }
    CHECK(lengthOf(other) == Approx(lengthOf(segment)).epsilon(1e-14));
  }
}

TEST_CASE("a shifted segment keeps its length, and a part is what lies between", "[geometry]") {
  for (const Segment& segment : oneOfEachKind()) {
    const Segment other = shifted(segment, {7, -11});
    CHECK(near(pointAt(other, 0.35), pointAt(segment, 0.35) + Point{7, -11}));
    const Segment middle = part(segment, 0.25, 0.75);
    CHECK(near(startOf(middle), pointAt(segment, 0.25)));
    CHECK(near(endOf(middle), pointAt(segment, 0.75)));
    CHECK(near(pointAt(middle, 0.5), pointAt(segment, 0.5), 1e-11));
    CHECK(lengthOf(part(segment, 0, 0.25)) + lengthOf(middle) + lengthOf(part(segment, 0.75, 1)) ==
          Approx(lengthOf(segment)).epsilon(1e-12));
  }
}

TEST_CASE("the angle along an arc is counted its own way round", "[geometry]") {
  const Arc clockwise = arcAbout({0, 0}, {10, 0}, {-10, 0}, true);
  CHECK(angleAlong(clockwise, {0, 10}) == Approx(std::numbers::pi / 2));
  CHECK(angleAlong(clockwise, {0, -3}) == Approx(3 * std::numbers::pi / 2));
  const Arc other = arcAbout({0, 0}, {10, 0}, {-10, 0}, false);
  CHECK(angleAlong(other, {0, -10}) == Approx(std::numbers::pi / 2));
  CHECK(angleAlong(other, {10, 0}) == 0);
}
