// Source: the international yard and pound agreement of 1 July 1959 between the standards laboratories of
// Australia, Canada, New Zealand, South Africa, the United Kingdom and the United States: 1 yard = 0.9144 m exactly.
// With 36 inches to the yard, 1 inch = 25.4 mm exactly.
#include "core/units/length.h"
#include "tests/support/catch.h"

namespace {

std::int64_t nanometres(const std::string& text) {
  const auto parsed = core::units::parseLength(text);
  INFO(text);
  REQUIRE(parsed.ok());
  return parsed.value().length.inNanometres();
}

}  // namespace

TEST_CASE("thirty-six inches are a yard of 914.4 mm") {
  CHECK(nanometres("36 in") == 914'400'000);
  CHECK(nanometres("36 in") == nanometres("914.4 mm"));
  CHECK(nanometres("36 in") == nanometres("91.44 cm"));
}

TEST_CASE("every sixty-fourth of an inch up to a yard is exact") {
  // 0.9144 m / (36 x 64) = 396 875 nm without a remainder.
  static_assert(914'400'000 % (36 * 64) == 0);
  constexpr std::int64_t kSixtyFourth = 914'400'000 / (36 * 64);
  for (int n = 1; n <= 36 * 64; ++n) {
    const int whole = n / 64;
    const int part = n % 64;
    std::string text;
    if (whole > 0) text = std::to_string(whole);
    if (part > 0) text += (text.empty() ? "" : " ") + std::to_string(part) + "/64";
    REQUIRE(nanometres(text + " in") == n * kSixtyFourth);
  }
}

TEST_CASE("a fraction, its reduced form and its decimal are the same length") {
  CHECK(nanometres("12 24/64 in") == nanometres("12 3/8 in"));
  CHECK(nanometres("12 3/8 in") == nanometres("12.375 in"));
  CHECK(nanometres("12 3/8 in") == nanometres("314.325 mm"));
}
