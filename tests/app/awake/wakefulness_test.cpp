#include "app/awake/wakefulness.h"

#include "tests/support/catch.h"

using app::awake::Keeper;
using app::awake::Wakefulness;

namespace {

std::string sleep(const Wakefulness& state) { return core::base::dump(state.sleepTrouble()); }
std::string battery(const Wakefulness& state) { return core::base::dump(state.batteryTrouble()); }

}  // namespace

TEST_CASE("that the machine may sleep is said when an alert is due and every keeper has declined") {
  Wakefulness state{true, true, {}, false, {}};
  CHECK(sleep(state) == "awake.may-sleep");
  state.wakeAlarm = true;
  CHECK(sleep(state) == "awake.may-sleep-alarm");
  state.settled = false;
  CHECK(sleep(state) == "");
  state = {false, true, {}, false, {}};
  CHECK(sleep(state) == "");
}

TEST_CASE("one keeper's word is enough not to say it, whoever gives it") {
  for (const Keeper keeper : {Keeper::Sleep, Keeper::Idle, Keeper::ScreenSaver, Keeper::Portal}) {
    CHECK(sleep({true, true, keeper, false, {}}) == "");
  }
}

TEST_CASE("a battery below fifteen per cent is said while an alert is due, whoever keeps the machine awake") {
  CHECK(battery({true, true, Keeper::Sleep, true, 14}) == "awake.battery-low percent=14");
  CHECK(battery({true, false, {}, false, 0}) == "awake.battery-low percent=0");
  CHECK(battery({true, true, {}, false, 15}) == "");
  CHECK(battery({true, true, {}, false, {}}) == "");
  CHECK(battery({false, true, {}, false, 3}) == "");
}
