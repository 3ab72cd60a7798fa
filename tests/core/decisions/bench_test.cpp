#include <algorithm>
#include <set>

#include "core/decisions/offers.h"
#include "core/jobs/timeline.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using Kind = jobs::BenchPlace::Kind;

namespace {

struct WayOut {
  std::string fault;
  std::string way;
  std::vector<std::string> ends;
};

std::vector<WayOut> waysOut(const workflow::WorkflowStep& step) {
  std::vector<WayOut> out;
  for (const auto& fault : step.faults) {
    if (fault.ways.empty()) out.push_back({fault.id, "", fault.ends});
    for (const auto& way : fault.ways) out.push_back({fault.id, way.id, way.ends});
  }
  return out;
}

}  // namespace

TEST_CASE("both demo jobs can be worked from the first step to the last", "[bench]") {
  for (const char* job : {"pilots-chart", "heron"}) {
    Bench bench(fileText(std::string(PROJECT_ROOT) + "/recipes/jobs/" + job + ".job.json"), shippedTechniques());
    std::set<std::string> worked;
    double waited = 0;
    while (bench.place().kind != Kind::Finished) {
      const auto kind = bench.place().kind;
      INFO(job << ' ' << worked.size() << " of " << bench.place().all);
      if (kind == Kind::Waiting) {
        bench.advance(1);
        REQUIRE(++waited < 60'000);
        continue;
      }
      REQUIRE(kind == Kind::Step);
      const std::string step = bench.finishShown();
      REQUIRE_FALSE(step.empty());
      CHECK(worked.insert(step).second);
    }
    CHECK(worked.size() == bench.plan()->workflow.steps.size());
    CHECK(bench.at().holds("package.closed"));
    CHECK(alerts::alertsOf(bench.at()).alerts.empty());
  }
}

TEST_CASE("what is refused changes nothing and says why", "[bench]") {
  Bench bench(demoJobText(), shippedTechniques());
  const std::string before = jobs::dump(bench.state());
  const std::size_t events = bench.events().size();
  CHECK(bench.finish("no-such/step") == "record.no-such-step");
  CHECK(bench.finish("final-look/record") == "record.comes-after");
  CHECK(bench.ask(intents::LookAt{"no/such/wait", intents::Verdict::Dry}) == "record.no-such-wait");
  CHECK(bench.ask(intents::Undo{"nobody"}) == "record.nothing-to-undo");
  CHECK(bench.ask(intents::TakeIn{}) == "record.already-taken-in");
  const std::string first = bench.shown();
  const auto* step = bench.plan()->workflow.find(first);
  REQUIRE(step != nullptr);
  CHECK(bench.ask(intents::ReportFault{first, "no-such-fault"}) == "record.no-such-fault");
  CHECK(jobs::dump(bench.state()) == before);
  CHECK(bench.events().size() == events);
}

TEST_CASE("a step with checks is finished only with all of them answered", "[bench]") {
  Bench bench(demoJobText(), shippedTechniques());
  const auto& steps = bench.plan()->workflow.steps;
  const auto checked = std::find_if(steps.begin(), steps.end(), [](const auto& step) { return !step.checks.empty(); });
  REQUIRE(checked != steps.end());
  bench.workUntil(checked->id);
  intents::FinishStep bare;
  bare.step = checked->id;
  CHECK(bench.ask(bare) == "record.checks-unanswered");
  CHECK(bench.finish(checked->id).empty());
}

TEST_CASE("the bench waits where nothing can start, and says for what", "[bench]") {
  Bench bench(demoJobText(), shippedTechniques());
  for (int i = 0; i < 500 && bench.place().kind == Kind::Step; ++i) bench.finishShown();
  const auto place = bench.place();
  REQUIRE(place.kind == Kind::Waiting);
  const auto run = bench.state().waits.find(place.wait);
  REQUIRE(run != bench.state().waits.end());
  CHECK(bench.at().matters(run->second));
  const std::string fact = run->second.wait->makes;  // the state the run lies in goes with the next act
  // A touch test that finds it dry lets the work go on at once.
  CHECK(bench.ask(intents::LookAt{place.wait, intents::Verdict::Dry}).empty());
  CHECK(bench.at().holds(fact));
}

TEST_CASE("every offer is one that is not refused", "[offers]") {
  Bench bench(demoJobText(), shippedTechniques());
  std::size_t asked = 0;
  for (int i = 0; i < 60; ++i) {
    for (const auto& offer : decisions::offers(bench.at())) {
      auto intent = offer.intent;
      if (auto* finish = std::get_if<intents::FinishStep>(&intent)) {
        std::size_t checks = bench.plan()->workflow.find(finish->step)->checks.size();
        for (const std::string& step : finish->with) checks += bench.plan()->workflow.find(step)->checks.size();
        CHECK(finish->checked == static_cast<std::int64_t>(checks));
      }
      const auto decision = decisions::decide(bench.at(), intent);
      INFO(base::dump(offer.label));
      // An act others rest on is the one thing offered that may be refused, with the reason.
      if (!decision) CHECK(decision.error().id == "record.others-rest-on-it");
      ++asked;
    }
    if (bench.place().kind == Kind::Step)
      bench.finishShown();
    else
      bench.advance(15);
  }
  CHECK(asked > 150);
}

TEST_CASE("a fault that leaves a choice is kept with the way that was chosen, and with no other", "[faults]") {
  const std::string cut = "cut-windows/cut-window@top";
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(cut);
  CHECK(bench.ask(intents::ReportFault{cut, "overcut-middle"}) == "record.way-not-chosen");
  CHECK(bench.ask(intents::ReportFault{cut, "overcut-middle", "turn-it-over"}) == "record.no-such-way");
  CHECK(bench.ask(intents::ReportFault{cut, "overcut-small", "close"}) == "record.no-such-way");
  std::set<std::string> offered;
  for (const auto& offer : decisions::offers(bench.at())) {
    const auto* report = std::get_if<intents::ReportFault>(&offer.intent);
    if (report != nullptr && report->fault == "overcut-middle") offered.insert(report->way);
  }
  CHECK(offered == std::set<std::string>{"close", "new-blank"});
  const auto saidLast = [&] {
    const auto lines = jobs::timelineOf(bench.state(), shop::Shop(), bench.events(), jobs::Order::NewestFirst);
    return base::dump(lines.front().what);
  };
  REQUIRE(bench.ask(intents::ReportFault{cut, "overcut-middle", "close"}).empty());
  CHECK(bench.shown() == cut);
  CHECK(saidLast().find("timeline.fault-way") == 0);
  CHECK(saidLast().find("Close it") != std::string::npos);
  REQUIRE(bench.ask(intents::ReportFault{cut, "overcut-middle", "new-blank"}).empty());
  CHECK(bench.shown() == "square-boards/cut-blank@top");
  CHECK(saidLast().find("New blank") != std::string::npos);
}

TEST_CASE("a choice recorded without its way, as older records have it, ends nothing", "[faults]") {
  const std::string cut = "cut-windows/cut-window@top";
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(cut);
  REQUIRE(bench.ask(intents::ReportFault{cut, "overcut-middle", "new-blank"}).empty());
  auto events = bench.events();
  base::Value bare = base::Value::object();
  bare.set("step", base::Value::text(cut)).set("fault", base::Value::text("overcut-middle"));
  events.back().payload = bare;
  const auto state = jobs::fold(bench.plan(), events);
  CHECK(state.steps[*bench.plan()->workflow.indexOf("square-boards/cut-blank@top")].status == jobs::StepStatus::Done);
}

TEST_CASE("a fault brings back exactly the steps that make what it ends", "[faults]") {
  std::size_t tried = 0;
  Bench bench(demoJobText(), shippedTechniques());
  for (int i = 0; i < 4000 && bench.place().kind != Kind::Finished; ++i) {
    if (bench.place().kind != Kind::Step) {
      bench.advance(5);
      continue;
    }
    const std::string done = bench.finishShown();
    const auto* step = bench.plan()->workflow.find(done);
    for (const auto& [fault, way, ends] : waysOut(*step)) {
      Bench copy = bench;
      REQUIRE(copy.ask(intents::ReportFault{done, fault, way}).empty());
      std::set<std::size_t> expected;
      for (const std::string& fact : ends) {
        for (const std::size_t maker : copy.plan()->workflow.making(fact)) expected.insert(maker);
      }
      for (std::size_t s = 0; s < copy.plan()->workflow.steps.size(); ++s) {
        const bool wasDone = bench.at().isDone(s);
        INFO(done << ' ' << fault << ' ' << way << ' ' << copy.plan()->workflow.steps[s].id);
        CHECK(copy.at().isDone(s) == (wasDone && !expected.contains(s)));
      }
      // Taken back, it never was.
      REQUIRE(copy.ask(intents::Undo{copy.lastIntent()}).empty());
      CHECK(jobs::dump(copy.state()) == jobs::dump(bench.state()));
      ++tried;
    }
  }
  CHECK(bench.place().kind == Kind::Finished);
  CHECK(tried > 10);
}
