#include "core/workflow/expand.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/craft/fields.h"
#include "core/craft/figure_names.h"
#include "core/craft/pattern.h"
#include "core/workflow/fill.h"

namespace core::workflow {
namespace {

using craft::FactPattern;
using craft::Relation;
using craft::ThingKind;

std::vector<const Thing*> spokenOf(const FactPattern& pattern, const Subject& subject, const Things& things) {
  const ThingKind kind = *pattern.every;
  const Thing* thing = subject.thing;
  switch (pattern.of) {
    case Relation::Job: return things.of(kind);
    case Relation::This: return thing != nullptr ? things.ownedBy(thing->id, kind) : things.of(kind);
    case Relation::Owner: return thing != nullptr ? things.ownedBy(thing->owner, kind) : std::vector<const Thing*>();
    case Relation::Reach: return thing != nullptr ? things.inReach(*thing, kind) : things.of(kind);
    case Relation::Adjoining: return thing != nullptr ? things.adjoining(*thing, kind) : std::vector<const Thing*>();
    case Relation::Outermost:
    case Relation::Innermost: break;
  }
  std::vector<const Thing*> all = things.of(kind);
  if (all.empty()) return all;
  return {pattern.of == Relation::Outermost ? all.front() : all.back()};
}

// Returns the id that "this", "previous" or "owner" refers to; null where there is none.
const std::string* idOf(std::string_view word, const Subject& subject, const Things& things) {
  const Thing* thing = subject.thing;
  if (thing == nullptr) return nullptr;
  if (word == "this") return &thing->id;
  if (word == "owner") return thing->owner.empty() ? &thing->id : &thing->owner;
  const Thing* before = things.previous(*thing, subject.kind);
  return before == nullptr ? nullptr : &before->id;
}

bool isPronoun(std::string_view word) { return word == "this" || word == "previous" || word == "owner"; }

std::vector<WorkflowFigure> expandFigures(const std::vector<craft::StepFigure>& figures, const Subject& subject,
                                          const Things& things, const design::Design& design) {
  std::vector<WorkflowFigure> expanded;
  for (const craft::StepFigure& figure : figures) {
    std::string id = expandFigure(figure.figure, subject, things);
    if (!craft::isFamily(id)) {
      if (things.figure(id) != nullptr) expanded.push_back({id, figure.count, figure.from, figure.by});
      continue;
    }
    id.pop_back();
    for (const design::Figure& member : design.figures.all()) {
      if (base::startsWith(member.id, id)) expanded.push_back({member.id, figure.count, figure.from, figure.by});
    }
  }
  return expanded;
}

// How many parts share what the whole thing takes; 1 where the step is not done for a part.
double partsOf(const Subject& subject) {
  if (subject.thing == nullptr || subject.kind != ThingKind::Part) return 1;
  return base::parseDecimal(subject.thing->properties.at("of")).value_or(1);
}

WorkflowMaterial expandMaterial(const craft::Material& material, const Subject& subject, const Things& things) {
  WorkflowMaterial expanded;
  expanded.what = material.what;
  if (!material.amount) return expanded;
  const craft::Amount& amount = *material.amount;
  expanded.unit = amount.unit;
  expanded.source = amount.source;
  if (amount.figure.empty()) {
    expanded.amount = amount.factor;
  } else if (const auto* figure = things.figure(expandFigure(amount.figure, subject, things))) {
    expanded.amount = figure->value * amount.factor / partsOf(subject);
  }
  return expanded;
}

template <typename Detail, typename Fields>
void fillIn(const Fields& fields, Detail& detail, const craft::Fill& filled) {
  for (const auto& field : fields) {
    if (field.fill != nullptr) field.fill(detail, filled);
  }
}

class Scales {
 public:
  std::size_t weigh(const DraftStep& draft) {
    const WorkflowStep& step = draft.step;
    add(step.id, step.techniqueTitle, step.thingName, step.title, step.good, step.trap, step.workSource);
    addAll(step.sentences, step.tools, step.makes, step.ends, step.asMade);
    for (const WorkflowMaterial& material : step.materials) add(material.what, material.unit, material.source);
    for (const WorkflowFigure& figure : step.figures) add(figure.id, figure.from);
    for (const WorkflowCheck& check : step.checks) add(check.ask, check.figure, check.within);
    for (const craft::Caution& caution : step.cautions) add(caution.sign, caution.hazard, caution.text);
    for (const WorkflowFault& fault : step.faults) {
      add(fault.id, fault.seen, fault.mend);
      addAll(fault.ends);
    }
    for (const WorkflowWait& wait : step.waits) {
      add(wait.id, wait.title, wait.makes, wait.follows, wait.test, wait.source, wait.missedSay);
      addAll(wait.missedEnds);
    }
    for (const auto& alternatives : draft.needs) {
      for (const auto& facts : alternatives) addAll(facts);
    }
    return m_weight;
  }

