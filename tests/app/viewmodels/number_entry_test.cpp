#include "app/viewmodels/number_entry.h"

#include "tests/support/catch.h"

using app::viewmodels::NumberEntry;
using core::units::Length;
using core::units::UnitSystem;

namespace {

// '.' parts, '<' erases, digits are digits.
NumberEntry keyed(UnitSystem units, const char* keys) {
  NumberEntry entry(units);
  for (const char* key = keys; *key != 0; ++key) {
    if (*key == '.') {
      entry.part();
    } else if (*key == '<') {
      entry.erase();
    } else {
      entry.digit(*key - '0');
    }
  }
  return entry;
}

Length lengthOf(UnitSystem units, const char* keys) {
  const auto length = keyed(units, keys).length();
  INFO(keys);
  REQUIRE(length.ok());
  return length.value();
}

std::string refusalOf(UnitSystem units, const char* keys) {
  const auto length = keyed(units, keys).length();
  INFO(keys);
  REQUIRE_FALSE(length.ok());
  return length.error().id;
}

}  // namespace

TEST_CASE("millimetres are keyed in exactly") {
  CHECK(lengthOf(UnitSystem::Millimetres, "317") == Length::wholeMillimetres(317));
  CHECK(lengthOf(UnitSystem::Millimetres, "317.5") == Length::nanometres(317'500'000));
  CHECK(lengthOf(UnitSystem::Millimetres, "31.<8") == Length::wholeMillimetres(318));
  CHECK(lengthOf(UnitSystem::Millimetres, ".5") == Length::nanometres(500'000));
}

TEST_CASE("inches are keyed in with a stacked fraction") {
  CHECK(lengthOf(UnitSystem::Inches, "12.3.8") == Length::nanometres(12 * 25'400'000LL + 3 * 3'175'000LL));
  CHECK(lengthOf(UnitSystem::Inches, ".1.2") == Length::nanometres(12'700'000));
  CHECK(lengthOf(UnitSystem::Inches, "12") == Length::nanometres(12 * 25'400'000LL));
}

TEST_CASE("what is no length is said to be none") {
  CHECK_FALSE(refusalOf(UnitSystem::Millimetres, "").empty());
  CHECK_FALSE(refusalOf(UnitSystem::Inches, "12.3").empty());
  CHECK_FALSE(refusalOf(UnitSystem::Inches, "12.3.0").empty());
}

TEST_CASE("erasing to nothing leaves nothing keyed in, however often it is pressed") {
  NumberEntry entry = keyed(UnitSystem::Millimetres, "31.5");
  for (int i = 0; i < 9; ++i) entry.erase();
  CHECK(entry.empty());
  entry = keyed(UnitSystem::Inches, "12.3.8");
  for (int i = 0; i < 9; ++i) entry.erase();
  CHECK(entry.empty());
}

TEST_CASE("more digits than a length has are not taken") {
  for (const UnitSystem units : {UnitSystem::Millimetres, UnitSystem::Inches}) {
    const auto length = keyed(units, "99999999999999999999999999").length();
    const auto fewer = keyed(units, "99999").length();
    // As many as the longest length has, or a refusal that says it is too long.
    if (length.ok()) {
      REQUIRE(fewer.ok());
      CHECK(length.value() <= core::units::kLongestLength);
    } else {
      CHECK(length.error().id == "length.too-long");
    }
  }
}
