#include "core/craft/want_reader.h"

#include <algorithm>

#include "core/craft/pattern_reader.h"
#include "core/craft/where_reader.h"
#include "core/units/climate.h"
#include "core/units/length.h"

namespace core::craft {

using base::Message;
using base::Node;
using base::ObjectReader;
using base::Problems;
using base::report;

namespace {

constexpr Scope kOfTheJob = {ThingKind::Once, ThingKind::Once, false};

// Millimetres, degrees Celsius or per cent, as the quantity says; nothing where it is no such value.
std::optional<double> readAmount(const Node& node, Quantity quantity, Problems& problems) {
  const auto text = base::readText(node, problems);
  if (!text) return std::nullopt;
  const auto told = [&](Message message) {
    report(problems, node, std::move(message).with("text", *text));
    return std::nullopt;
  };
  switch (quantity) {
    case Quantity::Length: {
      const auto length = units::parseLength(*text);
      if (!length) return told(length.error());
      if (length.value().length < units::Length()) return told(Message("length.negative"));
      return length.value().length.inMillimetres();
    }
    case Quantity::Temperature: {
      const auto temperature = units::parseTemperature(*text);
      if (!temperature) return told(temperature.error());
      return temperature.value().inCelsius();
    }
    case Quantity::Humidity: {
      const auto humidity = units::parseHumidity(*text);
      if (!humidity) return told(humidity.error());
      return humidity.value().inPercent();
    }
  }
  return std::nullopt;
}

// Both ends are read even where nothing is known of what they bound, so that neither is told as an unknown key.
void readBounds(ObjectReader& object, Want& want, Problems& problems) {
  const Node least = object.optional("atLeast");
  const Node most = object.optional("atMost");
  if (!want.of) {
    if (least) report(problems, least, Message("technique.bound-of-nothing"));
    if (most) report(problems, most, Message("technique.bound-of-nothing"));
    return;
  }
  if (static_cast<bool>(least) == static_cast<bool>(most)) {
    report(problems, object.node(), Message("technique.one-bound"));
    return;
  }
  want.isLeast = static_cast<bool>(least);
  want.bound = readAmount(want.isLeast ? least : most, traitsOf(*want.of).quantity, problems).value_or(0);
}

Want readWant(const Node& node, const Scope& scope, Problems& problems) {
  Want want;
  want.pointer = node.pointer;
  ObjectReader object(node, problems);
  if (!object.valid()) return want;
  const Node of = object.optional("of");
  const Node where = object.optional("where");
  const Node without = object.optional("without");
  const int kinds = static_cast<int>(!!of) + static_cast<int>(!!where) + static_cast<int>(!!without);
  if (kinds != 1) {
    report(problems, node, Message("technique.want-one-of"));
    object.optional("atLeast");
    object.optional("atMost");
  } else {
    if (of) {
      std::vector<std::string> names;
      for (const MeasureTraits& one : measures()) names.emplace_back(one.name);
      if (const auto index = base::readChoice(of, names, problems)) {
        want.of = measures()[*index].measure;
        readBounds(object, want, problems);
      } else {
        object.optional("atLeast");
        object.optional("atMost");
      }
    } else {
      readBounds(object, want, problems);
    }
    if (where && scope.kind == ThingKind::Once) {
      report(problems, where, Message("technique.where-without-kind"));
    } else {
      want.where = readWhere(where, scope.kind, problems);
    }
    // A fact of the job, the shop or any thing of a kind, whatever the technique is done for.
    if (without) want.without = readPattern(without, kOfTheJob, Allowed::EveryToo, problems);
  }
  want.why = readPhrase(object.required("why"), kOfTheJob, kSentenceWords, problems);
  want.source = base::readText(object.required("source"), problems, kLongestPhrase).value_or("");
  object.finish();
  return want;
}

}  // namespace

std::vector<Want> readWants(const Node& node, const Scope& scope, Problems& problems) {
  std::vector<Want> wants;
  if (!node) return wants;
  const auto items = base::readItems(node, problems, kMostEntries);
  if (!items) return wants;
  if (items->empty()) report(problems, node, Message("technique.empty-list"));
  for (const Node& item : *items) wants.push_back(readWant(item, scope, problems));
  return wants;
}

}  // namespace core::craft
