#include "core/record/texts.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/record/event.h"

namespace core::record {
namespace {

using base::Message;

Message refused(std::string_view text, const std::string& inOneLine, bool needed, std::size_t most) {
  if (text.size() > most) return Message("text.too-long").with("most", static_cast<std::int64_t>(most));
  if (!base::isValidUtf8(text)) return Message("text.not-letters");
  if (const auto point = base::controlCharacterIn(inOneLine))
    return Message("text.control-character").with("code", base::codePointName(*point));
  const bool blank = std::all_of(inOneLine.begin(), inOneLine.end(), [](char c) { return c == ' '; });
  return needed && blank ? Message("text.empty") : Message();
}

}  // namespace

Message refusedLine(std::string_view text, bool needed) {
  return refused(text, std::string(text), needed, kLongestName);
}

Message refusedText(std::string_view text, bool needed) {
  std::string inOneLine(text);
  std::replace_if(
      inOneLine.begin(), inOneLine.end(), [](char c) { return c == '\n' || c == '\t'; }, ' ');
  return refused(text, inOneLine, needed, kLongestText);
}

std::string shownLineOf(const base::Value& payload, std::string_view key) {
  return base::shownText(textOf(payload, key), base::Lines::One);
}

std::string shownTextOf(const base::Value& payload, std::string_view key) {
  return base::shownText(textOf(payload, key), base::Lines::Several);
}

std::string lines(std::string_view text) {
  return base::replaceAll(base::replaceAll(std::string(text), "\r\n", "\n"), "\r", "\n");
}

}  // namespace core::record
