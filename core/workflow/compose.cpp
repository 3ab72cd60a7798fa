#include "core/workflow/compose.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/base/text.h"
#include "core/workflow/expand.h"
#include "core/workflow/order.h"

namespace core::workflow {
namespace {

using base::Message;
using craft::Technique;
using craft::ThingKind;
using craft::When;

class Composer {
 public:
  Composer(const design::Design& design, const craft::Catalogue& catalogue, const ThingWords& words)
      : m_design(design), m_catalogue(catalogue), m_things(design, words) {}

  base::Result<Workflow, ComposeProblems> run() {
    chooseTechniques();
    for (const Technique* technique : m_chosen) {
      if (technique->when.mode != When::Mode::Needed) switchOn(*technique);
    }
    pullInNeeded();
    settleNeeds();
    if (!m_problems.empty()) return std::move(m_problems);
    settleWildcards();
    auto ordered = inOrder(std::move(m_drafts));
    if (!ordered) return ComposeProblems{ordered.error()};
    return std::move(ordered).value();
  }

 private:
  // One technique of each role: the job's choice, otherwise the lowest rank; and all without a role.
  void chooseTechniques() {
    const std::vector<const Technique*> all = m_catalogue.all();
    std::set<std::string> roles;
    for (const Technique* technique : all) roles.insert(technique->role);
    for (const auto& [role, id] : m_design.job.techniques) {
      const Technique* technique = m_catalogue.find(id);
      if (role.empty() || !roles.contains(role)) {
        m_problems.push_back(Message("compose.no-such-role").with("role", role));
      } else if (technique == nullptr) {
        m_problems.push_back(Message("compose.no-such-technique").with("role", role).with("technique", id));
      } else if (technique->role != role) {
        m_problems.push_back(Message("compose.wrong-role").with("role", role).with("technique", id));
      }
    }
    std::set<std::string> filled;
    for (const Technique* technique : all) {
      if (technique->role.empty()) {
        m_chosen.push_back(technique);
        continue;
      }
      const auto choice = m_design.job.techniques.find(technique->role);
      const bool wanted = choice == m_design.job.techniques.end()
                              ? applies(*technique) && !filled.contains(technique->role)
                              : choice->second == technique->id;
      if (wanted && filled.insert(technique->role).second) m_chosen.push_back(technique);
    }
  }

  std::vector<const Thing*> thingsOf(const When& when) const {
    std::vector<const Thing*> things = m_things.of(when.kind);
    std::erase_if(things, [&](const Thing* thing) { return !isMeant(*thing, when.where); });
    return things;
  }

  bool applies(const Technique& technique) const {
    switch (technique.when.mode) {
      case When::Mode::Always:
      case When::Mode::Needed: return true;
      case When::Mode::Each: return !thingsOf(technique.when).empty();
      case When::Mode::Any: return thingsOf(technique.when).size() >= static_cast<std::size_t>(technique.when.least);
    }
    return false;
  }

  void switchOn(const Technique& technique) {
    if (!applies(technique) || !m_on.insert(technique.id).second) return;
    if (technique.when.mode != When::Mode::Each) {
      addSteps(technique, Subject{nullptr, ThingKind::Once});
      return;
    }
    // Parts are added to the things while these are walked; the pointers stay good.
    for (const Thing* thing : thingsOf(technique.when)) addSteps(technique, Subject{thing, technique.when.kind});
  }

  void addSteps(const Technique& technique, const Subject& subject) {
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

  int partsOf(const craft::Repeat& repeat, const Subject& subject) const {
    if (repeat.figure.empty()) return repeat.count;
    const auto* figure = m_design.figures.find(expandFigure(repeat.figure, subject, m_things));
    if (figure == nullptr) return 1;
    return std::clamp(static_cast<int>(std::ceil(figure->value / repeat.each - 1e-9)), 1, 999);
  }

  std::vector<Subject> subjectsOf(const craft::Step& step, const Subject& subject) const {
    const bool owned = step.each == ThingKind::Strip || step.each == ThingKind::Corner || step.each == ThingKind::Part;
    if (!owned || subject.thing == nullptr) return {subject};
    std::vector<Subject> subjects;
    for (const Thing* thing : m_things.ownedBy(subject.thing->id, step.each)) subjects.push_back({thing, step.each});
    return subjects;
  }

  bool allMade(const std::vector<std::string>& facts) const {
    return std::all_of(facts.begin(), facts.end(), [&](const std::string& fact) { return m_made.contains(fact); });
  }

  // Techniques that wait to be needed are switched on while some need nobody meets could be met by them. The
  // facts of such techniques speak of the job or the shop, so their patterns are the facts themselves.
  void pullInNeeded() {
    for (bool changed = true; changed;) {
      changed = false;
      for (std::size_t i = 0; i < m_drafts.size() && !changed; ++i) {
        for (const auto& alternatives : m_drafts[i].needs) {
          if (std::any_of(alternatives.begin(), alternatives.end(),
                          [&](const auto& facts) { return allMade(facts); })) {
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

  const Technique* neededMaker(const std::vector<std::vector<std::string>>& alternatives) const {
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

  static bool makes(const Technique& technique, const std::string& fact) {
    return std::any_of(technique.steps.begin(), technique.steps.end(), [&](const craft::Step& step) {
      const auto is = [&](const craft::FactPattern& pattern) { return !pattern.every && pattern.text == fact; };
      return std::any_of(step.makes.begin(), step.makes.end(), is) ||
             std::any_of(step.waits.begin(), step.waits.end(), [&](const craft::Wait& wait) { return is(wait.makes); });
    });
  }

  // Each need becomes the first of its alternatives that is made; what none makes is told with who needs it.
  void settleNeeds() {
    for (DraftStep& draft : m_drafts) {
      for (const auto& alternatives : draft.needs) {
        const auto met =
            std::find_if(alternatives.begin(), alternatives.end(), [&](const auto& facts) { return allMade(facts); });
        const std::vector<std::string>& facts = met != alternatives.end() ? *met : alternatives.front();
        for (const std::string& fact : facts) {
          if (!m_made.contains(fact)) {
            m_problems.push_back(Message("compose.nobody-makes").with("fact", fact).with("step", draft.step.id));
          } else if (!std::count(draft.step.needs.begin(), draft.step.needs.end(), fact)) {
            draft.step.needs.push_back(fact);
          }
        }
      }
    }
  }

  // "<id>.*" becomes every fact made of that thing and of what belongs to it.
  void settleWildcards() {
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
      for (WorkflowFault& fault : draft.step.faults) {
        settle(fault.ends);
        for (WorkflowFaultWay& way : fault.ways) settle(way.ends);
      }
      for (WorkflowWait& wait : draft.step.waits) settle(wait.missedEnds);
    }
  }

  const design::Design& m_design;
  const craft::Catalogue& m_catalogue;
  Things m_things;
  std::vector<const Technique*> m_chosen;
  std::set<std::string> m_on;
  std::set<std::string> m_made;
  std::vector<DraftStep> m_drafts;
  ComposeProblems m_problems;
};

}  // namespace

base::Result<Workflow, ComposeProblems> compose(const design::Design& design, const craft::Catalogue& catalogue,
                                                const ThingWords& words) {
  return Composer(design, catalogue, words).run();
}

}  // namespace core::workflow
