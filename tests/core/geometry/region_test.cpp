#include "core/geometry/region.h"

#include <numbers>
#include <random>

#include "core/geometry/move.h"
#include "tests/core/geometry/forms_here.h"

using namespace core::geometry;
using tests::made;
using tests::plain;

namespace {

Outline circle(Point centre, double radius) {
  const Point left{centre.x - radius, centre.y};
  return Outline({arcAbout(centre, left, left, true)});
}

Outline rectangle(double left, double top, double right, double bottom) {
  return outlineOf(Rectangle{left, top, right, bottom});
}

double close(double expected) { return std::max(1e-9, std::fabs(expected) * 1e-11); }

}  // namespace

TEST_CASE("a window's area by sweeping is its area in closed form, and a ring's is the difference", "[geometry]") {
  for (const auto& form : tests::everyForm()) {
    INFO(form.name);
    const Outline inner = made(form).outline;
    const Outline outer = moved(inner, 6).value();
    CHECK(area({{inner, {}}}, {}) == Approx(inner.area()).margin(close(inner.area())));
    const double ring = outer.area() - inner.area();
    CHECK(area({{outer, inner}}, {}) == Approx(ring).margin(close(outer.area())));
    CHECK(area({{outer, {}}}, {{inner, {}}}) == Approx(ring).margin(close(outer.area())));
    CHECK(area({{outer, {}}, {inner, {}}}, {}) == Approx(inner.area()).margin(close(outer.area())));
    CHECK(area({{inner, {}}}, {{outer, {}}}) == Approx(0).margin(1e-9));
  }
}

TEST_CASE("nothing inside is nothing, and an empty outer bounds nothing", "[geometry]") {
  CHECK(area({}, {{circle({}, 5), {}}}) == 0);
  CHECK(area({{Outline(), {}}}, {}) == 0);
}

TEST_CASE("two circles share a lens of known area", "[geometry]") {
  for (const double apart : {0.5, 10.0, 30.0, 79.0, 79.999}) {
    INFO(apart);
    const double r = 40;
    const double lens = 2 * r * r * std::acos(apart / 2 / r) - apart / 2 * std::sqrt(4 * r * r - apart * apart);
    const Outline a = circle({0, 0}, r);
    for (const double turn : {0.0, 0.3, std::numbers::pi / 2, 2.0}) {
      const Outline b = circle({apart * std::cos(turn), apart * std::sin(turn)}, r);
      CHECK(area({{a, {}}, {b, {}}}, {}) == Approx(lens).margin(1e-8));
      CHECK(area({{a, {}}}, {{b, {}}}) == Approx(std::numbers::pi * r * r - lens).margin(1e-8));
    }
  }
}

TEST_CASE("circles that touch share nothing", "[geometry]") {
  CHECK(area({{circle({0, 0}, 40), {}}, {circle({80, 0}, 40), {}}}, {}) == Approx(0).margin(1e-9));
  CHECK(area({{circle({0, 0}, 40), {}}, {circle({0, 60}, 20), {}}}, {}) == Approx(0).margin(1e-9));
  // One within the other, touching from inside.
  CHECK(area({{circle({0, 0}, 40), circle({20, 0}, 20)}}, {}) ==
        Approx(std::numbers::pi * (1600 - 400)).epsilon(1e-11));
}

TEST_CASE("a rectangle cuts a segment off an oval, however thin", "[geometry]") {
  const Outline oval = made(plain(Shape::Oval), 300, 200).outline;
  for (const double depth : {1e-4, 1e-3, 0.01, 0.3, 10.0, 99.0}) {
    INFO(depth);
    // The segment of a circle of 1, stretched by 150 and 100.
    const auto segment = [](double height) {
      const double x = 1 - height;
      return 150 * 100 * (std::acos(x) - x * std::sqrt(1 - x * x));
    };
    const double fromTop = segment(depth / 100);
    const double fromSide = segment(depth / 150);
    CHECK(area({{oval, {}}, {rectangle(-200, -100, 200, -100 + depth), {}}}, {}) ==
          Approx(fromTop).epsilon(1e-8).margin(1e-8));
    CHECK(area({{oval, {}}, {rectangle(150 - depth, -200, 200, 200), {}}}, {}) ==
          Approx(fromSide).epsilon(1e-8).margin(1e-8));
    CHECK(area({{oval, {}}, {rectangle(-200, -170, -150 + depth, 237), {}}}, {}) ==
          Approx(fromSide).epsilon(1e-8).margin(1e-8));
  }
}

