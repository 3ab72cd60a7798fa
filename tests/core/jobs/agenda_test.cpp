#include "core/jobs/agenda.h"

#include <algorithm>

#include "core/jobs/touch_tests.h"
#include "core/workflow/rehearse.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using Catch::Matchers::WithinAbs;
using workflow::RehearsalKind;

namespace {

// The step that the rehearsal works first, and when its hands are on it.
const workflow::RehearsalEvent& firstStep(const workflow::Rehearsal& rehearsal) {
  const auto first = std::find_if(rehearsal.events.begin(), rehearsal.events.end(),
                                  [](const auto& event) { return event.kind == RehearsalKind::Step; });
  REQUIRE(first != rehearsal.events.end());
  return *first;
}

constexpr double kMillisecond = 1.0 / 60'000;  // of a minute

std::string jobText(const char* job) {
  return fileText(std::string(PROJECT_ROOT "/recipes/jobs/") + job + ".job.json");
}

}  // namespace

TEST_CASE("the agenda of a job that was just taken in is that of its workflow") {
  Bench bench(jobText("pilots-chart"), shippedTechniques());
  const workflow::Agenda agenda = jobs::agendaOf(bench.at());
  CHECK(agenda.steps().size() == bench.plan()->workflow.steps.size());
  CHECK(agenda.running().empty());
  const workflow::Bench room = jobs::benchFor(bench.plan()->design.job, bench.at().shop());
  const auto whole = workflow::rehearse(workflow::Agenda(bench.plan()->workflow, room));
  const auto ahead = workflow::rehearse(agenda);
  CHECK(ahead.minutes == whole.minutes);
  CHECK(ahead.hands == whole.hands);
  CHECK(ahead.events.size() == whole.events.size());
}

TEST_CASE("worked as it is rehearsed, what lies ahead grows shorter by what was worked and waited, to nothing") {
  for (const char* job : {"heron", "pilots-chart"}) {
    Bench bench(jobText(job), shippedTechniques());
    auto ahead = workflow::rehearse(jobs::agendaOf(bench.at()));
    std::size_t steps = 0;
    while (ahead.hands > 0) {
      const workflow::RehearsalEvent next = firstStep(ahead);
      INFO(job << ' ' << next.step);
      const double work = bench.plan()->workflow.find(next.step)->work.likely.inMinutes();
      // A millisecond more: an opening is not met by a moment rounded to before it.
      bench.advance(next.at + kMillisecond);
      // A window is taken up, so that it does not matter any more when it closes.
      REQUIRE(bench.ask(intents::BeginStep{next.step}) == "");
      bench.advance(work / 2);
      const auto half = workflow::rehearse(jobs::agendaOf(bench.at()));
      CHECK_THAT(half.hands, WithinAbs(ahead.hands - work / 2, 1e-3));
      bench.advance(work / 2);
      REQUIRE(bench.finish(next.step) == "");
      const auto later = workflow::rehearse(jobs::agendaOf(bench.at()));
      CHECK_THAT(later.hands, WithinAbs(ahead.hands - work, 1e-3));
      // When a preparation is wanted is reckoned anew with each look ahead; that may move the end a little.
      CHECK_THAT(later.minutes, WithinAbs(std::max(0.0, ahead.minutes - next.at - work), 30));
      ahead = later;
      REQUIRE(++steps < 1000);
    }
    CHECK(steps == bench.plan()->workflow.steps.size());
    CHECK(ahead.minutes == 0);
    CHECK(ahead.hands == 0);
  }
}

TEST_CASE("what was found by touch holds from now on, whatever its time says") {
  Bench bench(jobText("pilots-chart"), shippedTechniques());
  std::string wait;
  for (int acts = 0; acts < 200 && wait.empty(); ++acts) {
    for (const auto& [run, state] : jobs::runningWaits(bench.at())) {
      if (!run->wait->closes && state.phase == waits::Phase::Waiting) wait = run->id;
    }
    if (wait.empty()) REQUIRE(bench.finishShown() != "");
  }
  REQUIRE(wait != "");
  const auto opensIn = [&] {
    const workflow::Agenda agenda = jobs::agendaOf(bench.at());
    for (const workflow::AgendaRun& run : agenda.running()) {
      if (run.wait->id == wait) return run.from.opens.likely.inMinutes();
    }
    return -1.0;
  };
  CHECK(opensIn() > 0);
  REQUIRE(bench.ask(intents::LookAt{wait, jobs::foundOf(*bench.state().waits.at(wait).wait)}) == "");
  CHECK(opensIn() <= 0);
}
