#include "app/designing/techniques.h"

#include <algorithm>
#include <map>
#include <set>

#include "app/convert/text.h"
#include "app/designing/builder.h"
#include "app/designing/tr.h"
#include "core/workflow/rehearse.h"

namespace app::designing {

using convert::toQt;
using core::base::Value;
using core::craft::Technique;

namespace {

// Roles are named by the technique files; hyphens part their words.
QString roleCalled(const std::string& role) {
  QString name = toQt(role);
  return name.replace(QLatin1Char('-'), QLatin1Char(' '));
}

std::string pointerOf(const std::string& role) { return core::base::pointerTo("/techniques", role); }

}  // namespace

Section techniqueSection(const Value& document, const core::craft::Catalogue& catalogue,
                         const core::workflow::Workflow* composed) {
  std::map<std::string, std::vector<const Technique*>> byRole;
  for (const Technique* technique : catalogue.all()) {
    if (!technique->role.empty()) byRole[technique->role].push_back(technique);
  }
  // What fills each role now, and what the design names itself.
  std::map<std::string, std::string> filled;
  if (composed != nullptr) {
    for (const auto& step : composed->steps) {
      const Technique* technique = catalogue.find(step.technique);
      if (technique != nullptr && !technique->role.empty()) filled[technique->role] = technique->id;
    }
  }
  std::set<std::string> named;
  if (const Value* chosen = document.find("techniques"); chosen != nullptr && chosen->kind() == Value::Kind::Object) {
    for (const auto& [role, id] : chosen->members()) {
      named.insert(role);
      if (id.kind() == Value::Kind::Text) filled[role] = id.asText();
    }
  }
  Section section;
  section.name = tr("Techniques");
  for (const auto& [role, id] : filled) {
    const auto& alternatives = byRole[role];
    if (alternatives.size() < 2 && !named.contains(role)) continue;
    Field field;
    field.kind = Field::Kind::Choice;
    field.label = roleCalled(role);
    field.pointer = pointerOf(role);
    field.entered = named.contains(role);
    const Technique* now = catalogue.find(id);
    field.value = now == nullptr ? toQt(id) : toQt(now->title);
    for (const Technique* one : alternatives) {
      field.options.push_back(
          {toQt(one->title), {}, putAt(document, field.pointer, Value::text(one->id)), one->id == id});
    }
    // A role that nothing plays or a technique that is not at hand can only be taken out again.
    if (field.options.empty())
      field.options.push_back({tr("as the trade does"), {}, patchOf({removeFrom(field.pointer)}), false});
    section.fields.push_back(std::move(field));
  }
  section.summary = section.fields.empty() ? tr("no choice") : tr("%1 choices").arg(section.fields.size());
  return section;
}

}  // namespace app::designing
