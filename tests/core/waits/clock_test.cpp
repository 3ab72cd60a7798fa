#include "core/waits/clock.h"

#include "tests/support/catch.h"

using namespace core;
using waits::ClockReading;

namespace {

constexpr std::int64_t kMinute = 60'000;
constexpr std::int64_t kDay = 24 * 60 * kMinute;

ClockReading at(std::int64_t utc, const char* boot, std::int64_t upMilliseconds) {
  return {utc, boot, upMilliseconds * 1'000'000, true};
}

}  // namespace

TEST_CASE("within a boot the wall clock counts for nothing", "[clock]") {
  const auto start = at(1'000'000, "a", 5 * kMinute);
  for (const std::int64_t wall : {std::int64_t{0}, std::int64_t{1'000'000}, 400 * kDay}) {
    const auto elapsed = waits::elapsedBetween(start, at(wall, "a", 12 * kMinute), {});
    CHECK(elapsed.certain);
    CHECK(elapsed.time == units::Duration::minutes(7));
  }
}

TEST_CASE("across boots a believable wall clock is taken", "[clock]") {
  const auto start = at(10 * kDay, "a", 5 * kMinute);
  const auto elapsed = waits::elapsedBetween(start, at(10 * kDay + 90 * kMinute, "b", kMinute), {});
  CHECK(elapsed.certain);
  CHECK(elapsed.time == units::Duration::minutes(90));
}

TEST_CASE("a wall clock that ran backwards is not believed: the least it can be, said to be uncertain", "[clock]") {
  const auto start = at(10 * kDay, "a", 5 * kMinute);
  waits::ClockLog log;
  log.heartbeats.push_back(at(10 * kDay + 20 * kMinute, "a", 25 * kMinute));
  const auto elapsed = waits::elapsedBetween(start, at(9 * kDay, "b", 3 * kMinute), log);
  CHECK_FALSE(elapsed.certain);
  CHECK(elapsed.time == units::Duration::minutes(23));  // twenty seen running, three since
}

TEST_CASE("a month off is not believed either", "[clock]") {
  const auto start = at(10 * kDay, "a", 5 * kMinute);
  const auto elapsed = waits::elapsedBetween(start, at(41 * kDay, "b", 2 * kMinute), {});
  CHECK_FALSE(elapsed.certain);
  CHECK(elapsed.time == units::Duration::minutes(2));
}

TEST_CASE("elapsed time is never negative", "[clock]") {
  CHECK(waits::elapsedBetween(at(5, "a", 10), at(5, "a", 2), {}).time == units::Duration());
  CHECK(waits::elapsedBetween(at(5, "a", 10), at(1, "b", 0), {}).time >= units::Duration());
}
