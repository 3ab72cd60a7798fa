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

// A click takes its time to come through the X server, more of it on a busy machine.
bool comesTo(DrivenBench& bench, const char* what, const std::string& value) {
  for (int i = 0; i < 30 && textOf(bench.state(), what) != value; ++i) QThread::msleep(100);
  return textOf(bench.state(), what) == value;
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

TEST_CASE("while a piece waits one press leads to another piece, and two lead back; a wait is tested from its row",
          "[touch]") {
  DrivenBench bench(
      QStringList{QString::fromLatin1(kJob), QStringLiteral(PROJECT_ROOT "/recipes/jobs/heron.job.json")});
  constexpr int kWaiting = 2;  // BenchViewModel::Kind
  const auto legend = [&](const std::string& begins) {
    const Value state = bench.state();
    for (const Value& key : state.find("keys")->items()) {
      if (textOf(key, "legend").find(begins) == 0) return textOf(key, "legend");
    }
    return std::string();
  };
  for (int presses = 0; presses < 300 && legend("Meanwhile").empty(); ++presses) {
    const Value state = bench.state();
    if (textOf(state, "screen") == "alert") {
      bench.letGuardPass();
      bench.key("Return");
    } else if (textOf(state, "screen") == "bench" && state.find("kind")->asInteger() == kWaiting) {
      bench.advance(5);
    } else {
      bench.key("Return");
    }
  }
  const std::string meanwhile = legend("Meanwhile");
  REQUIRE_FALSE(meanwhile.empty());
  const std::string waiting = textOf(bench.state(), "title");
  click(bench, meanwhile.c_str());
  for (int i = 0; i < 30 && textOf(bench.state(), "title") == waiting; ++i) QThread::msleep(100);
  CHECK(textOf(bench.state(), "screen") == "bench");
  const Value there = bench.state();
  CHECK(there.find("kind")->asInteger() != kWaiting);
  // What was done to both, as paste is, can be undone from here too; the shelf takes presses again after that.
  bench.advance(0.2);
  click(bench, "Waits");
  REQUIRE(comesTo(bench, "screen", "waits"));
  click(bench, legend("Back to ").c_str());
  CHECK(comesTo(bench, "screen", "bench"));
  CHECK(comesTo(bench, "title", waiting));
  // From the waits to a test and back to them.
  click(bench, "Waits");
  REQUIRE(comesTo(bench, "screen", "waits"));
  const Value shown = bench.state();
  std::string wait;
  for (const Value& key : shown.find("keys")->items()) {
    const std::string row = textOf(key, "legend");
    if (wait.empty() && row.find(", test ") != std::string::npos) wait = row;
  }
  REQUIRE_FALSE(wait.empty());
  click(bench, wait.c_str());
  REQUIRE(comesTo(bench, "screen", "test"));
  click(bench, "Back");
  CHECK(comesTo(bench, "screen", "waits"));
  CHECK(bench.payloads("Looked").empty());
  click(bench, wait.c_str());
  click(bench, "Not yet");
  CHECK(comesTo(bench, "screen", "bench"));
  CHECK(comesTo(bench, "title", waiting));
}

TEST_CASE("what was just done is undone by a press in the head, for ten seconds", "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  const std::string first = textOf(bench.state(), "step");
  const auto done = [&] {
    for (int i = 0; i < 6 && textOf(bench.state(), "step") == first; ++i) {
      click(bench, "Done");
      QThread::msleep(300);
    }
    REQUIRE(textOf(bench.state(), "step") != first);
  };
  done();
  click(bench, "Undo");
  CHECK(comesTo(bench, "step", first));
  done();
  bench.advance(0.2);
  CHECK_FALSE(bench.click("Undo"));
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
