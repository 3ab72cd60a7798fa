// Sources: the perimeter of an ellipse is 4 a E(e), the complete elliptic integral of the second kind as the standard
// library has it (ISO C++ [sf.cmath.comp.ellint.2], which takes the modulus), beside S. Ramanujan, Modular Equations
// and Approximations to Pi (1914), his second approximation. Corners, moved outlines: closed forms, each by its table;
// for smooth convex outlines J. Steiner's formulas, P' = P + 2 pi d and A' = A + P d + pi d^2.
#include <cmath>
#include <numbers>

#include "core/geometry/move.h"
#include "tests/outside/heads_here.h"

using namespace core::geometry;
using tests::arched;
using tests::checkArea;
using tests::checkLength;
using tests::cornered;
using tests::plain;

namespace {

constexpr double kPi = std::numbers::pi;

Outline outlineOfForm(const tests::ShapeEntry& entry, double width, double height) {
  const auto form = construct(entry, width, height);
  if (!form) FAIL(core::base::dump(form.error().message));
  return form.value().outline;
}

Outline movedBy(const Outline& outline, double d) {
  const auto other = moved(outline, d);
  if (!other) FAIL(name(other.error().kind));
  return other.value();
}

}  // namespace

TEST_CASE("ellipses have the perimeter and area of the integral") {
  const double rows[][4] = {{100, 75, 23561.944902, 552.587304},
                            {150, 100, 47123.889804, 793.271979},
                            {200, 120, 75398.223686, 1021.079955},
                            {127, 101.6, 40536.598328, 720.386364},
                            {100, 50, 15707.963268, 484.422411}};
  for (const auto& [a, b, area, perimeter] : rows) {
    INFO(a << " by " << b);
    const Outline oval = outlineOfForm(plain(Shape::Oval), 2 * a, 2 * b);
    checkLength(oval.perimeter(), perimeter);
    checkArea(oval.area(), area);
    const double modulus = std::sqrt(1 - b * b / (a * a));
    CHECK(oval.perimeter() == Approx(4 * a * std::comp_ellint_2(modulus)).epsilon(1e-13));
    CHECK(outlineOfForm(plain(Shape::Oval), 2 * b, 2 * a).perimeter() == Approx(oval.perimeter()).epsilon(1e-15));
    const double h = (a - b) * (a - b) / ((a + b) * (a + b));
    CHECK(oval.perimeter() == Approx(kPi * (a + b) * (1 + 3 * h / (10 + std::sqrt(4 - 3 * h)))).epsilon(1e-9));
  }
}

