#include "core/workflow/composer.h"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "core/base/json.h"
#include "core/base/text.h"
#include "core/units/deliver.h"
#include "core/workflow/compose.h"

namespace core::workflow {

using base::Message;
using craft::Technique;
using craft::ThingKind;
using craft::When;

namespace {

// The limits for the steps of one job together: the bytes of their texts and facts, and the things that have to be
// looked at to find them. A job of twenty bands with every technique there is takes a tenth of each.
constexpr std::size_t kHeaviest = 16U * 1024U * 1024U;
constexpr std::size_t kMostLooks = 10'000'000;

bool isDecorated(const design::Job& job) {
  const bool coloured = std::any_of(job.boards.begin(), job.boards.end(),
                                    [](const design::Board& board) { return board.bevelColour.has_value(); });
  return coloured || !job.bands.empty() || !job.lines.empty() || !job.spandrels.empty() || !job.washes.empty() ||
         !job.leaf.empty();
}

std::string_view circumstanceOf(const design::Job& job, craft::Circumstance circumstance) {
  switch (circumstance) {
    case craft::Circumstance::Deliver: return units::name(job.deliver);
    case craft::Circumstance::Artwork: return job.window.floats ? "float" : "overlap";
    case craft::Circumstance::Spacer: return job.package.spacer > units::Length() ? "yes" : "no";
    case craft::Circumstance::Decorated: return isDecorated(job) ? "yes" : "no";
  }
  return "";
}

// Visits every list of facts that a step, its faults or its waits end.
template <typename Visit>
void forEachEnding(WorkflowStep& step, const Visit& visit) {
  visit(step.ends);
  for (WorkflowFault& fault : step.faults) {
    visit(fault.ends);
    for (WorkflowFaultWay& way : fault.ways) visit(way.ends);
  }
  for (WorkflowWait& wait : step.waits) visit(wait.missedEnds);
}

Message tooManySteps() { return Message("compose.too-many-steps").with("most", static_cast<std::int64_t>(kMostSteps)); }

}  // namespace

Composer::Composer(const design::Design& design, const craft::Catalogue& catalogue, const ThingWords& words,
                   const Supposition& supposition)
    : m_design(design),
      m_catalogue(catalogue),
      m_things(design, words, supposition.thing),
      m_wanted(design.job.techniques) {
  if (!supposition.role.empty()) m_wanted[supposition.role] = supposition.technique;
}

void Composer::gather() {
  chooseTechniques();
  for (const Technique* technique : m_chosen) {
    if (technique->when.mode != When::Mode::Needed) switchOn(*technique);
  }
  pullInNeeded();
  if (!m_tooMuch) settleNeeds();
}

std::vector<DraftStep> Composer::takeSteps() {
  settleWildcards();
  return std::move(m_drafts);
}

// Chooses one technique for each role, the job's choice or otherwise the lowest rank, and all without a role.
void Composer::chooseTechniques() {
  const std::vector<const Technique*> all = m_catalogue.all();
  std::set<std::string> roles;
  for (const Technique* technique : all) roles.insert(technique->role);
  const auto wrong = [&](const std::string& role, Message message) {
    base::Problem problem;
    problem.pointer = base::pointerTo("/techniques", role);
    problem.message = std::move(message);
    m_roleProblems.push_back(std::move(problem));
  };
  for (const auto& [role, id] : m_wanted) {
    const Technique* technique = m_catalogue.find(id);
    if (role.empty() || !roles.contains(role)) {
      wrong(role, Message("compose.no-such-role").with("role", role));
    } else if (technique == nullptr) {
      wrong(role, Message("compose.no-such-technique").with("role", role).with("technique", id));
    } else if (technique->role != role) {
      wrong(role, Message("compose.wrong-role").with("role", role).with("technique", id));
    } else if (const auto circumstance = unsuited(*technique)) {
      std::vector<std::string> instead;
      for (const Technique* other : all) {
        if (other->role == role && applies(*other)) instead.push_back(other->title);
      }
      // Where nothing of the role suits the job, the role plays no part in it, and the choice does no harm.
      if (instead.empty()) continue;
      const std::string is(circumstanceOf(m_design.job, *circumstance));
      wrong(role, Message("compose.contradicts." + std::string(craft::name(*circumstance)) + '-' + is)
                      .with("technique", technique->title)
                      .with("instead", base::join(instead, "\n")));
    }
  }
  std::set<std::string> filled;
  for (const Technique* technique : all) {
    if (technique->role.empty()) {
      m_chosen.push_back(technique);
      continue;
    }
    const auto choice = m_wanted.find(technique->role);
    const bool wanted = choice == m_wanted.end() ? applies(*technique) && !filled.contains(technique->role)
                                                 : choice->second == technique->id;
    if (wanted && filled.insert(technique->role).second) m_chosen.push_back(technique);
  }
}

std::vector<const Thing*> Composer::thingsOf(const When& when) const {
  std::vector<const Thing*> things = m_things.of(when.kind);
  std::erase_if(things, [&](const Thing* thing) { return !isMeant(*thing, when.where); });
  return things;
}

// The first circumstance in which the job is not what the technique is for.
std::optional<craft::Circumstance> Composer::unsuited(const Technique& technique) const {
  for (const auto& [circumstance, values] : technique.when.circumstances) {
    if (std::count(values.begin(), values.end(), circumstanceOf(m_design.job, circumstance)) == 0) return circumstance;
  }
  return std::nullopt;
}

bool Composer::applies(const Technique& technique) const {
  if (unsuited(technique)) return false;
  switch (technique.when.mode) {
    case When::Mode::Always:
    case When::Mode::Needed: return true;
    case When::Mode::Each: return !thingsOf(technique.when).empty();
    case When::Mode::Any: return thingsOf(technique.when).size() >= static_cast<std::size_t>(technique.when.least);
  }
  return false;
}

void Composer::switchOn(const Technique& technique) {
  if (!applies(technique) || !m_on.insert(technique.id).second) return;
  if (technique.when.mode != When::Mode::Each) {
    addSteps(technique, Subject{nullptr, ThingKind::Once});
    return;
  }
  // Parts are added to the things while these are walked; the pointers stay good.
  for (const Thing* thing : thingsOf(technique.when)) addSteps(technique, Subject{thing, technique.when.kind});
}

// Nothing is added after this: any further problem would only follow from it.
void Composer::stop(Message message) {
  if (!m_tooMuch) m_tooMuch = std::move(message);
}

void Composer::takeUp(std::size_t weight) {
  m_weight += weight;
  if (m_weight > kHeaviest || m_things.looks() > kMostLooks) stop(Message("compose.too-much"));
}

void Composer::addSteps(const Technique& technique, const Subject& subject) {
  if (technique.repeat && subject.thing != nullptr) {
    const int parts = partsOf(*technique.repeat, subject);
    if (m_things.count() + static_cast<std::size_t>(parts) > kMostSteps) return stop(tooManySteps());
    m_things.split(subject.thing->id, parts);
  }
  for (std::size_t i = 0; i < technique.steps.size(); ++i) {
    for (const Subject& each : subjectsOf(technique.steps[i], subject)) {
      if (m_tooMuch) return;
      if (m_drafts.size() == kMostSteps) return stop(tooManySteps());
      DraftStep draft = expandStep(technique, i, each, m_things, m_design);
      for (const std::string& fact : draft.step.makes) m_made.insert(fact);
      for (const WorkflowWait& wait : draft.step.waits) m_made.insert(wait.makes);
      takeUp(weightOf(draft));
      m_drafts.push_back(std::move(draft));
    }
  }
}

int Composer::partsOf(const craft::Repeat& repeat, const Subject& subject) const {
  if (repeat.figure.empty()) return repeat.count;
  const auto* figure = m_things.figure(expandFigure(repeat.figure, subject, m_things));
  if (figure == nullptr) return 1;
  return std::clamp(static_cast<int>(std::ceil(figure->value / repeat.each - 1e-9)), 1, 999);
}

std::vector<Subject> Composer::subjectsOf(const craft::Step& step, const Subject& subject) const {
  const bool owned = step.each == ThingKind::Strip || step.each == ThingKind::Corner || step.each == ThingKind::Part;
  std::vector<Subject> subjects;
  if (!owned || subject.thing == nullptr) {
    subjects.push_back(subject);
  } else {
    for (const Thing* thing : m_things.ownedBy(subject.thing->id, step.each)) subjects.push_back({thing, step.each});
  }
  std::erase_if(subjects, [&](const Subject& one) { return one.thing != nullptr && !isMeant(*one.thing, step.where); });
  return subjects;
}

bool Composer::allMade(const std::vector<std::string>& facts) const {
  return std::all_of(facts.begin(), facts.end(), [&](const std::string& fact) { return m_made.contains(fact); });
}

// Techniques used only when needed are switched on where they can satisfy a need that nothing else does. The facts of
// such techniques are about the job or the shop, so their patterns are the facts themselves. A technique that is
// switched on adds its steps at the end and removes nothing, so that one walk is enough.
void Composer::pullInNeeded() {
  const Makers makers = neededMakers();
  for (std::size_t i = 0; i < m_drafts.size() && !m_tooMuch; ++i) {
    for (std::size_t need = 0; need < m_drafts[i].needs.size(); ++need) {
      while (const Technique* maker = neededMaker(makers, m_drafts[i].needs[need])) switchOn(*maker);
    }
  }
}

Composer::Makers Composer::neededMakers() const {
  Makers makers;
  for (const Technique* technique : m_chosen) {
    if (technique->when.mode != When::Mode::Needed || !applies(*technique)) continue;
    std::set<std::string> facts;
    const auto add = [&](const craft::FactPattern& pattern) {
      if (!pattern.every) facts.insert(pattern.text);
    };
    for (const craft::Step& step : technique->steps) {
      for (const craft::FactPattern& pattern : step.makes) add(pattern);
      for (const craft::Wait& wait : step.waits) add(wait.makes);
    }
    for (const std::string& fact : facts) makers[fact].push_back(technique);
  }
  return makers;
}

// Null where one of the alternatives is met already, or none can be by switching on another technique.
const Technique* Composer::neededMaker(const Makers& makers,
                                       const std::vector<std::vector<std::string>>& alternatives) const {
  if (m_tooMuch ||
      std::any_of(alternatives.begin(), alternatives.end(), [&](const auto& facts) { return allMade(facts); })) {
    return nullptr;
  }
  for (const auto& facts : alternatives) {
    for (const std::string& fact : facts) {
      const auto found = m_made.contains(fact) ? makers.end() : makers.find(fact);
      if (found == makers.end()) continue;
      for (const Technique* technique : found->second) {
        if (!m_on.contains(technique->id)) return technique;
      }
    }
  }
  return nullptr;
}

// Each need becomes the first of its alternatives that is made; a need that no step makes is reported with its step.
void Composer::settleNeeds() {
  for (DraftStep& draft : m_drafts) {
    std::set<std::string_view> settled;
    for (const auto& alternatives : draft.needs) {
      const auto met =
          std::find_if(alternatives.begin(), alternatives.end(), [&](const auto& facts) { return allMade(facts); });
      const std::vector<std::string>& facts = met != alternatives.end() ? *met : alternatives.front();
      for (const std::string& fact : facts) {
        if (!m_made.contains(fact)) {
          const Thing* owner = m_things.ownerOfFact(fact);
          m_unmet.push_back({fact, owner == nullptr ? "" : owner->id, draft.step.title, draft.step.techniqueTitle});
        } else if (settled.insert(fact).second) {
          draft.step.needs.push_back(fact);
        }
      }
    }
  }
}

// "<id>.*" becomes every fact made of that thing and of what belongs to it.
void Composer::settleWildcards() {
  const auto settle = [&](std::vector<std::string>& facts) {
    std::vector<std::string> settled;
    for (const std::string& fact : facts) {
      if (!base::endsWith(fact, ".*")) {
        settled.push_back(fact);
        continue;
      }
      const std::string id = fact.substr(0, fact.size() - 2);
      for (const char end : {'#', '.'}) {
        const std::string prefix = id + end;
        for (auto made = m_made.lower_bound(prefix); made != m_made.end() && base::startsWith(*made, prefix); ++made) {
          if (m_tooMuch) return;
          settled.push_back(*made);
          takeUp(made->size() + kHandle);
        }
      }
    }
    facts = std::move(settled);
  };
  for (DraftStep& draft : m_drafts) forEachEnding(draft.step, settle);
}

}  // namespace core::workflow
