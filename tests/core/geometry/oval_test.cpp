#include <numbers>

#include "core/geometry/segment.h"
#include "tests/support/catch.h"

using namespace core::geometry;

namespace {

OvalArc ovalOf(double semiX, double semiY, double out = 0) {
  OvalArc oval;
  oval.semiX = semiX;
  oval.semiY = semiY;
  oval.out = out;
  oval.sweep = 2 * std::numbers::pi;
  return oval;
}

}  // namespace

TEST_CASE("every point of a parallel curve lies its distance from the ellipse", "[geometry]") {
  for (const double out : {-12.0, -2.0, 3.0, 25.0}) {
    const OvalArc moved = ovalOf(150, 100, out);
    const Segment ellipse = ovalOf(150, 100);
    for (int i = 0; i < 60; ++i) {
      CHECK(distanceTo(ellipse, oval::pointAt(moved, 0.1 * i)) == Approx(std::fabs(out)).margin(1e-9));
    }
  }
}

TEST_CASE("an oval with equal axes is a circle", "[geometry]") {
  const Segment round = ovalOf(80, 80, 5);
  CHECK(lengthOf(round) == Approx(170 * std::numbers::pi).epsilon(1e-14));
  CHECK(areaUnder(round) == Approx(85 * 85 * std::numbers::pi).epsilon(1e-14));
  CHECK(oval::leastCurvatureRadius(80, 80) == 80);
}

TEST_CASE("a whole oval is the sum of its quarters", "[geometry]") {
  for (const double out : {-30.0, 0.0, 17.0}) {
    const OvalArc whole = ovalOf(150, 100, out);
    double length = 0;
    double area = 0;
    for (int quarter = 0; quarter < 4; ++quarter) {
      OvalArc one = whole;
      one.start = quarter * std::numbers::pi / 2;
      one.sweep = std::numbers::pi / 2;
      length += lengthOf(one);
      area += areaUnder(one);
    }
    CHECK(lengthOf(whole) == Approx(length).epsilon(1e-12));
    CHECK(areaUnder(whole) == Approx(area).epsilon(1e-12));
  }
}

TEST_CASE("long thin ovals keep their places", "[geometry]") {
  // A quarter by quadrature beside the whole by the arithmetic-geometric mean.
  OvalArc quarter = ovalOf(1000, 50);
  quarter.sweep = std::numbers::pi / 2;
  CHECK(4 * lengthOf(quarter) == Approx(oval::perimeter(1000, 50)).epsilon(1e-12));
  CHECK(oval::perimeter(50, 1000) == oval::perimeter(1000, 50));
}

TEST_CASE("the parameter at a height leads back to the height", "[geometry]") {
  const OvalArc moved = ovalOf(150, 100, 8);
  for (double t = -std::numbers::pi / 2 + 0.01; t < std::numbers::pi / 2; t += 0.07) {
    const double y = oval::pointAt(moved, t).y;
    CHECK(oval::parameterAtY(moved, y, -std::numbers::pi / 2, std::numbers::pi / 2) == Approx(t).margin(1e-12));
    // The left half, where y falls as the parameter grows.
    CHECK(oval::parameterAtY(moved, y, std::numbers::pi / 2, 3 * std::numbers::pi / 2) ==
          Approx(std::numbers::pi - t).margin(1e-12));
  }
  CHECK(oval::pointAt(moved, oval::parameterAtY(moved, 107.999999, -std::numbers::pi / 2, std::numbers::pi / 2)).y ==
        Approx(107.999999).epsilon(1e-13));
}

TEST_CASE("an ellipse stays smooth inwards up to its least radius of curvature", "[geometry]") {
  const double least = oval::leastCurvatureRadius(150, 100);
  CHECK(least == Approx(100.0 * 100 / 150));
  const auto slowest = [](double out) {
    double most = INFINITY;
    for (int i = 0; i < 6284; ++i) {
      const double t = i / 1000.0;
      const OvalArc moved = ovalOf(150, 100, out);
      const Point along{-150 * std::sin(t), 100 * std::cos(t)};
      most = std::min(most, dot(oval::rateAt(moved, t), along));
    }
    return most;
  };
  CHECK(slowest(-least + 0.01) > 0);
  CHECK(slowest(-least - 0.01) < 0);
}
