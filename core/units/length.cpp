#include "core/units/length.h"

#include <optional>

#include "core/base/text.h"

namespace core::units {
namespace {

using base::Message;

// Ten metres are 1e10 nm, so anything longer than this many digits is beyond range whatever its unit.
constexpr std::size_t kMostWholeDigits = 9;

std::optional<std::int64_t> wholeNumber(std::string_view digits) {
  if (!base::isDigits(digits)) return std::nullopt;
  std::int64_t number = 0;
  for (const char c : digits) {
    number = number * 10 + (c - '0');
    if (number > 1'000'000'000'000) return std::nullopt;
  }
  return number;
}

struct Fraction {
  std::int64_t numerator = 0;
  std::int64_t denominator = 1;
};

base::Result<Fraction, Message> parseFraction(std::string_view text) {
  const auto slash = text.find('/');
  const auto numerator = wholeNumber(text.substr(0, slash));
  const auto denominator = wholeNumber(text.substr(slash + 1));
  if (!numerator || !denominator) return Message("length.malformed");
  const std::int64_t d = *denominator;
  if (d < 2 || d > 64 || (d & (d - 1)) != 0) return Message("length.denominator").with("denominator", d);
  return Fraction{*numerator, d};
}

// The decimal `text` of a unit of `perUnit` nm, exactly, or the reason why not.
base::Result<std::int64_t, Message> parseDecimalNanometres(std::string_view text, std::int64_t perUnit) {
  const auto point = text.find('.');
  const std::string_view whole = text.substr(0, point);
  std::string_view decimals = point == std::string_view::npos ? std::string_view() : text.substr(point + 1);
  if (!base::isDigits(whole) || (point != std::string_view::npos && !base::isDigits(decimals)))
    return Message("length.malformed");
  std::string_view significant = whole;
  while (significant.size() > 1 && significant.front() == '0') significant.remove_prefix(1);
  if (significant.size() > kMostWholeDigits) return Message("length.too-long");
  while (!decimals.empty() && decimals.back() == '0') decimals.remove_suffix(1);
  // 1/64 in takes six places; past nine nothing is whole in nanometres, and nine keep the product in int64.
  if (decimals.size() > 9) return Message("length.not-whole");
  std::int64_t divisor = 1;
  for (std::size_t i = 0; i < decimals.size(); ++i) divisor *= 10;
  const std::int64_t scaled = decimals.empty() ? 0 : *wholeNumber(decimals) * perUnit;
  if (scaled % divisor != 0) return Message("length.not-whole");
  return *wholeNumber(significant) * perUnit + scaled / divisor;
}

base::Result<std::int64_t, Message> parseInches(std::string_view text) {
  const auto slash = text.find('/');
  if (slash == std::string_view::npos) return parseDecimalNanometres(text, kNanometresPerInch);
  std::int64_t whole = 0;
  const auto gap = text.find_first_of(" -");
  const bool mixed = gap != std::string_view::npos;
  if (mixed) {
    const auto number = wholeNumber(text.substr(0, gap));
    if (!number) return Message("length.malformed");
    if (*number > 1'000'000) return Message("length.too-long");
    whole = *number;
  }
  const auto fraction = parseFraction(mixed ? text.substr(gap + 1) : text);
  if (!fraction) return fraction.error();
  const auto [numerator, denominator] = fraction.value();
  if (mixed && numerator >= denominator) return Message("length.improper-fraction");
  if (numerator > 1'000'000) return Message("length.too-long");
  return whole * kNanometresPerInch + numerator * (kNanometresPerInch / denominator);
}

}  // namespace

base::Result<ParsedLength, Message> parseLength(std::string_view text) {
  ParsedLength parsed;
  std::int64_t perUnit = kNanometresPerMillimetre;
  if (base::endsWith(text, " mm")) {
    parsed.unit = LengthUnit::Millimetre;
  } else if (base::endsWith(text, " cm")) {
    parsed.unit = LengthUnit::Centimetre;
    perUnit = 10 * kNanometresPerMillimetre;
  } else if (base::endsWith(text, " in")) {
    parsed.unit = LengthUnit::Inch;
  } else {
    return Message("length.no-unit");
  }
  std::string_view number = text.substr(0, text.size() - 3);
  const bool negative = !number.empty() && number.front() == '-';
  if (negative) number.remove_prefix(1);
  if (parsed.unit != LengthUnit::Inch && number.find('/') != std::string_view::npos) {
    return Message("length.fraction-of-metric");
  }
  const auto nanometres =
      parsed.unit == LengthUnit::Inch ? parseInches(number) : parseDecimalNanometres(number, perUnit);
  if (!nanometres) return nanometres.error();
  if (nanometres.value() > kLongestLength.inNanometres()) return Message("length.too-long");
  parsed.length = Length::nanometres(negative ? -nanometres.value() : nanometres.value());
  return parsed;
}

}  // namespace core::units