TEST_CASE("an ellipse's parallel curve is as much longer and larger as Steiner has it, and is no ellipse") {
  for (const double d : {6.0, 25.0, -12.0, -40.0}) {
    INFO(d);
    const Outline oval = outlineOfForm(plain(Shape::Oval), 300, 200);
    const Outline other = movedBy(oval, d);
    const double perimeter = 4 * 150 * std::comp_ellint_2(std::sqrt(1 - 100.0 * 100 / (150 * 150)));
    CHECK(other.perimeter() == Approx(perimeter + 2 * kPi * d).epsilon(1e-13));
    CHECK(other.area() == Approx(kPi * 15'000 + perimeter * d + kPi * d * d).epsilon(1e-12));
    const Outline ellipse = outlineOfForm(plain(Shape::Oval), 300 + 2 * d, 200 + 2 * d);
    CHECK(std::fabs(ellipse.area() - other.area()) > 1);
  }
}

TEST_CASE("rounded, scalloped and chamfered corners") {
  // Closed form: rounded P = 2 (W + H) - (8 - 2 pi) r, A = W H - (4 - pi) r^2; scalloped the same P, A = W H - pi r^2;
  // chamfered P = 2 (W + H) - 8 c + 4 root 2 c, A = W H - 2 c^2.
  struct Row {
    double width, height, corner, rounded, roundedArea, scallopedArea, chamfered, chamferedArea;
  };
  const Row rows[] = {{300, 200, 20, 965.663706, 59656.637061, 58743.362939, 953.137085, 59200},
                      {254, 203.2, 12.7, 892.596453, 51474.347479, 51106.092521, 884.642049, 51290.22},
                      {400, 300, 40, 1331.327412, 118626.548246, 114973.451754, 1306.274170, 116800},
                      {200, 150, 10, 682.831853, 29914.159265, 29685.840735, 676.568542, 29800}};
  for (const Row& row : rows) {
    INFO(row.width << " by " << row.height);
    const Outline rounded = outlineOfForm(cornered(Shape::Rounded, row.corner), row.width, row.height);
    const Outline scalloped = outlineOfForm(cornered(Shape::Scalloped, row.corner), row.width, row.height);
    const Outline chamfered = outlineOfForm(cornered(Shape::Chamfered, row.corner), row.width, row.height);
    checkLength(rounded.perimeter(), row.rounded);
    checkLength(scalloped.perimeter(), row.rounded);
    checkLength(chamfered.perimeter(), row.chamfered);
    checkArea(rounded.area(), row.roundedArea);
    checkArea(scalloped.area(), row.scallopedArea);
    checkArea(chamfered.area(), row.chamferedArea);
  }
}

TEST_CASE("a pointed opening moved inwards keeps its centres, and its apex sets down further than its sides") {
  // Closed form: inner radius R - d, rise root((R - d)^2 - (R - S / 2)^2), arcs 2 (R - d) acos((R - S / 2) / (R - d)).
  const double rows[][8] = {{200, 200, 6, 188, 194, 166.240789, 6.964292, 399.347984},
                            {300, 240, 5, 290, 235, 217.082933, 5.403021, 553.555474},
                            {200, 300, 8, 184, 292, 212.753378, 10.853419, 476.711396}};
  for (const auto& [span, radius, d, innerSpan, innerRadius, innerRise, setDown, arcs] : rows) {
    INFO(span << ", radius " << radius);
    const double rise = std::sqrt(radius * span - span * span / 4);
    // The rise is a root, entered to the nearest nanometre.
    const double slack = 5e-7 * 2 * rise / span;
    const Outline outer = outlineOfForm(arched(Head::Pointed, rise), span, rise + 100);
    const Outline inner = movedBy(outer, -d);
    CHECK(inner.bounds().right - inner.bounds().left == Approx(innerSpan).margin(1e-9));
    checkLength(-inner.bounds().top, innerRise, slack);
    checkLength(inner.bounds().top - outer.bounds().top, setDown, slack);
    double length = 0;
    for (const Segment& segment : inner.segments()) {
      if (const auto* arc = std::get_if<Arc>(&segment)) {
        checkLength(arc->radius, innerRadius, slack);
        length += lengthOf(segment);
      }
    }
    checkLength(length, arcs, 2 * slack);
  }
}

TEST_CASE("a round-headed opening moved outwards keeps its sharp corners at the sill") {
  // Closed form: width W + 2d, radius r + d, jambs J + d.
  const double rows[][7] = {{200, 250, 6, 1014.159265, 65707.963268, 1057.008821, 71921.467528},
                            {180, 220, 5, 902.743339, 52323.450247, 938.451302, 56926.436849},
                            {254, 304.8, 6.35, 1262.582267, 102754.573955, 1307.931380, 110915.954785}};
  for (const auto& [width, jamb, d, perimeter, area, movedPerimeter, movedArea] : rows) {
    INFO(width << " on jambs of " << jamb);
    const Outline before = outlineOfForm(arched(Head::Round), width, width / 2 + jamb);
    const Outline after = movedBy(before, d);
    checkLength(before.perimeter(), perimeter);
    checkArea(before.area(), area);
    checkLength(after.perimeter(), movedPerimeter);
    checkArea(after.area(), movedArea);
  }
}
