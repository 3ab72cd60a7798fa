#include "core/workflow/rehearse.h"

#include <algorithm>

#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using workflow::RehearsalKind;

namespace {

std::string spanMinutes(const std::string& minutes) {
  return R"({"early": ")" + minutes + R"(", "likely": ")" + minutes + R"(", "late": ")" + minutes + "\"}";
}

// Size, whose tack opens after `opens` and closes after `closes`; laying, which needs it; and a step of `long` between
// them: in the list, or as a need of laying.
craft::Catalogue tackAndLongStep(const std::string& opens, const std::string& closes, const std::string& work,
                                 const std::string& laying = R"("piece.tack")") {
  craft::Catalogue catalogue;
  const std::string always = R"("when": {"always": true})";
  addTechnique(catalogue, oneStepTechnique(
                              "brush-size", R"("piece.sized")", always,
                              R"("waits": [{"id": "tack", "kind": "tack", "title": "size tacks", "makes": "piece.tack",
      "opens": )" + spanMinutes(opens) +
                                  R"(, "closes": )" + spanMinutes(closes) + R"(, "model": "evaporation",
      "test": "Touch it.", "source": "common practice", "ifMissed": {"do": "Size again.", "ends": ["piece.sized"]}}], )"));
  std::string longer =
      oneStepTechnique("long-act", R"("piece.long")", always, R"("uninterruptible": true, "needs": ["piece.sized"], )");
  const std::string usual = R"({"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"})";
  longer.replace(longer.find(usual), usual.size(),
                 R"({"early": ")" + work + R"(", "likely": ")" + work + R"(", "late": ")" + work +
                     R"(", "source": "common practice"})");
  addTechnique(catalogue, longer);
  addTechnique(catalogue, oneStepTechnique("z-lay", R"("piece.laid")", always, "\"needs\": [" + laying + "], "));
  return catalogue;
}

const workflow::RehearsalEvent* find(const workflow::Rehearsal& rehearsal, RehearsalKind kind,
                                     const std::string& step) {
  const auto found = std::find_if(rehearsal.events.begin(), rehearsal.events.end(),
                                  [&](const auto& event) { return event.kind == kind && event.step == step; });
  return found == rehearsal.events.end() ? nullptr : &*found;
}

}  // namespace

TEST_CASE("the demo jobs can be worked without missing a window", "[rehearse]") {
  for (const char* job : {"pilots-chart", "heron"}) {
    const auto design = designOf(fileText(std::string(PROJECT_ROOT) + "/recipes/jobs/" + job + ".job.json"));
    const auto workflow = composed(design, shippedTechniques());
    const auto rehearsal = workflow::rehearse(workflow);
    CHECK_FALSE(rehearsal.missed);
    const auto steps = std::count_if(rehearsal.events.begin(), rehearsal.events.end(),
                                     [](const auto& event) { return event.kind == RehearsalKind::Step; });
    CHECK(static_cast<std::size_t>(steps) == workflow.steps.size());
    CHECK(std::is_sorted(rehearsal.events.begin(), rehearsal.events.end(),
                         [](const auto& a, const auto& b) { return a.at < b.at; }));
  }
}

TEST_CASE("a ten minute step in the way of a three minute window misses it, and both are named", "[rehearse]") {
  const auto workflow =
      composed(designOf(demoJobText()), tackAndLongStep("1 min", "3 min", "10 min", R"("piece.tack", "piece.long")"));
  const auto rehearsal = workflow::rehearse(workflow);
  CHECK(rehearsal.missed);
  const auto* missed = find(rehearsal, RehearsalKind::Missed, "z-lay/act");
  REQUIRE(missed != nullptr);
  CHECK(missed->other == "long-act/act");
  CHECK(missed->at == Approx(5));  // two minutes of brushing, then three
}

TEST_CASE("where the hands were free, what the step was still without is named as what was in the way", "[rehearse]") {
  auto catalogue = tackAndLongStep("5 min", "8 min", "2 min", R"("piece.tack", "piece.stiff")");
  addTechnique(catalogue,
               oneStepTechnique("stiffen", R"("piece.soaked")", R"("when": {"always": true})",
                                R"("needs": ["piece.sized"], "waits": [{"id": "stiff", "kind": "dry",
      "title": "it stiffens", "makes": "piece.stiff", "opens": )" +
                                    spanMinutes("1 h") +
                                    R"(, "model": "none", "test": "Touch it.", "source": "common practice"}], )"));
  const auto rehearsal = workflow::rehearse(composed(designOf(demoJobText()), catalogue));
  CHECK(rehearsal.missed);
  const auto* missed = find(rehearsal, RehearsalKind::Missed, "z-lay/act");
  REQUIRE(missed != nullptr);
  CHECK(missed->other == "stiffen/act");
}

