// Sources: psychrolib_values.csv, written by another library (named in its first line); and the published equations of
// IAPWS (Wagner and Pruss 1993, IF97 region 4) and of ASHRAE (Hyland and Wexler 1983), worked out apart from our code
// to the digits printed here.
#include <cmath>
#include <sstream>

#include "core/waits/psychrometrics.h"
#include "tests/support/catch.h"
#include "tests/support/files.h"

using namespace core;
using units::Humidity;
using units::Temperature;
using waits::saturationPressure;

namespace {

waits::Room room(double celsius, double percent) { return {Temperature::celsius(celsius), Humidity::percent(percent)}; }

// Rows of the wanted kind, without its name.
std::vector<std::vector<double>> rows(const std::string& kind) {
  const auto text = tests::readWholeFile(PROJECT_ROOT "/tests/outside/psychrolib_values.csv");
  REQUIRE(text);
  std::istringstream lines(*text);
  std::vector<std::vector<double>> found;
  for (std::string line; std::getline(lines, line);) {
    if (line.rfind(kind + ",", 0) != 0) continue;
    std::istringstream fields(line.substr(kind.size() + 1));
    auto& row = found.emplace_back();
    for (std::string field; std::getline(fields, field, ',');) row.push_back(std::stod(field));
  }
  return found;
}

// Wagner and Pruss's auxiliary equation for the saturation line.
double wagnerPruss(double celsius) {
  constexpr double kCritical = 647.096;
  const double t = celsius + 273.15;
  const double v = 1 - t / kCritical;
  return 22.064e6 *
         std::exp(kCritical / t *
                  (-7.85951783 * v + 1.84408259 * std::pow(v, 1.5) - 11.7866497 * std::pow(v, 3) +
                   22.6807411 * std::pow(v, 3.5) - 15.9618719 * std::pow(v, 4) + 1.80122502 * std::pow(v, 7.5)));
}

}  // namespace

TEST_CASE("saturation pressure is another library's to a millionth up to 50 degrees", "[waits]") {
  const auto published = rows("saturation");
  REQUIRE(published.size() == 100);
  for (const auto& row : published) {
    INFO(row[0] << " C");
    CHECK(saturationPressure(Temperature::celsius(row[0])) == Approx(row[1]).epsilon(1e-6));
  }
}

TEST_CASE("the wet bulb is another library's to the thousandth it seeks", "[waits]") {
  const auto published = rows("wetbulb");
  REQUIRE(published.size() > 200);
  for (const auto& row : published) {
    INFO(row[0] << " C, " << row[1] << " %");
    CHECK(waits::wetBulb(room(row[0], row[1])).inCelsius() == Approx(row[2]).margin(0.001));
  }
}

TEST_CASE("saturation pressure has ASHRAE's printed digits", "[waits]") {
  constexpr double kPrinted[][2] = {{5, 872.487},   {10, 1227.995}, {15, 1705.448}, {20, 2338.804}, {23, 2810.442},
                                    {25, 3169.216}, {30, 4246.030}, {35, 5627.819}, {40, 7383.460}};
  for (const auto& [celsius, pascal] : kPrinted) {
    INFO(celsius << " C");
    CHECK(saturationPressure(Temperature::celsius(celsius)) == Approx(pascal).margin(0.0005001));
  }
}

TEST_CASE("saturation pressure is within 0.03 % of the equation of IAPWS", "[waits]") {
  CHECK(wagnerPruss(23) == Approx(2810.955).margin(0.0005001));
  for (double celsius = 0.5; celsius <= 40; celsius += 0.5) {
    INFO(celsius << " C");
    CHECK(saturationPressure(Temperature::celsius(celsius)) == Approx(wagnerPruss(celsius)).epsilon(3e-4));
  }
}

TEST_CASE("the deficit of the room has the digits ASHRAE's formula gives", "[waits]") {
  constexpr double kPercent[] = {20, 30, 40, 50, 65, 80};
  constexpr double kPascal[][7] = {
      {5, 698.0, 610.7, 523.5, 436.2, 305.4, 174.5},       {10, 982.4, 859.6, 736.8, 614.0, 429.8, 245.6},
      {15, 1364.4, 1193.8, 1023.3, 852.7, 596.9, 341.1},   {20, 1871.0, 1637.2, 1403.3, 1169.4, 818.6, 467.8},
      {23, 2248.4, 1967.3, 1686.3, 1405.2, 983.7, 562.1},  {25, 2535.4, 2218.5, 1901.5, 1584.6, 1109.2, 633.8},
      {30, 3396.8, 2972.2, 2547.6, 2123.0, 1486.1, 849.2}, {35, 4502.3, 3939.5, 3376.7, 2813.9, 1969.7, 1125.6},
      {40, 5906.8, 5168.4, 4430.1, 3691.7, 2584.2, 1476.7}};
  for (const auto& row : kPascal) {
    for (int i = 0; i < 6; ++i) {
      INFO(row[0] << " C, " << kPercent[i] << " %");
      CHECK(waits::vapourPressureDeficit(room(row[0], kPercent[i])) == Approx(row[i + 1]).margin(0.0501));
    }
  }
}

TEST_CASE("at 23 degrees and 50 % the deficits are 1405.22 and 442.11 Pa, the wet bulb at 16.247", "[waits]") {
  CHECK(waits::vapourPressureDeficit(room(23, 50)) == Approx(1405.22).margin(0.00501));
  CHECK(waits::wetBulb(room(23, 50)).inCelsius() == Approx(16.247).margin(0.000501));
  // Printed from a wet bulb found to 0.001 K, half of which is 0.06 Pa here.
  CHECK(waits::wetBulbDeficit(room(23, 50)) == Approx(442.11).margin(0.06));
}
