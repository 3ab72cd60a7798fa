#include "core/sheets/scatter.h"

#include <algorithm>
#include <set>

#include "tests/support/catch.h"
#include "tests/support/design_of.h"
#include "tests/support/richest_example.h"
#include "tests/support/worked_example.h"

using namespace core::sheets;
using core::geometry::Outline;
using core::geometry::Patch;
using core::geometry::Straight;

namespace {

Outline outlineOf(const Flake& flake) {
  std::vector<core::geometry::Segment> sides;
  for (std::size_t i = 0; i < 4; ++i) sides.push_back(Straight{flake.corners[i], flake.corners[(i + 1) % 4]});
  return Outline(std::move(sides));
}

// By the exact areas of geometry, which the scatter itself does not use.
double shareOf(const Scatter& scatter, double area) {
  double covered = 0;
  for (const Flake& flake : scatter.flakes) {
    std::vector<Patch> inside = scatter.within;
    inside.push_back({outlineOf(flake), {}});
    covered += core::geometry::area(inside, scatter.without);
  }
  return covered / area;
}

// Returns at how many places of a fine grid more than one flake lies.
int doubled(const Scatter& scatter) {
  std::set<std::pair<int, int>> taken;
  int twice = 0;
  for (const Flake& flake : scatter.flakes) {
    const Outline outline = outlineOf(flake);
    const auto box = outline.bounds();
    for (int x = static_cast<int>(box.left * 4); x <= box.right * 4; ++x) {
      for (int y = static_cast<int>(box.top * 4); y <= box.bottom * 4; ++y) {
        if (outline.contains({x / 4.0 + 0.013, y / 4.0 + 0.017})) twice += taken.insert({x, y}).second ? 0 : 1;
      }
    }
  }
  return twice;
}

Scatter of(const std::string& text, double coverage, const char* seed = "seed") {
  const auto design = tests::designOf(text);
  const auto& field = design.layout.leaf.front();
  return strewn(field.within, field.without, field.area, coverage, seed);
}

}  // namespace

TEST_CASE("flakes cover the entered share of their field, however little or much that is, and lie side by side") {
  for (const std::string& text : {tests::workedExample(), tests::richestExample()}) {
    const auto design = tests::designOf(text);
    const double area = design.layout.leaf.front().area;
    for (const double coverage : {0.01, 0.05, 0.15, 0.3, 0.5, 0.8, 1.0}) {
      INFO(coverage);
      const Scatter scatter = of(text, coverage);
      CHECK(shareOf(scatter, area) == Approx(coverage).epsilon(0.01));
      CHECK(doubled(scatter) == 0);
    }
  }
}

TEST_CASE("a narrow field is covered as truly as a broad one") {
  const auto design = tests::designOf(tests::inchExample());
  const auto& field = *std::find_if(design.layout.leaf.begin(), design.layout.leaf.end(),
                                    [](const auto& one) { return one.id == "spots"; });
  for (const double coverage : {0.1, 0.6}) {
    const Scatter scatter = strewn(field.within, field.without, field.area, coverage, "seed");
    CHECK(shareOf(scatter, field.area) == Approx(coverage).epsilon(0.01));
  }
}

TEST_CASE("a job strews its flakes always alike, and another job otherwise") {
  const Scatter once = of(tests::workedExample(), 0.15);
  const Scatter again = of(tests::workedExample(), 0.15);
  const Scatter other = of(tests::workedExample(), 0.15, "another");
  REQUIRE(once.flakes.size() == again.flakes.size());
  REQUIRE(once.flakes.size() > 500);
  for (std::size_t i = 0; i < once.flakes.size(); ++i) CHECK(once.flakes[i].corners == again.flakes[i].corners);
  CHECK(once.flakes.front().corners != other.flakes.front().corners);
  std::set<int> tones;
  for (const Flake& flake : once.flakes) tones.insert(flake.tone);
  CHECK(tones == std::set<int>{0, 1, 2});
}

TEST_CASE("where nothing is to be covered there are no flakes, and a vast mount has no more than a small one") {
  CHECK(of(tests::workedExample(), 0).flakes.empty());
  CHECK(strewn({}, {}, 0, 0.5, "seed").flakes.empty());
  const core::geometry::Rectangle vast{0, 0, 10'000, 10'000};
  const core::geometry::Rectangle hole{1, 1, 9'999, 9'999};
  const Outline edge = core::geometry::outlineOf(vast);
  const Scatter whole = strewn({{edge, {}}}, {}, 1e8, 0.3, "seed");
  CHECK(whole.flakes.size() < 5'000);
  CHECK(shareOf(whole, 1e8) == Approx(0.3).epsilon(0.01));
  const Scatter rim = strewn({{edge, core::geometry::outlineOf(hole)}}, {}, 1e8 - 9'998.0 * 9'998.0, 0.3, "seed");
  CHECK(rim.flakes.size() < 50'000);
}
