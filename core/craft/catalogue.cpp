#include "core/craft/catalogue.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "core/base/near.h"
#include "core/craft/pattern.h"

namespace core::craft {

void Catalogue::add(std::shared_ptr<const Technique> technique) {
  m_techniques.insert_or_assign(technique->id, std::move(technique));
}

std::shared_ptr<const Technique> Catalogue::share(std::string_view id) const {
  const auto found = m_techniques.find(id);
  return found == m_techniques.end() ? nullptr : found->second;
}

const Technique* Catalogue::find(std::string_view id) const { return share(id).get(); }

std::vector<const Technique*> Catalogue::all() const {
  std::vector<const Technique*> techniques;
  for (const auto& [id, technique] : m_techniques) techniques.push_back(technique.get());
  std::sort(techniques.begin(), techniques.end(),
            [](const Technique* a, const Technique* b) { return std::tie(a->rank, a->id) < std::tie(b->rank, b->id); });
  return techniques;
}

namespace {

// Returns it as a maker would write it: the pattern itself, or the fact of each with its kind.
std::string asWritten(const FactPattern& pattern) {
  return pattern.every ? std::string(name(*pattern.every)) + '.' + pattern.is : pattern.text;
}

std::set<std::string> factsMade(const Catalogue& catalogue) {
  std::set<std::string> made;
  for (const Technique* technique : catalogue.all()) {
    const ThingKind outer = outerKind(*technique);
    for (const Step& step : technique->steps) {
      for (const FactPattern& pattern : step.makes) made.insert(normalised(pattern, step.each, outer));
      for (const Wait& wait : step.waits) made.insert(normalised(wait.makes, step.each, outer));
    }
  }
  return made;
}

// The facts a technique makes, each as it is compared and as a maker writes it.
std::map<std::string, std::string> writtenFactsOf(const Technique& technique) {
  std::map<std::string, std::string> made;
  const ThingKind outer = outerKind(technique);
  for (const Step& step : technique.steps) {
    const auto add = [&](const FactPattern& pattern) {
      made.try_emplace(normalised(pattern, step.each, outer), asWritten(pattern));
    };
    for (const FactPattern& pattern : step.makes) add(pattern);
    for (const Wait& wait : step.waits) add(wait.makes);
  }
  return made;
}

// The roles of the steps that need each fact; "" for those of techniques without a role.
std::map<std::string, std::set<std::string>> rolesNeeding(const Catalogue& catalogue) {
  std::map<std::string, std::set<std::string>> needing;
  for (const Technique* technique : catalogue.all()) {
    const ThingKind outer = outerKind(*technique);
    for (const Step& step : technique->steps) {
      for (const Need& need : step.needs) {
        for (const FactPattern& fact : need.alternatives) {
          needing[normalised(fact, step.each, outer)].insert(technique->role);
        }
      }
    }
  }
  return needing;
}

// Returns the fact of the same kind of thing that may have been meant, without its thing; "" for none.
std::string nearestMade(const std::string& fact, const std::set<std::string>& made) {
  const std::size_t colon = fact.find(':') + 1;
  std::vector<std::string> known;
  for (const std::string& one : made) {
    if (one.compare(0, colon, fact, 0, colon) == 0) known.push_back(one.substr(colon));
  }
  return base::nearest(fact.substr(colon), known);
}

// A set-up that no step uses would be made for nothing in every job.
void checkSetups(const Catalogue& catalogue, std::vector<CatalogueProblem>& problems) {
  std::map<std::string, std::set<const Step*>> needed;
  for (const Technique* technique : catalogue.all()) {
    const ThingKind outer = outerKind(*technique);
    for (const Step& step : technique->steps) {
      for (const Need& need : step.needs) {
        for (const FactPattern& fact : need.alternatives) needed[normalised(fact, step.each, outer)].insert(&step);
      }
    }
  }
  for (const Technique* technique : catalogue.all()) {
    const ThingKind outer = outerKind(*technique);
    for (const Step& step : technique->steps) {
      if (!step.setup) continue;
      const bool used = std::any_of(step.makes.begin(), step.makes.end(), [&](const FactPattern& made) {
        const auto found = needed.find(normalised(made, step.each, outer));
        return found != needed.end() && (found->second.size() > 1 || !found->second.contains(&step));
      });
      if (used) continue;
      base::Problem problem;
      problem.pointer = step.setup->pointer;
      problem.message = base::Message("technique.setup-unused").with("step", step.id).with("tool", step.setup->tool);
      problems.push_back({technique->id, problem});
    }
  }
}

// Of what nobody makes nothing would ever be told.
void checkWants(const Catalogue& catalogue, const std::set<std::string>& made,
                std::vector<CatalogueProblem>& problems) {
  for (const Technique* technique : catalogue.all()) {
    const ThingKind outer = outerKind(*technique);
    for (const Want& want : technique->wants) {
      if (!want.without || made.contains(normalised(*want.without, outer, outer))) continue;
      base::Problem problem;
      problem.pointer = want.without->pointer;
      problem.severity = base::Severity::Notice;
      problem.message = base::Message("technique.without-nothing").with("fact", asWritten(*want.without));
      problems.push_back({technique->id, problem});
    }
  }
}

void checkRoles(const Catalogue& catalogue, std::vector<CatalogueProblem>& problems) {
  for (const Stranger& stranger : strangersOfRoles(catalogue)) {
    base::Problem problem;
    problem.pointer = "/role";
    problem.message = base::Message("technique.stranger-in-role")
                          .with("role", stranger.technique->role)
                          .with("beside", stranger.beside->title)
                          .with("fact", stranger.fact);
    problems.push_back({stranger.technique->id, problem});
  }
}

}  // namespace

std::vector<Stranger> strangersOfRoles(const Catalogue& catalogue) {
  std::map<std::string, std::vector<const Technique*>> roles;
  for (const Technique* technique : catalogue.all()) {
    if (!technique->role.empty()) roles[technique->role].push_back(technique);
  }
  std::erase_if(roles, [](const auto& role) { return role.second.size() < 2; });
  if (roles.empty()) return {};
  const auto needing = rolesNeeding(catalogue);
  std::vector<Stranger> strangers;
  for (const auto& [role, techniques] : roles) {
    // What the rest of the work has of each technique of the role, and which of them make a fact.
    std::vector<std::map<std::string, std::string>> gives;
    std::map<std::string, std::size_t> makers;
    for (const Technique* technique : techniques) {
      auto& facts = gives.emplace_back(writtenFactsOf(*technique));
      for (const auto& [fact, written] : facts) ++makers[fact];
      std::erase_if(facts, [&, &own = role](const auto& fact) {
        const auto found = needing.find(fact.first);
        return found == needing.end() || (found->second.size() == 1 && found->second.contains(own));
      });
    }
    for (std::size_t i = 0; i < techniques.size(); ++i) {
      const auto& own = gives[i];
      if (std::any_of(own.begin(), own.end(), [&](const auto& fact) { return makers.at(fact.first) > 1; })) continue;
      for (std::size_t other = 0; other < techniques.size(); ++other) {
        if (other == i || gives[other].empty()) continue;
        strangers.push_back({techniques[i], techniques[other], gives[other].begin()->second});
        break;
      }
    }
  }
  std::sort(strangers.begin(), strangers.end(), [](const Stranger& a, const Stranger& b) {
    return std::tie(a.technique->rank, a.technique->id) < std::tie(b.technique->rank, b.technique->id);
  });
  return strangers;
}

std::vector<CatalogueProblem> checkCatalogue(const Catalogue& catalogue) {
  const std::set<std::string> made = factsMade(catalogue);
  std::vector<CatalogueProblem> problems;
  for (const Technique* technique : catalogue.all()) {
    const ThingKind outer = outerKind(*technique);
    for (const Step& step : technique->steps) {
      for (const Need& need : step.needs) {
        const bool met = std::any_of(need.alternatives.begin(), need.alternatives.end(), [&](const FactPattern& fact) {
          return made.contains(normalised(fact, step.each, outer));
        });
        if (met) continue;
        const FactPattern& first = need.alternatives.front();
        base::Problem problem;
        problem.pointer = first.pointer;
        // Looking for the fact that was meant takes time; beyond the first hundred nobody mends by it.
        const std::string meant = problems.size() < base::kMostProblems
                                      ? nearestMade(normalised(first, step.each, outer), made)
                                      : std::string();
        problem.message =
            meant.empty() ? base::Message("technique.nobody-makes").with("fact", asWritten(first)).with("step", step.id)
                          : base::Message("technique.nobody-makes-near")
                                .with("fact", asWritten(first))
                                .with("step", step.id)
                                .with("near", meant);
        problems.push_back({technique->id, problem});
      }
    }
  }
  checkSetups(catalogue, problems);
  checkRoles(catalogue, problems);
  checkWants(catalogue, made, problems);
  return problems;
}

}  // namespace core::craft
