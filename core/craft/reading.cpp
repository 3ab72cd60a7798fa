#include "core/craft/reading.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/craft/figure_names.h"
#include "core/craft/pattern.h"
#include "core/craft/properties.h"

namespace core::craft {

using base::Message;
using base::Node;
using base::Problems;
using base::report;

namespace {

bool isId(std::string_view text) {
  const auto isLetter = [](char c) { return c >= 'a' && c <= 'z'; };
  const auto isInner = [&](char c) { return isLetter(c) || (c >= '0' && c <= '9') || c == '-'; };
  return !text.empty() && text.size() <= 48 && isLetter(text.front()) && std::all_of(text.begin(), text.end(), isInner);
}

void checkPlaceholders(const std::string& text, const Node& node, const Scope& scope, Problems& problems) {
  std::size_t at = 0;
  while ((at = text.find_first_of("{}", at)) != std::string::npos) {
    const std::size_t end = text.find_first_of("{}", at + 1);
    if (text[at] == '}' || end == std::string::npos || text[end] == '{') {
      report(problems, node, Message("technique.loose-brace"));
      return;
    }
    const std::string placeholder = text.substr(at + 1, end - at - 1);
    at = end + 1;
    if (!scope.kind) continue;
    const auto known = propertiesOf(*scope.kind, scope.outer);
    if (std::find(known.begin(), known.end(), placeholder) != known.end()) continue;
    if (known.empty()) {
      report(problems, node, Message("technique.placeholder-without-thing").with("placeholder", placeholder));
    } else {
      report(problems, node,
             Message("technique.unknown-placeholder")
                 .with("placeholder", placeholder)
                 .with("kind", std::string(name(*scope.kind)))
                 .with("words", base::join(known, ", ")));
    }
  }
}

// Of UTF-8: every byte that is no continuation begins one.
std::size_t letters(const std::string& word) {
  return static_cast<std::size_t>(
      std::count_if(word.begin(), word.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

// The pattern with an id in place of each word that stands for one, to tell a figure that exists for other
// things from one that exists for none.
std::string asFigureId(const std::string& pattern) {
  std::vector<std::string> words = base::split(pattern, '.');
  if (words.size() > 1 && (words[1] == "this" || words[1] == "owner" || words[1] == "previous")) words[1] = "x";
  if (words.front() == "band" && words.back() == "axis") words.back() = "horizontal";
  return base::join(words, ".");
}

}  // namespace

std::optional<std::string> readId(const Node& node, Problems& problems) {
  auto text = base::readText(node, problems);
  if (!text || isId(*text)) return text;
  report(problems, node, Message("technique.malformed-id").with("id", *text));
  return std::nullopt;
}

std::string readPhrase(const Node& node, const Scope& scope, std::size_t most, Problems& problems) {
  const auto text = base::readText(node, problems, kLongestPhrase);
  if (!text) return {};
  const std::size_t count = base::countWords(*text);
  if (count > most) {
    report(problems, node,
           Message("technique.too-many-words")
               .with("count", static_cast<std::int64_t>(count))
               .with("most", static_cast<std::int64_t>(most)));
  }
  checkPlaceholders(*text, node, scope, problems);
  return *text;
}

std::string readKey(const Node& node, Problems& problems) {
  const auto text = base::readText(node, problems);
  if (!text) return {};
  const std::size_t count = base::countWords(*text);
  if (count > kKeyWords) {
    report(problems, node,
           Message("technique.too-many-words")
               .with("count", static_cast<std::int64_t>(count))
               .with("most", static_cast<std::int64_t>(kKeyWords)));
  }
  if (text->find_first_of("{}") != std::string::npos) report(problems, node, Message("technique.placeholder-on-key"));
  for (const std::string& word : base::split(*text, ' ')) {
    if (letters(word) <= kKeyLetters) continue;
    report(problems, node,
           Message("technique.key-too-long").with("word", word).with("most", static_cast<std::int64_t>(kKeyLetters)));
  }
  return *text;
}

std::vector<std::string> readPhrases(const Node& node, const Scope& scope, std::size_t most, Problems& problems) {
  std::vector<std::string> phrases;
  const auto items = base::readItems(node, problems, kMostEntries);
  if (!items) return phrases;
  for (const Node& item : *items) phrases.push_back(readPhrase(item, scope, most, problems));
  return phrases;
}

std::optional<units::Duration> readDuration(const Node& node, Problems& problems) {
  const auto text = base::readText(node, problems);
  if (!text) return std::nullopt;
  const auto duration = units::parseDuration(*text);
  if (duration) return duration.value();
  report(problems, node, duration.error());
  return std::nullopt;
}

std::optional<units::Span> readSpan(base::ObjectReader& object, Least least, Problems& problems) {
  const Node earlyNode = object.required("early");
  const Node likelyNode = object.required("likely");
  const Node lateNode = object.required("late");
  const auto early = readDuration(earlyNode, problems);
  const auto likely = readDuration(likelyNode, problems);
  const auto late = readDuration(lateNode, problems);
  if (early && least == Least::AboveZero && *early == units::Duration()) {
    report(problems, earlyNode, Message("technique.no-time"));
  }
  bool ordered = true;
  if (early && likely && *likely < *early) {
    report(problems, likelyNode, Message("technique.span-order").with("lesser", "early").with("greater", "likely"));
    ordered = false;
  }
  if (likely && late && *late < *likely) {
    report(problems, lateNode, Message("technique.span-order").with("lesser", "likely").with("greater", "late"));
    ordered = false;
  }
  if (!early || !likely || !late || !ordered) return std::nullopt;
  return units::Span{*early, *likely, *late};
}

std::string readFigure(const Node& node, const Scope& scope, Problems& problems, Figures which) {
  const auto pattern = base::readText(node, problems);
  if (!pattern) return {};
  if (which == Figures::One && isFamily(*pattern)) {
    report(problems, node, Message("technique.figure-family-not-here").with("figure", *pattern));
    return {};
  }
  if (!isFigureId(asFigureId(*pattern))) {
    report(problems, node, Message("technique.unknown-figure").with("figure", *pattern));
    return {};
  }
  if (!scope.kind || isFigurePattern(*pattern, *scope.kind, scope.outer)) return *pattern;
  report(problems, node,
         *scope.kind == ThingKind::Once ? Message("technique.figure-without-thing").with("figure", *pattern)
                                        : Message("technique.figure-of-other-thing")
                                              .with("figure", *pattern)
                                              .with("kind", std::string(name(*scope.kind))));
  return {};
}

}  // namespace core::craft
