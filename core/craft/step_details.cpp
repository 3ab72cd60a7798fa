#include "core/craft/step_details.h"

#include <set>

#include "core/base/text.h"
#include "core/craft/pattern.h"
#include "core/craft/pattern_reader.h"
#include "core/units/length.h"

namespace core::craft {

using base::Message;
using base::Node;
using base::ObjectReader;
using base::Problems;
using base::report;

namespace {

// Reads each item of a list by `read`, a function of the item's node.
template <typename Read>
auto readEach(const Node& node, Problems& problems, Read read) {
  std::vector<decltype(read(node))> values;
  const auto items = base::readItems(node, problems, kMostEntries);
  if (!items) return values;
  for (const Node& item : *items) values.push_back(read(item));
  return values;
}

std::optional<Amount> readAmount(const Node& node, const Scope& scope, Problems& problems) {
  constexpr double kLeast = 1e-9;
  constexpr double kMost = 1e6;
  if (!node) return std::nullopt;
  ObjectReader object(node, problems);
  if (!object.valid()) return std::nullopt;
  Amount amount;
  const Node count = object.optional("count");
  const bool byFigure = object.has("figure") || object.has("factor");
  if (static_cast<bool>(count) == byFigure) {
    object.optional("figure");
    object.optional("factor");
    report(problems, node, Message("technique.amount-one-of"));
  } else if (count) {
    amount.factor = base::readNumber(count, problems, kLeast, kMost).value_or(1);
  } else {
    amount.figure = readFigure(object.required("figure"), scope, problems);
    amount.factor = base::readNumber(object.required("factor"), problems, kLeast, kMost).value_or(1);
  }
  amount.unit = base::readText(object.required("unit"), problems).value_or("");
  amount.source = base::readText(object.required("source"), problems, kLongestPhrase).value_or("");
  object.finish();
  return amount;
}

bool isSign(std::string_view text) {
  const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
  return text.size() == 4 && std::string_view("EFMPW").find(text[0]) != std::string_view::npos && isDigit(text[1]) &&
         isDigit(text[2]) && isDigit(text[3]);
}

void readTolerance(const Node& node, Check& check, Problems& problems) {
  const auto within = base::readText(node, problems);
  if (!within) return;
  check.within = *within;
  if (*within == "as computed") return;
  const auto length = units::parseLength(*within);
  if (!length) {
    report(problems, node, length.error());
  } else if (length.value().length <= units::Length()) {
    report(problems, node, Message("technique.no-tolerance"));
  }
}

// The id of one item of a list in which each has its own.
std::string readOwnId(ObjectReader& object, std::set<std::string>& ids, Problems& problems) {
  const Node node = object.required("id");
  const auto id = readId(node, problems);
  if (!id) return {};
  if (!ids.insert(*id).second) report(problems, node, Message("technique.duplicate-id").with("id", *id));
  return *id;
}

std::vector<FaultWay> readWays(const Node& node, const Scope& scope, Problems& problems) {
  constexpr std::size_t kFewestWays = 2;
  // Beside Back and Done three more keys have their place.
  constexpr std::size_t kMostWays = 3;
  std::set<std::string> ids;
  std::vector<FaultWay> ways = readEach(node, problems, [&](const Node& item) {
    ObjectReader object(item, problems);
    FaultWay way;
    way.id = readOwnId(object, ids, problems);
    way.key = readKey(object.required("key"), problems);
    way.mend = readPhrase(object.required("do"), scope, kNoLimit, problems);
    way.ends = readPatterns(object.required("ends"), scope, Allowed::EveryFact, problems);
    object.finish();
    return way;
  });
  if (ways.size() < kFewestWays || ways.size() > kMostWays) {
    report(problems, node, Message("technique.so-many-ways").with("count", static_cast<std::int64_t>(ways.size())));
  }
  return ways;
}

SetupFigure readSetupFigure(const Node& node, const Scope& scope, Problems& problems) {
  SetupFigure figure;
  if (node.value->kind() != base::Value::Kind::Object) {
    figure.figure = readFigure(node, scope, problems);
    return figure;
  }
  ObjectReader object(node, problems);
  figure.figure = readFigure(object.required("id"), scope, problems);
  figure.as = readPhrase(object.required("as"), scope, kToolWords, problems);
  object.finish();
  return figure;
}

// A temperature or a humidity on one side of which a room lies: "10 C", "65 %".
void readBound(const Node& node, std::optional<units::Temperature>& temperature,
               std::optional<units::Humidity>& humidity, Problems& problems) {
  const auto text = base::readText(node, problems);
  if (!text) return;
  const auto take = [&](auto read, auto& bound) {
    if (read) {
      bound = read.value();
    } else {
      report(problems, node, read.error());
    }
  };
  if (base::endsWith(*text, "%")) {
    take(units::parseHumidity(*text), humidity);
  } else {
    take(units::parseTemperature(*text), temperature);
  }
}

RoomBounds readRoomBounds(const Node& node, Problems& problems) {
  RoomBounds room;
  if (!node) return room;
  ObjectReader object(node, problems);
  if (!object.valid()) return room;
  const Node below = object.optional("below");
  const Node above = object.optional("above");
  readBound(below, room.colder, room.drier, problems);
  readBound(above, room.warmer, room.damper, problems);
  object.finish();
  if (!below && !above) report(problems, node, Message("technique.no-room"));
  const bool everyTemperature = room.colder && room.warmer && room.warmer->inCelsius() < room.colder->inCelsius();
  const bool everyHumidity = room.drier && room.damper && room.damper->inPercent() < room.drier->inPercent();
  if (everyTemperature || everyHumidity) report(problems, node, Message("technique.every-room"));
  return room;
}

std::optional<units::Marking> readMarking(const Node& node, Problems& problems) {
  static const std::vector<std::string> words = [] {
    std::vector<std::string> all;
    for (const units::Marking one : units::kMarkings) all.emplace_back(units::name(one));
    return all;
  }();
  const auto choice = base::readChoice(node, words, problems);
  return choice ? std::optional(units::kMarkings[*choice]) : std::nullopt;
}

}  // namespace

std::vector<Material> readMaterials(const Node& node, const Scope& scope, Problems& problems) {
  return readEach(node, problems, [&](const Node& item) {
    ObjectReader object(item, problems);
    Material material;
    material.what = readPhrase(object.required("what"), scope, kNoLimit, problems);
    material.amount = readAmount(object.optional("amount"), scope, problems);
    object.finish();
    return material;
  });
}

std::vector<StepFigure> readStepFigures(const Node& node, const Scope& scope, Problems& problems) {
  constexpr std::int64_t kMostPieces = 1000;
  return readEach(node, problems, [&](const Node& item) {
    StepFigure figure;
    if (item.value->kind() != base::Value::Kind::Object) {
      figure.figure = readFigure(item, scope, problems, Figures::OneOrFamily);
      return figure;
    }
    ObjectReader object(item, problems);
    figure.figure = readFigure(object.required("id"), scope, problems, Figures::OneOrFamily);
    figure.count = static_cast<int>(base::readInteger(object.optional("count"), problems, 1, kMostPieces).value_or(1));
    figure.from = readPhrase(object.optional("from"), scope, kNoLimit, problems);
    figure.by = readMarking(object.optional("by"), problems);
    object.finish();
    return figure;
  });
}

std::vector<Check> readChecks(const Node& node, const Scope& scope, Problems& problems) {
  return readEach(node, problems, [&](const Node& item) {
    ObjectReader object(item, problems);
    Check check;
    check.ask = readPhrase(object.required("ask"), scope, kNoLimit, problems);
    check.figure = readFigure(object.optional("figure"), scope, problems);
    readTolerance(object.optional("within"), check, problems);
    if (object.has("figure") != object.has("within")) report(problems, item, Message("technique.half-a-measure"));
    object.finish();
    return check;
  });
}

std::vector<Caution> readCautions(const Node& node, const Scope& scope, Problems& problems) {
  static const std::vector<std::string> kWords = {"WARNING", "CAUTION", "NOTICE"};
  bool signSeen = false;
  return readEach(node, problems, [&](const Node& item) {
    ObjectReader object(item, problems);
    Caution caution;
    const auto word = base::readChoice(object.required("word"), kWords, problems);
    if (word) caution.word = static_cast<SignalWord>(*word);
    const Node signNode = object.optional("sign");
    if (const auto sign = base::readText(signNode, problems)) {
      caution.sign = *sign;
      if (!isSign(*sign)) report(problems, signNode, Message("technique.malformed-sign").with("sign", *sign));
      if (word && caution.word == SignalWord::Notice) report(problems, signNode, Message("technique.sign-on-notice"));
      if (signSeen) report(problems, signNode, Message("technique.second-sign"));
      signSeen = true;
    }
    caution.hazard = readPhrase(object.required("hazard"), scope, kNoLimit, problems);
    caution.text = readPhrase(object.required("text"), scope, kCautionWords, problems);
    caution.room = readRoomBounds(object.optional("room"), problems);
    object.finish();
    return caution;
  });
}

std::vector<Fault> readFaults(const Node& node, const Scope& scope, Problems& problems) {
  std::set<std::string> ids;
  return readEach(node, problems, [&](const Node& item) {
    ObjectReader object(item, problems);
    Fault fault;
    fault.id = readOwnId(object, ids, problems);
    fault.seen = readPhrase(object.required("seen"), scope, kNoLimit, problems);
    const Node ways = object.optional("ways");
    if (ways) {
      fault.ways = readWays(ways, scope, problems);
      for (const char* other : {"do", "ends"}) {
        if (const Node extra = object.optional(other)) report(problems, extra, Message("technique.ways-or-do"));
      }
    } else {
      fault.mend = readPhrase(object.required("do"), scope, kNoLimit, problems);
      fault.ends = readPatterns(object.required("ends"), scope, Allowed::EveryFact, problems);
    }
    object.finish();
    return fault;
  });
}

std::optional<Setup> readSetup(const Node& node, const Scope& scope, Problems& problems) {
  if (!node) return std::nullopt;
  ObjectReader object(node, problems);
  if (!object.valid()) return std::nullopt;
  Setup setup;
  setup.pointer = node.pointer;
  setup.tool = readPhrase(object.required("tool"), scope, kToolWords, problems);
  setup.figures = readEach(object.optional("figures"), problems,
                           [&](const Node& item) { return readSetupFigure(item, scope, problems); });
  setup.words = readPhrase(object.optional("words"), scope, kTitleWords, problems);
  setup.afresh = base::readBoolean(object.optional("afresh"), problems).value_or(false);
  if (setup.figures.empty() && !object.has("words")) report(problems, node, Message("technique.setup-to-nothing"));
  object.finish();
  return setup;
}

std::vector<std::string> readAsMade(const Node& node, const Scope& scope, Problems& problems) {
  return readEach(node, problems, [&](const Node& item) { return readFigure(item, scope, problems); });
}

}  // namespace core::craft
