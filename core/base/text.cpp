#include "core/base/text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "core/base/check.h"

namespace core::base {

std::string shortestNumber(double number) {
  ENSURE(std::isfinite(number));
  if (number == 0) return "0";
  std::array<char, 32> buffer{};
  const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number);
  ENSURE(error == std::errc());
  return {buffer.data(), end};
}

std::string fixedNumber(double number, int decimals) {
  ENSURE(std::isfinite(number));
  const double scale = std::pow(10.0, decimals);
  double scaled = std::floor(std::fabs(number) * scale + 0.5 + 1e-9);
  if (number < 0) scaled = -scaled;
  if (scaled == 0) scaled = 0;
  std::array<char, 400> buffer{};
  const auto [end, error] =
      std::to_chars(buffer.data(), buffer.data() + buffer.size(), scaled / scale, std::chars_format::fixed, decimals);
  ENSURE(error == std::errc());
  return {buffer.data(), end};
}

std::optional<double> parseDecimal(std::string_view text) {
  std::string_view rest = text;
  if (!rest.empty() && rest.front() == '-') rest.remove_prefix(1);
  const auto point = rest.find('.');
  const auto whole = rest.substr(0, point);
  if (!isDigits(whole) || whole.size() > 15) return std::nullopt;
  if (point != std::string_view::npos && (!isDigits(rest.substr(point + 1)) || rest.size() - point > 30)) {
    return std::nullopt;
  }
  double number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return number == 0 ? 0.0 : number;
}

namespace {

// Decodes one code point at `at`; returns its length in bytes, 0 where the bytes are not UTF-8 (RFC 3629).
std::size_t decode(std::string_view text, std::size_t at, char32_t& point) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[at + i]); };
  const unsigned char lead = byte(0);
  if (lead < 0x80) {
    point = lead;
    return 1;
  }
  std::size_t length = 0;
  char32_t least = 0;
  if (lead >= 0xC2 && lead <= 0xDF) {
    length = 2, least = 0x80, point = lead & 0x1FU;
  } else if (lead >= 0xE0 && lead <= 0xEF) {
    length = 3, least = 0x800, point = lead & 0x0FU;
  } else if (lead >= 0xF0 && lead <= 0xF4) {
    length = 4, least = 0x10000, point = lead & 0x07U;
  } else {
    return 0;
  }
  if (at + length > text.size()) return 0;
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(i) & 0xC0U) != 0x80U) return 0;
    point = (point << 6U) | (byte(i) & 0x3FU);
  }
  const bool surrogate = point >= 0xD800 && point <= 0xDFFF;
  return point < least || point > 0x10FFFF || surrogate ? 0 : length;
}

constexpr char32_t kReplacement = 0xFFFD;

struct Points {
  char32_t first, last;
};
// The code points that command a display.
constexpr Points kCommands[] = {{0x0000, 0x001F}, {0x007F, 0x009F}, {0x061C, 0x061C}, {0x200E, 0x200F},
                                {0x2028, 0x202E}, {0x2066, 0x206F}, {0xFEFF, 0xFEFF}, {0xFFF9, 0xFFFB}};

bool commands(char32_t point) {
  return std::any_of(std::begin(kCommands), std::end(kCommands),
                     [&](const Points& range) { return point >= range.first && point <= range.last; });
}

// At least four digits; every point written so has no more.
std::string hexadecimal(char32_t point) {
  std::string digits;
  for (int shift = 12; shift >= 0; shift -= 4) digits += "0123456789abcdef"[(point >> shift) & 0xFU];
  return digits;
}

}  // namespace

bool isValidUtf8(std::string_view text) {
  char32_t point = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = decode(text, at, point);
    if (length == 0) return false;
    at += length;
  }
  return true;
}

std::size_t countCharacters(std::string_view text) {
  std::size_t count = 0;
  char32_t point = 0;
  for (std::size_t at = 0; at < text.size(); ++count) at += std::max<std::size_t>(decode(text, at, point), 1);
  return count;
}

std::optional<char32_t> controlCharacterIn(std::string_view text) {
  char32_t point = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = decode(text, at, point);
    if (length == 0) return kReplacement;
    if (commands(point)) return point;
    at += length;
  }
  return std::nullopt;
}

std::string codePointName(char32_t point) {
  std::string digits = hexadecimal(point);
  std::transform(digits.begin(), digits.end(), digits.begin(),
                 [](char c) { return c >= 'a' ? static_cast<char>(c - 'a' + 'A') : c; });
  return "U+" + digits;
}

std::string shownText(std::string_view text, Lines lines, std::size_t most) {
  std::string shown;
  std::size_t count = 0;
  char32_t point = 0;
  for (std::size_t at = 0; at < text.size(); ++count) {
    if (count == most) return shown + "\u2026";
    const std::size_t length = decode(text, at, point);
    const bool stays = lines == Lines::Several && (text[at] == '\n' || text[at] == '\t');
    if (length == 0 || (commands(point) && !stays)) {
      shown += "\\u" + hexadecimal(length == 0 ? kReplacement : point);
    } else {
      shown += text.substr(at, length);
    }
    at += std::max<std::size_t>(length, 1);
  }
  return shown;
}

bool isHash(std::string_view text) {
  constexpr std::size_t kDigits = 64;
  return text.size() == kDigits &&
         std::all_of(text.begin(), text.end(), [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); });
}

std::vector<std::string> split(std::string_view text, char separator) {
  std::vector<std::string> parts;
  for (std::size_t from = 0;;) {
    const auto to = text.find(separator, from);
    parts.emplace_back(text.substr(from, to - from));
    if (to == std::string_view::npos) return parts;
    from = to + 1;
  }
}

std::string join(const std::vector<std::string>& parts, std::string_view separator) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) text += separator;
    text += parts[i];
  }
  return text;
}

bool startsWith(std::string_view text, std::string_view prefix) { return text.substr(0, prefix.size()) == prefix; }

bool endsWith(std::string_view text, std::string_view suffix) {
  return text.size() >= suffix.size() && text.substr(text.size() - suffix.size()) == suffix;
}

std::string replaceAll(std::string text, std::string_view from, std::string_view to) {
  for (auto at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) {
    text.replace(at, from.size(), to);
  }
  return text;
}

bool isDigits(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

std::size_t countWords(std::string_view text) {
  std::size_t words = 0;
  bool inside = false;
  for (const char c : text) {
    if (c != ' ' && !inside) ++words;
    inside = c != ' ';
  }
  return words;
}

LineColumn lineColumnAt(std::string_view text, std::size_t offset) {
  LineColumn place;
  for (std::size_t i = 0; i < std::min(offset, text.size()); ++i) {
    if (text[i] == '\n') {
      ++place.line;
      place.column = 1;
    } else {
      ++place.column;
    }
  }
  return place;
}

bool isCalendarDate(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  int year = 0;
  int month = 0;
  int day = 0;
  const auto read = [&](std::size_t from, std::size_t to, int& number) {
    const auto [end, error] = std::from_chars(text.data() + from, text.data() + to, number);
    return error == std::errc() && end == text.data() + to && number >= 0;
  };
  if (!read(0, 4, year) || !read(5, 7, month) || !read(8, 10, day)) return false;
  if (year < 1900 || year > 2999 || month < 1 || month > 12 || day < 1) return false;
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  constexpr std::array<int, 12> kDays = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const int last = month == 2 && leap ? 29 : kDays[static_cast<std::size_t>(month - 1)];
  return day <= last;
}

}  // namespace core::base
