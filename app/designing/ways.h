#pragma once
// Which answers can be worked. Composition alone says so, of the document as it would be; nothing here knows a
// technique or a material.
#include <optional>
#include <set>
#include <string>

#include "app/designing/fields.h"
#include "core/craft/catalogue.h"
#include "core/workflow/compose.h"

namespace app::designing {

// An answer as it can be taken.
struct Way {
  core::base::Value patch;  // with what else has to be chosen for it to be worked
  QString with;             // what that is, as a maker calls it; "" for nothing
  QString barred;           // why it cannot be taken; "" where it can
  // What it comes to. Nothing where it is barred, or where something else has yet to be put right: then `wanting` says
  // what, unless the document is not whole.
  struct Comes {
    core::design::Design design;
    core::workflow::Workflow workflow;
  };
  std::optional<Comes> comes;
  QString wanting;
};

class Ways {
 public:
  // Document and catalogue have to outlive it.
  Ways(const core::base::Value& document, const core::craft::Catalogue& catalogue,
       core::units::UnitSystem units = core::units::UnitSystem::Millimetres)
      : m_document(document), m_catalogue(catalogue), m_units(units) {}

  // A choice: barred where it brings a reason why the piece could not be worked. Where another value than the one
  // chosen has to be another for that, the first that will do goes with it. Measures that do not hold are told at their
  // fields and bar nothing: they can be put right there.
  Way of(const core::base::Value& patch);
  // An act: where it has several ways, the first that brings nothing wrong with it at all, its measures too, as if the
  // size of the work were known.
  Way ofAct(const Field& act);

 private:
  // What stands against a document, as text; `measures` too. `against`: what composition says of it.
  struct Standing {
    std::set<std::string> reasons;
    core::workflow::ComposeProblems against;
    core::base::Problems problems;
    std::optional<Way::Comes> comes;
  };
  Standing standing(const core::base::Value& document, bool measures) const;
  const Standing& before(bool measures);
  Way taken(const core::base::Value& document, const core::base::Value& patch, bool measures);

  const core::base::Value& m_document;
  const core::craft::Catalogue& m_catalogue;
  core::units::UnitSystem m_units;
  std::optional<Standing> m_before;
  std::optional<Standing> m_beforeMeasured;
};

// Why a design cannot be worked, as a sentence.
QString reasonText(const core::workflow::ComposeProblem& problem, core::units::UnitSystem units);

}  // namespace app::designing
