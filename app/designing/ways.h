#pragma once
// Finds the answers that can be worked. Composition alone decides it, for the document as it would be; nothing here
// depends on a particular technique or material.
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "app/designing/fields.h"
#include "core/craft/catalogue.h"
#include "core/workflow/compose.h"

namespace app::designing {

// An answer in the form in which it can be chosen.
struct Way {
  core::base::Value patch;  // with every other choice it needs to be worked
  QString with;             // those other choices in a maker's words; "" for none
  QString barred;           // why it cannot be chosen; "" where it can
  // Its result. Nothing where it is barred, or where something else has yet to be put right: then `wanting` names that,
  // unless the document is incomplete.
  struct Comes {
    core::design::Design design;
    core::workflow::Workflow workflow;
  };
  std::optional<Comes> comes;
  QString wanting;
};

// One change that settles what is wrong.
struct Mend {
  QString label;
  core::base::Value patch;
  QString says = {};  // what changes, where the label does not say it
};

class Ways {
 public:
  // Document and catalogue have to outlive it.
  Ways(const core::base::Value& document, const core::craft::Catalogue& catalogue,
       core::units::UnitSystem units = core::units::UnitSystem::Millimetres)
      : m_document(document), m_catalogue(catalogue), m_units(units) {}

  // Evaluates a choice, which is barred where it adds a reason why the piece could not be worked. Where another value
  // has to change for that, the first that will do is added to the patch. Invalid measures are reported at their fields
  // and bar nothing: they can be put right there.
  Way of(const core::base::Value& patch);
  // An act: where it has several ways, the first that brings nothing wrong with it at all, its measures too, as if the
  // size of the work were known.
  Way ofAct(const Field& act);
  // Returns the least change of one of these fields, the likeliest first, that settles the problem said in these words
  // and brings no other. Lengths are sought on the steps of a rule.
  std::optional<Mend> mend(const QString& said, const std::vector<const Field*>& fields);

 private:
  // The reasons against a document, as text, with those of `measures` on request. `against` holds composition's
  // problems.
  struct Standing {
    std::set<std::string> reasons;
    std::map<QString, std::string> said;  // the reasons by their words
    core::workflow::ComposeProblems against;
    core::base::Problems problems;
    std::optional<Way::Comes> comes;
  };
  Standing standing(const core::base::Value& document, bool measures) const;
  const Standing& before(bool measures);
  Way taken(const core::base::Value& document, const core::base::Value& patch, bool measures);
  std::optional<Mend> shorterOrLonger(const Field& field,
                                      const std::function<bool(const core::base::Value&)>& settles) const;

  const core::base::Value& m_document;
  const core::craft::Catalogue& m_catalogue;
  core::units::UnitSystem m_units;
  std::optional<Standing> m_before;
  std::optional<Standing> m_beforeMeasured;
};

// Returns the document with an invented size where none is entered yet: the relative places of things do not depend on
// it.
core::base::Value sized(const core::base::Value& document);

// Returns why a design cannot be worked, as a sentence.
QString reasonText(const core::workflow::ComposeProblem& problem, core::units::UnitSystem units);

}  // namespace app::designing
