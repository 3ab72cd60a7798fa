#include "core/geometry/rectangle.h"

#include <random>

#include "core/geometry/region.h"
#include "tests/support/catch.h"

using namespace core;
using geometry::Rectangle;
using geometry::Ring;
using units::Length;

namespace {

Length mm(std::int64_t count) { return Length::wholeMillimetres(count); }

Ring ring(int from, int to) { return {{mm(from), mm(from)}, {mm(to), mm(to)}}; }

struct FrameArea {
  Rectangle outer, inner;
};

geometry::Outline outline(const Rectangle& r) { return r.empty() ? geometry::Outline() : geometry::outlineOf(r); }

std::vector<geometry::Patch> patches(const std::vector<FrameArea>& frames) {
  std::vector<geometry::Patch> all;
  for (const FrameArea& frame : frames) all.push_back({outline(frame.outer), outline(frame.inner)});
  return all;
}

bool inside(const Rectangle& r, double x, double y) { return x > r.left && x < r.right && y > r.top && y < r.bottom; }
bool inside(const FrameArea& frame, double x, double y) {
  return inside(frame.outer, x, y) && !inside(frame.inner, x, y);
}

}  // namespace

TEST_CASE("rings overlap by what one must move for them to part", "[geometry]") {
  CHECK(geometry::overlap(ring(0, 10), ring(10, 20)) == Length());
  CHECK(geometry::overlap(ring(0, 11), ring(10, 20)) == mm(1));
  CHECK(geometry::overlap(ring(10, 20), ring(0, 11)) == mm(1));
  CHECK(geometry::overlap(ring(0, 10), ring(12, 20)) == -mm(2));
  CHECK(geometry::overlap(ring(0, 100), ring(40, 50)) == mm(50));
  CHECK(geometry::touch(ring(0, 10), ring(10, 20)));
  CHECK_FALSE(geometry::touch(ring(0, 10), ring(11, 20)));
}

TEST_CASE("rings that cross on one axis alone overlap all the same", "[geometry]") {
  // Clear of each other on the sides, into each other at top and bottom.
  const Ring a{{mm(0), mm(0)}, {mm(10), mm(10)}};
  const Ring b{{mm(12), mm(7)}, {mm(20), mm(15)}};
  CHECK(geometry::overlap(a, b) == mm(3));
  CHECK(geometry::overlap(b, a) == mm(3));
}

TEST_CASE("an overlap of a nanometre is an overlap", "[geometry]") {
  Ring a = ring(0, 10);
  a.to.sides = a.to.sides + Length::nanometres(1);
  a.to.topBottom = a.to.topBottom + Length::nanometres(1);
  CHECK(geometry::overlap(a, ring(10, 20)) == Length::nanometres(1));
}

TEST_CASE("areas of frames agree with counting points, whatever is left out", "[geometry]") {
  std::mt19937 random(11);
  std::uniform_int_distribution<int> coordinate(0, 40);
  const auto rectangle = [&] {
    int a = coordinate(random), b = coordinate(random), c = coordinate(random), d = coordinate(random);
    return Rectangle{double(std::min(a, b)), double(std::min(c, d)), double(std::max(a, b)), double(std::max(c, d))};
  };
  for (int round = 0; round < 500; ++round) {
    const std::vector<FrameArea> kept = {{rectangle(), rectangle()}, {{0, 0, 40, 40}, {}}};
    std::vector<FrameArea> without;
    for (int i = 0; i < round % 4; ++i) without.push_back({rectangle(), rectangle()});
    double counted = 0;
    // Corners lie on whole numbers, so the middle of each unit square decides for all of it.
    for (double y = 0.5; y < 40; ++y) {
      for (double x = 0.5; x < 40; ++x) {
        bool in = inside(kept[0], x, y) && inside(kept[1], x, y);
        for (const FrameArea& frame : without) in = in && !inside(frame, x, y);
        counted += in ? 1 : 0;
      }
    }
    CHECK(geometry::area(patches(kept), patches(without)) == Approx(counted).margin(1e-9));
  }
}
