#include "core/craft/technique_reader.h"

#include "core/craft/cycle.h"
#include "core/craft/fields.h"
#include "core/craft/pattern.h"
#include "core/craft/step_reader.h"
#include "core/craft/together.h"
#include "core/craft/want_reader.h"
#include "core/craft/when_reader.h"

namespace core::craft {

using base::Message;
using base::Node;
using base::ObjectReader;
using base::Problems;
using base::report;

namespace {

constexpr std::string_view kFormat = "mountwright-technique/1";

// False where the file is of a version this reader does not know: nothing in it can be judged then.
bool isKnownFormat(const Node& node, Problems& problems) {
  const auto format = base::readText(node, problems);
  if (!format || *format == kFormat) return true;
  report(problems, node,
         Message("technique.unknown-format").with("found", *format).with("known", std::string(kFormat)));
  return false;
}

void readKeeps(ObjectReader& object, Technique& technique, Problems& problems) {
  const Node node = object.optional("keeps");
  if (!technique.ofShop) {
    if (node) report(problems, node, Message("technique.keeps-of-job"));
    return;
  }
  if (!node) {
    report(problems, object.node(), Message("technique.keeps-missing"));
    return;
  }
  ObjectReader keeps(node, problems);
  const Node duration = keeps.required("for");
  technique.keeps = readDuration(duration, problems);
  if (technique.keeps == units::Duration()) report(problems, duration, Message("technique.no-time"));
  technique.keepsSource = base::readText(keeps.required("source"), problems, kLongestPhrase).value_or("");
  keeps.finish();
}

// A batch is as old as the last thing done to it. One that is too old before it is ready could never be used.
void checkKeeps(const Technique& technique, const Node& keeps, Problems& problems) {
  if (!keeps || !technique.keeps) return;
  for (const Step& step : technique.steps) {
    for (const Wait& wait : step.waits) {
      if (wait.opens.likely < *technique.keeps) continue;
      report(problems, keeps, Message("technique.keeps-too-short").with("wait", wait.title));
    }
  }
}

std::optional<Reversal> readReversal(const Node& node, const Scope& scope, Problems& problems) {
  if (!node) return std::nullopt;
  ObjectReader reversal(node, problems);
  if (!reversal.valid()) return std::nullopt;
  Reversal read;
  read.how = readPhrase(reversal.required("how"), scope, kSentenceWords, problems);
  read.source = base::readText(reversal.required("source"), problems, kLongestPhrase).value_or("");
  reversal.finish();
  return read;
}

void readScope(ObjectReader& object, Technique& technique, Problems& problems) {
  static const std::vector<std::string> kScopes = {"job", "shop"};
  technique.ofShop = base::readChoice(object.optional("scope"), kScopes, problems).value_or(0) == 1;
  readKeeps(object, technique, problems);
}

// Scope and shelf life hang on each other, and the placeholders of what undoes it on the whole technique.
constexpr TechniqueField kTechniqueFields[] = {
    {"scope", false, nullptr, &sameMember<&TechniqueDetail::ofShop, TechniqueDetail>, nullptr, "renewal.of-shop", true},
    {"keeps", false, nullptr, &sameMember<&TechniqueDetail::keeps, TechniqueDetail>, nullptr, "renewal.keeps"},
    {"keeps", false, nullptr, &sameMember<&TechniqueDetail::keepsSource, TechniqueDetail>, nullptr, "renewal.source"},
    {"reversal", false, nullptr, &sameMember<&TechniqueDetail::reversal, TechniqueDetail>, nullptr, "renewal.reversal"},
};

// Will not compile where a member comes or goes.
[[maybe_unused]] constexpr std::size_t membersOf(const TechniqueDetail& whole) {
  [[maybe_unused]] const auto& [a1, a2, a3, a4] = whole;
  return 4;
}
static_assert(ownFields(kTechniqueFields) == 4, "every member that the steps are told with has its row");

Technique readRoot(const Node& root, Problems& problems) {
  constexpr std::int64_t kHighestRank = 9999;
  Technique technique;
  ObjectReader object(root, problems);
  if (!object.valid()) return technique;
  if (!isKnownFormat(object.required("format"), problems)) return technique;
  Scope scope;
  scope.kind = ThingKind::Once;
  technique.id = readId(object.required("id"), problems).value_or("");
  technique.title = readPhrase(object.required("title"), scope, kNoLimit, problems);
  technique.role = readId(object.optional("role"), problems).value_or("");
  technique.rank = static_cast<int>(base::readInteger(object.required("rank"), problems, 0, kHighestRank).value_or(0));
  readScope(object, technique, problems);
  technique.reversal = readReversal(object.optional("reversal"), scope, problems);
  const Node whenNode = object.required("when");
  const auto when = readWhen(whenNode, problems);
  scope.kind = std::nullopt;
  if (when) {
    technique.when = *when;
    scope.outer = outerKind(technique);
    scope.kind = scope.outer;
    if (technique.ofShop && when->mode == When::Mode::Each) {
      report(problems, whenNode, Message("technique.shop-for-each"));
    }
  }
  const Node repeatNode = object.optional("repeat");
  technique.repeat = readRepeat(repeatNode, scope, problems);
  scope.splits = static_cast<bool>(repeatNode);
  technique.wants = readWants(object.optional("wants"), scope, problems);
  technique.stage = readStageWord(object.optional("stage"), problems);
  technique.steps = readSteps(object.required("steps"), scope, problems);
  for (Step& step : technique.steps) {
    if (step.stage == Stage::None) step.stage = technique.stage;
  }
  checkKeeps(technique, object.optional("keeps"), problems);
  technique.together = readTogether(object.optional("together"), technique, scope, problems);
  object.finish();
  return technique;
}

}  // namespace

std::span<const TechniqueField> techniqueFields() { return kTechniqueFields; }

ReadTechnique readTechnique(std::string_view text, base::Source source) {
  const base::ParsedJson json = base::parseJson(text);
  ReadTechnique read;
  read.problems = Problems(source);
  read.problems.append(json.problems);
  if (!json.readable) return read;
  Technique technique = readRoot({&json.root, ""}, read.problems);
  if (!read.problems.hasErrors()) checkCycles(technique, read.problems);
  if (!read.problems.hasErrors()) read.technique = std::move(technique);
  return read;
}

}  // namespace core::craft
