#pragma once
// The small reading functions that every part of a technique file is read with. Each reports what is wrong at its node.
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/strict_reader.h"
#include "core/craft/technique.h"

namespace core::craft {

// The known facts about the thing a step is done for. Without a kind (the file's `when` or `each` is wrong, which is
// reported) nothing that depends on it is checked, so that one mistake is reported once.
struct Scope {
  std::optional<ThingKind> kind;
  ThingKind outer = ThingKind::Once;
  bool splits = false;  // the technique's thing is worked in parts
};

inline constexpr std::size_t kTitleWords = 8;
inline constexpr std::size_t kSentenceWords = 15;
inline constexpr std::size_t kCautionWords = 12;
inline constexpr std::size_t kShelfWords = 4;
inline constexpr std::size_t kToolWords = 3;
// The text that fits on a key 30 mm wide, read at arm's length: so many words, none longer than that.
inline constexpr std::size_t kKeyWords = 3;
inline constexpr std::size_t kKeyLetters = 8;
inline constexpr std::size_t kNoLimit = static_cast<std::size_t>(-1);

// Far beyond what a maker means, and few enough for every command to stay quick.
inline constexpr std::size_t kLongestPhrase = 400;  // characters of a sentence or a source
inline constexpr std::size_t kMostSteps = 100;      // of a technique
inline constexpr std::size_t kMostWaits = 20;       // of a step
inline constexpr std::size_t kMostEntries = 60;     // of any other list

// "[a-z][a-z0-9-]{0,47}"
std::optional<std::string> readId(const base::Node& node, base::Problems& problems);

// A text for a maker, at most `most` words, whose {placeholders} are properties of the scope's thing.
// Returns "" where there is none or it is wrong.
std::string readPhrase(const base::Node& node, const Scope& scope, std::size_t most, base::Problems& problems);
// Returns the words of a key: at most kKeyWords of at most kKeyLetters each, without placeholders, since the length of
// what fills one is not known. Returns "" where there is none.
std::string readKey(const base::Node& node, base::Problems& problems);
std::vector<std::string> readPhrases(const base::Node& node, const Scope& scope, std::size_t most,
                                     base::Problems& problems);

// Returns nothing where it is missing or wrong.
std::optional<units::Duration> readDuration(const base::Node& node, base::Problems& problems);

enum class Least { Zero, AboveZero };
// Reads "early", "likely" and "late" of an object that may hold other keys as well; reports it where they do not
// ascend.
std::optional<units::Span> readSpan(base::ObjectReader& object, Least least, base::Problems& problems);

enum class Figures { One, OneOrFamily };
// Reads a figure pattern that exists for the scope's thing, or a family ("board.this.arc.*") where one is allowed.
// Returns "" where there is no such figure.
std::string readFigure(const base::Node& node, const Scope& scope, base::Problems& problems,
                       Figures which = Figures::One);

}  // namespace core::craft
