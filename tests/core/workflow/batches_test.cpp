#include "core/workflow/batches.h"

#include <algorithm>

#include "core/workflow/rehearse.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using workflow::RehearsalKind;

namespace {

const std::string kAlways = R"("when": {"always": true})";
const std::string kSource = R"("source": "common practice")";

std::string kept(const std::string& time) {
  return R"("when": {"needed": true}, "scope": "shop", "keeps": {"for": ")" + time + "\", " + kSource + "}";
}

std::string restOf(const std::string& time) {
  return R"("waits": [{"id": "rests", "kind": "rest", "title": "piece rests", "makes": "piece.rested", "opens": {"early": ")" +
         time + R"(", "likely": ")" + time + R"(", "late": ")" + time + R"("}, "model": "none", "test": "Look.", )" +
         kSource + "}], ";
}

// Paste that keeps so long, for a step at the beginning and one after so long a rest between them.
craft::Catalogue pastedTwice(const std::string& keeps, const std::string& rest) {
  craft::Catalogue catalogue;
  addTechnique(catalogue, oneStepTechnique("brew", R"("paste.brew.ready")", kept(keeps), ""));
  addTechnique(catalogue, oneStepTechnique("first", R"("piece.first")", kAlways,
                                           R"("needs": ["paste.brew.ready"], )" + restOf(rest)));
  addTechnique(catalogue, oneStepTechnique("second", R"("piece.second")", kAlways,
                                           R"("needs": ["paste.brew.ready", "piece.rested"], )"));
  return catalogue;
}

std::vector<double> timesOf(const workflow::Rehearsal& rehearsal, const std::string& step) {
  std::vector<double> times;
  for (const workflow::RehearsalEvent& event : rehearsal.events) {
    if (event.kind == RehearsalKind::Step && event.step == step) times.push_back(event.at);
  }
  return times;
}

std::vector<std::string> anewBefore(const workflow::Workflow& workflow, const std::string& step) {
  std::vector<std::string> anew;
  for (const workflow::Act& act : workflow.acts(craft::Way::Every)) {
    if (workflow.steps[act.steps.front()].id != step) continue;
    for (const std::size_t one : act.anew) anew.push_back(workflow.steps[one].id);
  }
  return anew;
}

constexpr double kHour = 60;

}  // namespace

TEST_CASE("a batch is the steps that make it and the steps of others that need it", "[batches]") {
  const auto workflow = composed(designOf(demoJobText()), pastedTwice("1 d", "2 d"));
  const auto batches = workflow::batchesOf(workflow);
  REQUIRE(batches.size() == 1);
  CHECK(batches.front().technique == "brew");
  CHECK(batches.front().steps == std::vector<std::size_t>{*workflow.indexOf("brew/act")});
  CHECK(batches.front().users ==
        std::vector<std::size_t>{*workflow.indexOf("first/act"), *workflow.indexOf("second/act")});
  CHECK((batches.front().keeps == units::Duration::minutes(24 * 60)));
}

TEST_CASE("a preparation whose uses lie further apart than it keeps is made twice, the second time late", "[batches]") {
  const auto workflow = composed(designOf(demoJobText()), pastedTwice("1 d", "2 d"));
  const auto rehearsal = workflow::rehearse(workflow);
  const auto brewed = timesOf(rehearsal, "brew/act");
  REQUIRE(brewed.size() == 2);
  const auto used = timesOf(rehearsal, "second/act");
  REQUIRE(used.size() == 1);
  CHECK(used.front() >= brewed.back());
  CHECK(used.front() - brewed.back() <= 24 * kHour);
  // It stands ready when the rest is over, and adds nothing to the wait.
  CHECK(used.front() == Approx(timesOf(rehearsal, "first/act").front() + 2 + 48 * kHour));
  CHECK(rehearsal.hands == Approx(4 * 2));  // minutes: two batches, two uses
  CHECK(anewBefore(workflow, "second/act") == std::vector<std::string>{"brew/act"});
  CHECK(anewBefore(workflow, "first/act").empty());
}

TEST_CASE("what will be too old when it is used is made anew before it is too old", "[batches]") {
  craft::Catalogue catalogue;
  addTechnique(catalogue, oneStepTechnique("brew", R"("paste.brew.mixed")", kept("1 d"), R"("waits": [{"id": "soaks",
      "kind": "soak", "title": "brew soaks", "makes": "paste.brew.ready", "opens": {"early": "2 h", "likely": "2 h", "late": "2 h"},
      "model": "none", "test": "Look.", )" + kSource + "}], "));
  for (const char* id : {"first", "second"}) catalogue.add(*pastedTwice("1 d", "23 h").find(id));
  const auto workflow = composed(designOf(demoJobText()), catalogue);
  const auto rehearsal = workflow::rehearse(workflow);
  REQUIRE(timesOf(rehearsal, "brew/act").size() == 2);
  // Used two hours after it was brewed, and rested twenty-three: too old by an hour, and ready all the same.
  CHECK(timesOf(rehearsal, "second/act").front() ==
        Approx(timesOf(rehearsal, "first/act").front() + 2 + 23 * kHour).margin(5));
}

TEST_CASE("a preparation that is still good is made once", "[batches]") {
  const auto workflow = composed(designOf(demoJobText()), pastedTwice("3 d", "2 d"));
  const auto rehearsal = workflow::rehearse(workflow);
  CHECK(timesOf(rehearsal, "brew/act").size() == 1);
  CHECK(anewBefore(workflow, "second/act").empty());
}

TEST_CASE("what a fresh batch is made of is made anew too, where it is too old", "[batches]") {
  auto catalogue = pastedTwice("1 d", "4 d");
  craft::Catalogue other;
  addTechnique(other, oneStepTechnique("grind", R"("paste.grain.ground")", kept("2 d"), ""));
  addTechnique(other,
               oneStepTechnique("brew", R"("paste.brew.ready")", kept("1 d"), R"("needs": ["paste.grain.ground"], )"));
  for (const char* id : {"first", "second"}) other.add(*catalogue.find(id));
  const auto workflow = composed(designOf(demoJobText()), other);
  const auto rehearsal = workflow::rehearse(workflow);
  const auto ground = timesOf(rehearsal, "grind/act");
  const auto brewed = timesOf(rehearsal, "brew/act");
  REQUIRE(brewed.size() == 2);
  REQUIRE(ground.size() == 2);
  CHECK(ground.back() < brewed.back());
  CHECK(brewed.back() - ground.back() <= 48 * kHour);
}

TEST_CASE("a batch at hand serves as long as it keeps, and one too old before its use is made anew", "[batches]") {
  const auto workflow = composed(designOf(demoJobText()), pastedTwice("1 d", "2 d"));
  const std::size_t second = *workflow.indexOf("second/act");
  const auto left = [&](double hours) {
    const workflow::AgendaStep step{second, workflow.steps[second].work};
    const workflow::Agenda agenda(workflow, {}, {step}, {},
                                  {{"brew", units::Duration::minutes(static_cast<std::int64_t>(hours * kHour))}});
    return timesOf(workflow::rehearse(agenda), "brew/act").size();
  };
  CHECK(left(1) == 0);
  // Nothing is left of it: it is too old the next moment, but the step begins at once.
  CHECK(left(0) == 0);
}
