// What a maker is warned of, by the room that is known.
#include "core/jobs/cautions.h"

#include <algorithm>

#include "core/base/text.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;

namespace {

constexpr const char* kFirstBrush = "strips-adhesive/brush@inner.top";

std::string chartIn(const std::string& room) {
  return base::replaceAll(demoJobText(), R"("room": { "temperature": "19 C", "humidity": "58 %" })", room);
}

bool warnsOfTheFilm(const Bench& bench) {
  const auto step = bench.plan()->workflow.indexOf(kFirstBrush);
  REQUIRE(step);
  const auto cautions = jobs::cautionsOf(bench.at(), {*step});
  // What is for every room stands in any.
  REQUIRE(
      std::any_of(cautions.begin(), cautions.end(), [](const auto& one) { return one.caution.hazard == "adhesive"; }));
  return std::any_of(cautions.begin(), cautions.end(), [](const auto& one) { return one.caution.hazard == "film"; });
}

void enter(Bench& bench, double celsius) {
  REQUIRE(bench.askShop(intents::EnterRoom{{units::Temperature::celsius(celsius), units::Humidity::percent(50)}}) ==
          "");
}

}  // namespace

TEST_CASE("a caution for a cold room is left out where the job's room is warmer") {
  CHECK_FALSE(warnsOfTheFilm(Bench(demoJobText(), shippedTechniques())));
  CHECK(warnsOfTheFilm(Bench(chartIn(R"("room": { "temperature": "9 C", "humidity": "58 %" })"), shippedTechniques())));
}

TEST_CASE("a caution for a cold room stands where no room is known, until one is entered") {
  Bench bench(chartIn(R"("deliver": "framed")"), shippedTechniques());
  CHECK(warnsOfTheFilm(bench));
  enter(bench, 18);
  CHECK_FALSE(warnsOfTheFilm(bench));
}

TEST_CASE("a caution comes back when the room is found colder than the job's") {
  Bench bench(demoJobText(), shippedTechniques());
  enter(bench, 8);
  CHECK(warnsOfTheFilm(bench));
  enter(bench, 18);
  CHECK_FALSE(warnsOfTheFilm(bench));
}
