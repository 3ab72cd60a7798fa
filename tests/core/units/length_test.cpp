#include "core/units/length.h"

#include <cmath>
#include <type_traits>

#include "core/units/length_display.h"
#include "tests/support/catch.h"

using namespace core::units;

// Truths that must hold for the program to compile at all.
static_assert(kNanometresPerInch % 64 == 0, "every 1/64 in is whole in nanometres");
static_assert(kNanometresPerInch % 128 != 0, "1/128 in is not, so it is refused");
static_assert(Length::wholeMillimetres(3) + Length::nanometres(5) > Length::wholeMillimetres(3));
static_assert(!std::is_convertible_v<double, Length> && !std::is_convertible_v<int, Length>,
              "no bare number is a length");
template <typename A, typename B>
concept Multiplies = requires(A a, B b) {
  a* b;
};
static_assert(!Multiplies<Length, Length>, "lengths have no product: areas are somebody else's");

namespace {

std::int64_t nanometres(const char* text) {
  const auto parsed = parseLength(text);
  INFO(text);
  REQUIRE(parsed);
  return parsed.value().length.inNanometres();
}

std::string refusal(const char* text) {
  const auto parsed = parseLength(text);
  INFO(text);
  REQUIRE_FALSE(parsed);
  return parsed.error().id;
}

std::string shown(double millimetres, UnitSystem system, Rounding rounding = Rounding::Nearest) {
  return lengthText(millimetres, system, rounding);
}

constexpr auto kMetric = UnitSystem::Millimetres;
constexpr auto kInches = UnitSystem::Inches;

}  // namespace

