#include "core/geometry/outline.h"

#include <random>

#include "core/geometry/region.h"
#include "tests/core/geometry/forms_here.h"

using namespace core::geometry;
using tests::everyForm;
using tests::made;

namespace {

// How often a polygon of many chords winds round a point.
bool isInsideChords(const Outline& outline, Point point) {
  bool in = false;
  for (const Segment& segment : outline.segments()) {
    Point a = startOf(segment);
    for (int i = 1; i <= 400; ++i) {
      const Point b = pointAt(segment, i / 400.0);
      if ((a.y > point.y) != (b.y > point.y) && point.x < a.x + (point.y - a.y) / (b.y - a.y) * (b.x - a.x)) in = !in;
      a = b;
    }
  }
  return in;
}

}  // namespace

TEST_CASE("inside and outside are told as chords tell them, away from the edge", "[geometry]") {
  std::mt19937 random(3);
  for (const auto& form : everyForm()) {
    INFO(form.name);
    const Outline outline = made(form).outline;
    const Rectangle box = outline.bounds();
    std::uniform_real_distribution<double> x(box.left - 10, box.right + 10);
    std::uniform_real_distribution<double> y(box.top - 10, box.bottom + 10);
    for (int i = 0; i < 300; ++i) {
      const Point point{x(random), y(random)};
      if (outline.distanceTo(point) < 0.05) continue;
      CHECK(outline.contains(point) == isInsideChords(outline, point));
    }
  }
}

TEST_CASE("points level with corners, joints and turning points are told apart all the same", "[geometry]") {
  for (const auto& form : everyForm()) {
    INFO(form.name);
    const Outline outline = made(form).outline;
    const Rectangle box = outline.bounds();
    std::vector<double> heights = {0, 1e-15, -1e-15, 5e-324};
    for (const Segment& segment : outline.segments()) {
      for (const double y : {startOf(segment).y, boundsOf(segment).top, boundsOf(segment).bottom}) {
        heights.insert(heights.end(), {y, std::nextafter(y, 1e9), std::nextafter(y, -1e9)});
      }
    }
    for (const double y : heights) {
      INFO(y);
      CHECK_FALSE(outline.contains({box.left - 1, y}));
      CHECK_FALSE(outline.contains({box.right + 1, y}));
      // Well inside on the axis: as chords tell.
      const Point middle{0.123, y};
      if (outline.distanceTo(middle) > 0.05) CHECK(outline.contains(middle) == isInsideChords(outline, middle));
    }
  }
}

TEST_CASE("an outline's box is the opening's", "[geometry]") {
  for (const auto& form : everyForm()) {
    INFO(form.name);
    const Rectangle box = made(form).outline.bounds();
    CHECK(box.right - box.left == Approx(form.width).epsilon(1e-14));
    CHECK(box.bottom - box.top == Approx(form.height).epsilon(1e-14));
    CHECK(box.left == Approx(-box.right).epsilon(1e-14));
  }
}

TEST_CASE("a window is the mirror image of itself", "[geometry]") {
  for (const auto& form : everyForm()) {
    INFO(form.name);
    const Outline outline = made(form).outline;
    const Outline image = outline.mirrored(0);
    CHECK(tests::isClosed(image));
    CHECK(image.perimeter() == Approx(outline.perimeter()).epsilon(1e-14));
    CHECK(image.area() == Approx(outline.area()).epsilon(1e-13));
    for (const Segment& segment : image.segments()) CHECK(outline.distanceTo(pointAt(segment, 0.4)) < 1e-10);
    const Outline twice = outline.mirrored(17).mirrored(17);
    CHECK(tests::apart(twice, outline) < 1e-10);
  }
}

TEST_CASE("shifted to anywhere an outline keeps its size", "[geometry]") {
  for (const auto& form : everyForm()) {
    INFO(form.name);
    const Outline outline = made(form).outline;
    const Outline far = outline.shifted({412.7, 377.1});
    CHECK(tests::isClosed(far));
    CHECK(far.perimeter() == Approx(outline.perimeter()).epsilon(1e-13));
    CHECK(far.area() == Approx(outline.area()).epsilon(1e-11));
    CHECK(far.contains({412.7, 377.1 + 20}) == outline.contains({0, 20}));
  }
}

TEST_CASE("rectangles are known, and nothing else is", "[geometry]") {
  for (const auto& form : everyForm()) {
    INFO(form.name);
    CHECK(isRectangle(made(form).outline) == (form.name == "rectangle"));
  }
  CHECK_FALSE(isRectangle(Outline()));
}

TEST_CASE("every window's outline runs clockwise and closes", "[geometry]") {
  for (const auto& form : everyForm()) {
    INFO(form.name);
    const Outline outline = made(form).outline;
    CHECK(tests::isClosed(outline));
    CHECK(outline.area() > 0);
    CHECK(area({{outline, {}}}, {}) == Approx(outline.area()).epsilon(1e-12));
  }
}
