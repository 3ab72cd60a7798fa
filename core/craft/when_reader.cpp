#include "core/craft/when_reader.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/craft/pattern.h"
#include "core/craft/where_reader.h"

namespace core::craft {

using base::Message;
using base::Node;
using base::ObjectReader;
using base::Problems;
using base::report;

namespace {

std::optional<ThingKind> readKind(const Node& node, const std::vector<ThingKind>& kinds, Problems& problems) {
  std::vector<std::string> words;
  for (const ThingKind kind : kinds) words.emplace_back(name(kind));
  const auto index = base::readChoice(node, words, problems);
  if (!index) return std::nullopt;
  return kinds[*index];
}

bool readTrue(const Node& node, Problems& problems) {
  const auto value = base::readBoolean(node, problems);
  if (value && !*value) report(problems, node, Message("technique.when-false"));
  return value.value_or(false);
}

Circumstances readCircumstances(ObjectReader& object, Problems& problems) {
  Circumstances read;
  for (const Circumstance circumstance : kCircumstances) {
    const Node node = object.optional(name(circumstance));
    if (!node) continue;
    const std::vector<std::string>& values = valuesOf(circumstance);
    const auto items = base::readItems(node, problems, values.size());
    if (!items) continue;
    if (items->empty()) report(problems, node, Message("technique.empty-list"));
    for (const Node& item : *items) {
      if (const auto index = base::readChoice(item, values, problems)) read[circumstance].push_back(values[*index]);
    }
  }
  return read;
}

// "20000 mm2"
std::optional<double> readArea(const Node& node, Problems& problems) {
  constexpr std::string_view kUnit = " mm2";
  constexpr double kMost = 1e8;
  const auto text = base::readText(node, problems);
  if (!text) return std::nullopt;
  std::optional<double> number;
  if (base::endsWith(*text, kUnit)) {
    number = base::parseDecimal(std::string_view(*text).substr(0, text->size() - kUnit.size()));
  }
  if (number && *number >= 1 && *number <= kMost) return number;
  report(problems, node, Message("technique.malformed-area").with("area", *text));
  return std::nullopt;
}

}  // namespace

std::optional<When> readWhen(const Node& node, Problems& problems) {
  static const std::vector<ThingKind> kEach = {ThingKind::Board,    ThingKind::Bevel, ThingKind::Band, ThingKind::Line,
                                               ThingKind::Spandrel, ThingKind::Wash,  ThingKind::Leaf};
  static const std::vector<ThingKind> kAny = {ThingKind::Board,    ThingKind::Bevel,  ThingKind::Band,
                                              ThingKind::Strip,    ThingKind::Corner, ThingKind::Line,
                                              ThingKind::Spandrel, ThingKind::Wash,   ThingKind::Leaf};
  constexpr std::int64_t kMostThings = 1000;
  if (!node) return std::nullopt;
  ObjectReader object(node, problems);
  if (!object.valid()) return std::nullopt;
  const Node always = object.optional("always");
  const Node each = object.optional("each");
  const Node any = object.optional("any");
  const Node needed = object.optional("needed");
  const Node where = object.optional("where");
  const Node atLeast = object.optional("atLeast");
  When when;
  when.circumstances = readCircumstances(object, problems);
  object.finish();
  const int modes =
      static_cast<int>(!!always) + static_cast<int>(!!each) + static_cast<int>(!!any) + static_cast<int>(!!needed);
  if (modes != 1) {
    report(problems, node, Message("technique.when-one-of"));
    return std::nullopt;
  }
  if (atLeast && !any) report(problems, atLeast, Message("technique.at-least-without-any"));
  if (where && !each && !any) report(problems, where, Message("technique.where-without-kind"));
  if (always || needed) {
    when.mode = always ? When::Mode::Always : When::Mode::Needed;
    readTrue(always ? always : needed, problems);
    return when;
  }
  when.mode = each ? When::Mode::Each : When::Mode::Any;
  const auto kind = each ? readKind(each, kEach, problems) : readKind(any, kAny, problems);
  when.where = readWhere(where, kind, problems);
  if (any) when.least = static_cast<int>(base::readInteger(atLeast, problems, 1, kMostThings).value_or(1));
  if (!kind) return std::nullopt;
  when.kind = *kind;
  return when;
}

std::optional<Repeat> readRepeat(const Node& node, const Scope& scope, Problems& problems) {
  constexpr std::int64_t kMostParts = 100;
  if (!node) return std::nullopt;
  if (scope.kind == ThingKind::Once) report(problems, node, Message("technique.repeat-without-thing"));
  ObjectReader object(node, problems);
  if (!object.valid()) return std::nullopt;
  Repeat repeat;
  const Node count = object.optional("count");
  const bool byArea = object.has("area") || object.has("each");
  if (static_cast<bool>(count) == byArea) {
    object.optional("area");
    object.optional("each");
    report(problems, node, Message("technique.repeat-one-of"));
  } else if (count) {
    repeat.count = static_cast<int>(base::readInteger(count, problems, 2, kMostParts).value_or(2));
  } else {
    const Node area = object.required("area");
    repeat.figure = readFigure(area, scope, problems);
    if (!repeat.figure.empty() && !base::endsWith(repeat.figure, ".area")) {
      report(problems, area, Message("technique.not-an-area").with("figure", repeat.figure));
    }
    repeat.each = readArea(object.required("each"), problems).value_or(0);
  }
  repeat.source = base::readText(object.required("source"), problems, kLongestPhrase).value_or("");
  object.finish();
  return repeat;
}

}  // namespace core::craft
