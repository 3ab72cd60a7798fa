#include "core/workflow/compose.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/base/json.h"
#include "core/base/problem.h"
#include "core/base/text.h"
#include "core/craft/pattern.h"
#include "core/workflow/composer.h"
#include "core/workflow/order.h"
#include "core/workflow/pieces.h"

namespace core::workflow {
namespace {

using base::Message;
using craft::Technique;

// Compositions tried to find what could be chosen instead; a job that needs more has said enough.
constexpr int kMostTrials = 48;

ComposeProblems single(Message message) {
  ComposeProblems problems(1);
  problems.front().problem.message = std::move(message);
  return problems;
}

// Returns as many problems as are reported for one input, and the number of the others.
ComposeProblems told(ComposeProblems problems) {
  if (const std::size_t found = problems.size(); found > base::kMostProblems) {
    problems.resize(base::kMostProblems);
    problems.push_back(single(base::moreProblems(found - base::kMostProblems)).front());
  }
  return problems;
}

// Tells of what is unmet, and by composing again what could be chosen instead.
class Telling {
 public:
  Telling(const design::Design& design, const craft::Catalogue& catalogue, const ThingWords& words,
          const Composer& composer)
      : m_design(design), m_catalogue(catalogue), m_words(words), m_composer(composer) {}

  ComposeProblems all() {
    std::set<std::string> told;
    for (const Unmet& unmet : m_composer.unmet()) {
      if (told.insert(unmet.owner.empty() ? unmet.fact : unmet.owner).second) tell(unmet);
    }
    return std::move(m_problems);
  }

 private:
  void tell(const Unmet& unmet) {
    const Thing* thing = m_composer.things().find(unmet.owner);
    if (thing != nullptr && byChoice(*thing)) return;
    if (byRole(unmet, thing)) return;
    add(thing == nullptr ? "" : thing->pointer, Message("compose.nobody-makes")
                                                    .with("step", unmet.step)
                                                    .with("technique", unmet.technique)
                                                    .with("name", nameOf(thing)));
  }

  static std::string nameOf(const Thing* thing) { return thing == nullptr ? "" : thing->words.at("name"); }

  void add(const std::string& pointer, Message message, std::vector<std::string> instead = {}) {
    ComposeProblem problem;
    problem.problem.pointer = pointer;
    problem.problem.message = std::move(message);
    problem.instead = std::move(instead);
    m_problems.push_back(std::move(problem));
  }

  // Another value of one property would do: of the first such property.
  bool byChoice(const Thing& thing) {
    for (const ThingChoice& choice : choicesOf(thing.kind)) {
      const std::vector<std::string>& instead = valuesInstead(thing, choice);
      if (instead.empty()) continue;
      Message message = Message("compose.no-way." + std::string(craft::name(thing.kind)));
      for (const auto& [property, value] : thing.properties) message.arguments.emplace_back(property, value);
      add(thing.pointer + '/' + choice.property,
          std::move(message)
              .with("name", nameOf(&thing))
              .with("property", choice.property)
              .with("instead", base::join(instead, "\n")),
          instead);
      return true;
    }
    return false;
  }

  // Things alike in all that techniques select by have the same answer.
  const std::vector<std::string>& valuesInstead(const Thing& thing, const ThingChoice& choice) {
    std::string alike = std::string(craft::name(thing.kind)) + '\n' + choice.property;
    for (const auto& [property, value] : thing.properties) {
      if (property != "id") alike += '\n' + property + '=' + value;
    }
    const auto [known, fresh] = m_known.try_emplace(alike);
    if (!fresh) return known->second;
    for (const std::string& value : choice.values) {
      const auto now = thing.properties.find(choice.property);
      if (now != thing.properties.end() && now->second == value) continue;
      Supposition supposition;
      supposition.thing = {thing.id, choice.property, value};
      if (helps(supposition, thing.id, "")) known->second.push_back(value);
    }
    return known->second;
  }

