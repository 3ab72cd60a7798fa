// A whole job worked at the likely pace by a maker who answers: how often is this maker called?
#include <array>
#include <deque>

#include "core/alerts/sounding.h"
#include "core/jobs/bench_place.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using core::alerts::ScheduledAlert;
using core::alerts::Sounding;
using core::jobs::BenchPlace;

namespace {

constexpr std::int64_t kHour = 3'600'000'000'000;
constexpr std::array<std::int64_t, core::alerts::kTones> kLengths = {250'000'000, 600'000'000, 1'000'000'000,
                                                                     3'400'000'000};

class Day {
 public:
  explicit Day(const std::string& job)
      : m_bench(tests::fileText(PROJECT_ROOT "/recipes/jobs/" + job + ".job.json"), tests::shippedTechniques()),
        m_sounding(kLengths) {}

  void work() {
    for (int round = 0; round < 50'000; ++round) {
      const BenchPlace place = m_bench.place();
      if (place.kind == BenchPlace::Kind::Finished) return;
      if (place.kind == BenchPlace::Kind::Waiting) {
        pass(1);
      } else if (place.kind == BenchPlace::Kind::Missed) {
        REQUIRE(m_bench.ask(core::intents::MendMissed{place.wait}).empty());
      } else {
        REQUIRE(place.kind == BenchPlace::Kind::Step);
        const std::string step = m_bench.shown();
        // What a window gates is taken up at once.
        const bool gated = m_bench.at().gate(*m_bench.plan()->workflow.indexOf(step)) != nullptr;
        if (gated && !m_bench.at().inHand()) REQUIRE(m_bench.ask(core::intents::BeginStep{step}).empty());
        double left = m_bench.plan()->workflow.find(step)->work.likely.inMinutes();
        for (; left > 0; left -= 1) pass(std::min(left, 1.0));
        REQUIRE(m_bench.finish(step).empty());
        turn();
      }
    }
    FAIL("the job does not end");
  }

  int calls = 0;
  std::size_t mostInAnHour = 0;

 private:
  void pass(double minutes) {
    m_bench.advance(minutes);
    turn();
  }
  void turn() {
    const std::int64_t now = m_bench.now().boottimeNanoseconds;
    m_sounding.publish(std::make_shared<core::alerts::AlertSchedule>(core::alerts::alertsOf(m_bench.at())));
    if (m_sounding.turn(now, {true, Sounding::Voice::Absent}).call) {
      ++calls;
      m_hour.push_back(now);
    }
    while (!m_hour.empty() && m_hour.front() + kHour <= now) m_hour.pop_front();
    mostInAnHour = std::max(mostInAnHour, m_hour.size());
    for (const ScheduledAlert& alert : m_sounding.due().alerts) {
      INFO(alert.wait);
      REQUIRE(alert.say.id.starts_with("say."));
      for (const char* name : {"piece", "wait", "answer"}) REQUIRE(alert.say.argument(name) != nullptr);
      REQUIRE(m_bench.ask(core::intents::Hear{alert.wait, alert.alert}).empty());
    }
  }

  tests::Bench m_bench;
  Sounding m_sounding;
  std::deque<std::int64_t> m_hour;
};

}  // namespace

TEST_CASE("worked at the likely pace, no shipped job calls its maker more than six times in an hour") {
  for (const char* job : {"pilots-chart", "heron", "tide-table"}) {
    Day day(job);
    day.work();
    WARN(job << ": " << day.calls << " calls, at most " << day.mostInAnHour << " in an hour");
    CHECK(day.calls > 0);
    CHECK(day.mostInAnHour <= Sounding::kMostAnHour);
  }
}
