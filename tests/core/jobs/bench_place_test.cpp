// What the bench shows, what it says will come next, and which wait it asks about first.
#include "core/jobs/bench_place.h"

#include <algorithm>
#include <random>
#include <set>

#include "core/decisions/offers.h"
#include "core/jobs/touch_tests.h"
#include "core/jobs/wait_groups.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using Kind = jobs::BenchStand::Kind;

namespace {

Bench benchOf(const std::string& job) {
  return {fileText(std::string(PROJECT_ROOT) + "/recipes/jobs/" + job + ".job.json"), shippedTechniques()};
}

// What a stand is, in words for a failing test.
std::string text(const Bench& bench, const jobs::BenchStand& stand) {
  const std::string step = stand.step ? bench.plan()->workflow.steps[*stand.step].id : "no step";
  return std::to_string(static_cast<int>(stand.kind)) + ' ' + step + ' ' + stand.wait;
}

// One act of those offered, by chance; finishing is left to the test. A wait found "not yet" teaches once it has come
// to something, which may be with the very step that is finished: what is learned then nobody can know before.
void act(Bench& bench, std::mt19937& random, bool teaching) {
  auto offers = decisions::offers(bench.at());
  std::erase_if(offers, [&](const auto& offer) {
    const auto* look = std::get_if<intents::LookAt>(&offer.intent);
    const bool teaches = look != nullptr && look->verdict == intents::Verdict::NotYet;
    return std::holds_alternative<intents::FinishStep>(offer.intent) || (teaches && !teaching);
  });
  if (offers.empty()) return;
  bench.ask(offers[random() % offers.size()].intent);
}

// Works the demo jobs with acts by chance between, and hands over what was said to come next and the bench as it was
// before, once the step is done.
template <typename Check>
std::size_t workByChance(bool teaching, Check check) {
  std::size_t told = 0;
  for (const char* job : {"pilots-chart", "heron", "tide-table"}) {
    // Every state is folded anew from all that came before, so that one life of each job is what a run has time for.
    for (const unsigned seed : {1U}) {
      std::mt19937 random(seed);
      Bench bench = benchOf(job);
      for (int i = 0; i < 250; ++i) {
        if (random() % 4 == 0) act(bench, random, teaching);
        if (random() % 3 == 0) bench.advance(static_cast<double>(random() % 90));
        const auto next = jobs::standAfter(bench.at(), bench.place());
        if (bench.place().kind != Kind::Step) {
          CHECK_FALSE(next);
          bench.advance(30);
          continue;
        }
        REQUIRE(next);
        const shop::Shop before = bench.at().shop();
        // At the very instant: what a step takes of time may let a wait open meanwhile.
        const std::string done = bench.shown();
        REQUIRE(bench.finishAct().empty());
        INFO(job << " seed " << seed << ": after " << done);
        check(*next, bench, before);
        ++told;
      }
    }
  }
  return told;
}

}  // namespace

TEST_CASE("what the bench says comes next is what comes when the step is done", "[bench]") {
  std::set<Kind> kinds;
  const std::size_t told =
      workByChance(false, [&](const jobs::BenchStand& next, const Bench& bench, const shop::Shop&) {
        CHECK(text(bench, next) == text(bench, bench.place()));
        kinds.insert(next.kind);
      });
  CHECK(told > 150);
  CHECK(kinds.contains(Kind::Step));
  CHECK(kinds.contains(Kind::Waiting));
}

TEST_CASE("whatever was acted before, what comes next is told as far as it is known", "[bench]") {
  const std::size_t told =
      workByChance(true, [](const jobs::BenchStand& next, const Bench& bench, const shop::Shop& before) {
        const auto place = jobs::benchPlace(jobs::JobAt(bench.state(), before, bench.now()));
        CHECK(text(bench, next) == text(bench, place));
      });
  CHECK(told > 150);
}

TEST_CASE("saying what comes next changes nothing", "[bench]") {
  Bench bench = benchOf("heron");
  for (int i = 0; i < 40; ++i) {
    const std::string before = jobs::dump(bench.state());
    jobs::standAfter(bench.at(), bench.place());
    CHECK(jobs::dump(bench.state()) == before);
    if (bench.place().kind == Kind::Step)
      bench.finishShown();
    else
      bench.advance(30);
  }
}

