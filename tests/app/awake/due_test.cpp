#include "app/awake/due.h"

#include "tests/support/alerts.h"
#include "tests/support/catch.h"

using app::awake::dueWithinHorizon;
using app::awake::nextWaking;
using core::alerts::AlertSchedule;
using core::intents::AlertClass;

namespace {

constexpr std::int64_t kSecond = 1'000'000'000;
constexpr std::int64_t kHour = 3600 * kSecond;
constexpr std::int64_t kNow = 100 * kHour;

AlertSchedule dueAt(std::vector<std::int64_t> instants) {
  std::vector<core::alerts::ScheduledAlert> alerts;
  for (const std::int64_t instant : instants) alerts.push_back(tests::dueAlert("size", AlertClass::Open, instant));
  return *tests::scheduleOf(std::move(alerts));
}

}  // namespace

TEST_CASE("an alert keeps the machine awake from twelve hours before it until twelve hours after") {
  CHECK_FALSE(dueWithinHorizon({}, kNow));
  CHECK(dueWithinHorizon(dueAt({kNow}), kNow));
  CHECK(dueWithinHorizon(dueAt({kNow + 12 * kHour}), kNow));
  CHECK_FALSE(dueWithinHorizon(dueAt({kNow + 12 * kHour + kSecond}), kNow));
  CHECK(dueWithinHorizon(dueAt({kNow - 12 * kHour}), kNow));
  CHECK_FALSE(dueWithinHorizon(dueAt({kNow - 12 * kHour - kSecond}), kNow));
}

TEST_CASE("one alert within the horizon is enough, wherever it stands") {
  CHECK(dueWithinHorizon(dueAt({kNow - 13 * kHour, kNow + kHour, kNow + 13 * kHour}), kNow));
  CHECK_FALSE(dueWithinHorizon(dueAt({kNow - 13 * kHour, kNow + 13 * kHour}), kNow));
}

TEST_CASE("the machine is woken half a minute before the first alert still to come, however far") {
  CHECK_FALSE(nextWaking({}, kNow));
  CHECK(nextWaking(dueAt({kNow + 40 * kHour}), kNow) == kNow + 40 * kHour - 30 * kSecond);
  CHECK(nextWaking(dueAt({kNow - kHour, kNow + 2 * kHour, kNow + kHour}), kNow) == kNow + kHour - 30 * kSecond);
}

TEST_CASE("an alert so near that the machine would be woken at once is left to those who are awake") {
  CHECK_FALSE(nextWaking(dueAt({kNow + 30 * kSecond}), kNow));
  CHECK(nextWaking(dueAt({kNow + 30 * kSecond, kNow + 31 * kSecond}), kNow) == kNow + kSecond);
}
