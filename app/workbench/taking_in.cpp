#include "app/workbench/taking_in.h"

#include <set>

#include "app/convert/content_hash.h"
#include "app/words/words.h"
#include "core/base/json.h"
#include "core/design/design.h"
#include "core/workflow/compose.h"
#include "core/workflow/workflow_json.h"

namespace app::workbench {
namespace {

using core::base::Message;
using core::base::Value;
using core::workflow::Workflow;

std::set<std::string> allTechniques(const Library& library) {
  std::set<std::string> ids;
  for (const auto& [id, text] : library.texts) ids.insert(id);
  return ids;
}

std::set<std::string> techniquesOf(const Workflow& workflow) {
  std::set<std::string> ids;
  for (const core::workflow::WorkflowStep& step : workflow.steps) ids.insert(step.technique);
  return ids;
}

// "26-041 / 2" is another of "26-041", and so is what is made of it.
std::string withoutNumber(const std::string& reference) {
  const std::size_t stroke = reference.rfind(" / ");
  if (stroke == std::string::npos || stroke + 3 == reference.size()) return reference;
  const bool number = reference.find_first_not_of("0123456789", stroke + 3) == std::string::npos;
  return number ? reference.substr(0, stroke) : reference;
}

// The job will be composed again from the kept texts alone, and must then be the same job.
bool composesTheSame(const core::design::Design& design, const Workflow& workflow, const Library& library,
                     const std::set<std::string>& kept) {
  core::craft::Catalogue catalogue;
  for (const std::string& id : kept) {
    if (auto technique = library.catalogue.share(id)) catalogue.add(std::move(technique));
  }
  const auto again = core::workflow::compose(design, catalogue, words::thingWords());
  return again && core::base::writeJson(core::workflow::stepsJson(again.value()), 0) ==
                      core::base::writeJson(core::workflow::stepsJson(workflow), 0);
}

}  // namespace

OnceMore onceMore(const Value& document, const std::set<std::string>& references) {
  const auto textAt = [&](const char* key) {
    const Value* value = document.find(key);
    return value != nullptr && value->kind() == Value::Kind::Text ? value->asText() : std::string();
  };
  const std::string stem = withoutNumber(textAt("reference"));
  std::string reference;
  for (int number = 2; reference.empty() || references.contains(reference); ++number) {
    reference = (stem.empty() ? "" : stem + " / ") + std::to_string(number);
  }
  OnceMore again;
  again.notes.push_back(Message("job.numbered").with("reference", reference));
  if (const std::string due = textAt("due"); !due.empty()) {
    again.notes.push_back(Message("job.due-left-out").with("due", due));
  }
  Value copy = Value::object();
  for (const auto& [key, member] : document.members()) {
    if (key != "due") copy.set(key, key == "reference" ? Value::text(reference) : member);
  }
  if (stem.empty()) copy.set("reference", Value::text(reference));
  again.text = core::base::writeJson(copy, 2) + "\n";
  return again;
}

ReadyToTakeIn readyToTakeIn(const std::string& text, const std::string& hash, const Library& library) {
  ReadyToTakeIn ready;
  const core::design::ReadDesign read = core::design::readDesign(text);
  ready.problems = read.problems.sorted();
  if (!read.design) return ready;
  const auto workflow = core::workflow::compose(*read.design, library.catalogue, words::thingWords());
  if (!workflow) {
    for (const auto& told : workflow.error()) ready.refusals.push_back(told.problem.message);
    return ready;
  }
  std::set<std::string> kept = techniquesOf(workflow.value());
  if (!composesTheSame(*read.design, workflow.value(), library, kept)) kept = allTechniques(library);

  core::intents::TakeIn intent;
  intent.jobHash = hash;
  intent.title = read.design->job.title;
  intent.reference = read.design->job.reference;
  ready.texts.push_back({hash, "job", intent.title, text});
  for (const std::string& id : kept) {
    const std::string& body = library.texts.at(id);
    const std::string techniqueHash = convert::contentHash(body);
    intent.techniques.push_back({id, techniqueHash});
    ready.texts.push_back({techniqueHash, "technique", id, body});
  }
  ready.intent = std::move(intent);
  return ready;
}

}  // namespace app::workbench