 private:
  template <typename... Texts>
  void add(const Texts&... texts) {
    m_weight += ((texts.size() + kHandle) + ...);
  }
  template <typename... Lists>
  void addAll(const Lists&... lists) {
    const auto each = [&](const std::vector<std::string>& list) {
      for (const std::string& text : list) add(text);
    };
    (each(lists), ...);
  }

  std::size_t m_weight = 0;
};

}  // namespace

std::size_t weightOf(const DraftStep& draft) { return Scales().weigh(draft); }

std::vector<std::string> expandFacts(const FactPattern& pattern, const Subject& subject, const Things& things) {
  std::vector<std::string> facts;
  if (pattern.every) {
    for (const Thing* thing : spokenOf(pattern, subject, things)) {
      if (isMeant(*thing, pattern.where)) facts.push_back(thing->id + '.' + pattern.is);
    }
    return facts;
  }
  const auto dot = pattern.text.find('.');
  const std::string first = pattern.text.substr(0, dot);
  if (!isPronoun(first)) return {pattern.text};
  if (const std::string* id = idOf(first, subject, things)) facts.push_back(*id + pattern.text.substr(dot));
  return facts;
}

std::vector<std::string> expandFacts(const std::vector<FactPattern>& patterns, const Subject& subject,
                                     const Things& things) {
  std::vector<std::string> facts;
  for (const FactPattern& pattern : patterns) {
    for (std::string& fact : expandFacts(pattern, subject, things)) facts.push_back(std::move(fact));
  }
  return facts;
}

std::string expandFigure(const std::string& pattern, const Subject& subject, const Things& things) {
  std::vector<std::string> parts = base::split(pattern, '.');
  for (std::string& part : parts) {
    if (isPronoun(part)) {
      const std::string* id = idOf(part, subject, things);
      if (id == nullptr) return "";
      part = *id;
    } else if (part == "axis" && subject.kind == ThingKind::Strip) {
      const auto side = subject.thing->properties.find("side");
      part = side->second == "top" || side->second == "bottom" ? "horizontal" : "vertical";
    }
  }
  return base::join(parts, ".");
}

namespace {

std::optional<WorkflowSetup> expandSetup(const craft::Step& source, const Subject& subject, const Things& things,
                                         const craft::Fill& filled) {
  if (!source.setup) return std::nullopt;
  WorkflowSetup setup;
  setup.tool = filled(source.setup->tool);
  std::vector<std::string> to;
  if (!source.setup->words.empty()) to.push_back(filled(source.setup->words));
  for (const craft::SetupFigure& setting : source.setup->figures) {
    const auto* figure = things.figure(expandFigure(setting.figure, subject, things));
    if (figure == nullptr) continue;
    setup.figures.push_back(figure->id);
    const std::string as = setting.as.empty() ? figure->id.substr(figure->id.rfind('.') + 1) : filled(setting.as);
    to.push_back(as + ' ' + figure->display);
  }
  setup.to = base::join(to, ", ");
  setup.afresh = source.setup->afresh;
  return setup;
}

// Steps of one entry are gathered within one owner or within the job, where their properties are alike.
std::string groupOf(const craft::Technique& technique, const craft::Together& together, const Subject& subject) {
  std::string group = technique.id + '\n' + std::to_string(&together - technique.together.data());
  const Thing* thing = subject.thing;
  if (thing == nullptr) return group;
  if (together.over == craft::Together::Over::Each) group += '\n' + thing->id;
  if (together.over == craft::Together::Over::Owner) group += '\n' + (thing->owner.empty() ? thing->id : thing->owner);
  for (const std::string& property : together.alike) {
    const auto found = thing->properties.find(property);
    group += '\n' + (found == thing->properties.end() ? std::string() : found->second);
  }
  return group;
}

// The words for the title of what is gathered: those of the thing, or of the owner of the things.
const std::map<std::string, std::string>* titleWords(const craft::Together& together, const Subject& subject,
                                                     const Things& things) {
  if (subject.thing == nullptr) return nullptr;
  if (together.over == craft::Together::Over::Owner && !subject.thing->owner.empty()) {
    if (const Thing* owner = things.find(subject.thing->owner)) return &owner->words;
  }
  return &subject.thing->words;
}

void expandTogether(const craft::Technique& technique, const craft::Step& source, const Subject& subject,
                    const Things& things, DraftStep& draft) {
  for (const craft::Together& together : technique.together) {
    if (std::find(together.steps.begin(), together.steps.end(), source.id) == together.steps.end()) continue;
    const auto way = static_cast<std::size_t>(together.way);
    const auto* words = titleWords(together, subject, things);
    draft.togetherTitle[way] = words == nullptr ? together.title : fill(together.title, *words);
    draft.group[way] = groupOf(technique, together, subject);
    draft.ofOnePiece[way] =
        together.over == craft::Together::Over::Owner || together.over == craft::Together::Over::Piece;
    // Equal settings alone are shared between things.
    if (draft.step.setup && together.over != craft::Together::Over::Each)
      draft.group[way] += '\n' + draft.step.setup->tool + '\n' + draft.step.setup->to;
  }
}

}  // namespace

DraftStep expandStep(const craft::Technique& technique, std::size_t stepIndex, const Subject& subject,
                     const Things& things, const design::Design& design) {
  const craft::Step& source = technique.steps[stepIndex];
  static const std::map<std::string, std::string> kNoWords;
  const auto& words = subject.thing != nullptr ? subject.thing->words : kNoWords;
  const craft::Fill filled = [&](const std::string& text) { return fill(text, words); };

  DraftStep draft;
  draft.rank = technique.rank;
  draft.thingOrder = subject.thing != nullptr ? subject.thing->order : 0;
  draft.stepOrder = static_cast<int>(stepIndex);
  WorkflowStep& step = draft.step;
  step.id = technique.id + '/' + source.id + (subject.thing != nullptr ? '@' + subject.thing->id : "");
  step.technique = technique.id;
  step.techniqueTitle = technique.title;
  if (subject.thing != nullptr) {
    step.thing = subject.thing->id;
    step.thingName = words.at("name");
    if (const Thing* owner = subject.thing->owner.empty() ? nullptr : things.find(subject.thing->owner)) {
      step.ownerName = owner->words.at("name");
    }
  }
  static_cast<craft::TechniqueDetail&>(step) = technique;
  static_cast<craft::StepDetail&>(step) = source;
  fillIn<craft::StepDetail>(craft::stepFields(), step, filled);
  for (const craft::Material& material : source.materials) {
    step.materials.push_back(expandMaterial(material, subject, things));
    step.materials.back().what = filled(step.materials.back().what);
  }
  step.setup = expandSetup(source, subject, things, filled);
  step.figures = expandFigures(source.figures, subject, things, design);
  if (step.setup) {
    std::vector<WorkflowFigure> first;
    for (const std::string& id : step.setup->figures) {
      // Where the step lists it as well, that says from where it is read.
      const auto own = std::find_if(step.figures.begin(), step.figures.end(),
                                    [&](const WorkflowFigure& figure) { return figure.id == id; });
      first.push_back({id, 1, own == step.figures.end() ? "" : own->from, std::nullopt});
      std::erase_if(step.figures, [&](const WorkflowFigure& figure) { return figure.id == id; });
    }
    step.figures.insert(step.figures.begin(), first.begin(), first.end());
  }
  for (WorkflowFigure& figure : step.figures) figure.from = filled(figure.from);
  for (const craft::Check& check : source.checks) {
    const std::string figure = check.figure.empty() ? "" : expandFigure(check.figure, subject, things);
    if (!check.figure.empty() && things.figure(figure) == nullptr) continue;
    step.checks.push_back({filled(check.ask), figure, check.within});
  }
  step.makes = expandFacts(source.makes, subject, things);
  step.ends = expandFacts(source.ends, subject, things);
  for (const craft::Need& need : source.needs) {
    std::vector<std::vector<std::string>> alternatives;
    for (const FactPattern& pattern : need.alternatives) alternatives.push_back(expandFacts(pattern, subject, things));
    draft.needs.push_back(std::move(alternatives));
  }
  for (const craft::Wait& wait : source.waits) {
    WorkflowWait expanded;
    expanded.id = step.id + '/' + wait.id;
    static_cast<craft::WaitDetail&>(expanded) = wait;
    fillIn<craft::WaitDetail>(craft::waitFields(), expanded, filled);
    const auto makes = expandFacts(wait.makes, subject, things);
    if (makes.empty()) continue;
    expanded.makes = makes.front();
    if (wait.follows) {
      const auto follows = expandFacts(*wait.follows, subject, things);
      if (!follows.empty()) expanded.follows = follows.front();
    }
    expanded.answers = things.answersTo(wait);
    if (wait.ifMissed) {
      expanded.missedSay = filled(wait.ifMissed->say);
      expanded.missedEnds = expandFacts(wait.ifMissed->ends, subject, things);
    }
    step.waits.push_back(std::move(expanded));
  }
  for (const std::string& figure : source.asMade) {
    const std::string id = expandFigure(figure, subject, things);
    if (things.figure(id) != nullptr) step.asMade.push_back(id);
  }
  for (const craft::Fault& fault : source.faults) {
    WorkflowFault expanded{
        fault.id, filled(fault.seen), filled(fault.mend), expandFacts(fault.ends, subject, things), {}};
    for (const craft::FaultWay& way : fault.ways) {
      expanded.ways.push_back({way.id, way.key, filled(way.mend), expandFacts(way.ends, subject, things)});
    }
    step.faults.push_back(std::move(expanded));
  }
  expandTogether(technique, source, subject, things, draft);
  return draft;
}

}  // namespace core::workflow
