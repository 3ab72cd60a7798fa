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

// The length of a text that ends in its unit, one space before it; the error does not name the text yet.
base::Result<ParsedLength, Message> parseWritten(std::string_view text) {
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

// A no-break space, wide or narrow, looks like any other and is put in by programs unasked.
std::string withPlainSpaces(std::string_view text) {
  return base::replaceAll(base::replaceAll(std::string(text), "\u00a0", " "), "\u202f", " ");
}

// The space before the unit, as it is often written.
bool isSpaces(std::string_view text) { return withPlainSpaces(text).find_first_not_of(" \t") == std::string::npos; }

// Why a text that does not read as a length is none, as near as its end tells: the space before the unit is not one,
// the unit is another, or there is none.
Message unitTrouble(std::string_view text) {
  const std::size_t digit = text.find_last_of("0123456789");
  if (digit == std::string_view::npos) return Message("length.malformed");
  const std::string_view unit = text.substr(digit + 1);
  if (unit.empty()) return Message("length.no-unit");
  for (const std::string_view known : {"mm", "cm", "in"}) {
    if (!base::endsWith(unit, known) || !isSpaces(unit.substr(0, unit.size() - known.size()))) continue;
    std::string meant = std::string(text.substr(0, digit + 1)) + ' ' + std::string(known);
    if (!parseWritten(meant)) break;
    if (withPlainSpaces(unit) != unit) return Message("length.no-break-space").with("meant", std::move(meant));
    return Message("length.no-space").with("meant", std::move(meant));
  }
  const std::size_t word = unit.find_first_not_of("./-, ");
  if (word == std::string_view::npos) return Message("length.malformed");
  const std::string_view other = unit.substr(word, unit.find_last_not_of(' ') + 1 - word);
  if (other == "mm" || other == "cm" || other == "in") return Message("length.malformed");
  return Message("length.other-unit").with("unit", std::string(other));
}

}  // namespace

base::Result<ParsedLength, Message> parseLength(std::string_view text) {
  const auto parsed = parseWritten(text);
  if (parsed) return parsed.value();
  Message why = parsed.error();
  if (why.id == "length.no-unit" || why.id == "length.malformed") why = unitTrouble(text);
  return std::move(why).with("text", std::string(text));
}

}  // namespace core::units
