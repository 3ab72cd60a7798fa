#pragma once
// Text handling that no locale can change.
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core::base {

// The shortest decimal text that reads back as the same double ("409.3333333333333", "316", "1e+300").
// Requires a finite number. Minus zero prints as "0".
std::string shortestNumber(double number);

// Rounded to `decimals` places, halves away from zero, always with that many places ("379.0").
// A number within 1e-9 of a half counts as the half, so that a sum's last bit does not decide a tenth.
std::string fixedNumber(double number, int decimals);

// Reads a plain decimal with a point and no exponent: "12", "12.5", "-3". Returns nothing for any other text, such as
// one with a leading or trailing space, or a bare ".5" or "5.".
std::optional<double> parseDecimal(std::string_view text);

bool isValidUtf8(std::string_view text);
// Code points; a byte that belongs to none counts as one.
std::size_t countCharacters(std::string_view text);
// The first character that commands a display instead of being shown on it: C0 and C1 controls, line and paragraph
// separators, marks, embeddings, overrides and isolates of direction, deprecated format characters, the byte order
// mark, interlinear annotations. U+FFFD where the bytes are not UTF-8; nothing where every character is shown.
std::optional<char32_t> controlCharacterIn(std::string_view text);
// "U+202E"
std::string codePointName(char32_t point);

enum class Lines { One, Several };
// Returns a text in a form that is safe to show, whoever wrote it: each control character (of several lines all but
// line feeds and tabs) is written as "\u202e", bytes that are not UTF-8 as "\ufffd", and anything beyond `most`
// characters is left out, "…" in its place.
std::string shownText(std::string_view text, Lines lines, std::size_t most = static_cast<std::size_t>(-1));

// Returns whether it is a SHA-256 as this project writes it: 64 digits, lower case.
bool isHash(std::string_view text);

std::vector<std::string> split(std::string_view text, char separator);
std::string join(const std::vector<std::string>& parts, std::string_view separator);
bool startsWith(std::string_view text, std::string_view prefix);
bool endsWith(std::string_view text, std::string_view suffix);
std::string replaceAll(std::string text, std::string_view from, std::string_view to);
// Returns whether it consists of the digits 0 to 9, at least one.
bool isDigits(std::string_view text);
// Words separated by spaces.
std::size_t countWords(std::string_view text);

// 1-based line and column (in bytes) of a byte offset.
struct LineColumn {
  std::size_t line = 1;
  std::size_t column = 1;
};
LineColumn lineColumnAt(std::string_view text, std::size_t offset);

// "2026-12-11" as a real day of the Gregorian calendar, years 1900 to 2999.
bool isCalendarDate(std::string_view text);

}  // namespace core::base
