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
        const craft::FactPattern& first = need.alternatives.front();
        return (first.text + first.is).find("covered") != std::string::npos;
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

namespace {

// Two workflows of one step: as it is, and after a change.
std::vector<workflow::StepDifference> changing(const std::function<void(workflow::WorkflowStep&)>& change) {
  workflow::Workflow before;
  workflow::WorkflowStep step;
  step.id = "brush/act@top";
  step.waits.resize(1);
  step.waits.front().id = "brush/act@top/dry";
  step.waits.front().closes = units::Span{};
  step.faults.resize(1);
  step.faults.front().ways.resize(2);
  before.steps.push_back(step);
  before.index();
  workflow::Workflow after = before;
  change(after.steps.front());
  after.index();
  return workflow::renewalOf(before, after);
}

template <typename Change>
void checkTold(const char* member, const char* message, bool contradicts, Change change) {
  INFO(member);
  const auto found = changing(change);
  REQUIRE(found.size() == 1);
  CHECK(found.front().change == StepChange::Differs);
  CHECK(found.front().contradicts == contradicts);
  REQUIRE(found.front().what.size() == 1);
  CHECK(found.front().what.front().id == message);
}

}  // namespace

TEST_CASE("whatever a step says, another word of it is told") {
  using Step = workflow::WorkflowStep;
  const units::Span longer{units::Duration::minutes(1), units::Duration::minutes(2), units::Duration::minutes(3)};
  CHECK(changing([](Step&) {}).empty());
  checkTold("title", "renewal.title", false, [](Step& step) { step.title = "Brush it"; });
  checkTold("techniqueTitle", "renewal.called", false, [](Step& step) { step.techniqueTitle = "Brushing"; });
  checkTold("sentences", "renewal.how", false, [](Step& step) { step.sentences = {"Brush."}; });
  checkTold("good", "renewal.how", false, [](Step& step) { step.good = "Even."; });
  checkTold("trap", "renewal.how", false, [](Step& step) { step.trap = "Uneven."; });
  checkTold("act", "renewal.how", false, [](Step& step) { step.act = craft::Act(); });
  checkTold("up", "renewal.how", false, [](Step& step) { step.up = craft::WayUp::Back; });
  checkTold("hands", "renewal.how", false, [](Step& step) { step.hands = craft::Hands::Paint; });
  checkTold("cautions", "renewal.caution", false, [](Step& step) { step.cautions.resize(1); });
  checkTold("checks", "renewal.checks", false, [](Step& step) { step.checks.resize(1); });
  checkTold("faults", "renewal.faults", false, [](Step& step) { step.faults.clear(); });
  checkTold("ways", "renewal.faults", false, [](Step& step) { step.faults.front().ways.front().key = "Close it"; });
  checkTold("tools", "renewal.tools", false, [](Step& step) { step.tools = {"brush"}; });
  checkTold("materials", "renewal.materials", false, [](Step& step) { step.materials.resize(1); });
  checkTold("figures", "renewal.figures", false, [](Step& step) { step.figures.resize(1); });
  checkTold("asMade", "renewal.figures", false, [](Step& step) { step.asMade = {"outer.width"}; });
  checkTold("work", "renewal.time", false, [&](Step& step) { step.work = longer; });
  checkTold("workSource", "renewal.source", false, [](Step& step) { step.workSource = "timed"; });
  checkTold("uninterruptible", "renewal.left", false, [](Step& step) { step.uninterruptible = true; });
  checkTold("resource", "renewal.resource", false, [](Step& step) { step.resource = "press"; });
  checkTold("ofShop", "renewal.of-shop", true, [](Step& step) { step.ofShop = true; });
  checkTold("keeps", "renewal.keeps", false, [](Step& step) { step.keeps = units::Duration::minutes(60); });
  checkTold("keepsSource", "renewal.source", false, [](Step& step) { step.keepsSource = "label"; });
  checkTold("reversal", "renewal.reversal", false, [](Step& step) { step.reversal.emplace(); });
  checkTold("needs", "renewal.facts", false, [](Step& step) { step.needs = {"top.clean"}; });
  checkTold("makes", "renewal.facts", true, [](Step& step) { step.makes = {"top.brushed"}; });
  checkTold("ends", "renewal.facts", true, [](Step& step) { step.ends = {"top.bare"}; });
}

TEST_CASE("whatever a wait says, another word of it is told") {
  using Step = workflow::WorkflowStep;
  using Wait = workflow::WorkflowWait;
  const units::Span longer{units::Duration::minutes(1), units::Duration::minutes(2), units::Duration::minutes(3)};
  const auto told = [](const char* member, const char* message, bool contradicts,
                       const std::function<void(Wait&)>& change) {
    checkTold(member, message, contradicts, [&](Step& step) { change(step.waits.front()); });
  };
  told("title", "renewal.wait-called", false, [](Wait& wait) { wait.title = "dries"; });
  told("kind", "renewal.wait-means", true, [](Wait& wait) { wait.kind = craft::WaitKind::Cure; });
  told("makes", "renewal.wait-means", true, [](Wait& wait) { wait.makes = "top.dry"; });
  told("follows", "renewal.wait-means", true, [](Wait& wait) { wait.follows = "top.wet"; });
  told("opens", "renewal.wait", false, [&](Wait& wait) { wait.opens = longer; });
  told("closes", "renewal.window", false, [&](Wait& wait) { wait.closes = longer; });
  told("closes not at all", "renewal.wait-other", false, [](Wait& wait) { wait.closes.reset(); });
  told("model", "renewal.wait-other", false, [](Wait& wait) { wait.model = craft::DryingModel::Oxidation; });
  told("reference", "renewal.wait-room", false,
       [](Wait& wait) { wait.reference.temperature = units::Temperature::celsius(17); });
  told("punctual", "renewal.wait-punctual", false, [](Wait& wait) { wait.punctual = true; });
  told("attended", "renewal.wait-attended", false, [](Wait& wait) { wait.attended = true; });
  told("test", "renewal.wait-test", false, [](Wait& wait) { wait.test = "A knuckle clicks."; });
  told("answers", "renewal.wait-test", false, [](Wait& wait) { wait.answers.found = "Grips"; });
  told("source", "renewal.wait-source", false, [](Wait& wait) { wait.source = "label"; });
  told("missedSay", "renewal.wait-missed", false, [](Wait& wait) { wait.missedSay = "Size again."; });
  told("missedEnds", "renewal.wait-missed", true, [](Wait& wait) { wait.missedEnds = {"top.sized"}; });
}
