#include "core/waits/clock.h"

#include "tests/support/catch.h"

using namespace core;
using units::Duration;
using waits::Certainty;
using waits::ClockReading;

namespace {

constexpr std::int64_t kMinute = 60'000;
constexpr std::int64_t kDay = 24 * 60 * kMinute;
constexpr std::int64_t kThen = waits::kEarliestBelievableUtc + 400 * kDay;

ClockReading at(std::int64_t utc, const char* boot, std::int64_t upMilliseconds, bool synced = true) {
  return {utc, boot, upMilliseconds * 1'000'000, synced};
}

}  // namespace

TEST_CASE("within a boot the wall clock counts for nothing", "[clock]") {
  const auto start = at(1'000'000, "a", 5 * kMinute, false);
  for (const std::int64_t wall : {std::int64_t{0}, std::int64_t{1'000'000}, kThen}) {
    const auto elapsed = waits::elapsedBetween(start, at(wall, "a", 12 * kMinute, false), {});
    CHECK(elapsed.certainty == Certainty::Certain);
    CHECK(elapsed.time == Duration::minutes(7));
    CHECK(elapsed.most == Duration::minutes(7));
  }
}

TEST_CASE("across boots a wall clock that a time server steers on both sides is believed", "[clock]") {
  const auto start = at(kThen, "a", 5 * kMinute);
  const auto elapsed = waits::elapsedBetween(start, at(kThen + 90 * kMinute, "b", kMinute), {});
  CHECK(elapsed.certainty == Certainty::Certain);
  CHECK(elapsed.time == Duration::minutes(90));
}

TEST_CASE("a wall clock that ran backwards is not believed: the least it can be, and asked about", "[clock]") {
  const auto start = at(kThen, "a", 5 * kMinute);
  waits::ClockLog log;
  log.heartbeats.push_back(at(kThen + 20 * kMinute, "a", 25 * kMinute));
  const auto elapsed = waits::elapsedBetween(start, at(kThen - kDay, "b", 3 * kMinute), log);
  CHECK(elapsed.certainty == Certainty::Unknown);
  CHECK(elapsed.askAbout == "b");
  CHECK(elapsed.time == Duration::minutes(23));  // twenty seen running, three since
  CHECK(elapsed.most == Duration::minutes(23) + waits::kLongestBelievedOff);
}

TEST_CASE("a month off, or a clock from before the program was, is not believed", "[clock]") {
  const auto start = at(kThen, "a", 5 * kMinute);
  CHECK(waits::elapsedBetween(start, at(kThen + 31 * kDay, "b", 2 * kMinute), {}).certainty == Certainty::Unknown);
  CHECK(waits::elapsedBetween(start, at(0, "b", 2 * kMinute), {}).certainty == Certainty::Unknown);
}

TEST_CASE("a clock nobody steers is waited for a minute and then asked about, with its own answer as the most",
          "[clock]") {
  const auto start = at(kThen, "a", 5 * kMinute);
  waits::ClockLog log;
  log.opened = at(kThen + 60 * kMinute, "b", 10 * kMinute, false);
  const auto soon = waits::elapsedBetween(start, at(kThen + 60 * kMinute, "b", 10 * kMinute + 30'000, false), log);
  CHECK(soon.certainty == Certainty::Checking);
  CHECK(soon.time == Duration::milliseconds(10 * kMinute + 30'000));
  const auto later = waits::elapsedBetween(start, at(kThen + 62 * kMinute, "b", 12 * kMinute, false), log);
  CHECK(later.certainty == Certainty::Unknown);
  CHECK(later.most == Duration::minutes(62));
  // The server answers after all.
  const auto steered = waits::elapsedBetween(start, at(kThen + 92 * kMinute, "b", 12 * kMinute, true), log);
  CHECK(steered.certainty == Certainty::Certain);
  CHECK(steered.time == Duration::minutes(92));
}

TEST_CASE("a wall clock found wrong at the start is corrected by what the same boot said later", "[clock]") {
  // Started a day behind; steered ten minutes later; off for half an hour after that.
  const auto start = at(kThen - kDay, "a", 5 * kMinute, false);
  waits::ClockLog log;
  log.heartbeats.push_back(at(kThen + 10 * kMinute, "a", 15 * kMinute, true));
  const auto elapsed = waits::elapsedBetween(start, at(kThen + 42 * kMinute, "b", 2 * kMinute), log);
  CHECK(elapsed.certainty == Certainty::Certain);
  CHECK(elapsed.time == Duration::minutes(42));
}

TEST_CASE("what the maker tells of an off-time counts, and is told for good", "[clock]") {
  const auto start = at(kThen, "a", 5 * kMinute);
  waits::ClockLog log;
  log.toldOff["b"] = Duration::minutes(60);
  const auto elapsed = waits::elapsedBetween(start, at(0, "b", 2 * kMinute, false), log);
  CHECK(elapsed.certainty == Certainty::Told);
  CHECK(elapsed.time == Duration::minutes(62));
}

TEST_CASE("several boots add up, each off-time by itself", "[clock]") {
  const auto start = at(kThen, "a", kMinute);
  waits::ClockLog log;
  log.heartbeats = {at(kThen + 9 * kMinute, "a", 10 * kMinute), at(kThen + 20 * kMinute, "b", 5 * kMinute),
                    at(0, "c", 7 * kMinute, false)};
  log.toldOff["c"] = Duration::minutes(3);
  log.toldOff["d"] = Duration::minutes(2);
  const auto elapsed = waits::elapsedBetween(start, at(0, "d", 4 * kMinute, false), log);
  CHECK(elapsed.certainty == Certainty::Told);
  // 9 running, 6 off, 5 running, 3 off, 7 running, 2 off, 4 running.
  CHECK(elapsed.time == Duration::minutes(36));
  CHECK(waits::offByWallClock("b", at(0, "d", 4 * kMinute, false), log) == Duration::minutes(6));
  CHECK_FALSE(waits::offByWallClock("c", at(0, "d", 4 * kMinute, false), log));
}

TEST_CASE("elapsed time is never negative", "[clock]") {
  CHECK(waits::elapsedBetween(at(5, "a", 10), at(5, "a", 2), {}).time == Duration());
  CHECK(waits::elapsedBetween(at(5, "a", 10), at(1, "b", 0), {}).time >= Duration());
}
