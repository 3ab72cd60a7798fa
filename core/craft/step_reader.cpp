#include "core/craft/step_reader.h"

#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/craft/pattern.h"
#include "core/craft/pattern_reader.h"
#include "core/craft/step_details.h"
#include "core/craft/wait_reader.h"

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

void readWork(const Node& node, Step& step, Problems& problems) {
  if (!node) return;
  ObjectReader object(node, problems);
  if (!object.valid()) return;
  if (const auto span = readSpan(object, Least::AboveZero, problems)) step.work = *span;
  step.workSource = base::readText(object.required("source"), problems, kLongestPhrase).value_or("");
  object.finish();
}

Hands readHands(const Node& node, Problems& problems) {
  static const std::vector<Hands> every = allHands();
  std::vector<std::string> words;
  for (const Hands hands : every) words.emplace_back(name(hands));
  const auto index = base::readChoice(node, words, problems);
  return index ? every[*index] : Hands::Clean;
}

// The words are too many to list in a message.
std::optional<Act> readAct(const Node& node, Problems& problems) {
  const auto word = base::readText(node, problems);
  if (!word) return std::nullopt;
  const std::optional<Act> known = act(*word);
  if (!known) report(problems, node, Message("technique.unknown-act").with("word", *word));
  return known;
}

void readSentences(const Node& node, const Scope& scope, Step& step, Problems& problems) {
  step.sentences = readPhrases(node, scope, kSentenceWords, problems);
  if (node && node.value->kind() == base::Value::Kind::Array && node.value->items().empty()) {
    report(problems, node, Message("technique.empty-list"));
  }
}

void readFacts(ObjectReader& object, const Scope& scope, Step& step, Problems& problems) {
  step.needs = readNeeds(object.optional("needs"), scope, problems);
  step.makes = readPatterns(object.optional("makes"), scope, Allowed::Plain, problems);
  step.ends = readPatterns(object.optional("ends"), scope, Allowed::EveryToo, problems);
  step.waits = readWaits(object.optional("waits"), scope, problems);
  step.faults = readFaults(object.optional("faults"), scope, problems);
}

Step readStep(const Node& node, const Scope& technique, std::set<std::string>& ids, Problems& problems) {
  static const std::vector<std::string> kSides = {"face", "back"};
  static const std::vector<std::string> kResources = {"press", "rack"};
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
  step.title = readPhrase(object.required("title"), scope, kTitleWords, problems);
  readSentences(object.required("do"), scope, step, problems);
  step.good = readPhrase(object.required("good"), scope, kNoLimit, problems);
  step.trap = readPhrase(object.optional("trap"), scope, kNoLimit, problems);
  step.tools = readPhrases(object.optional("tools"), scope, kNoLimit, problems);
  step.materials = readMaterials(object.optional("materials"), scope, problems);
  step.figures = readStepFigures(object.optional("figures"), scope, problems);
  step.checks = readChecks(object.optional("checks"), scope, problems);
  step.cautions = readCautions(object.optional("cautions"), scope, problems);
  step.hands = readHands(object.required("hands"), problems);
  if (const auto side = base::readChoice(object.optional("up"), kSides, problems)) {
    step.up = *side == 0 ? WayUp::Face : WayUp::Back;
  }
  step.act = readAct(object.optional("act"), problems);
  readWork(object.required("work"), step, problems);
  step.uninterruptible = base::readBoolean(object.optional("uninterruptible"), problems).value_or(false);
  if (const auto resource = base::readChoice(object.optional("resource"), kResources, problems)) {
    step.resource = kResources[*resource];
  }
  readFacts(object, scope, step, problems);
  step.asMade = readAsMade(object.optional("asMade"), scope, problems);
  object.finish();
  return step;
}

}  // namespace

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
