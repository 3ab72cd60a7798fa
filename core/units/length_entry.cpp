#include "core/units/length_entry.h"

#include <cmath>

namespace core::units {
namespace {

std::string millimetres(Length length) {
  const std::int64_t count = length.inNanometres();
  std::string fraction = std::to_string(count % kNanometresPerMillimetre + kNanometresPerMillimetre);
  fraction[0] = '.';
  while (fraction.back() == '0') fraction.pop_back();
  if (fraction == ".") fraction.clear();
  return std::to_string(count / kNanometresPerMillimetre) + fraction + " mm";
}

}  // namespace

Length nearestLength(double millimetres) {
  return Length::nanometres(std::llround(millimetres * static_cast<double>(kNanometresPerMillimetre)));
}

std::string entryText(Length length, UnitSystem system) {
  constexpr std::int64_t kSixtyFourth = kNanometresPerInch / 64;
  if (system == UnitSystem::Millimetres || length.inNanometres() % kSixtyFourth != 0) return millimetres(length);
  const std::int64_t count = length.inNanometres() / kSixtyFourth;
  std::int64_t part = count % 64, of = 64;
  while (part != 0 && part % 2 == 0) {
    part /= 2;
    of /= 2;
  }
  std::string text = count >= 64 || part == 0 ? std::to_string(count / 64) : "";
  if (part != 0) text += (text.empty() ? "" : " ") + std::to_string(part) + '/' + std::to_string(of);
  return text + " in";
}

Length onStep(double millimetres, UnitSystem system, Rounding rounding) {
  return nearestLength(roundedLength(millimetres, system, rounding));
}

}  // namespace core::units