  // Another technique of a role the job names would do.
  bool byRole(const Unmet& unmet, const Thing* thing) {
    for (const auto& [role, id] : m_design.job.techniques) {
      std::vector<std::string> instead;
      std::vector<std::string> titles;
      for (const Technique* technique : m_catalogue.all()) {
        if (technique->role != role || technique->id == id) continue;
        Supposition supposition;
        supposition.role = role;
        supposition.technique = technique->id;
        if (!helps(supposition, unmet.owner, unmet.fact)) continue;
        instead.push_back(technique->id);
        titles.push_back(technique->title);
      }
      if (instead.empty()) continue;
      const Technique* named = m_catalogue.find(id);
      add(base::pointerTo("/techniques", role),
          Message("compose.no-way-by")
              .with("technique", named == nullptr ? id : named->title)
              .with("name", nameOf(thing))
              .with("instead", base::join(titles, "\n")),
          instead);
      return true;
    }
    return false;
  }

  // Returns whether the supposition leaves no need of that thing, or of the job's fact, unmet, and adds no other.
  bool helps(const Supposition& supposition, const std::string& owner, const std::string& fact) {
    if (m_trials == kMostTrials) return false;
    ++m_trials;
    Composer other(m_design, m_catalogue, m_words, supposition);
    other.gather();
    const auto still = [&](const Unmet& unmet) { return owner.empty() ? unmet.fact == fact : unmet.owner == owner; };
    return !other.tooMuch() && other.roleProblems().empty() && other.unmet().size() < m_composer.unmet().size() &&
           std::none_of(other.unmet().begin(), other.unmet().end(), still);
  }

  const design::Design& m_design;
  const craft::Catalogue& m_catalogue;
  const ThingWords& m_words;
  const Composer& m_composer;
  ComposeProblems m_problems;
  std::map<std::string, std::vector<std::string>> m_known;
  int m_trials = 0;
};

// A technique that fills a role without doing what the role is for: whoever needs it done would go without, and where
// the need has an alternative nobody would hear of it.
ComposeProblems rolesLeftUndone(const Composer& composer, const craft::Catalogue& catalogue) {
  ComposeProblems problems;
  for (const craft::Stranger& stranger : craft::strangersOfRoles(catalogue)) {
    const auto& chosen = composer.chosen();
    if (std::find(chosen.begin(), chosen.end(), stranger.technique) == chosen.end()) continue;
    ComposeProblem problem;
    problem.problem.pointer = base::pointerTo("/techniques", stranger.technique->role);
    problem.problem.message = Message("compose.stranger-in-role")
                                  .with("technique", stranger.technique->id)
                                  .with("role", stranger.technique->role)
                                  .with("beside", stranger.beside->title)
                                  .with("fact", stranger.fact);
    problems.push_back(std::move(problem));
  }
  return problems;
}

}  // namespace

base::Result<Workflow, ComposeProblems> compose(const design::Design& design, const craft::Catalogue& catalogue,
                                                const ThingWords& words) {
  Composer composer(design, catalogue, words);
  composer.gather();
  if (composer.tooMuch()) return single(*composer.tooMuch());
  if (!composer.roleProblems().empty()) {
    ComposeProblems problems;
    for (const base::Problem& problem : composer.roleProblems()) problems.push_back({problem, {}});
    return told(std::move(problems));
  }
  if (!composer.unmet().empty()) return told(Telling(design, catalogue, words, composer).all());
  if (ComposeProblems undone = rolesLeftUndone(composer, catalogue); !undone.empty()) return told(std::move(undone));
  std::vector<DraftStep> steps = composer.takeSteps();
  if (composer.tooMuch()) return single(*composer.tooMuch());
  const std::size_t all = steps.size() * static_cast<std::size_t>(design.job.count);
  if (all > kMostStepsOfPieces) {
    ComposeProblem problem;
    problem.problem.pointer = "/count";
    problem.problem.message = Message("compose.too-many-pieces")
                                  .with("steps", static_cast<std::int64_t>(steps.size()))
                                  .with("count", std::int64_t{design.job.count})
                                  .with("most", static_cast<std::int64_t>(kMostStepsOfPieces))
                                  .with("pieces", static_cast<std::int64_t>(kMostStepsOfPieces / steps.size()));
    return ComposeProblems{problem};
  }
  steps = repeatedForPieces(std::move(steps), design.job.count, words);
  auto ordered = inOrder(std::move(steps));
  if (ordered) return std::move(ordered).value();
  return single(ordered.error());
}

}  // namespace core::workflow
