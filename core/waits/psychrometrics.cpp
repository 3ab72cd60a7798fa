#include "core/waits/psychrometrics.h"

#include <cmath>

namespace core::waits {

using units::Temperature;

namespace {

constexpr double kBarometer = 101'325;

double vapourPressure(const Room& room) {
  return saturationPressure(room.temperature) * room.humidity.inPercent() / 100;
}

// Mass of vapour to mass of dry air. 0.621945 is the ratio of their molar masses.
double humidityRatio(double vapour) { return 0.621945 * vapour / (kBarometer - vapour); }

// Returns the humidity ratio that air of `air` degrees must have if a wet bulb in it shows `bulb` degrees.
double humidityRatioAt(double bulb, double air) {
  const double saturated = humidityRatio(saturationPressure(Temperature::celsius(bulb)));
  return ((2501 - 2.326 * bulb) * saturated - 1.006 * (air - bulb)) / (2501 + 1.86 * air - 4.186 * bulb);
}

}  // namespace

double saturationPressure(Temperature temperature) {
  const double t = temperature.inCelsius() + 273.15;
  return std::exp(-5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t * t - 1.4452093e-8 * t * t * t +
                  6.5459673 * std::log(t));
}

double vapourPressureDeficit(const Room& room) { return saturationPressure(room.temperature) - vapourPressure(room); }

Temperature wetBulb(const Room& room) {
  const double air = room.temperature.inCelsius();
  const double ratio = humidityRatio(vapourPressure(room));
  // In the driest air of 60 degrees the bulb stands some 40 degrees lower, so 60 bracket every room.
  double low = air - 60;
  double high = air;
  while (high - low > 1e-9) {
    const double middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) break;  // a number so large that no other lies between
    (humidityRatioAt(middle, air) > ratio ? high : low) = middle;
  }
  return Temperature::celsius(low + (high - low) / 2);
}

double wetBulbDeficit(const Room& room) { return saturationPressure(wetBulb(room)) - vapourPressure(room); }

}  // namespace core::waits
