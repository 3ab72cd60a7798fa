// What holds of every move, on every shape.
#include <random>

#include "core/geometry/move.h"
#include "tests/core/geometry/forms_here.h"

using namespace core::geometry;

namespace {

// Whether no corner was closed by an arc and none was dropped.
bool sameSegments(const Outline& a, const Outline& b) {
  if (a.segments().size() != b.segments().size()) return false;
  for (std::size_t i = 0; i < a.segments().size(); ++i) {
    if (a.segments()[i].index() != b.segments()[i].index()) return false;
  }
  return true;
}

}  // namespace

TEST_CASE("moved by nothing an outline is itself", "[geometry]") {
  for (const auto& form : tests::everyForm()) {
    const Outline outline = tests::made(form).outline;
    const auto same = moved(outline, 0);
    REQUIRE(same.ok());
    CHECK(same.value() == outline);
  }
  REQUIRE(moved(Outline(), 5).ok());
  CHECK(moved(Outline(), 5).value().empty());
}

TEST_CASE("moved and moved back an outline is itself where nothing was closed or trimmed away", "[geometry]") {
  int checked = 0;
  for (const auto& form : tests::everyForm()) {
    const Outline outline = tests::made(form).outline;
    for (const double d : {0.05, 0.5, 1.5, 6.0, 12.0, -0.05, -0.5, -1.5, -3.0, -6.0}) {
      INFO(form.name << " by " << d);
      const auto out = moved(outline, d);
      if (!out || !sameSegments(out.value(), outline)) continue;
      const auto back = moved(out.value(), -d);
      REQUIRE(back.ok());
      if (!sameSegments(back.value(), outline)) continue;
      CHECK(tests::apart(back.value(), outline) < 1e-9);
      ++checked;
    }
  }
  CHECK(checked > 130);
}

TEST_CASE("two moves are one where nothing was closed or trimmed away", "[geometry]") {
  int checked = 0;
  for (const auto& form : tests::everyForm()) {
    const Outline outline = tests::made(form).outline;
    for (const double d : {3.0, -1.5}) {
      INFO(form.name << " by " << d);
      const auto once = moved(outline, 2 * d);
      const auto half = moved(outline, d);
      if (!once || !half || !sameSegments(once.value(), outline) || !sameSegments(half.value(), outline)) continue;
      const auto twice = moved(half.value(), d);
      REQUIRE(twice.ok());
      CHECK(tests::apart(twice.value(), once.value()) < 1e-9);
      ++checked;
    }
  }
  CHECK(checked > 20);
}

TEST_CASE("every point of a moved outline is the distance away, or more where a corner was extended", "[geometry]") {
  int checked = 0;
  for (const auto& form : tests::everyForm()) {
    const Outline outline = tests::made(form).outline;
    for (const double d : {0.3, 6.0, 15.0, 40.0, -0.3, -2.0, -6.0, -15.0}) {
      INFO(form.name << " by " << d);
      const auto out = moved(outline, d);
      if (!out) {
        CHECK(out.error().kind == MoveProblem::Kind::ArcVanishes);
        continue;
      }
      CHECK(tests::isClosed(out.value()));
      for (const Segment& segment : out.value().segments()) {
        for (const double share : {0.02, 0.3, 0.5, 0.8, 0.98}) {
          const Point point = pointAt(segment, share);
          const double away = outline.distanceTo(point);
          CHECK(away >= std::fabs(d) - 1e-7);
          CHECK(away <= 4 * std::fabs(d) + 1e-7);
          CHECK(outline.contains(point) == (d < 0));
        }
      }
      ++checked;
    }
  }
  CHECK(checked > 80);
}

TEST_CASE("a moved window is still the mirror image of itself", "[geometry]") {
  int checked = 0;
  for (const auto& form : tests::everyForm()) {
    const Outline outline = tests::made(form).outline;
    for (const double d : {6.0, 40.0, -2.0, -10.0}) {
      INFO(form.name << " by " << d);
      const auto out = moved(outline, d);
      if (!out) continue;
      const Outline image = out.value().mirrored(0);
      for (const Segment& segment : image.segments()) {
        CHECK(out.value().distanceTo(pointAt(segment, 0.5)) < 1e-8);
      }
      ++checked;
    }
  }
  CHECK(checked > 40);
}

TEST_CASE("moving does not mind where on the sheet the outline lies", "[geometry]") {
  const Point by{412.7, 377.1};
  for (const auto& form : tests::everyForm()) {
    const Outline outline = tests::made(form).outline;
    for (const double d : {6.0, -2.0}) {
      INFO(form.name << " by " << d);
      const auto here = moved(outline, d);
      const auto there = moved(outline.shifted(by), d);
      REQUIRE(here.ok());
      REQUIRE(there.ok());
      CHECK(tests::apart(here.value().shifted(by), there.value()) < 1e-9);
    }
  }
}

TEST_CASE("an oval with other pieces is not moved", "[geometry]") {
  const auto read = parseOutline("from 150 0 oval 0 0 150 100 0 0 3.141592653589793 line 150 0");
  REQUIRE(read.ok());
  const auto out = moved(read.value(), 5);
  REQUIRE_FALSE(out.ok());
  CHECK(out.error().kind == MoveProblem::Kind::Parts);
}
