#include "core/workflow/shared_settings.h"

#include <algorithm>
#include <string>
#include <vector>

#include "core/base/text.h"
#include "core/workflow/rehearse.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using workflow::Workflow;

namespace {

constexpr const char* kStep =
    R"("do": ["Do it."], "good": "Good.", "hands": "clean",
       "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"})";

// Boards of these thicknesses, so many pieces of them.
std::string jobOf(const std::vector<std::string>& thicknesses, int count = 1) {
  const char* const ids[] = {"top", "middle", "inmost"};
  std::vector<std::string> boards;
  for (const std::string& thickness : thicknesses) {
    boards.push_back(R"({"id": ")" + std::string(ids[boards.size()]) + R"(", "thickness": ")" + thickness + '"' +
                     (boards.empty() ? "}" : R"(, "reveal": "6 mm"})"));
  }
  return R"({"format": "mountwright-job/1", "title": "Reed bed", "count": )" + std::to_string(count) +
         R"(, "artwork": {"width": "310 mm", "height": "240 mm"},
    "mount": {"window": {"shape": "rectangle", "overlap": "3 mm"}, "boards": [)" +
         base::join(boards, ", ") + R"(], "borders": {"sides": "70 mm", "weighting": "equal"}}})";
}

struct Own {
  std::string setupMore;                        // of the set-up
  std::string setMore;                          // of the step that sets
  std::string setNeeds, cutNeeds = "";          // patterns, beside the setting
  std::string more;                             // further steps
  std::string figure = "board.this.thickness";  // what the cutter is set to
};

// A maker's own way of cutting boards: the cutter is set, then each is cut.
std::string ownTechnique(const Own& own) {
  const std::string cutNeeds = own.cutNeeds.empty() ? "" : ", " + own.cutNeeds;
  return R"({"format": "mountwright-technique/1", "id": "own", "title": "Own", "rank": 5, "when": {"each": "board"},
    "steps": [{"id": "set", "title": "Set the cutter for the {name}", )" +
         std::string(kStep) + R"(, "setup": {"tool": "cutter", "figures": [")" + own.figure + "\"]" + own.setupMore +
         "}" + own.setMore + R"(, "needs": [)" + own.setNeeds + R"(], "makes": ["this.cutter.set"]},
      {"id": "cut", "title": "Cut the {name}", )" +
         kStep + R"(, "needs": ["this.cutter.set")" + cutNeeds + R"(], "makes": ["this.cut"]})" + own.more + "]}";
}

Workflow workflowOf(const std::vector<std::string>& thicknesses, const Own& own, int count = 1) {
  craft::Catalogue catalogue;
  tests::addTechnique(catalogue, ownTechnique(own));
  Workflow workflow = tests::composed(tests::designOf(jobOf(thicknesses, count)), catalogue);
  CHECK(workflow::areSettingsHeld(workflow));
  return workflow;
}

// "set@top cut@top cut@middle"
std::string worked(const Workflow& workflow) {
  std::vector<std::string> steps;
  for (const auto& step : workflow.steps) steps.push_back(step.id.substr(step.id.find('/') + 1));
  return base::join(steps, " ");
}

const std::vector<std::string> kAlike = {"1.5 mm", "1.5 mm", "1.5 mm"};
const std::vector<std::string> kUnlike = {"1.5 mm", "2 mm", "1.5 mm"};

}  // namespace

TEST_CASE("a tool that stands as it is wanted is not set again, and what it was set for uses that setting") {
  const Workflow workflow = workflowOf(kAlike, {});
  CHECK(worked(workflow) == "set@top cut@top cut@middle cut@inmost");
  for (std::size_t i = 1; i < workflow.steps.size(); ++i) {
    CHECK(workflow.steps[i].needs == std::vector<std::string>{"top.cutter.set"});
  }
  for (const craft::Way way : units::kWays) {
    CHECK(workflow.acts(way).size() == 4);
    CHECK(workflow::rehearse(workflow::Agenda(workflow), way).setups == 1);
  }
}

TEST_CASE("what a setting that is shared waited for is waited for by its user") {
  Own own;
  own.setNeeds = R"("previous.cut", "this.marked")";
  own.more = std::string(R"(, {"id": "mark", "title": "Mark the {name}", )") + kStep + R"(, "makes": ["this.marked"]})";
  const Workflow workflow = workflowOf(kAlike, own);
  CHECK(worked(workflow) == "mark@top set@top cut@top mark@middle cut@middle mark@inmost cut@inmost");
  CHECK(workflow.find("own/cut@inmost")->needs ==
        std::vector<std::string>{"top.cutter.set", "middle.cut", "inmost.marked"});
}

TEST_CASE("a tool that has to be set otherwise meanwhile is set again, and is not where its uses can come together") {
  Own inTurn;
  inTurn.cutNeeds = R"("previous.cut")";
  CHECK(worked(workflowOf(kUnlike, inTurn)) == "set@top cut@top set@middle cut@middle set@inmost cut@inmost");
  CHECK(worked(workflowOf(kUnlike, {})) == "set@top cut@top cut@inmost set@middle cut@middle");
}

