#include "core/base/text.h"

#include <charconv>
#include <random>

#include "tests/support/catch.h"

using namespace core::base;

TEST_CASE("the shortest number reads back as the same double", "[text]") {
  CHECK(shortestNumber(316) == "316");
  CHECK(shortestNumber(-0.0) == "0");
  CHECK(shortestNumber(0.1) == "0.1");
  std::mt19937_64 random(5);
  for (int i = 0; i < 20'000; ++i) {
    const double number = std::uniform_real_distribution<double>(-1e6, 1e6)(random);
    const std::string text = shortestNumber(number);
    double again = 0;
    std::from_chars(text.data(), text.data() + text.size(), again);
    CHECK(again == number);
  }
}

TEST_CASE("fixed numbers round halves away from zero", "[text]") {
  CHECK(fixedNumber(2.25, 1) == "2.3");
  CHECK(fixedNumber(-2.25, 1) == "-2.3");
  CHECK(fixedNumber(0.04, 1) == "0.0");
  CHECK(fixedNumber(-0.04, 1) == "0.0");
  CHECK(fixedNumber(1e15, 0) == "1000000000000000");
}

TEST_CASE("a plain decimal is that and nothing else", "[text]") {
  CHECK(parseDecimal("12") == 12);
  CHECK(parseDecimal("-3.50") == -3.5);
  CHECK(parseDecimal("-0") == 0);
  for (const char* bad :
       {"", ".5", "5.", "1e3", "+1", " 1", "1 ", "1,5", "--1", "inf", "nan", "0x10", "1.2.3", "1234567890123456"}) {
    INFO(bad);
    CHECK_FALSE(parseDecimal(bad));
  }
}

TEST_CASE("control characters and broken UTF-8 are noticed", "[text]") {
  CHECK_FALSE(hasControlCharacter("Pilot\xE2\x80\x99s chart \xC3\xA9"));
  CHECK(hasControlCharacter("a\nb"));
  CHECK(
      hasControlCharacter("a\xC2\x85"
                          "b"));
  CHECK(
      hasControlCharacter("a\xE2\x80\xA8"
                          "b"));
  CHECK(hasControlCharacter("a\xFF"));
  CHECK(isValidUtf8("\xF0\x9F\x96\xBC"));
  CHECK_FALSE(isValidUtf8("\xF5\x80\x80\x80"));
  CHECK_FALSE(isValidUtf8("\xE2\x82"));
}

TEST_CASE("days that are not in the calendar are refused", "[text]") {
  CHECK(isCalendarDate("2026-12-11"));
  CHECK(isCalendarDate("2024-02-29"));
  CHECK_FALSE(isCalendarDate("2026-02-29"));
  CHECK_FALSE(isCalendarDate("1900-02-29"));
  CHECK_FALSE(isCalendarDate("2026-13-01"));
  CHECK_FALSE(isCalendarDate("2026-1-1"));
  CHECK_FALSE(isCalendarDate("+026-01-01"));
}

TEST_CASE("small tools do what they say", "[text]") {
  CHECK(split("a,,b", ',') == std::vector<std::string>{"a", "", "b"});
  CHECK(join({"a", "b"}, ", ") == "a, b");
  CHECK(replaceAll("aaa", "a", "ab") == "ababab");
  CHECK(countWords("  one two  three ") == 3);
  CHECK(lineColumnAt("ab\ncd", 4).line == 2);
  CHECK(lineColumnAt("ab\ncd", 4).column == 2);
  CHECK(lineColumnAt("ab", 99).column == 3);
}
