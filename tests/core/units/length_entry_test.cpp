// Lengths as a job file writes them: read back they are the same, to the nanometre.
#include "core/units/length_entry.h"

#include <random>

#include "tests/support/catch.h"

using namespace core::units;

TEST_CASE("a length as a file has it reads back as itself") {
  std::mt19937_64 random(113);
  std::uniform_int_distribution<std::int64_t> any(0, kLongestLength.inNanometres());
  for (int round = 0; round < 5000; ++round) {
    // Some to the nanometre, some on 64ths, some on tenths of a millimetre.
    const std::int64_t step = round % 3 == 0 ? 1 : round % 3 == 1 ? kNanometresPerInch / 64 : 100'000;
    const Length length = Length::nanometres(any(random) / step * step);
    for (const UnitSystem system : {UnitSystem::Millimetres, UnitSystem::Inches}) {
      const std::string text = entryText(length, system);
      INFO(text);
      const auto read = parseLength(text);
      REQUIRE(read.ok());
      CHECK(read.value().length == length);
      const bool on64th = length.inNanometres() % (kNanometresPerInch / 64) == 0;
      CHECK((read.value().unit == LengthUnit::Inch) == (system == UnitSystem::Inches && on64th));
    }
  }
}

TEST_CASE("fractions are reduced, and nothing has its unit") {
  const auto sixtyFourths = [](std::int64_t count) { return Length::nanometres(count * (kNanometresPerInch / 64)); };
  CHECK(entryText(sixtyFourths(0), UnitSystem::Inches) == "0 in");
  CHECK(entryText(sixtyFourths(8), UnitSystem::Inches) == "1/8 in");
  CHECK(entryText(sixtyFourths(176), UnitSystem::Inches) == "2 3/4 in");
  CHECK(entryText(sixtyFourths(128), UnitSystem::Inches) == "2 in");
  CHECK(entryText(Length(), UnitSystem::Millimetres) == "0 mm");
  CHECK(entryText(Length::nanometres(69'500'000), UnitSystem::Millimetres) == "69.5 mm");
}

TEST_CASE("a value on a step of the display is what the display shows") {
  CHECK(onStep(409 + 1.0 / 3, UnitSystem::Millimetres, Rounding::Nearest) == Length::nanometres(409'300'000));
  CHECK(onStep(14.21, UnitSystem::Millimetres, Rounding::Up) == Length::nanometres(14'300'000));
  CHECK(onStep(20, UnitSystem::Inches, Rounding::Up) == Length::nanometres(26 * (kNanometresPerInch / 32)));
}

TEST_CASE("what was entered is shown exactly on every 64th, and like a computed length elsewhere") {
  CHECK(enteredText(Length::nanometres(396'875), UnitSystem::Inches) == "1/64 in");
  CHECK(enteredText(Length::nanometres(2 * 396'875), UnitSystem::Inches) == "1/32 in");
  CHECK(enteredText(Length::nanometres(65 * 396'875), UnitSystem::Inches, Rounding::Down) == "1 1/64 in");
  CHECK(enteredText(Length::nanometres(-3 * 396'875), UnitSystem::Inches) == "-3/64 in");
  CHECK(enteredText(Length::nanometres(396'875), UnitSystem::Millimetres) == "0.4 mm");
  CHECK(enteredText(Length::wholeMillimetres(2), UnitSystem::Inches) == "\u2248 3/32 in");
  for (std::int64_t count = -200; count < 200; ++count) {
    const Length length = Length::nanometres(count * 396'875);
    const ShownLength shown = showEntered(length, UnitSystem::Inches, Rounding::Nearest);
    CHECK_FALSE(shown.approximate);
    CHECK(nearestLength(shownEntered(length, UnitSystem::Inches, Rounding::Nearest)) == length);
    if (count >= 0) CHECK(textOf(shown) == entryText(length, UnitSystem::Inches));
  }
}
