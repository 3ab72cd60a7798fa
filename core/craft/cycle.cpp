#include "core/craft/cycle.h"

#include <algorithm>
#include <deque>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/base/text.h"
#include "core/craft/pattern.h"

namespace core::craft {

namespace {

// Facts compare equal where they are said of the same thing, or both of the one before it.
struct SaidFact {
  std::string fact;
  bool ofPrevious = false;
  friend auto operator<=>(const SaidFact&, const SaidFact&) = default;
};

struct Facts {
  std::vector<std::set<SaidFact>> needs;
  std::vector<std::set<SaidFact>> makes;
  std::vector<std::set<SaidFact>> ends;
};

Facts factsOf(const Technique& technique) {
  Facts facts;
  for (const Step& step : technique.steps) {
    const auto said = [&](const FactPattern& pattern) {
      return SaidFact{normalised(pattern, step.each, outerKind(technique)),
                      base::startsWith(pattern.text, "previous.")};
    };
    std::set<SaidFact> needs;
    std::set<SaidFact> makes;
    std::set<SaidFact> ends;
    for (const FactPattern& pattern : step.makes) makes.insert(said(pattern));
    for (const Wait& wait : step.waits) makes.insert(said(wait.makes));
    for (const FactPattern& pattern : step.ends) ends.insert(said(pattern));
    for (const Need& need : step.needs) {
      const FactPattern& first = need.alternatives.front();
      // The design decides whether a thing reaches itself.
      if (first.every && first.of == Relation::Reach) continue;
      needs.insert(said(first));
    }
    facts.needs.push_back(std::move(needs));
    facts.makes.push_back(std::move(makes));
    facts.ends.push_back(std::move(ends));
  }
  return facts;
}

bool meet(const std::set<SaidFact>& a, const std::set<SaidFact>& b) {
  return std::any_of(a.begin(), a.end(), [&](const SaidFact& fact) { return b.contains(fact); });
}

using Edges = std::vector<std::vector<std::size_t>>;

// The edges run from an earlier step to a later one.
Edges edgesOf(const Facts& facts) {
  const std::size_t count = facts.needs.size();
  Edges after(count);
  for (std::size_t from = 0; from < count; ++from) {
    for (std::size_t to = 0; to < count; ++to) {
      const bool made = meet(facts.makes[from], facts.needs[to]);
      // A step may end what it needs itself.
      const bool ended = from != to && meet(facts.needs[from], facts.ends[to]);
      if (made || ended) after[from].push_back(to);
    }
  }
  return after;
}

// The shortest way from a step back to itself, without the return; empty where there is none.
std::vector<std::size_t> wayBack(const Edges& after, std::size_t start) {
  std::map<std::size_t, std::size_t> cameFrom;
  std::deque<std::size_t> open = {start};
  while (!open.empty()) {
    const std::size_t step = open.front();
    open.pop_front();
    for (const std::size_t next : after[step]) {
      if (next == start) {
        std::vector<std::size_t> path = {step};
        while (path.back() != start) path.push_back(cameFrom.at(path.back()));
        std::reverse(path.begin(), path.end());
        return path;
      }
      if (cameFrom.emplace(next, step).second) open.push_back(next);
    }
  }
  return {};
}

}  // namespace

void checkCycles(const Technique& technique, base::Problems& problems) {
  const Edges after = edgesOf(factsOf(technique));
  std::set<std::size_t> told;
  for (std::size_t start = 0; start < technique.steps.size(); ++start) {
    if (told.contains(start)) continue;
    const std::vector<std::size_t> path = wayBack(after, start);
    if (path.empty()) continue;
    told.insert(path.begin(), path.end());
    std::vector<std::string> ids;
    for (const std::size_t step : path) ids.push_back(technique.steps[step].id);
    ids.push_back(technique.steps[start].id);
    base::Problem problem;
    problem.pointer = technique.steps[start].pointer;
    problem.message = base::Message("technique.cycle").with("path", base::join(ids, " -> "));
    problems.add(problem);
  }
}

}  // namespace core::craft