TEST_CASE("a setting that does more than stand is made for each") {
  const std::string each = "set@top cut@top set@middle cut@middle set@inmost cut@inmost";
  Own afresh;
  afresh.setupMore = R"(, "afresh": true)";
  Own measures;
  measures.setMore = R"(, "asMade": ["board.this.thickness"])";
  Own window;
  window.setMore = R"(, "waits": [{"id": "open", "kind": "open", "title": "oil open", "makes": "this.oiled",
    "opens": {"early": "0 min", "likely": "0 min", "late": "0 min"},
    "closes": {"early": "50 min", "likely": "60 min", "late": "90 min"}, "model": "none", "test": "Feel it.",
    "source": "common practice", "ifMissed": {"do": "Oil again.", "ends": ["this.cutter.set"]}}])";
  window.cutNeeds = R"("this.oiled")";
  for (const Own& own : {afresh, measures, window}) {
    INFO(ownTechnique(own));
    const Workflow workflow = workflowOf(kAlike, own);
    CHECK(std::count_if(workflow.steps.begin(), workflow.steps.end(),
                        [](const auto& step) { return step.setup.has_value(); }) == 3);
  }
  CHECK(std::count_if(each.begin(), each.end(), [](char c) { return c == ' '; }) == 5);
  Own takenDown;
  takenDown.more = std::string(R"(, {"id": "clean", "title": "Clean the cutter", )") + kStep +
                   R"(, "needs": ["this.cut"], "ends": ["this.cutter.set"], "makes": ["this.cutter.clean"]})";
  takenDown.setNeeds = R"("previous.cutter.clean")";
  CHECK(worked(workflowOf(kAlike, takenDown)) ==
        "set@top cut@top clean@top set@middle cut@middle clean@middle set@inmost cut@inmost clean@inmost");
}

TEST_CASE("a setting equal for all pieces is made once for all of them") {
  const Workflow workflow = workflowOf({"1.5 mm", "1.5 mm"}, {}, 3);
  std::size_t settings = 0;
  for (const auto& step : workflow.steps) {
    if (!step.setup) continue;
    ++settings;
    CHECK(step.id == "own/set@top");
    CHECK(step.thingName == "top");
    CHECK(step.once);
  }
  CHECK(settings == 1);
  CHECK(workflow.steps.size() == 7);
}

TEST_CASE("a setting made once for all pieces and shared between boards lets each piece wait for itself alone") {
  Own own;
  own.setMore = R"(, "once": true)";
  own.setNeeds = R"("this.marked")";
  own.more = std::string(R"(, {"id": "mark", "title": "Mark the {name}", )") + kStep + R"(, "makes": ["this.marked"]})";
  const Workflow workflow = workflowOf({"1.5 mm", "1.5 mm"}, own, 2);
  CHECK(workflow.steps.size() == 9);
  CHECK(workflow.find("own/set@top")->needs == std::vector<std::string>{"top.marked", "2/top.marked"});
  CHECK(workflow.find("own/cut@middle#2")->needs == std::vector<std::string>{"top.cutter.set", "2/middle.marked"});
}

TEST_CASE("a fault that ends a setting shared brings the one setting back") {
  Own own;
  own.more = std::string(R"(, {"id": "look", "title": "Look at the {name}", )") + kStep +
             R"(, "needs": ["this.cut"], "makes": ["this.seen"],
               "faults": [{"id": "slipped", "seen": "It slipped.", "do": "Again.",
                           "ends": ["this.cutter.set", "this.cut"]}]})";
  const Workflow workflow = workflowOf(kAlike, own);
  CHECK(workflow.find("own/look@inmost")->faults.front().ends ==
        std::vector<std::string>{"top.cutter.set", "inmost.cut"});
}

TEST_CASE("settings of one tool that stand in each other's way are refused, in one file and over two") {
  const auto step = [](const std::string& id, const std::string& more) {
    return R"({"id": ")" + id + R"(", "title": "Do )" + id + R"(", )" + kStep + more + "}";
  };
  const auto file = [](const std::string& id, const std::string& steps) {
    return R"({"format": "mountwright-technique/1", "id": ")" + id + R"(", "title": "Own )" + id +
           R"(", "rank": 5, "when": {"each": "board"}, "steps": [)" + steps + "]}";
  };
  const auto set = [&](const std::string& id, const std::string& to) {
    return step("set" + id,
                R"(, "setup": {"tool": "gauge", "words": ")" + to + R"("}, "makes": ["this.s)" + id + "\"]");
  };
  const auto use = [&](const std::string& id, const std::string& of, const std::string& before) {
    return step(id, R"(, "needs": ["this.s)" + of + R"(", "this.)" + before + R"("], "makes": ["this.)" + id + "\"]");
  };
  const std::string first = step("a1", R"(, "needs": ["this.sa"], "makes": ["this.a1"])");
  const std::string ofOne = set("a", "one") + ", " + first + ", ";
  const std::string ofOther = set("b", "two") + ", " + use("b1", "b", "a1");
  const auto told = [](const std::vector<std::string>& files) {
    craft::Catalogue catalogue;
    for (const std::string& text : files) tests::addTechnique(catalogue, text);
    return tests::composeProblems(tests::designOf(jobOf({"1.5 mm"})), catalogue);
  };
  CHECK(told({file("x", ofOne + use("a2", "a", "b1") + ", " + ofOther)}) ==
        std::vector<std::string>{"compose.settings-clash tool=gauge one=Do seta (top, Own x) "
                                 "other=Do setb (top, Own x) step=Do a2 (top, Own x)"});
  CHECK(told({file("x", ofOne + use("a2", "a", "b1")), file("y", ofOther)}) ==
        std::vector<std::string>{"compose.settings-clash tool=gauge one=Do seta (top, Own x) "
                                 "other=Do setb (top, Own y) step=Do a2 (top, Own x)"});
  // One after the other, or with a set-up of its own, there is an order.
  CHECK(told({file("x", ofOne + use("a2", "a", "a1") + ", " + ofOther)}).empty());
  CHECK(told({file("x", ofOne + set("c", "one") + ", " + use("a2", "c", "b1") + ", " + ofOther)}).empty());
}
