#include "core/workflow/composer.h"

#include <algorithm>
#include <cmath>

#include "core/base/json.h"
#include "core/base/text.h"

namespace core::workflow {

using base::Message;
using craft::Technique;
using craft::ThingKind;
using craft::When;

namespace {

bool makes(const Technique& technique, const std::string& fact) {
  return std::any_of(technique.steps.begin(), technique.steps.end(), [&](const craft::Step& step) {
    const auto is = [&](const craft::FactPattern& pattern) { return !pattern.every && pattern.text == fact; };
    return std::any_of(step.makes.begin(), step.makes.end(), is) ||
           std::any_of(step.waits.begin(), step.waits.end(), [&](const craft::Wait& wait) { return is(wait.makes); });
  });
}

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
  settleNeeds();
}

std::vector<DraftStep> Composer::takeSteps() {
  settleWildcards();
  return std::move(m_drafts);
}

// One technique of each role: the job's choice, otherwise the lowest rank; and all without a role.
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

bool Composer::applies(const Technique& technique) const {
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

void Composer::addSteps(const Technique& technique, const Subject& subject) {
  if (technique.repeat && subject.thing != nullptr) {
    m_things.split(subject.thing->id, partsOf(*technique.repeat, subject));
  }
  for (std::size_t i = 0; i < technique.steps.size(); ++i) {
    for (const Subject& each : subjectsOf(technique.steps[i], subject)) {
      DraftStep draft = expandStep(technique, i, each, m_things, m_design);
      for (const std::string& fact : draft.step.makes) m_made.insert(fact);
      for (const WorkflowWait& wait : draft.step.waits) m_made.insert(wait.makes);
      m_drafts.push_back(std::move(draft));
    }
  }
}

int Composer::partsOf(const craft::Repeat& repeat, const Subject& subject) const {
  if (repeat.figure.empty()) return repeat.count;
  const auto* figure = m_design.figures.find(expandFigure(repeat.figure, subject, m_things));
  if (figure == nullptr) return 1;
  return std::clamp(static_cast<int>(std::ceil(figure->value / repeat.each - 1e-9)), 1, 999);
}

std::vector<Subject> Composer::subjectsOf(const craft::Step& step, const Subject& subject) const {
  const bool owned = step.each == ThingKind::Strip || step.each == ThingKind::Corner || step.each == ThingKind::Part;
  if (!owned || subject.thing == nullptr) return {subject};
  std::vector<Subject> subjects;
  for (const Thing* thing : m_things.ownedBy(subject.thing->id, step.each)) subjects.push_back({thing, step.each});
  return subjects;
}

bool Composer::allMade(const std::vector<std::string>& facts) const {
  return std::all_of(facts.begin(), facts.end(), [&](const std::string& fact) { return m_made.contains(fact); });
}

// Techniques that wait to be needed are switched on while some need nobody meets could be met by them. The
// facts of such techniques speak of the job or the shop, so their patterns are the facts themselves.
void Composer::pullInNeeded() {
  for (bool changed = true; changed;) {
    changed = false;
    for (std::size_t i = 0; i < m_drafts.size() && !changed; ++i) {
      for (const auto& alternatives : m_drafts[i].needs) {
        if (std::any_of(alternatives.begin(), alternatives.end(), [&](const auto& facts) { return allMade(facts); })) {
          continue;
        }
        const Technique* maker = neededMaker(alternatives);
        if (maker == nullptr) continue;
        switchOn(*maker);
        changed = true;
        break;
      }
    }
  }
}

const Technique* Composer::neededMaker(const std::vector<std::vector<std::string>>& alternatives) const {
  for (const auto& facts : alternatives) {
    for (const std::string& fact : facts) {
      if (m_made.contains(fact)) continue;
      for (const Technique* technique : m_chosen) {
        if (technique->when.mode == When::Mode::Needed && !m_on.contains(technique->id) && makes(*technique, fact)) {
          return technique;
        }
      }
    }
  }
  return nullptr;
}

// Each need becomes the first of its alternatives that is made; what none makes is told with who needs it.
void Composer::settleNeeds() {
  for (DraftStep& draft : m_drafts) {
    for (const auto& alternatives : draft.needs) {
      const auto met =
          std::find_if(alternatives.begin(), alternatives.end(), [&](const auto& facts) { return allMade(facts); });
      const std::vector<std::string>& facts = met != alternatives.end() ? *met : alternatives.front();
      for (const std::string& fact : facts) {
        if (!m_made.contains(fact)) {
          const Thing* owner = m_things.ownerOfFact(fact);
          m_unmet.push_back({fact, owner == nullptr ? "" : owner->id, draft.step.title, draft.step.techniqueTitle});
        } else if (!std::count(draft.step.needs.begin(), draft.step.needs.end(), fact)) {
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
      for (const std::string& made : m_made) {
        if (base::startsWith(made, id + '.') || base::startsWith(made, id + '#')) settled.push_back(made);
      }
    }
    facts = std::move(settled);
  };
  for (DraftStep& draft : m_drafts) {
    settle(draft.step.ends);
    for (WorkflowFault& fault : draft.step.faults) settle(fault.ends);
    for (WorkflowWait& wait : draft.step.waits) settle(wait.missedEnds);
  }
}

}  // namespace core::workflow
