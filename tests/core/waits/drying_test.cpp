#include "core/waits/drying.h"

#include <limits>

#include "core/waits/psychrometrics.h"
#include "tests/core/waits/made_of.h"
#include "tests/support/catch.h"

using namespace core;
using namespace tests;
using waits::DryingModel;

namespace {

const waits::Room kReference = room(23, 50);

std::string refusal(DryingModel model, const waits::Room& here, const waits::Room& reference = kReference) {
  const auto result = waits::dryingFactor(model, here, reference);
  return result.ok() ? "" : dump(result.error());
}

constexpr DryingModel kModels[] = {DryingModel::None, DryingModel::Evaporation, DryingModel::Oxidation};

}  // namespace

TEST_CASE("where the room makes no difference the factor is one anywhere", "[waits]") {
  for (const auto& here : {room(-20, 1), room(60, 99), room(12, 70)}) {
    CHECK(waits::dryingFactor(DryingModel::None, here, kReference).value() == waits::Factor{1, 1, 1});
  }
}

TEST_CASE("in the reference room every factor is exactly one", "[waits]") {
  for (const auto model : kModels) {
    for (const auto& reference : {kReference, room(20, 65), room(17.5, 55)}) {
      CHECK(waits::dryingFactor(model, reference, reference).value() == waits::Factor{1, 1, 1});
    }
  }
}

TEST_CASE("cold and damp slow evaporation, and the span keeps its order", "[waits]") {
  for (double celsius = 8; celsius <= 38; celsius += 0.5) {
    double before = 0;
    for (double percent = 20; percent <= 80; percent += 1) {
      const auto result = waits::dryingFactor(DryingModel::Evaporation, room(celsius, percent), kReference);
      REQUIRE(result.ok());
      const auto f = result.value();
      CHECK(f.least > 0);
      CHECK(f.least <= f.likely);
      CHECK(f.likely <= f.most);
      CHECK(f.likely > before);
      before = f.likely;
    }
  }
}

TEST_CASE("outside its limits a model refuses and says why", "[waits]") {
  CHECK(refusal(DryingModel::Evaporation, room(7.5, 50)) == "room.too-cold celsius=7.5");
  CHECK(refusal(DryingModel::Evaporation, room(38.5, 50)) == "room.too-warm celsius=38.5");
  CHECK(refusal(DryingModel::Evaporation, room(23, 19.5)) == "room.too-dry percent=19.5");
  CHECK(refusal(DryingModel::Evaporation, room(23, 85.5)) == "room.too-damp percent=85.5");
  CHECK(refusal(DryingModel::Oxidation, room(7.5, 50)) == "room.too-cold celsius=7.5");
  CHECK(refusal(DryingModel::Oxidation, room(38.5, 50)) == "room.too-warm celsius=38.5");
}

TEST_CASE("a deficit under 200 Pa is too damp, whatever the hygrometer shows", "[waits]") {
  REQUIRE(waits::vapourPressureDeficit(room(9, 83)) < 200);
  CHECK(refusal(DryingModel::Evaporation, room(9, 83)) == "room.too-damp percent=83");
}

TEST_CASE("the limits themselves are within", "[waits]") {
  CHECK(refusal(DryingModel::Evaporation, room(8, 20)).empty());
  CHECK(refusal(DryingModel::Evaporation, room(38, 85)).empty());
}

TEST_CASE("humidity is no limit to oxidation", "[waits]") {
  CHECK(refusal(DryingModel::Oxidation, room(20, 5)).empty());
  CHECK(refusal(DryingModel::Oxidation, room(20, 98)).empty());
}

TEST_CASE("a reference room outside the limits is refused like any other", "[waits]") {
  CHECK(refusal(DryingModel::Evaporation, kReference, room(5, 50)) == "room.too-cold celsius=5");
  CHECK(refusal(DryingModel::Evaporation, kReference, room(20, 90)) == "room.too-damp percent=90");
}

TEST_CASE("the nearest room within the limits is never refused", "[waits]") {
  constexpr double kNoNumber = std::numeric_limits<double>::quiet_NaN();
  constexpr double kEndless = std::numeric_limits<double>::infinity();
  constexpr double kCelsius[] = {-kEndless, -273.15, -20, 0, 7.999, 8, 9, 23, 38, 38.001, 60, 1e9, kEndless, kNoNumber};
  constexpr double kPercent[] = {-kEndless, 0,  19.999, 20,     50,  80,       81.3,
                                 81.36,     84, 85,     85.001, 100, kEndless, kNoNumber};
  for (const auto model : kModels) {
    for (const double celsius : kCelsius) {
      for (const double percent : kPercent) {
        INFO(celsius << " C, " << percent << " %");
        CHECK(refusal(model, waits::nearestWithin(model, room(celsius, percent))).empty());
      }
    }
  }
}

TEST_CASE("a room within the limits is left as it is, one outside moves no farther than it must", "[waits]") {
  CHECK(waits::nearestWithin(DryingModel::Evaporation, room(19, 58)) == room(19, 58));
  CHECK(waits::nearestWithin(DryingModel::Evaporation, room(5, 58)) == room(8, 58));
  CHECK(waits::nearestWithin(DryingModel::Evaporation, room(23, 95)) == room(23, 85));
  CHECK(waits::nearestWithin(DryingModel::Oxidation, room(5, 95)) == room(8, 95));
  const auto damp = waits::nearestWithin(DryingModel::Evaporation, room(8, 84));
  CHECK(waits::vapourPressureDeficit(damp) == Approx(200).margin(1e-6));
}

TEST_CASE("the wet bulb stands at the air's temperature where the air is full, and below it elsewhere", "[waits]") {
  CHECK(waits::wetBulb(room(20, 100)).inCelsius() == Approx(20).margin(1e-6));
  CHECK(waits::wetBulbDeficit(room(20, 100)) == Approx(0).margin(1e-4));
  for (const double celsius : {-20.0, 0.0, 20.0, 60.0}) {
    CHECK(waits::wetBulb(room(celsius, 1)).inCelsius() < celsius);
    CHECK(waits::wetBulb(room(celsius, 1)).inCelsius() > celsius - 59);
  }
}
