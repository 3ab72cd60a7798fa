#pragma once
// All techniques at hand, by id, and what can be checked only across them.
#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/base/problem.h"
#include "core/craft/technique.h"

namespace core::craft {

class Catalogue {
 public:
  // Adds a technique; one of the same id is replaced (a maker's own overrides the trade's). Never null.
  void add(std::shared_ptr<const Technique> technique);
  void add(Technique technique) { add(std::make_shared<const Technique>(std::move(technique))); }
  const Technique* find(std::string_view id) const;
  // Returns the technique of that id for callers that store it; null where there is none.
  std::shared_ptr<const Technique> share(std::string_view id) const;
  // Returns all in order of (rank, id), whatever order they were added in.
  std::vector<const Technique*> all() const;

 private:
  std::map<std::string, std::shared_ptr<const Technique>, std::less<>> m_techniques;
};

// A technique that shares its role's name with others and does nothing of what they do for the rest of the work.
struct Stranger {
  const Technique* technique = nullptr;
  const Technique* beside = nullptr;  // the first of the others that does
  std::string fact;                   // that this one makes, and others need, as a maker writes it
};

// Returns, in order of (rank, id), the techniques that make none of the facts which others of their role make and which
// steps outside the role need. Where such a technique fills the role, what needs those facts would go without.
std::vector<Stranger> strangersOfRoles(const Catalogue& catalogue);

// A problem and the technique it was found in.
struct CatalogueProblem {
  std::string technique;
  base::Problem problem;
};

// Facts that are needed but that no technique makes, at the pointer of the need. A need with alternatives is
// met where one of them is. Set-ups that no step of any technique uses are found as well, at their
// pointer, and strangers of a role.
std::vector<CatalogueProblem> checkCatalogue(const Catalogue& catalogue);

}  // namespace core::craft
