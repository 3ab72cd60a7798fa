// Sources: factors worked out apart from our code, to the digits printed here, from ASHRAE's psychrometric formulas
// (Handbook, Fundamentals) for the reference atmosphere of ISO 291 (23 degrees Celsius, 50 %); and Arrhenius's law
// with the gas constant of CODATA for activation energies round those of Ulkowski, Musialik and Litwinienko 2005.
#include <cmath>

#include "core/waits/drying.h"
#include "tests/support/catch.h"

using namespace core;
using waits::DryingModel;

namespace {

waits::Room room(double celsius, double percent) {
  return {units::Temperature::celsius(celsius), units::Humidity::percent(percent)};
}

waits::Factor factor(DryingModel model, double celsius, double percent) {
  const auto result = waits::dryingFactor(model, room(celsius, percent), room(23, 50));
  REQUIRE(result.ok());
  return result.value();
}

// The printed factors rest on wet bulbs found to 0.001 K only: a share of up to 0.0001 of each.
constexpr double kWetBulbSearch = 1e-4;

// The two ends of the factor, told apart by the deficit at the room's temperature worked out here once more.
struct Limits {
  double atAir;
  double atWetBulb;
};

Limits limits(double celsius, double percent) {
  const auto f = factor(DryingModel::Evaporation, celsius, percent);
  const auto deficit = [](double t, double rh) {
    const double k = t + 273.15;
    return (1 - rh / 100) * std::exp(-5.8002206e3 / k + 1.3914993 - 4.8640239e-2 * k + 4.1764768e-5 * k * k -
                                     1.4452093e-8 * k * k * k + 6.5459673 * std::log(k));
  };
  const double air = deficit(23, 50) / deficit(celsius, percent);
  const bool airIsMost = std::fabs(f.most - air) < std::fabs(f.least - air);
  return airIsMost ? Limits{f.most, f.least} : Limits{f.least, f.most};
}

}  // namespace

TEST_CASE("the evaporation factor has the printed digits, and so has its split", "[waits]") {
  struct Row {
    double celsius;
    double likely[6];
    int airAbove[6];  // how far the limit of the room's temperature lies above, in %
  };
  constexpr double kPercent[] = {20, 30, 40, 50, 65, 80};
  constexpr Row kRows[] = {{10, {1.139, 1.311, 1.541, 1.863, 2.689, 4.756}, {26, 25, 24, 23, 22, 20}},
                           {15, {0.878, 1.013, 1.193, 1.446, 2.094, 3.715}, {17, 16, 15, 14, 12, 11}},
                           {20, {0.688, 0.796, 0.941, 1.143, 1.661, 2.956}, {9, 8, 6, 5, 3, 2}},
                           {23, {0.599, 0.695, 0.822, 1.000, 1.457, 2.599}, {4, 3, 1, 0, -2, -4}},
                           {25, {0.548, 0.636, 0.754, 0.918, 1.340, 2.392}, {1, 0, -2, -3, -5, -7}},
                           {30, {0.442, 0.515, 0.613, 0.748, 1.096, 1.964}, {-6, -8, -10, -12, -14, -16}},
                           {35, {0.362, 0.423, 0.505, 0.618, 0.909, 1.635}, {-14, -16, -18, -19, -22, -24}}};
  for (const auto& row : kRows) {
    for (int i = 0; i < 6; ++i) {
      INFO(row.celsius << " C, " << kPercent[i] << " %");
      const auto f = factor(DryingModel::Evaporation, row.celsius, kPercent[i]);
      CHECK(f.likely == Approx(row.likely[i]).margin(0.0005 + kWetBulbSearch * row.likely[i]));
      CHECK(100 * (limits(row.celsius, kPercent[i]).atAir / f.likely - 1) == Approx(row.airAbove[i]).margin(0.501));
    }
  }
}

TEST_CASE("each of the two limits has the printed digits", "[waits]") {
  constexpr double kAir[][3] = {{10, 20, 1.430}, {10, 50, 2.289}, {10, 80, 5.722}, {15, 65, 2.354}, {18, 50, 1.361},
                                {20, 50, 1.202}, {20, 65, 1.717}, {20, 80, 3.004}, {25, 50, 0.887}, {30, 40, 0.552},
                                {30, 80, 1.655}, {35, 20, 0.312}, {35, 80, 1.248}};
  constexpr double kWetBulb[][3] = {
      {10, 80, 3.953}, {20, 50, 1.086}, {20, 65, 1.607}, {30, 40, 0.680}, {35, 20, 0.419}};
  for (const auto& [celsius, percent, printed] : kAir) {
    INFO(celsius << " C, " << percent << " %");
    CHECK(limits(celsius, percent).atAir == Approx(printed).margin(0.000501));
  }
  for (const auto& [celsius, percent, printed] : kWetBulb) {
    INFO(celsius << " C, " << percent << " %");
    CHECK(limits(celsius, percent).atWetBulb == Approx(printed).margin(0.000501));
  }
}

TEST_CASE("forty minutes at the reference are 66, 190, 25 and 14 in four rooms", "[waits]") {
  constexpr double kMinutes[][5] = {
      {20, 65, 66, 69, 64}, {10, 80, 190, 229, 158}, {30, 40, 25, 22, 27}, {35, 20, 14, 12, 17}};
  for (const auto& [celsius, percent, likely, air, wetBulb] : kMinutes) {
    INFO(celsius << " C, " << percent << " %");
    CHECK(std::round(40 * factor(DryingModel::Evaporation, celsius, percent).likely) == likely);
    CHECK(std::round(40 * limits(celsius, percent).atAir) == air);
    CHECK(std::round(40 * limits(celsius, percent).atWetBulb) == wetBulb);
  }
}

TEST_CASE("the oxidation factor is Arrhenius's with 70, and 50 and 90 kJ/mol", "[waits]") {
  constexpr double kPrinted[][4] = {{10, 2.540, 3.688, 5.355}, {15, 1.757, 2.202, 2.759}, {18, 1.417, 1.629, 1.873},
                                    {20, 1.231, 1.338, 1.454}, {25, 0.783, 0.826, 0.873}, {30, 0.430, 0.519, 0.626},
                                    {35, 0.241, 0.331, 0.454}};
  for (const auto& [celsius, least, likely, most] : kPrinted) {
    INFO(celsius << " C");
    const auto f = factor(DryingModel::Oxidation, celsius, 50);
    CHECK(f.least == Approx(least).margin(0.000501));
    CHECK(f.likely == Approx(likely).margin(0.000501));
    CHECK(f.most == Approx(most).margin(0.000501));
  }
}
