#pragma once
// One attempt at a composition: which techniques a design switches on, their steps filled in, and which needs nothing
// satisfies. Only this folder uses it: other code calls compose() for a workflow.
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/base/problem.h"
#include "core/craft/catalogue.h"
#include "core/design/design.h"
#include "core/workflow/expand.h"
#include "core/workflow/things.h"

namespace core::workflow {

// A choice that replaces the job's own, to find out whether the job could then be worked.
struct Supposition {
  Supposed thing;
  std::string role;       // "" for none
  std::string technique;  // the technique that fills it
};

// A need of a step that nothing satisfies.
struct Unmet {
  std::string fact;
  std::string owner;      // the thing it is a fact of, or that thing's owner; "" for the job or the shop
  std::string step;       // its title
  std::string technique;  // the id of its technique
};

class Composer {
 public:
  Composer(const design::Design& design, const craft::Catalogue& catalogue, const ThingWords& words,
           const Supposition& supposition = {});

  // Gathers the steps; everything below needs it. Call once.
  void gather();

  const Things& things() const { return m_things; }
  // Returns the problems of the roles the job names, each at its place in the job file.
  const std::vector<base::Problem>& roleProblems() const { return m_roleProblems; }
  // Returns the techniques that fill the job's roles or have none, whether or not the job wants them.
  const std::vector<const craft::Technique*>& chosen() const { return m_chosen; }
  const std::vector<Unmet>& unmet() const { return m_unmet; }
  // Returns compose.too-many-steps or compose.too-much, where gathering or settling was stopped for it; the other
  // results are then incomplete.
  const std::optional<base::Message>& tooMuch() const { return m_tooMuch; }
  // Returns the steps, each need settled. Requires that nothing is unmet. Call tooMuch() after it again.
  std::vector<DraftStep> takeSteps();

 private:
  void chooseTechniques();
  std::vector<const Thing*> thingsOf(const craft::When& when) const;
  std::optional<craft::Circumstance> unsuited(const craft::Technique& technique) const;
  bool applies(const craft::Technique& technique) const;
  void switchOn(const craft::Technique& technique);
  void addSteps(const craft::Technique& technique, const Subject& subject);
  int partsOf(const craft::Repeat& repeat, const Subject& subject) const;
  std::vector<Subject> subjectsOf(const craft::Step& step, const Subject& subject) const;
  bool allMade(const std::vector<std::string>& facts) const;
  void pullInNeeded();
  // The techniques that make each fact and are used only when needed, in the order of choice.
  using Makers = std::map<std::string, std::vector<const craft::Technique*>>;
  Makers neededMakers() const;
  const craft::Technique* neededMaker(const Makers& makers,
                                      const std::vector<std::vector<std::string>>& alternatives) const;
  void stop(base::Message message);
  void takeUp(std::size_t weight);
  void settleNeeds();
  void settleWildcards();

  const design::Design& m_design;
  const craft::Catalogue& m_catalogue;
  Things m_things;
  std::map<std::string, std::string> m_wanted;  // the job's choices by role
  std::vector<const craft::Technique*> m_chosen;
  std::set<std::string> m_on;
  std::set<std::string> m_made;
  std::vector<DraftStep> m_drafts;
  std::vector<base::Problem> m_roleProblems;
  std::vector<Unmet> m_unmet;
  std::size_t m_weight = 0;
  std::optional<base::Message> m_tooMuch;
};

}  // namespace core::workflow
