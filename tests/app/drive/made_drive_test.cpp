// A window that came out a millimetre wide, keyed in by touch on the real window.
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

}  // namespace

TEST_CASE("a window measured a millimetre wide is keyed in by touch, and the reveal of the next board kept",
          "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  workToThePad(bench);
  bench.letGuardPass();
  for (const char* digit : {"3", "1", "7"}) bench.press(digit);
  CHECK(bench.payloads("Measured").empty());
  bench.press("Done");
  const auto measured = bench.payloads("Measured");
  REQUIRE(measured.size() == 1);
  CHECK(textOf(measured[0], "figure") == "board.top.sight.width");
  CHECK(core::record::integerOf(measured[0], "nanometres") == 317'000'000);
  CHECK(onThePad(bench.state()));
  // Nothing more to key in: what changed, page by page, then what the under board shall keep, then on.
  bool turned = false;
  for (int page = 0; page < 6 && !offered(bench, "The reveal"); ++page) {
    bench.press("Done");
    turned = turned || offered(bench, "Turn");
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
