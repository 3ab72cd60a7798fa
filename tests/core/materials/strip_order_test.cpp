#include "core/materials/strip_order.h"

#include <cmath>

#include "tests/core/materials/matched.h"
#include "tests/support/catch.h"

using namespace core;
using namespace tests;
using materials::StripSide;

namespace {

materials::StripOrder orderIn(const std::string& text) {
  const auto design = designOf(text);
  return materials::stripOrder(design.job.bands[0], design.layout.bands[0]);
}

double offRepeat(double value, double repeat) { return std::fabs(value - std::round(value / repeat) * repeat); }

}  // namespace

TEST_CASE("the example's four strips lie along 1424 of paper, 48 of it lost to the pattern") {
  // Strips 379 and 309, first motifs 21.5 and 10.5, repeat 24. Motifs on the run at 21.5 + 24 n.
  // Right: earliest s >= 379 with s + 10.5 = 21.5 + 24 n: s = 11 + 24 x 16 = 395, 16 lost; ends at 704.
  // Bottom: s = 24 n >= 704: 720, 16 lost; ends at 1099.
  // Left: s = 11 + 24 x 46 = 1115, 16 lost; ends at 1424.
  const auto order = orderIn(workedExample());
  REQUIRE(order.strips.size() == 4);
  const double begins[] = {0, 395, 720, 1115};
  const StripSide sides[] = {StripSide::Top, StripSide::Right, StripSide::Bottom, StripSide::Left};
  for (std::size_t i = 0; i < 4; ++i) {
    CHECK(order.strips[i].number == static_cast<int>(i) + 1);
    CHECK(order.strips[i].side == sides[i]);
    CHECK(order.strips[i].begin == Approx(begins[i]));
    CHECK(order.strips[i].firstMotif == Approx(i % 2 == 0 ? 21.5 : 10.5));
  }
  CHECK(order.run == Approx(1424));
  CHECK(order.lost == Approx(48));
}

TEST_CASE("plain paper is cut end to end") {
  const auto order = orderIn(changed(workedExample(), R"("motif": "mirror")", R"("motif": "plain")"));
  CHECK(order.lost == 0);
  CHECK(order.run == 2 * (379 + 309));
}

TEST_CASE("a directional paper runs on from corner to corner along the line that closes best") {
  // The mean line, 7 inside either edge: from one strip's corner point to the next one's 2 x (6 + 7) = 26 of paper lie
  // over, so 22 are left out to make 48, two repeats.
  const auto order = orderIn(changed(workedExample(), R"("motif": "mirror")", R"("motif": "directional")"));
  CHECK(order.strips[0].side == StripSide::Bottom);
  CHECK(order.strips[3].side == StripSide::Right);
  for (std::size_t i = 1; i < 4; ++i) CHECK(order.strips[i].lost == Approx(22));
  CHECK(order.run == Approx(2 * (379 + 309) + 66));
}

TEST_CASE("strips never overlap, lose less than a repeat each, and carry their own first motif") {
  for (int repeat = 3; repeat < 90; ++repeat) {
    for (const char* motif : {"mirror", "directional"}) {
      INFO(repeat << ' ' << motif);
      std::string text =
          changed(workedExample(), R"("repeat": "24 mm")",
                  R"("repeat": ")" + std::to_string(repeat) + R"( mm", "centre": {"vertical": "ground"})");
      text = changed(text, R"("motif": "mirror")", std::string(R"("motif": ")") + motif + '"');
      const auto order = orderIn(text);
      double end = 0, lengths = 0;
      for (const auto& strip : order.strips) {
        CHECK(strip.begin >= end - 1e-9);
        CHECK(strip.begin < end + repeat);
        end = strip.begin + strip.length;
        lengths += strip.length;
        const double motifOnRun = strip.begin + strip.firstMotif;
        CHECK(offRepeat(motifOnRun - order.strips[0].firstMotif, repeat) < 1e-9);
      }
      CHECK(order.run == Approx(end));
      CHECK(order.lost == Approx(order.run - lengths).margin(1e-9));
    }
  }
}
