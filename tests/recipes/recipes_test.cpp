#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/craft/technique_reader.h"
#include "core/workflow/rehearse.h"
#include "tests/recipes/shipped_techniques.h"
#include "tests/support/catch.h"

using namespace core;
using tests::composedJob;
using tests::filesEnding;
using tests::lowered;
using tests::shippedCatalogue;
using tests::speaksOf;
using tests::textOf;

TEST_CASE("every shipped technique reads without a problem and bears the name of its file") {
  const auto names = filesEnding(RECIPES_DIR, ".technique.json");
  REQUIRE(names.size() >= 20);
  for (const std::string& name : names) {
    INFO(name);
    const auto read = craft::readTechnique(textOf(std::string(RECIPES_DIR) + '/' + name));
    for (const auto& problem : read.problems.sorted())
      UNSCOPED_INFO(problem.pointer << ": " << base::dump(problem.message));
    CHECK(read.problems.empty());
    REQUIRE(read.technique);
    CHECK(read.technique->id + ".technique.json" == name);
  }
}

TEST_CASE("every fact a shipped technique needs is made by a shipped technique") {
  for (const auto& found : craft::checkCatalogue(shippedCatalogue())) {
    FAIL_CHECK(found.technique << ' ' << found.problem.pointer << ' ' << base::dump(found.problem.message));
  }
}

TEST_CASE("the page of the format names every technique that has alternatives") {
  const std::string page = textOf(std::string(RECIPES_DIR) + "/README.md");
  const auto catalogue = shippedCatalogue();
  for (const craft::Technique* technique : catalogue.all()) {
    if (technique->role.empty()) continue;
    INFO(technique->id);
    CHECK(page.find("| `" + technique->role + "` |") != std::string::npos);
    CHECK(page.find('`' + technique->id + '`') != std::string::npos);
  }
}

TEST_CASE("no text of a technique gives a verdict that only a test or a label can give") {
  for (const std::string& name : filesEnding(RECIPES_DIR, ".technique.json")) {
    const std::string text = lowered(textOf(std::string(RECIPES_DIR) + '/' + name));
    INFO(name);
    CHECK_FALSE(speaksOf(text, "archival"));
    CHECK_FALSE(speaksOf(text, "conservation grade"));
    CHECK_FALSE(speaksOf(text, "safe"));
  }
}

TEST_CASE("every shipped step names its act") {
  const auto catalogue = shippedCatalogue();
  for (const craft::Technique* technique : catalogue.all()) {
    for (const craft::Step& step : technique->steps) {
      INFO(technique->id << '/' << step.id);
      CHECK(step.act.has_value());
    }
  }
}

TEST_CASE("a blade in the hand is a blade in the drawing") {
  const std::set<craft::Act> cuts = {craft::Act::CutSquare, craft::Act::CutBevel, craft::Act::CutCurve,
                                     craft::Act::CutStrips, craft::Act::Mitre,    craft::Act::Peel};
  const auto catalogue = shippedCatalogue();
  for (const craft::Technique* technique : catalogue.all()) {
    for (const craft::Step& step : technique->steps) {
      INFO(technique->id << '/' << step.id);
      if (step.hands == craft::Hands::Blade) CHECK(cuts.contains(*step.act));
    }
  }
}

TEST_CASE("the demo jobs can be worked by one pair of hands that misses no window") {
  const auto files = filesEnding(std::string(RECIPES_DIR) + "/jobs", ".job.json");
  REQUIRE(files.size() >= 2);
  for (const std::string& file : files) {
    INFO(file);
    const auto workflow = composedJob(file);
    const auto rehearsal = workflow::rehearse(workflow);
    CHECK_FALSE(rehearsal.missed);
    const auto begun = std::count_if(rehearsal.events.begin(), rehearsal.events.end(),
                                     [](const auto& event) { return event.kind == workflow::RehearsalKind::Step; });
    CHECK(static_cast<std::size_t>(begun) == workflow.steps.size());
  }
}
