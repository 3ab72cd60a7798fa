#include "core/workflow/renewal.h"

#include <functional>

#include "core/base/text.h"
#include "core/workflow/compose.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using workflow::StepChange;

namespace {

workflow::Workflow chart(const std::function<void(craft::Technique&)>& change) {
  const auto design = designOf(fileText(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json"));
  craft::Catalogue catalogue;
  const craft::Catalogue shipped = shippedTechniques();
  for (const craft::Technique* one : shipped.all()) {
    craft::Technique technique = *one;
    change(technique);
    catalogue.add(std::move(technique));
  }
  auto composed = workflow::compose(design, catalogue);
  REQUIRE(composed.ok());
  return std::move(composed).value();
}

void ofColour(craft::Technique& technique, const std::function<void(craft::Step&)>& change) {
  if (technique.id != "colour-bevel") return;
  for (craft::Step& step : technique.steps) {
    if (step.id == "colour") change(step);
  }
}

}  // namespace

TEST_CASE("techniques that have not changed change nothing") {
  const auto plain = chart([](craft::Technique&) {});
  CHECK(workflow::renewalOf(plain, chart([](craft::Technique&) {})).empty());
}

TEST_CASE("what changed of a step is told, and whether it contradicts what was done") {
  const auto plain = chart([](craft::Technique&) {});
  const auto slower = chart([](craft::Technique& technique) {
    ofColour(technique, [](craft::Step& step) {
      step.waits.front().opens.late = units::Duration::minutes(600);
      step.cautions.clear();
    });
  });
  const auto found = workflow::renewalOf(plain, slower);
  REQUIRE(found.size() == 2);
  for (const auto& one : found) {
    CHECK(one.change == StepChange::Differs);
    CHECK(one.step.find("colour-bevel/colour@") == 0);
    CHECK_FALSE(one.contradicts);
    REQUIRE(one.what.size() == 2);
    CHECK(one.what[0].id == "renewal.caution");
    CHECK(one.what[1].id == "renewal.wait");
  }
  // Backwards it is the same difference, the other way about.
  CHECK(workflow::renewalOf(slower, plain).size() == found.size());
}

TEST_CASE("a step that goes contradicts, one that comes does not") {
  const auto plain = chart([](craft::Technique&) {});
  const auto fewer = chart([](craft::Technique& technique) {
    if (technique.id != "colour-bevel") return;
    std::erase_if(technique.steps, [](const craft::Step& step) { return step.id == "look"; });
    for (craft::Step& step : technique.steps) {
      std::erase_if(step.needs, [](const craft::Need& need) {
        return need.alternatives.front().text.find("covered") != std::string::npos;
      });
    }
  });
  bool goes = false;
  for (const auto& one : workflow::renewalOf(plain, fewer)) {
    if (one.change == StepChange::Goes) {
      goes = true;
      CHECK(one.contradicts);
      CHECK(one.step.find("colour-bevel/look@") == 0);
    }
  }
  CHECK(goes);
  bool comes = false;
  for (const auto& one : workflow::renewalOf(fewer, plain)) comes = comes || one.change == StepChange::Comes;
  CHECK(comes);
}