TEST_CASE("lengths are read exactly", "[length]") {
  CHECK(nanometres("310 mm") == 310'000'000);
  CHECK(nanometres("31.5 cm") == 315'000'000);
  CHECK(nanometres("0.000001 mm") == 1);
  CHECK(nanometres("0.0000001 cm") == 1);
  CHECK(nanometres("12 3/8 in") == 314'325'000);
  CHECK(nanometres("12-3/8 in") == 314'325'000);
  CHECK(nanometres("12.375 in") == 314'325'000);
  CHECK(nanometres("3/32 in") == 2'381'250);
  CHECK(nanometres("-0.5 mm") == -500'000);
  CHECK(nanometres("000310.000 mm") == 310'000'000);
  CHECK(nanometres("10000 mm") == 10'000'000'000);
  CHECK(nanometres("9/8 in") == 28'575'000);
}

TEST_CASE("every fraction of an inch down to 1/64 is exact", "[length]") {
  for (int denominator = 2; denominator <= 64; denominator *= 2) {
    for (int numerator = 1; numerator < denominator; ++numerator) {
      const std::string text = std::to_string(numerator) + "/" + std::to_string(denominator) + " in";
      CHECK(nanometres(text.c_str()) * denominator == numerator * kNanometresPerInch);
    }
  }
}

TEST_CASE("what is not a length says what is wrong with it", "[length]") {
  CHECK(refusal("310") == "length.no-unit");
  CHECK(refusal("310 m") == "length.other-unit");
  CHECK(refusal("310 MM") == "length.other-unit");
  CHECK(refusal("1/2 mm") == "length.fraction-of-metric");
  CHECK(refusal("1/3 in") == "length.denominator");
  CHECK(refusal("1/128 in") == "length.denominator");
  CHECK(refusal("1/0 in") == "length.denominator");
  CHECK(refusal("2 5/4 in") == "length.improper-fraction");
  CHECK(refusal("0.0000001 mm") == "length.not-whole");
  CHECK(refusal("0.0078125 in") == "length.not-whole");
  CHECK(refusal("10000.000001 mm") == "length.too-long");
  CHECK(refusal("394 in") == "length.too-long");
  CHECK(refusal("99999999999999999999 mm") == "length.too-long");
  for (const char* bad : {" mm", "1e2 mm", "+1 mm", "1,5 mm", ".5 mm", "5. mm", "--1 mm", "1 2 in", "1 1/2/2 in",
                          "one mm", "mm", "", "1,5mm", "5 mm ", " 5 mm"}) {
    INFO(bad);
    CHECK(refusal(bad) == "length.malformed");
  }
}

TEST_CASE("a length refused says what was read, and what was meant where that is plain", "[length]") {
  const auto told = [](const char* text) { return dump(parseLength(text).error()); };
  CHECK(told("5mm") == "length.no-space meant=5 mm text=5mm");
  CHECK(told("-3/32in") == "length.no-space meant=-3/32 in text=-3/32in");
  CHECK(told("12 3/8  in") == "length.no-space meant=12 3/8 in text=12 3/8  in");
  CHECK(told("31.5\tcm") == "length.no-space meant=31.5 cm text=31.5\tcm");
  CHECK(told("5\u00a0mm") == "length.no-break-space meant=5 mm text=5\u00a0mm");
  CHECK(told("12 3/8\u202fin") == "length.no-break-space meant=12 3/8 in text=12 3/8\u202fin");
  CHECK(told("10.1 m") == "length.other-unit unit=m text=10.1 m");
  CHECK(told("10m") == "length.other-unit unit=m text=10m");
  CHECK(told("5\"") == "length.other-unit unit=\" text=5\"");
  CHECK(told("5 inches") == "length.other-unit unit=inches text=5 inches");
  CHECK(told("310") == "length.no-unit text=310");
  CHECK(told("1/3 in") == "length.denominator denominator=3 text=1/3 in");
  // What is longer than any length is not offered with a space.
  CHECK(told("10001mm") == "length.malformed text=10001mm");
}

TEST_CASE("shown lengths name their rounding", "[length]") {
  CHECK(shown(379, kMetric) == "379.0 mm");
  CHECK(shown(409.3333333, kMetric, Rounding::Down) == "409.3 mm");
  CHECK(shown(409.39, kMetric, Rounding::Down) == "409.3 mm");
  CHECK(shown(409.31, kMetric, Rounding::Up) == "409.4 mm");
  CHECK(shown(0.25, kMetric) == "0.3 mm");
  CHECK(shown(-0.25, kMetric) == "-0.3 mm");
  CHECK(shown(-0.01, kMetric) == "0.0 mm");
  // The last bit of a sum does not cost a tenth.
  CHECK(shown(315.99999999999994, kMetric, Rounding::Down) == "316.0 mm");
  CHECK(shown(316.00000000000006, kMetric, Rounding::Up) == "316.0 mm");
}

TEST_CASE("inches are shown in reduced fractions, and marked where they are near", "[length]") {
  CHECK(shown(12.375 * 25.4, kInches) == "12 3/8 in");
  CHECK(shown(25.4, kInches) == "1 in");
  CHECK(shown(0, kInches) == "0 in");
  CHECK(shown(9.525, kInches) == "3/8 in");
  CHECK(shown(25.4 / 64, kInches) == "\u2248 1/32 in");
  CHECK(shown(25.4 / 64, kInches, Rounding::Down) == "\u2248 0 in");
  CHECK(shown(-9.525, kInches) == "-3/8 in");
  const ShownLength parts = showLength(12.375 * 25.4, kInches, Rounding::Nearest);
  CHECK(parts.whole == "12");
  CHECK(parts.numerator == 3);
  CHECK(parts.denominator == 8);
}

TEST_CASE("shown values lie within half a step", "[length]") {
  for (int i = 0; i < 4000; ++i) {
    const double value = i * 0.137;
    CHECK(std::fabs(roundedLength(value, kMetric, Rounding::Nearest) - value) <= 0.05 + 1e-6);
    CHECK(std::fabs(roundedLength(value, kInches, Rounding::Nearest) - value) <= 25.4 / 64 + 1e-6);
    CHECK(roundedLength(value, kMetric, Rounding::Down) <= value + 1e-6);
  }
}
