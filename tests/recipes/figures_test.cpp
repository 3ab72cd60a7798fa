// Whatever a step reads out or compares with exists in every design that switches its technique on.
#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/craft/figure_names.h"
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
  if (asked.setup) all.insert(asked.setup->figures.begin(), asked.setup->figures.end());
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

TEST_CASE("every figure a step asks for exists in the design that has everything") {
  const auto catalogue = tests::shippedCatalogue();
  for (const std::string order : {"linesFirst", "washFirst"}) {
    const auto design = tests::designOf(tests::everything(order));
    for (const auto& step : tests::composed(design, catalogue).steps) {
      requireFigures(design, stepOf(*catalogue.find(step.technique), step), step);
    }
  }
}
