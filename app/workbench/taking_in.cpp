#include "app/workbench/taking_in.h"

#include <set>

#include "app/convert/content_hash.h"
#include "core/base/json.h"
#include "core/design/design.h"
#include "core/workflow/compose.h"
#include "core/workflow/workflow_json.h"

namespace app::workbench {
namespace {

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

// The job will be composed again from the kept texts alone, and must then be the same job.
bool composesTheSame(const core::design::Design& design, const Workflow& workflow, const Library& library,
                     const std::set<std::string>& kept) {
  core::craft::Catalogue catalogue;
  for (const std::string& id : kept) {
    if (const core::craft::Technique* technique = library.catalogue.find(id)) catalogue.add(*technique);
  }
  const auto again = core::workflow::compose(design, catalogue);
  return again && core::base::writeJson(core::workflow::stepsJson(again.value()), 0) ==
                      core::base::writeJson(core::workflow::stepsJson(workflow), 0);
}

}  // namespace

ReadyToTakeIn readyToTakeIn(const std::string& text, const std::string& hash, const Library& library) {
  ReadyToTakeIn ready;
  const core::design::ReadDesign read = core::design::readDesign(text);
  ready.problems = read.problems.sorted();
  if (!read.design) return ready;
  const auto workflow = core::workflow::compose(*read.design, library.catalogue);
  if (!workflow) {
    ready.refusals = workflow.error();
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
