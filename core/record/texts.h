#pragma once
// Texts a maker writes into the record. A text that cannot be stored as it was written is refused with its reason and
// never changed silently; only line ends are unified (a line feed).
#include <cstddef>
#include <string>
#include <string_view>

#include "core/base/json.h"
#include "core/base/message.h"

namespace core::record {

inline constexpr std::size_t kLongestName = 200;   // bytes
inline constexpr std::size_t kLongestText = 8000;  // bytes

// Checks one line. Refusals: text.empty (only where `needed`; spaces alone count as empty), text.not-letters,
// text.control-character, text.too-long. The message is empty where the line can be stored.
base::Message refusedLine(std::string_view text, bool needed);
// Checks several lines in the same way: line feeds and tabs are allowed. Pass a result of `lines`.
base::Message refusedText(std::string_view text, bool needed);
// Returns the text of an event as it may be shown, "" where it has none. A text from before control characters were
// refused, or from another program, keeps its letters (base::shownText).
std::string shownLineOf(const base::Value& payload, std::string_view key);
std::string shownTextOf(const base::Value& payload, std::string_view key);
// Returns the text with its line ends unified.
std::string lines(std::string_view text);

}  // namespace core::record