TEST_CASE("no step is begun beside a punctual wait that would keep the hands beyond its end", "[rehearse]") {
  const auto changedAt = [](const std::string& punctual) {
    craft::Catalogue catalogue;
    const std::string always = R"("when": {"always": true})";
    addTechnique(catalogue, oneStepTechnique("a-paste", R"("piece.pasted")", always,
                                             R"("waits": [{"id": "blotter", "kind": "press", "title": "first blotter",
        "makes": "piece.blotted", "opens": {"early": "5 min", "likely": "10 min", "late": "15 min"}, "model": "none", )" +
                                                 punctual + R"("test": "Look.", "source": "common practice"}], )"));
    addTechnique(catalogue,
                 oneStepTechnique("b-change", R"("piece.changed")", always, R"("needs": ["piece.blotted"], )"));
    for (int i = 0; i < 9; ++i) {
      addTechnique(catalogue,
                   oneStepTechnique("c-other-" + std::to_string(i), R"("piece.other)" + std::to_string(i) + '"', always,
                                    R"("needs": ["piece.pasted"], )"));
    }
    const auto rehearsal = workflow::rehearse(composed(designOf(demoJobText()), catalogue));
    CHECK_FALSE(rehearsal.missed);
    CHECK(rehearsal.hands == Approx(22));
    return find(rehearsal, RehearsalKind::Step, "b-change/act")->at;
  };
  CHECK(changedAt(R"("punctual": true, )") <= 2 + 15);
  CHECK(changedAt("") >= 2);
}

TEST_CASE("no step is started during which a window would close, where it can be left", "[rehearse]") {
  const auto workflow = composed(designOf(demoJobText()), tackAndLongStep("1 min", "3 min", "10 min"));
  const auto rehearsal = workflow::rehearse(workflow);
  CHECK_FALSE(rehearsal.missed);
  CHECK(find(rehearsal, RehearsalKind::Step, "z-lay/act")->at == Approx(3));
  CHECK(find(rehearsal, RehearsalKind::Step, "long-act/act")->at == Approx(5));
}

TEST_CASE("a window that opens at once goes before list order", "[rehearse]") {
  const auto workflow = composed(designOf(demoJobText()), tackAndLongStep("0 min", "3 min", "10 min"));
  const auto rehearsal = workflow::rehearse(workflow);
  CHECK_FALSE(rehearsal.missed);
  const auto* lay = find(rehearsal, RehearsalKind::Step, "z-lay/act");
  const auto* longer = find(rehearsal, RehearsalKind::Step, "long-act/act");
  REQUIRE(lay != nullptr);
  REQUIRE(longer != nullptr);
  CHECK(lay->at == Approx(2));
  CHECK(longer->at == Approx(4));
}

TEST_CASE("a step may still begin at the very closing", "[rehearse]") {
  // Brushing ends at 2, the window closes at 12, the long act runs from 2 to 12.
  const auto workflow = composed(designOf(demoJobText()), tackAndLongStep("5 min", "10 min", "10 min"));
  const auto rehearsal = workflow::rehearse(workflow);
  CHECK_FALSE(rehearsal.missed);
  CHECK(find(rehearsal, RehearsalKind::Step, "z-lay/act")->at == Approx(12));
}

TEST_CASE("hands are never idle while a step may start", "[rehearse]") {
  const auto workflow = composed(designOf(demoJobText()), shippedTechniques());
  const auto rehearsal = workflow::rehearse(workflow);
  double freeAt = 0;
  for (const auto& event : rehearsal.events) {
    if (event.kind != RehearsalKind::Step) continue;
    CHECK(event.at >= freeAt - 1e-9);
    const auto* step = workflow.find(event.step);
    if (event.at > freeAt + 1e-9) {
      // Somebody waited: then something opened just now that this step needs, or somebody had to stay.
      const bool opened = std::any_of(rehearsal.events.begin(), rehearsal.events.end(), [&](const auto& other) {
        return other.kind == RehearsalKind::Opens && other.at == Approx(event.at);
      });
      INFO(event.step);
      // A preparation is begun when it is due, whatever the hands are at.
      CHECK((opened || step->ofShop));
    }
    freeAt = event.at + step->work.likely.inMinutes();
  }
}
