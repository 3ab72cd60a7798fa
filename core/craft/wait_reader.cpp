#include "core/craft/wait_reader.h"

#include <set>

#include "core/craft/field_readers.h"
#include "core/craft/pattern.h"
#include "core/craft/pattern_reader.h"

namespace core::craft {

using base::Message;
using base::Node;
using base::ObjectReader;
using base::Problems;
using base::report;

namespace {

constexpr WaitKind kKinds[] = {WaitKind::Dry,  WaitKind::Cure, WaitKind::Press, WaitKind::Tack,
                               WaitKind::Open, WaitKind::Soak, WaitKind::Rest};

std::optional<WaitKind> readKind(const Node& node, Problems& problems) {
  std::vector<std::string> words;
  for (const WaitKind kind : kKinds) words.emplace_back(name(kind));
  const auto index = base::readChoice(node, words, problems);
  if (!index) return std::nullopt;
  return kKinds[*index];
}

bool closesAgain(WaitKind kind) { return kind == WaitKind::Tack || kind == WaitKind::Open; }

std::optional<units::Span> readSpanObject(const Node& node, Problems& problems) {
  if (!node) return std::nullopt;
  ObjectReader object(node, problems);
  auto span = object.valid() ? readSpan(object, Least::Zero, problems) : std::nullopt;
  object.finish();
  return span;
}

void readRoom(const Node& node, Wait& wait, Problems& problems) {
  if (!node) return;
  ObjectReader object(node, problems);
  const Node temperatureNode = object.optional("temperature");
  const Node humidityNode = object.optional("humidity");
  object.finish();
  if (const auto text = base::readText(temperatureNode, problems)) {
    const auto temperature = units::parseTemperature(*text);
    if (temperature) {
      wait.reference.temperature = temperature.value();
    } else {
      report(problems, temperatureNode, temperature.error());
    }
  }
  if (const auto text = base::readText(humidityNode, problems)) {
    const auto humidity = units::parseHumidity(*text);
    if (humidity) {
      wait.reference.humidity = humidity.value();
    } else {
      report(problems, humidityNode, humidity.error());
    }
  }
}

// A time stated for a room in which nothing can be predicted cannot be carried over to another.
void checkReference(const Node& node, const Wait& wait, Problems& problems) {
  const double celsius = wait.reference.temperature.inCelsius();
  const double percent = wait.reference.humidity.inPercent();
  const bool warmth = celsius >= units::kColdestDrying && celsius <= units::kWarmestDrying;
  const bool damp = percent >= units::kDriestDrying && percent <= units::kDampestDrying;
  if (wait.model == DryingModel::None || (warmth && (damp || wait.model == DryingModel::Oxidation))) return;
  report(problems, node, Message("technique.room-not-predictable"));
}

// Nothing that is made on a bench waits longer; what does is a slip of the unit.
constexpr units::Duration kLongestWait = units::Duration::minutes(90 * 24 * 60);

void checkLength(const units::Span& span, const Node& node, Problems& problems) {
  if (span.late <= kLongestWait) return;
  const base::Value* member = node.value->find("late");
  report(problems, member == nullptr ? node : Node{member, base::pointerTo(node.pointer, "late")},
         Message("technique.wait-too-long"));
}

std::optional<IfMissed> readIfMissed(const Node& node, const Scope& scope, Problems& problems) {
  if (!node) return std::nullopt;
  ObjectReader object(node, problems);
  IfMissed missed;
  missed.say = readPhrase(object.required("do"), scope, kSentenceWords, problems);
  const Node ends = object.required("ends");
  missed.ends = readPatterns(ends, scope, Allowed::EveryFact, problems);
  if (ends && ends.value->kind() == base::Value::Kind::Array && ends.value->items().empty()) {
    report(problems, ends, Message("technique.missed-ends-nothing"));
  }
  object.finish();
  return missed;
}

// A window that is shut when it opens can never be met: it is reported at the first of the three that shows it.
void checkCloses(const units::Span& opens, const units::Span& closes, const Node& node, Problems& problems) {
  const auto tell = [&](const char* quantile) {
    Node at = node;
    if (const base::Value* member = node.value->find(quantile)) {
      at = {member, base::pointerTo(node.pointer, quantile)};
    }
    report(problems, at, Message("technique.closes-before-opens").with("quantile", quantile));
  };
  if (closes.early <= opens.early) return tell("early");
  if (closes.likely <= opens.likely) return tell("likely");
  if (closes.late <= opens.late) return tell("late");
}

void readWindow(ObjectReader& object, std::optional<WaitKind> kind, const Scope& scope, Wait& wait,
                Problems& problems) {
  const Node opensNode = object.required("opens");
  const auto opens = readSpanObject(opensNode, problems);
  if (opens) wait.opens = *opens;
  const Node closesNode = object.optional("closes");
  const Node missedNode = object.optional("ifMissed");
  wait.closes = readSpanObject(closesNode, problems);
  wait.ifMissed = readIfMissed(missedNode, scope, problems);
  if (opens && wait.closes) checkCloses(*opens, *wait.closes, closesNode, problems);
  if (opens) checkLength(*opens, opensNode, problems);
  if (wait.closes) checkLength(*wait.closes, closesNode, problems);
  if (!kind) return;
  if (opens && !closesAgain(*kind) && opens->likely == units::Duration()) {
    report(problems, opensNode, Message("technique.wait-of-nothing").with("kind", std::string(name(*kind))));
  }
  const std::string kindName(name(*kind));
  if (closesAgain(*kind)) {
    if (!closesNode) report(problems, object.node(), Message("technique.closes-missing").with("kind", kindName));
    if (!missedNode) report(problems, object.node(), Message("technique.if-missed-missing").with("kind", kindName));
    return;
  }
  if (closesNode) report(problems, closesNode, Message("technique.closes-not-here").with("kind", kindName));
  if (missedNode) report(problems, missedNode, Message("technique.if-missed-not-here").with("kind", kindName));
}

Answers readAnswers(const Node& node, std::optional<WaitKind> kind, Problems& problems) {
  Answers answers;
  if (!node) return answers;
  ObjectReader object(node, problems);
  if (!object.valid()) return answers;
  answers.notYet = readKey(object.optional("notYet"), problems);
  answers.found = readKey(object.optional("found"), problems);
  const Node pastNode = object.optional("pastIt");
  answers.pastIt = readKey(pastNode, problems);
  object.finish();
  if (pastNode && kind && !closesAgain(*kind)) {
    report(problems, pastNode, Message("technique.past-it-not-here").with("kind", std::string(name(*kind))));
  }
  // Two keys that read alike would be one answer to the eye.
  const std::string* said[] = {&answers.notYet, &answers.found, &answers.pastIt};
  for (std::size_t i = 0; i < 3; ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      if (said[i]->empty() || *said[i] != *said[j]) continue;
      report(problems, node, Message("technique.answers-alike").with("answer", *said[i]));
    }
  }
  return answers;
}

// Kind, times, room and answers hang on each other and are read together.
using W = WaitDetail;
constexpr WaitField kWaitFields[] = {
    {"title", kRequired, &into<&Wait::title, phrase<kShelfWords>>, &sameMember<&W::title, W>, &fillText<&W::title, W>,
     "renewal.wait-called"},
    {"kind", kRequired, nullptr, &sameMember<&W::kind, W>, nullptr, "renewal.wait-means", true},
    {"opens", kRequired, nullptr, &sameMember<&W::opens, W>, nullptr, "renewal.wait"},
    {"closes", kOptional, nullptr, &sameMember<&W::closes, W>, nullptr, "renewal.window"},
    {"model", kRequired, nullptr, &sameMember<&W::model, W>, nullptr, "renewal.wait-other"},
    {"at", kOptional, nullptr, &sameMember<&W::reference, W>, nullptr, "renewal.wait-room"},
    {"attended", kOptional, &into<&Wait::attended, truth>, &sameMember<&W::attended, W>, nullptr,
     "renewal.wait-attended"},
    {"punctual", kOptional, &into<&Wait::punctual, truth>, &sameMember<&W::punctual, W>, nullptr,
     "renewal.wait-punctual"},
    {"test", kRequired, &into<&Wait::test, phrase<kSentenceWords>>, &sameMember<&W::test, W>, &fillText<&W::test, W>,
     "renewal.wait-test"},
    {"answers", kOptional, nullptr, &sameMember<&W::answers, W>, nullptr, "renewal.wait-test"},
    {"source", kRequired, &into<&Wait::source, text<kLongestPhrase>>, &sameMember<&W::source, W>, nullptr,
     "renewal.wait-source"},
};

// Will not compile where a member comes or goes.
[[maybe_unused]] constexpr std::size_t membersOf(const WaitDetail& whole) {
  [[maybe_unused]] const auto& [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11] = whole;
  return 11;
}
static_assert(ownFields(kWaitFields) == 11, "every member of a wait has its row");

Wait readWait(const Node& node, const Scope& scope, std::set<std::string>& ids, Problems& problems) {
  static const std::vector<std::string> kModels = {"none", "evaporation", "oxidation"};
  Wait wait;
  wait.pointer = node.pointer;
  ObjectReader object(node, problems);
  if (!object.valid()) return wait;
  const Node idNode = object.required("id");
  if (auto id = readId(idNode, problems)) {
    wait.id = *id;
    if (!ids.insert(wait.id).second) report(problems, idNode, Message("technique.duplicate-id").with("id", wait.id));
  }
  const auto kind = readKind(object.required("kind"), problems);
  if (kind) wait.kind = *kind;
  if (auto makes = readPattern(object.required("makes"), scope, Allowed::Plain, problems)) wait.makes = *makes;
  wait.follows = readPattern(object.optional("follows"), scope, Allowed::Plain, problems);
  readWindow(object, kind, scope, wait, problems);
  if (const auto model = base::readChoice(object.required("model"), kModels, problems)) {
    constexpr DryingModel kDryingModels[] = {DryingModel::None, DryingModel::Evaporation, DryingModel::Oxidation};
    wait.model = kDryingModels[*model];
  }
  const Node roomNode = object.optional("at");
  readRoom(roomNode, wait, problems);
  if (roomNode) checkReference(roomNode, wait, problems);
  wait.answers = readAnswers(object.optional("answers"), kind, problems);
  readFields(kWaitFields, object, scope, wait, problems);
  const bool isWindow = wait.kind == WaitKind::Tack || wait.kind == WaitKind::Open;
  if (wait.punctual && isWindow) report(problems, object.optional("punctual"), Message("technique.punctual-window"));
  object.finish();
  return wait;
}

}  // namespace

std::span<const WaitField> waitFields() { return kWaitFields; }

std::vector<Wait> readWaits(const Node& node, const Scope& scope, Problems& problems) {
  std::vector<Wait> waits;
  const auto items = base::readItems(node, problems, kMostWaits);
  if (!items) return waits;
  std::set<std::string> ids;
  for (const Node& item : *items) waits.push_back(readWait(item, scope, ids, problems));
  return waits;
}

}  // namespace core::craft
