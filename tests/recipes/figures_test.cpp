// Whatever a step reads out or compares with exists in every design that switches its technique on.
#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/craft/figure_names.h"
#include "core/workflow/acts.h"
#include "core/workflow/workflow_json.h"
#include "tests/recipes/made_up_jobs.h"
#include "tests/recipes/shipped_techniques.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;

namespace {

// What the step's file asks for, against what the design could give.
void requireFigures(const design::Design& design, const craft::Step& asked, const workflow::WorkflowStep& given) {
  INFO(given.id);
  for (const auto& figure : given.figures) CHECK(design.figures.find(figure.id) != nullptr);
  const auto single = std::count_if(asked.figures.begin(), asked.figures.end(),
                                    [](const craft::StepFigure& figure) { return !craft::isFamily(figure.figure); });
  // Those of a set-up come before the others, each once.
  std::set<std::string> all;
  for (const craft::StepFigure& figure : asked.figures) all.insert(figure.figure);
  if (asked.setup) {
    for (const craft::SetupFigure& setting : asked.setup->figures) all.insert(setting.figure);
  }
  const std::size_t setUp = asked.setup ? asked.setup->figures.size() : 0;
  CHECK(given.figures.size() >= static_cast<std::size_t>(single));
  CHECK(given.setup.has_value() == asked.setup.has_value());
  if (given.setup) CHECK(given.setup->figures.size() == setUp);
  if (static_cast<std::size_t>(single) == asked.figures.size()) CHECK(given.figures.size() == all.size());
  CHECK(given.checks.size() == asked.checks.size());
  CHECK(given.asMade.size() == asked.asMade.size());
  REQUIRE(given.materials.size() == asked.materials.size());
  for (std::size_t i = 0; i < asked.materials.size(); ++i) {
    INFO(given.materials[i].what);
    CHECK(given.materials[i].amount.has_value() == asked.materials[i].amount.has_value());
  }
}

const craft::Step& stepOf(const craft::Technique& technique, const workflow::WorkflowStep& step) {
  const std::string id = base::split(base::split(step.id, '@').front(), '/').back();
  const auto found =
      std::find_if(technique.steps.begin(), technique.steps.end(), [&](const auto& each) { return each.id == id; });
  REQUIRE(found != technique.steps.end());
  return *found;
}

}  // namespace

TEST_CASE("every figure a step asks for exists in every design that switches it on") {
  const auto catalogue = tests::shippedCatalogue();
  std::size_t met = 0;
  for (const craft::Technique* technique : catalogue.all()) {
    const auto design = tests::designOf(tests::switchingOn(*technique));
    for (const auto& step : tests::composed(design, catalogue).steps) {
      requireFigures(design, stepOf(*catalogue.find(step.technique), step), step);
      ++met;
    }
  }
  CHECK(met > 1000);
}

TEST_CASE("each way of marking a window has its four figures at every board, and a list has those of the marks alone") {
  const auto catalogue = tests::shippedCatalogue();
  int windows = 0;
  for (const char* job : {"pilots-chart", "heron", "tide-table"}) {
    const auto design =
        tests::designOf(tests::fileText(PROJECT_ROOT "/recipes/jobs/" + std::string(job) + ".job.json"));
    const auto workflow = tests::composed(design, catalogue);
    for (const auto& step : workflow.steps) {
      const auto index = *workflow.indexOf(step.id);
      std::set<std::string> both;
      for (const auto& figure : step.figures) {
        if (figure.by) both.insert(figure.id);
      }
      const bool marks =
          std::find(step.makes.begin(), step.makes.end(), step.thing + ".window.marked") != step.makes.end();
      if (!marks) continue;
      INFO(job << ' ' << step.id);
      ++windows;
      CHECK(both.size() == 8);
      for (const units::Marking way : units::kMarkings) {
        int own = 0;
        for (const auto& figure : workflow::figuresOf(workflow, {index}, way)) {
          own += figure.by ? 1 : 0;
          CHECK((!figure.by || figure.by == way));
          CHECK((!figure.by || figure.from.find("edge") != std::string::npos));
          const bool isMark = figure.id.find(".mark.") != std::string::npos;
          if (figure.by) CHECK(isMark == (way == units::Marking::Marks));
        }
        CHECK(own == 4);
      }
      const auto json = workflow::stepsJson(workflow, units::Way::Short);
      for (const auto& listed : json.find("steps")->items()) {
        if (listed.find("id")->asText() != step.id) continue;
        std::set<std::string> ids;
        for (const auto& id : listed.find("figures")->items()) ids.insert(id.asText());
        CHECK(ids.contains("board." + step.thing + ".mark.right"));
        CHECK_FALSE(ids.contains("board." + step.thing + ".back.right"));
      }
    }
  }
  CHECK(windows >= 5);
}

TEST_CASE("every figure a step asks for exists in the design that has everything") {
  const auto catalogue = tests::shippedCatalogue();
  for (const std::string order : {"linesFirst", "washFirst"}) {
    const auto design = tests::designOf(tests::everything(order));
    for (const auto& step : tests::composed(design, catalogue).steps) {
      requireFigures(design, stepOf(*catalogue.find(step.technique), step), step);
    }
  }
}
