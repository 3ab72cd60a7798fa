#include "core/units/length_entry.h"

#include <cmath>
#include <cstdlib>

namespace core::units {
namespace {

constexpr std::int64_t kSixtyFourth = kNanometresPerInch / 64;

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

bool isOddSixtyFourth(Length length) {
  const std::int64_t count = length.inNanometres();
  return count % kSixtyFourth == 0 && count % (2 * kSixtyFourth) != 0;
}

ShownLength showEntered(Length length, UnitSystem system, Rounding rounding) {
  if (system == UnitSystem::Millimetres || !isOddSixtyFourth(length)) {
    return showLength(length.inMillimetres(), system, rounding);
  }
  const std::int64_t count = std::abs(length.inNanometres()) / kSixtyFourth;
  ShownLength shown;
  shown.negative = length < Length();
  shown.unit = "in";
  shown.numerator = count % 64;
  shown.denominator = 64;
  if (count >= 64) shown.whole = std::to_string(count / 64);
  return shown;
}

std::string enteredText(Length length, UnitSystem system, Rounding rounding) {
  return textOf(showEntered(length, system, rounding));
}

double shownEntered(Length length, UnitSystem system, Rounding rounding) {
  const bool exact = system == UnitSystem::Inches && isOddSixtyFourth(length);
  return exact ? length.inMillimetres() : roundedLength(length.inMillimetres(), system, rounding);
}

std::string textOf(const ShownLength& shown) {
  std::string text = shown.approximate ? "\u2248 " : "";
  if (shown.negative) text += '-';
  text += shown.whole;
  if (shown.denominator != 0) {
    if (!shown.whole.empty()) text += ' ';
    text += std::to_string(shown.numerator) + '/' + std::to_string(shown.denominator);
  }
  return text + ' ' + shown.unit;
}

Length onStep(double millimetres, UnitSystem system, Rounding rounding) {
  return nearestLength(roundedLength(millimetres, system, rounding));
}

}  // namespace core::units
