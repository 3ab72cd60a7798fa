// What is asked and answered beside the steps: an alert put off, the room, how long the bench was off.
#include <QThread>

#include "core/base/json.h"
#include "tests/app/drive/driven_bench.h"
#include "tests/support/catch.h"

using core::base::Value;
using tests::DrivenBench;
using tests::textOf;

using tests::kJob;

namespace {

void click(DrivenBench& bench, const char* legend) {
  bench.letGuardPass();
  const Value state = bench.state();
  INFO(legend);
  INFO(core::base::writeJson(state, 0));
  REQUIRE(bench.click(legend));
}

// Works by touch until something runs.
void workUntilSomethingRuns(DrivenBench& bench) {
  for (int steps = 0; steps < 40; ++steps) {
    const Value state = bench.state();
    if (state.find("running")->asInteger() > 0) return;
    click(bench, "Done");
  }
  FAIL("nothing was set to dry in forty steps");
}

void advanceUntilAlert(DrivenBench& bench) {
  for (int i = 0; i < 400 && textOf(bench.state(), "screen") != "alert"; ++i) bench.advance(10);
  REQUIRE(textOf(bench.state(), "screen") == "alert");
}

}  // namespace

TEST_CASE("an alert put off by touch for two minutes leaves the screen and comes back", "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  workUntilSomethingRuns(bench);
  advanceUntilAlert(bench);
  const std::string alert = textOf(bench.state(), "alert");
  click(bench, "In 2 min");
  // Waits begun together are put off together.
  REQUIRE_FALSE(bench.payloads("Snoozed").empty());
  CHECK(bench.payloads("Snoozed")[0].find("minutes")->asInteger() == 2);
  CHECK(textOf(bench.state(), "screen") == "bench");
  bench.advance(1);
  CHECK(textOf(bench.state(), "screen") == "bench");
  bench.advance(1.1);
  CHECK(textOf(bench.state(), "screen") == "alert");
  CHECK(textOf(bench.state(), "alert") == alert);
}

TEST_CASE("the room is read off a hygrometer and entered by touch", "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  // Where nothing is known the values are those a label's times are for: 23 degrees and 50 per cent.
  for (const char* key :
       {"More", "Jobs", "Desk", "This tablet", "Enter it", "1", "9", ".", "5", "50 %", "6", "8", "Done"})
    click(bench, key);
  const auto rooms = bench.payloads("RoomEntered");
  REQUIRE(rooms.size() == 1);
  CHECK(textOf(rooms[0], "temperature") == "19.5 C");
  CHECK(textOf(rooms[0], "humidity") == "68 %");
  CHECK(textOf(rooms[0], "by") == "maker");
  // Back to where it was asked for.
  CHECK(textOf(bench.state(), "screen") == "settings");
}

TEST_CASE("how long the bench was off is asked at once and told by touch", "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  workUntilSomethingRuns(bench);
  bench.switchOff(95);
  REQUIRE(textOf(bench.state(), "screen") == "off");
  click(bench, "About an hour");
  click(bench, "+");
  click(bench, "Done");
  const auto told = bench.payloads("OffTimeTold");
  REQUIRE(told.size() == 1);
  CHECK(told[0].find("milliseconds")->asInteger() == 90 * 60'000);
  CHECK(textOf(bench.state(), "screen") == "bench");
}

TEST_CASE("how long the bench was off is told by two pedals", "[pedal]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  workUntilSomethingRuns(bench);
  bench.switchOff(95);
  REQUIRE(textOf(bench.state(), "screen") == "off");
  bench.key("Page_Up");
  QThread::msleep(400);
  bench.key("Page_Down");
  QThread::msleep(400);
  const auto told = bench.payloads("OffTimeTold");
  REQUIRE(told.size() == 1);
  CHECK(told[0].find("milliseconds")->asInteger() == 60 * 60'000);
  CHECK(textOf(bench.state(), "screen") == "bench");
}

TEST_CASE("a bench whose maker does not know how long it was off goes on, and asks no second time", "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  workUntilSomethingRuns(bench);
  bench.switchOff(95);
  click(bench, "Back");
  CHECK(bench.payloads("OffTimeTold").empty());
  bench.advance(1);
  CHECK(textOf(bench.state(), "screen") == "bench");
}