TEST_CASE("ovals that cross share what counting finds", "[geometry]") {
  const Outline oval = made(plain(Shape::Oval), 300, 200).outline;
  const Outline other = moved(made(plain(Shape::Oval), 200, 300).outline, 4).value();
  // Sums of strips; the error of the middle's width falls with the square of the strip.
  const auto counted = [&](int strips) {
    double sum = 0;
    for (int i = 0; i < strips; ++i) {
      const double y = -100 + 200 * (i + 0.5) / strips;
      double low = 0;
      double high = 150 * std::sqrt(1 - y * y / 1e4);
      for (int k = 0; k < 50 && !other.contains({high, y}); ++k) {
        const double middle = (low + high) / 2;
        (other.contains({middle, y}) ? low : high) = middle;
        if (high - low < 1e-9) break;
      }
      sum += 2 * high * 200 / strips;
    }
    return sum;
  };
  const double shared = area({{oval, {}}, {other, {}}}, {});
  const double left = area({{oval, {}}}, {{other, {}}});
  const double right = area({{other, {}}}, {{oval, {}}});
  CHECK(shared == Approx(counted(20'000)).epsilon(1e-5));
  CHECK(shared + left == Approx(oval.area()).epsilon(1e-11));
  CHECK(shared + right == Approx(other.area()).epsilon(1e-11));
}

TEST_CASE("a spandrel with a round corner of the opening is the square less the quarter", "[geometry]") {
  const Outline window = made(tests::arched(Head::Round), 200, 350).outline;
  CHECK(area({{rectangle(-100, -100, 100, 0), window}}, {}) ==
        Approx(200 * 100 - std::numbers::pi * 5000).epsilon(1e-12));
}

TEST_CASE("a field with bands, lines and washes left out is what is left of it", "[geometry]") {
  const Outline window = made(tests::arched(Head::Ogee, 180, 80), 240, 400).outline;
  const Outline sheet = rectangle(-300, -400, 300, 400);
  const auto ring = [&](double from, double to) {
    return Patch{moved(window, to).value(), moved(window, from).value()};
  };
  const auto size = [](const Patch& patch) { return patch.outer.area() - patch.inner.area(); };
  const std::vector<Patch> without = {ring(3, 4), ring(10, 24), ring(30, 30.5)};
  double left = sheet.area() - window.area();
  for (const Patch& patch : without) left -= size(patch);
  CHECK(area({{sheet, window}}, without) == Approx(left).epsilon(1e-11));
  // What is left out twice is left out once.
  std::vector<Patch> twice = without;
  twice.push_back(ring(12, 20));
  CHECK(area({{sheet, window}}, twice) == Approx(left).epsilon(1e-11));
}

TEST_CASE("areas add up, whatever crosses whatever", "[geometry]") {
  std::mt19937 random(29);
  const auto forms = tests::everyForm();
  std::uniform_real_distribution<double> by(-120, 120);
  for (int round = 0; round < 300; ++round) {
    const auto& first = forms[random() % forms.size()];
    const auto& second = forms[random() % forms.size()];
    INFO(first.name << " and " << second.name << ", round " << round);
    const Outline a = made(first).outline;
    const Outline b = made(second).outline.shifted({by(random), by(random)});
    const double both = area({{a, {}}, {b, {}}}, {});
    CHECK(both + area({{a, {}}}, {{b, {}}}) == Approx(a.area()).epsilon(1e-10));
    CHECK(both + area({{b, {}}}, {{a, {}}}) == Approx(b.area()).epsilon(1e-10));
    CHECK(both >= 0);
  }
}
