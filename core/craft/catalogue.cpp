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

}  // namespace

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
  checkWants(catalogue, made, problems);
  return problems;
}

}  // namespace core::craft
