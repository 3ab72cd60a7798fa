#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;

TEST_CASE("done, undo, redo, undo equals never done, and the act stays in the log", "[undo]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.finishShown();
  const std::string step = bench.shown();
  const std::string never = jobs::dump(bench.state());
  bench.advance(3);
  REQUIRE(bench.finish(step).empty());
  const std::string done = jobs::dump(bench.state());
  const std::string act = bench.lastIntent();
  REQUIRE(bench.ask(intents::Undo{act}).empty());
  CHECK(jobs::dump(bench.state()) == never);
  const std::string undo = bench.lastIntent();
  CHECK(bench.state().lastUndo == undo);
  REQUIRE(bench.ask(intents::Undo{undo}).empty());
  CHECK(jobs::dump(bench.state()) == done);
  CHECK(bench.state().lastUndo.empty());
  CHECK(bench.state().lastIntent == act);
  REQUIRE(bench.ask(intents::Undo{act}).empty());
  CHECK(jobs::dump(bench.state()) == never);
  bool logged = false;
  for (const auto& line : bench.state().log)
    logged = logged || (line.intentId == act && line.about == step && line.voided);
  CHECK(logged);
}

TEST_CASE("an act others rest on is not taken back, and they are named", "[undo]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil("cut-windows/cut-window@top");
  bench.finishShown();
  const std::string cut = bench.lastIntent();
  bench.workUntil("register-blanks/refit@top");
  const auto decision = decisions::decide(bench.at(), intents::Undo{cut});
  REQUIRE_FALSE(decision);
  CHECK(decision.error().id == "record.others-rest-on-it");
  CHECK(base::dump(decision.error()).find("Measure the opening") != std::string::npos);
}

TEST_CASE("a wait whose start is undone ends silently", "[undo]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil("colour-bevel/colour@top");
  bench.finishShown();
  const std::string act = bench.lastIntent();
  CHECK_FALSE(bench.state().waits.empty());
  bool waits = false;
  for (const auto& [id, run] : bench.state().waits) waits = waits || run.step->id == "colour-bevel/colour@top";
  CHECK(waits);
  REQUIRE(bench.ask(intents::Undo{act}).empty());
  for (const auto& [id, run] : bench.state().waits) CHECK(run.step->id != "colour-bevel/colour@top");
  for (const auto& alert : alerts::alertsOf(bench.at()).alerts)
    CHECK(alert.wait.find("colour-bevel/colour@top") == std::string::npos);
}

TEST_CASE("a redo is refused once something else was done", "[undo]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.finishShown();
  REQUIRE(bench.ask(intents::Undo{bench.lastIntent()}).empty());
  const std::string undo = bench.lastIntent();
  bench.finishShown();
  CHECK(bench.ask(intents::Undo{undo}) == "record.redo-too-late");
  CHECK(bench.ask(intents::Undo{"intent-2"}) == "record.already-undone");
}
