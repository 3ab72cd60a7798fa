#include "app/pedal/pedal_keys.h"

#include "tests/support/catch.h"

using namespace app::pedal;

namespace {

std::optional<PedalAct> tap(PedalKeys& keys, Pedal pedal, std::int64_t at, std::int64_t length = 120) {
  keys.pressed(pedal, at);
  return keys.released(pedal, at + length);
}

}  // namespace

TEST_CASE("a short press acts when it is let go", "[pedal]") {
  PedalKeys keys;
  CHECK(tap(keys, Pedal::Forward, 0) == PedalAct::Forward);
  CHECK(tap(keys, Pedal::Back, 1000) == PedalAct::Back);
  CHECK(tap(keys, Pedal::Enter, 2000) == PedalAct::Forward);
}

TEST_CASE("a long press is Heard, once, and nothing else", "[pedal]") {
  PedalKeys keys;
  keys.pressed(Pedal::Forward, 0);
  CHECK_FALSE(keys.held(699));
  CHECK(keys.held(700) == PedalAct::Heard);
  CHECK_FALSE(keys.held(900));
  CHECK_FALSE(keys.released(Pedal::Forward, 1200));
  // Where nobody asked in between, the release tells.
  CHECK(tap(keys, Pedal::Back, 3000, 800) == PedalAct::Heard);
}

TEST_CASE("bouncing contacts are one press, and an act locks its pedal for a moment", "[pedal]") {
  PedalKeys keys;
  CHECK(tap(keys, Pedal::Forward, 0, 30) == PedalAct::Forward);
  CHECK_FALSE(tap(keys, Pedal::Forward, 60, 20));
  CHECK_FALSE(tap(keys, Pedal::Forward, 200, 20));
  CHECK(tap(keys, Pedal::Back, 210, 20) == PedalAct::Back);
  CHECK(tap(keys, Pedal::Forward, 500, 20) == PedalAct::Forward);
}

TEST_CASE("a release without a press means nothing", "[pedal]") {
  PedalKeys keys;
  CHECK_FALSE(keys.released(Pedal::Forward, 10));
  keys.pressed(Pedal::Forward, 20);
  keys.pressed(Pedal::Forward, 40);  // a second press without a release is the same one
  CHECK(keys.released(Pedal::Forward, 100) == PedalAct::Forward);
}

TEST_CASE("the press aimed at the screen before an alert is swallowed, the next is not", "[pedal]") {
  PedalKeys keys;
  keys.alertAppeared(1000);
  CHECK_FALSE(tap(keys, Pedal::Enter, 1300));
  CHECK(tap(keys, Pedal::Enter, 1500) == PedalAct::Heard);
  keys.alertWent();
  CHECK(tap(keys, Pedal::Enter, 3000) == PedalAct::Forward);
  keys.alertAppeared(4000);
  CHECK(tap(keys, Pedal::Enter, 4800) == PedalAct::Heard);
}
