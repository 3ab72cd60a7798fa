// A window that came out a millimetre wide, keyed in by touch on the real window.
#include <QThread>
#include <vector>

#include "core/record/event.h"
#include "tests/app/drive/driven_bench.h"
#include "tests/support/catch.h"

using core::base::Value;
using tests::DrivenBench;
using tests::textOf;

using tests::kJob;

namespace {

bool onThePad(const Value& state) {
  return textOf(state, "screen") == "made" && textOf(state, "step").find("measure-window@top") != std::string::npos;
}

void workToThePad(DrivenBench& bench) {
  for (int presses = 0; presses < 400; ++presses) {
    const Value state = bench.state();
    if (onThePad(state)) return;
    if (textOf(state, "screen") == "alert") {
      bench.letGuardPass();
    } else if (state.find("kind")->asInteger() == 2) {
      bench.advance(10);
    }
    bench.key("Return");
  }
  FAIL("the top window is never measured");
}

bool offered(DrivenBench& bench, const char* legend) {
  const Value state = bench.state();
  for (const Value& key : state.find("keys")->items()) {
    if (textOf(key, "legend") == legend) return true;
  }
  return false;
}

// Nothing more to measure: what changed, page by page, then what the under board shall keep, then on.
void keepTheReveal(DrivenBench& bench) {
  bool turned = false;
  for (int page = 0; page < 6 && !offered(bench, "The reveal"); ++page) {
    bench.press("Done");
    turned = turned || offered(bench, "Page");
  }
  CHECK(turned);
  bench.press("The reveal");
  REQUIRE(bench.payloads("FollowChosen").size() == 1);
  for (int i = 0; i < 4 && textOf(bench.state(), "step").find("measure-window@top") != std::string::npos; ++i) {
    bench.press("Done");
  }
  CHECK(textOf(bench.state(), "step").find("measure-window@top") == std::string::npos);
  CHECK(textOf(bench.state(), "screen") == "bench");
}

// What was recorded of the top window's opening, in the order in which it was.
std::vector<Value> measuredOfTop(DrivenBench& bench) {
  std::vector<Value> all;
  for (const Value& one : bench.payloads("Measured")) {
    if (textOf(one, "figure").find("board.top.sight.") == 0) all.push_back(one);
  }
  return all;
}

}  // namespace

TEST_CASE("a window a millimetre and a half wide is told in four presses, the other way as drawn in one", "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  workToThePad(bench);
  bench.letGuardPass();
  for (int half = 0; half < 3; ++half) bench.press("+ 0.5");
  CHECK(measuredOfTop(bench).empty());
  // Done is not offered before the last measure; untouched the same key said "As drawn".
  CHECK_FALSE(offered(bench, "Done"));
  CHECK_FALSE(offered(bench, "As drawn"));
  bench.press("Next");
  auto measured = measuredOfTop(bench);
  REQUIRE(measured.size() == 1);
  CHECK(textOf(measured[0], "figure") == "board.top.sight.width");
  CHECK(core::record::integerOf(measured[0], "nanometres") == 317'500'000);
  CHECK(onThePad(bench.state()));
  CHECK(offered(bench, "As drawn"));
  bench.press("Done");
  measured = measuredOfTop(bench);
  REQUIRE(measured.size() == 2);
  CHECK(textOf(measured[1], "figure") == "board.top.sight.height");
  keepTheReveal(bench);
}

TEST_CASE("a window measured a millimetre wide is keyed in by touch, and the reveal of the next board kept",
          "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  workToThePad(bench);
  bench.letGuardPass();
  bench.press("Digits");
  for (const char* digit : {"3", "1", "7"}) bench.press(digit);
  CHECK(measuredOfTop(bench).empty());
  bench.press("Done");
  const auto measured = measuredOfTop(bench);
  REQUIRE(measured.size() == 1);
  CHECK(core::record::integerOf(measured[0], "nanometres") == 317'000'000);
  CHECK(onThePad(bench.state()));
  // The other is left as it is: nothing was measured, nothing is recorded.
  bench.press("Digits");
  bench.press("Not measured");
  CHECK(measuredOfTop(bench).size() == 1);
  keepTheReveal(bench);
}

TEST_CASE("a pedal goes past what nobody measured and records none of it", "[pedal]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  workToThePad(bench);
  bench.letGuardPass();
  const std::size_t before = bench.payloads("Measured").size();
  // A pedal is deaf for a moment after a press.
  bench.key("Page_Down");
  QThread::msleep(400);
  CHECK(onThePad(bench.state()));
  bench.key("Page_Down");
  QThread::msleep(400);
  CHECK(bench.payloads("Measured").size() == before);
  CHECK(textOf(bench.state(), "screen") == "bench");
  CHECK(textOf(bench.state(), "step").find("measure-window@top") == std::string::npos);
}
