// The bands beside a measure say what recording the measure would do.
#include <algorithm>
#include <cmath>

#include "core/decisions/made_bands.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using decisions::MadeBand;
using decisions::Outcome;

namespace {

const std::string kMeasureWindow = "cut-windows/measure-window@top";
const std::string kSightWidth = "board.top.sight.width";

std::vector<MadeBand> bandsOf(const Bench& bench, const std::string& figure, double reach, double reading) {
  const double drawn = bench.state().design->figures.find(figure)->value;
  return decisions::bandsBetween(bench.state(), *bench.state().design, figure, drawn - reach, drawn + reach, reading);
}

const MadeBand& bandAt(const std::vector<MadeBand>& bands, double value) {
  const auto found = std::find_if(bands.begin(), bands.end(), [&](const MadeBand& band) { return value <= band.to; });
  REQUIRE(found != bands.end());
  return *found;
}

}  // namespace

TEST_CASE("the bands lie side by side, and the tolerance is theirs to the last bit", "[measuring]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(kMeasureWindow);
  const auto bands = bandsOf(bench, kSightWidth, 12, 0.5);
  REQUIRE(bands.size() > 3);
  CHECK(bands.front().from == 304);
  CHECK(bands.back().to == Approx(328));
  for (std::size_t i = 1; i < bands.size(); ++i) {
    CHECK(bands[i].from == bands[i - 1].to);
    CHECK(bands[i].to > bands[i].from);
    CHECK_FALSE(bands[i].outcome == bands[i - 1].outcome);
  }
  const MadeBand& drawn = bandAt(bands, 316);
  CHECK(drawn.outcome.outcome == Outcome::AsDrawn);
  CHECK(drawn.from == 315.5);
  CHECK(drawn.to == 316.5);
}

TEST_CASE("what a band says is what recording the measure does", "[measuring]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(kMeasureWindow);
  const auto bands = bandsOf(bench, kSightWidth, 12, 0.5);
  int taken = 0;
  int refused = 0;
  for (int half = -24; half <= 24; ++half) {
    const double value = 316 + half * 0.5;
    // On an edge either neighbour may be right.
    const bool onEdge = std::any_of(bands.begin(), bands.end(),
                                    [&](const MadeBand& band) { return std::fabs(band.from - value) < 0.13; });
    if (onEdge) continue;
    INFO(value);
    const MadeBand& band = bandAt(bands, value);
    const double strip = bench.state().design->figures.find("band.inner.strip.horizontal")->value;
    const std::string answer = bench.ask(
        intents::EnterAsMade{kMeasureWindow, kSightWidth, units::Length::nanometres(std::llround(value * 1e6)), ""});
    CHECK(answer == band.outcome.refusal);
    if (answer.empty()) {
      ++taken;
      const double now = bench.state().design->figures.find("band.inner.strip.horizontal")->value;
      CHECK(now - strip == Approx(value - 316));
      if (std::fabs(value - 316) > 0.5) CHECK(band.outcome.follow.contains("band"));
      REQUIRE(bench.ask(intents::Undo{bench.lastIntent()}).empty());
    } else {
      ++refused;
      CHECK(band.outcome.outcome == Outcome::Refused);
    }
  }
  CHECK(taken > 10);
  CHECK(refused > 4);
}

TEST_CASE("a micrometer's scale is as fine as it tells", "[measuring]") {
  using design::Gauge;
  CHECK(design::toleranceOf("board.top.thickness").gauge == Gauge::Micrometer);
  CHECK(design::toleranceOf(kSightWidth).gauge == Gauge::Rule);
  const auto mm = units::UnitSystem::Millimetres;
  const auto in = units::UnitSystem::Inches;
  CHECK(design::readingOf(Gauge::Rule, mm).inNanometres() == 500'000);
  CHECK(design::readingOf(Gauge::Micrometer, mm).inNanometres() == 50'000);
  CHECK(design::readingOf(Gauge::Rule, in).inNanometres() * 32 == units::kNanometresPerInch);
  CHECK(design::readingOf(Gauge::Micrometer, in).inNanometres() * 64 == units::kNanometresPerInch);
}
