#include "core/sheets/facets.h"

#include <numbers>

#include "tests/support/catch.h"
#include "tests/support/shaped_example.h"

using namespace core::sheets;
using core::geometry::dot;

namespace {

double areaOf(const Facet& facet) {
  return std::fabs(core::geometry::cross(facet.corners[2] - facet.corners[0], facet.corners[3] - facet.corners[1])) / 2;
}

}  // namespace

TEST_CASE("the slopes of a rectangle are four trapezoids, mitred at the corners") {
  const auto outline = core::geometry::outlineOf({10, 20, 110, 80});
  const auto four = facets(outline, 0, 5);
  REQUIRE(four.size() == 4);
  CHECK(four[0].outwards == Point{0, -1});
  CHECK(four[1].outwards == Point{1, 0});
  CHECK(four[2].outwards == Point{0, 1});
  CHECK(four[3].outwards == Point{-1, 0});
  double area = 0;
  for (const Facet& facet : four) area += areaOf(facet);
  CHECK(area == Approx(110 * 70 - 100 * 60));
  CHECK(four[0].corners[2].x == Approx(115));
  CHECK(four[0].corners[2].y == Approx(15));
}

TEST_CASE("on a curve a facet turns by no more than eleven degrees, and all of them close up round the opening") {
  for (const std::string& form : tests::shapedForms()) {
    INFO(form);
    const auto design = tests::designOf(tests::shapedExample(form));
    const auto& board = design.layout.boards.front();
    const auto all = facets(board.sightOutline, 0, board.bevelPlan);
    REQUIRE(all.size() >= 4);
    double turned = 0;
    for (std::size_t i = 0; i < all.size(); ++i) {
      const Facet& next = all[(i + 1) % all.size()];
      CHECK(all[i].corners[1] == next.corners[0]);
      CHECK(all[i].corners[2] == next.corners[3]);
      CHECK(core::geometry::length(all[i].outwards) == Approx(1));
      turned += std::atan2(core::geometry::cross(all[i].outwards, next.outwards), dot(all[i].outwards, next.outwards));
      for (const auto& segment : board.sightOutline.segments()) {
        const auto* arc = std::get_if<core::geometry::Arc>(&segment);
        if (arc == nullptr ||
            std::fabs(core::geometry::distance(all[i].corners[0], arc->centre) - arc->radius) > 1e-6 ||
            std::fabs(core::geometry::distance(all[i].corners[1], arc->centre) - arc->radius) > 1e-6)
          continue;
        const double chord = core::geometry::distance(all[i].corners[0], all[i].corners[1]);
        CHECK(chord <= 2 * arc->radius * std::sin(11 * std::numbers::pi / 360) + 1e-6);
      }
    }
    CHECK(turned == Approx(2 * std::numbers::pi));
  }
}
