#include "core/craft/step_reader.h"

#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/craft/field_readers.h"
#include "core/craft/pattern.h"
#include "core/craft/pattern_reader.h"
#include "core/craft/step_details.h"
#include "core/craft/together.h"
#include "core/craft/wait_reader.h"
#include "core/craft/where_reader.h"

namespace core::craft {

using base::Message;
using base::Node;
using base::ObjectReader;
using base::Problems;
using base::report;

namespace {

std::vector<ThingKind> kindsOfSteps(const Scope& scope) {
  std::vector<ThingKind> kinds;
  if (scope.outer != ThingKind::Once) kinds.push_back(scope.outer);
  if (scope.outer == ThingKind::Band) kinds.insert(kinds.end(), {ThingKind::Strip, ThingKind::Corner});
  if (scope.splits) kinds.push_back(ThingKind::Part);
  return kinds;
}

// The scope of one step: `technique` narrowed to what the step is done for.
Scope readEach(const Node& node, const Scope& technique, Problems& problems) {
  Scope step = technique;
  const auto word = base::readText(node, problems);
  if (!word || !technique.kind) return step;
  step.kind = thingKind(*word);
  const std::vector<ThingKind> kinds = kindsOfSteps(technique);
  if (step.kind && std::find(kinds.begin(), kinds.end(), *step.kind) != kinds.end()) return step;
  step.kind = std::nullopt;
  if (kinds.empty()) {
    report(problems, node, Message("technique.each-of-nothing").with("word", *word));
    return step;
  }
  std::vector<std::string> words;
  for (const ThingKind kind : kinds) words.emplace_back(name(kind));
  report(problems, node, Message("technique.each-not-here").with("word", *word).with("words", base::join(words, ", ")));
  return step;
}

void readWork(const Node& node, const Scope&, Step& step, Problems& problems) {
  if (!node) return;
  ObjectReader object(node, problems);
  if (!object.valid()) return;
  if (const auto span = readSpan(object, Least::AboveZero, problems)) step.work = *span;
  step.workSource = base::readText(object.required("source"), problems, kLongestPhrase).value_or("");
  object.finish();
}

Hands readHands(const Node& node, const Scope&, Problems& problems) {
  static const std::vector<Hands> every = allHands();
  std::vector<std::string> words;
  for (const Hands hands : every) words.emplace_back(name(hands));
  const auto index = base::readChoice(node, words, problems);
  return index ? every[*index] : Hands::Clean;
}

// The words are too many to list in a message.
std::optional<Act> readAct(const Node& node, const Scope&, Problems& problems) {
  const auto word = base::readText(node, problems);
  if (!word) return std::nullopt;
  const std::optional<Act> known = act(*word);
  if (!known) report(problems, node, Message("technique.unknown-act").with("word", *word));
  return known;
}

// As many as the drawing has numbers for.
constexpr std::size_t kMostPlaces = 3;

std::vector<std::optional<ActPlace>> readPlaces(const Node& node, const Scope&, Problems& problems) {
  // "" for a sentence that speaks of nothing drawn.
  static const std::vector<std::string> kWords = [] {
    std::vector<std::string> words = {""};
    for (const ActPlace place : kActPlaces) words.emplace_back(name(place));
    return words;
  }();
  std::vector<std::optional<ActPlace>> places;
  if (!node) return places;
  const auto items = base::readItems(node, problems, kMostPlaces);
  if (!items) return places;
  for (const Node& item : *items) {
    const auto index = base::readChoice(item, kWords, problems);
    if (!index) continue;
    const std::optional<ActPlace> place = actPlace(kWords[*index]);
    if (place && std::count(places.begin(), places.end(), place) > 0) {
      report(problems, item, Message("technique.place-twice").with("word", kWords[*index]));
    }
    places.push_back(place);
  }
  return places;
}

std::vector<std::string> readSentences(const Node& node, const Scope& scope, Problems& problems) {
  if (node && node.value->kind() == base::Value::Kind::Array && node.value->items().empty()) {
    report(problems, node, Message("technique.empty-list"));
  }
  return readPhrases(node, scope, kSentenceWords, problems);
}

Stage readStage(const Node& node, const Scope&, Problems& problems) { return readStageWord(node, problems); }

WayUp readWayUp(const Node& node, const Scope&, Problems& problems) {
  static const std::vector<std::string> kSides = {"face", "back"};
  const auto side = base::readChoice(node, kSides, problems);
  return !side ? WayUp::None : *side == 0 ? WayUp::Face : WayUp::Back;
}

std::string readResource(const Node& node, const Scope&, Problems& problems) {
  static const std::vector<std::string> kResources = {"press", "rack"};
  const auto resource = base::readChoice(node, kResources, problems);
  return resource ? kResources[*resource] : "";
}

Where readStepWhere(const Node& node, const Scope& scope, Problems& problems) {
  if (node && scope.kind == ThingKind::Once) report(problems, node, Message("technique.where-without-kind"));
  return scope.kind == ThingKind::Once ? Where() : readWhere(node, scope.kind, scope.outer, problems);
}

using S = StepDetail;
constexpr StepField kStepFields[] = {
    {"where", kOptional, &into<&Step::where, readStepWhere>},
    {"title", kRequired, &into<&Step::title, phrase<kTitleWords>>, &sameMember<&S::title, S>, &fillText<&S::title, S>,
     "renewal.title"},
    {"do", kRequired, &into<&Step::sentences, readSentences>, &sameMember<&S::sentences, S>,
     &fillTexts<&S::sentences, S>, "renewal.how"},
    {"good", kRequired, &into<&Step::good, phrase<kNoLimit>>, &sameMember<&S::good, S>, &fillText<&S::good, S>,
     "renewal.how"},
    {"trap", kOptional, &into<&Step::trap, phrase<kNoLimit>>, &sameMember<&S::trap, S>, &fillText<&S::trap, S>,
     "renewal.how"},
    {"tools", kOptional, &into<&Step::tools, phrases<kNoLimit>>, &sameMember<&S::tools, S>, &fillTexts<&S::tools, S>,
     "renewal.tools"},
    {"materials", kOptional, &into<&Step::materials, readMaterials>},
    {"setup", kOptional, &into<&Step::setup, readSetup>},
    {"figures", kOptional, &into<&Step::figures, readStepFigures>},
    {"checks", kOptional, &into<&Step::checks, readChecks>},
    {"cautions", kOptional, &into<&Step::cautions, readCautions>, &sameMember<&S::cautions, S>, nullptr,
     "renewal.caution"},
    {"hands", kRequired, &into<&Step::hands, readHands>, &sameMember<&S::hands, S>, nullptr, "renewal.how"},
    {"up", kOptional, &into<&Step::up, readWayUp>, &sameMember<&S::up, S>, nullptr, "renewal.how"},
    {"act", kOptional, &into<&Step::act, readAct>, &sameMember<&S::act, S>, nullptr, "renewal.how"},
    {"places", kOptional, &into<&Step::places, readPlaces>, &sameMember<&S::places, S>, nullptr, "renewal.how"},
    // One object in the file.
    {"work", kRequired, &readWork, &sameMember<&S::work, S>, nullptr, "renewal.time"},
    {"work", kRequired, nullptr, &sameMember<&S::workSource, S>, nullptr, "renewal.source"},
    {"uninterruptible", kOptional, &into<&Step::uninterruptible, truth>, &sameMember<&S::uninterruptible, S>, nullptr,
     "renewal.left"},
    {"resource", kOptional, &into<&Step::resource, readResource>, &sameMember<&S::resource, S>, nullptr,
     "renewal.resource"},
    {"stage", kOptional, &into<&Step::stage, readStage>, &sameMember<&S::stage, S>, nullptr, "renewal.order"},
    {"once", kOptional, &into<&Step::once, truth>, &sameMember<&S::once, S>, nullptr, "renewal.order"},
    {"needs", kOptional, &into<&Step::needs, readNeeds>},
    {"makes", kOptional, &into<&Step::makes, facts<Allowed::Plain>>},
    {"ends", kOptional, &into<&Step::ends, facts<Allowed::EveryToo>>},
    {"waits", kOptional, &into<&Step::waits, readWaits>},
    {"faults", kOptional, &into<&Step::faults, readFaults>},
    {"asMade", kOptional, &into<&Step::asMade, readAsMade>},
};

// Will not compile where a member comes or goes.
[[maybe_unused]] constexpr std::size_t membersOf(const StepDetail& whole) {
  [[maybe_unused]] const auto& [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15, a16] = whole;
  return 16;
}
static_assert(ownFields(kStepFields) == 16, "every member of a step has its row");

Step readStep(const Node& node, const Scope& technique, std::set<std::string>& ids, Problems& problems) {
  Step step;
  step.pointer = node.pointer;
  ObjectReader object(node, problems);
  if (!object.valid()) return step;
  const Node idNode = object.required("id");
  if (const auto id = readId(idNode, problems)) {
    step.id = *id;
    if (!ids.insert(step.id).second) report(problems, idNode, Message("technique.duplicate-id").with("id", step.id));
  }
  const Scope scope = readEach(object.optional("each"), technique, problems);
  step.each = scope.kind.value_or(technique.outer);
  readFields(kStepFields, object, scope, step, problems);
  object.finish();
  return step;
}

}  // namespace

std::span<const StepField> stepFields() { return kStepFields; }

std::vector<Step> readSteps(const Node& node, const Scope& scope, Problems& problems) {
  std::vector<Step> steps;
  const auto items = base::readItems(node, problems, kMostSteps);
  if (!items) return steps;
  if (items->empty()) report(problems, node, Message("technique.no-steps"));
  std::set<std::string> ids;
  for (const Node& item : *items) steps.push_back(readStep(item, scope, ids, problems));
  return steps;
}

}  // namespace core::craft
