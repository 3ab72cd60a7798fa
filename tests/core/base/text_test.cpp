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

TEST_CASE("every character that commands a display is noticed by its code point, and letters are not", "[text]") {
  CHECK_FALSE(controlCharacterIn("Pilot\xE2\x80\x99s chart \xC3\xA9"));
  CHECK_FALSE(controlCharacterIn("\xD7\xA9\xD7\xB1 \xE2\x80\x8D \xF0\x9F\x90\xA6"));  // letters, a joiner, a picture
  const std::pair<const char*, const char*> commands[] = {
      {"a\nb", "U+000A"},         {"\x1b[2J", "U+001B"},      {"\x7f", "U+007F"},         {"\xC2\x85", "U+0085"},
      {"\xC2\x9B", "U+009B"},     {"\xD8\x9C", "U+061C"},     {"\xE2\x80\x8E", "U+200E"}, {"\xE2\x80\x8F", "U+200F"},
      {"\xE2\x80\xA8", "U+2028"}, {"\xE2\x80\xA9", "U+2029"}, {"\xE2\x80\xAA", "U+202A"}, {"\xE2\x80\xAE", "U+202E"},
      {"\xE2\x81\xA6", "U+2066"}, {"\xE2\x81\xA9", "U+2069"}, {"\xEF\xBB\xBF", "U+FEFF"}, {"a\xFF", "U+FFFD"},
      {"\xED\xA0\x80", "U+FFFD"}};
  for (const auto& [text, name] : commands) {
    INFO(name);
    const auto found = controlCharacterIn(text);
    REQUIRE(found);
    CHECK(codePointName(*found) == name);
    CHECK_FALSE(controlCharacterIn(shownText(text, Lines::One)));
  }
  CHECK(controlCharacterIn(std::string_view("a\0b", 3)) == U'\0');
  CHECK(isValidUtf8("\xF0\x9F\x96\xBC"));
  CHECK_FALSE(isValidUtf8("\xF5\x80\x80\x80"));
  CHECK_FALSE(isValidUtf8("\xE2\x82"));
}

TEST_CASE("a text is shown with its commands spelt out and its end left out where it is too long", "[text]") {
  CHECK(shownText("a\x1b[31m\nb", Lines::One) == "a\\u001b[31m\\u000ab");
  CHECK(shownText("a\x1b\nb\tc", Lines::Several) == "a\\u001b\nb\tc");
  CHECK(shownText("\xFF", Lines::One) == "\\ufffd");
  CHECK(shownText("h\xC3\xA9ron", Lines::One, 5) == "h\xC3\xA9ron");
  CHECK(shownText("h\xC3\xA9rons", Lines::One, 5) == "h\xC3\xA9ron\u2026");
  CHECK(countCharacters("h\xC3\xA9ron\xFF") == 6);
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
