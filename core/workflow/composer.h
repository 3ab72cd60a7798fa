#pragma once
// One attempt at a composition: which techniques a design switches on, their steps filled in, and which needs nobody
// meets. Only this room uses it: whoever wants a workflow calls compose().
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

// What is taken as another than the job says, to find out whether it could then be worked.
struct Supposition {
  Supposed thing;
  std::string role;       // "" for none
  std::string technique;  // that fills it
};

// A need of a step that nobody meets.
struct Unmet {
  std::string fact;
  std::string owner;      // the thing it is a fact of, or what that belongs to; "" for the job or the shop
  std::string step;       // its title
  std::string technique;  // its technique's
};

class Composer {
 public:
  Composer(const design::Design& design, const craft::Catalogue& catalogue, const ThingWords& words,
           const Supposition& supposition = {});

  // Gathers the steps; everything below comes of it. Call once.
  void gather();

  const Things& things() const { return m_things; }
  // Of the roles the job names: each at its place in the job file.
  const std::vector<base::Problem>& roleProblems() const { return m_roleProblems; }
  const std::vector<Unmet>& unmet() const { return m_unmet; }
  // compose.too-many-steps or compose.too-much, where the gathering or the settling was given up for it; what else is
  // known is then incomplete.
  const std::optional<base::Message>& tooMuch() const { return m_tooMuch; }
  // The steps, each need settled. Requires that nothing is unmet. Ask tooMuch() after it again.
  std::vector<DraftStep> takeSteps();

 private:
  void chooseTechniques();
  std::vector<const Thing*> thingsOf(const craft::When& when) const;
  bool applies(const craft::Technique& technique) const;
  void switchOn(const craft::Technique& technique);
  void addSteps(const craft::Technique& technique, const Subject& subject);
  int partsOf(const craft::Repeat& repeat, const Subject& subject) const;
  std::vector<Subject> subjectsOf(const craft::Step& step, const Subject& subject) const;
  bool allMade(const std::vector<std::string>& facts) const;
  void pullInNeeded();
  // Of each fact the techniques that wait to be needed and make it, in the order of choice.
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