TEST_CASE("while nothing can be started the bench names the wait that is due to be tested first", "[bench]") {
  std::size_t met = 0;
  std::size_t overdue = 0;
  for (const char* job : {"pilots-chart", "heron", "tide-table"}) {
    Bench bench = benchOf(job);
    for (int i = 0; i < 20'000 && bench.place().kind != Kind::Finished; ++i) {
      if (bench.place().kind == Kind::Step) {
        bench.finishShown();
        continue;
      }
      if (bench.place().kind == Kind::Missed) {
        bench.ask(intents::MendMissed{bench.place().wait});
        continue;
      }
      REQUIRE(bench.place().kind == Kind::Waiting);
      const auto& shown = bench.state().waits.at(bench.place().wait);
      const auto shownState = bench.at().waitState(shown);
      const auto leftOf = [&](const waits::WaitState& state) {
        return (state.byTouch ? state.opens.likely : state.lookAt) - state.elapsed.time;
      };
      // Waits begun together are tested when the last of them is ready.
      for (const jobs::WaitGroup& group : jobs::waitGroups(bench.at())) {
        const jobs::RunningWait& run = *group.back();
        const std::string& id = run.id;
        const auto state = bench.at().waitState(run);
        if (!bench.at().matters(run) || state.foundByTouch || state.phase == waits::Phase::Over || state.closes)
          continue;
        INFO(job << ": shown " << shown.id << ", " << id);
        CHECK((shownState.closes || leftOf(shownState) <= leftOf(state)));
        if (id != shown.id && leftOf(state) < units::Duration()) ++overdue;
      }
      // The test that is offered first is of the same wait.
      CHECK(jobs::touchTests(bench.at()).front().wait == shown.id);
      ++met;
      bench.advance(7);
    }
    CHECK(bench.place().kind == Kind::Finished);
  }
  CHECK(met > 100);
  CHECK(overdue > 0);
}

TEST_CASE("a wait is answered in its technique's own words, and only as it can be found", "[looks]") {
  std::set<std::string> said;
  for (const char* job : {"pilots-chart", "heron", "tide-table"}) {
    Bench bench = benchOf(job);
    for (int i = 0; i < 20'000 && bench.place().kind != Kind::Finished; ++i) {
      for (const auto& offer : decisions::offers(bench.at())) {
        const auto* look = std::get_if<intents::LookAt>(&offer.intent);
        if (look == nullptr) continue;
        const auto& wait = *bench.state().waits.at(look->wait).wait;
        const auto* answer = std::get_if<std::string>(offer.label.argument("answer"));
        REQUIRE(answer != nullptr);
        CHECK(*answer == jobs::answerOf(wait, look->verdict));
        said.insert(wait.title + ": " + *answer);
        // What is open from the start cannot be found not yet open.
        if (wait.opens.late == units::Duration()) CHECK(look->verdict != intents::Verdict::NotYet);
      }
      if (bench.place().kind == Kind::Step)
        bench.finishShown();
      else if (bench.place().kind == Kind::Missed)
        bench.ask(intents::MendMissed{bench.place().wait});
      else
        bench.advance(30);
    }
  }
  CHECK(said.contains("paste cools: Cool"));
  CHECK(said.contains("size is damp: Grips"));
  CHECK_FALSE(said.contains("starch soaks: Dry"));
}

TEST_CASE("a stage is ahead, begun and left, worked now, drying or done, as its steps and waits are", "[bench]") {
  Bench bench(demoJobText(), shippedTechniques());
  std::set<jobs::StageStanding> seen;
  for (int i = 0; i < 5000 && bench.place().kind != jobs::BenchStand::Kind::Finished; ++i) {
    const auto at = bench.at();
    const auto place = bench.place();
    const auto& steps = bench.plan()->workflow.steps;
    for (const jobs::StageAt& stage : jobs::stagesOf(at, place)) {
      std::size_t all = 0;
      std::size_t done = 0;
      for (std::size_t step = 0; step < steps.size(); ++step) {
        if (steps[step].stage != stage.stage) continue;
        ++all;
        done += at.isDone(step) ? 1 : 0;
      }
      INFO(craft::name(stage.stage) << ", " << done << " of " << all << " done");
      const bool here = place.step && steps[*place.step].stage == stage.stage;
      CHECK((stage.standing == jobs::StageStanding::Now) == here);
      if (stage.standing == jobs::StageStanding::Ahead) CHECK(done == 0);
      if (stage.standing == jobs::StageStanding::Done) CHECK(done == all);
      if (stage.standing == jobs::StageStanding::Begun) CHECK((done > 0 && done < all));
      if (stage.standing == jobs::StageStanding::Drying) CHECK(done > 0);
      seen.insert(stage.standing);
    }
    if (place.kind == jobs::BenchStand::Kind::Step) {
      REQUIRE_FALSE(bench.finishShown().empty());
    } else {
      bench.advance(30);
    }
  }
  CHECK(seen.size() == 5);
}
