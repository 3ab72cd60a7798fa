#pragma once
// Texts a maker writes into the record. What cannot be kept as it was written is refused with its reason and never
// mended in silence; only line ends are made alike (a line feed).
#include <cstddef>
#include <string>
#include <string_view>

#include "core/base/json.h"
#include "core/base/message.h"

namespace core::record {

inline constexpr std::size_t kLongestName = 200;   // bytes
inline constexpr std::size_t kLongestText = 8000;  // bytes

// One line. Refusals: text.empty (only where `needed`; spaces alone count as nothing), text.not-letters,
// text.control-character, text.too-long. An empty message where it can be kept.
base::Message refusedLine(std::string_view text, bool needed);
// The same for several lines: line feeds and tabs may stand in it. Give it what `lines` returns.
base::Message refusedText(std::string_view text, bool needed);
// The text of an event as it may be put before eyes, "" where it has none: what was written before control characters
// were refused, or by another program, keeps its letters (base::shownText).
std::string shownLineOf(const base::Value& payload, std::string_view key);
std::string shownTextOf(const base::Value& payload, std::string_view key);
// The text with its line ends made alike.
std::string lines(std::string_view text);

}  // namespace core::record
