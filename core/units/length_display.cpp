#include "core/units/length_display.h"

#include <cmath>
#include <numeric>

#include "core/base/text.h"
#include "core/units/length_entry.h"

namespace core::units {
namespace {

constexpr double kThirtySecond = 25.4 / 32;
constexpr double kOnStep = 1e-7;

// Whole steps of the display's grid.
double steps(double millimetres, UnitSystem system, Rounding rounding) {
  const double count = system == UnitSystem::Millimetres ? millimetres * 10 : millimetres / kThirtySecond;
  switch (rounding) {
    case Rounding::Down: return std::floor(count + kOnStep);
    case Rounding::Up: return std::ceil(count - kOnStep);
    case Rounding::Nearest: break;
  }
  const double magnitude = std::floor(std::fabs(count) + 0.5 + kOnStep);
  return count < 0 ? -magnitude : magnitude;
}

}  // namespace

ShownLength showLength(double millimetres, UnitSystem system, Rounding rounding) {
  const double count = steps(millimetres, system, rounding);
  ShownLength shown;
  shown.negative = count < 0;
  if (system == UnitSystem::Millimetres) {
    shown.unit = "mm";
    shown.whole = base::fixedNumber(std::fabs(count) / 10, 1);
    return shown;
  }
  shown.unit = "in";
  shown.approximate = std::fabs(millimetres - count * kThirtySecond) > 1e-6;
  const auto thirtySeconds = static_cast<std::int64_t>(std::fabs(count));
  const std::int64_t whole = thirtySeconds / 32;
  const std::int64_t part = thirtySeconds % 32;
  if (part != 0) {
    const std::int64_t common = std::gcd(part, std::int64_t{32});
    shown.numerator = part / common;
    shown.denominator = 32 / common;
  }
  if (whole != 0 || part == 0) shown.whole = std::to_string(whole);
  return shown;
}

std::string lengthText(double millimetres, UnitSystem system, Rounding rounding) {
  return textOf(showLength(millimetres, system, rounding));
}

double roundedLength(double millimetres, UnitSystem system, Rounding rounding) {
  const double count = steps(millimetres, system, rounding);
  return system == UnitSystem::Millimetres ? count / 10 : count * kThirtySecond;
}

}  // namespace core::units
