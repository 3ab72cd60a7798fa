#include "core/record/event.h"

#include "core/base/text.h"
#include "core/jobs/job_state.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

#include <algorithm>
#include <limits>
#include <random>

using namespace core;
using namespace tests;

TEST_CASE("the hybrid clock never runs backwards", "[event]") {
  record::Hlc last{1000, 0};
  last = record::tick(last, 990);
  CHECK(last == record::Hlc{1000, 1});
  last = record::tick(last, 1000);
  CHECK(last == record::Hlc{1000, 2});
  last = record::tick(last, 1001);
  CHECK(last == record::Hlc{1001, 0});
}

TEST_CASE("clock readings sort as text as they sort as numbers, and read back", "[event]") {
  const record::Hlc readings[] = {{0, 0}, {1, 0}, {9, 99}, {10, 0}, {1'764'063'195'123, 4}, {1'764'063'195'123, 12}};
  for (std::size_t i = 0; i < std::size(readings); ++i) {
    CHECK(record::parseHlc(record::text(readings[i])) == readings[i]);
    if (i > 0) CHECK(record::text(readings[i - 1]) < record::text(readings[i]));
  }
  CHECK(record::parseHlc("nonsense") == record::Hlc{});
  CHECK(record::parseHlc("0000000000000001-00000x") == record::Hlc{});
}

TEST_CASE("a wall clock nobody can believe moves no order", "[event]") {
  const record::Hlc last{1'764'000'000'000, 4};
  for (const std::int64_t wall :
       {waits::kLatestBelievableUtc + 1, std::int64_t{9'000'000'000'000'000}, std::numeric_limits<std::int64_t>::max(),
        std::int64_t{0}, std::int64_t{-1}, std::numeric_limits<std::int64_t>::min()}) {
    CHECK(record::tick(last, wall) == record::Hlc{1'764'000'000'000, 5});
    CHECK(record::isBelievable(record::tick(record::Hlc{}, wall)));
  }
  CHECK(record::tick(last, 1'764'000'000'001) == record::Hlc{1'764'000'000'001, 0});
}

TEST_CASE("a million acts within one millisecond sort as text as they came", "[event]") {
  record::Hlc last{1'764'000'000'000, record::kMostCounts - 2};
  for (int i = 0; i < 6; ++i) {
    const record::Hlc next = record::tick(last, 1'764'000'000'000);
    CHECK(last < next);
    CHECK(record::text(last) < record::text(next));
    CHECK(record::parseHlc(record::text(next)) == next);
    CHECK(record::text(next).size() == 23);
    last = next;
  }
  // At the very end of what is believed it stands, and what is written still is a place in time.
  const record::Hlc end{record::kMostMilliseconds, record::kMostCounts};
  CHECK(record::tick(end, 1'764'000'000'000) == end);
  CHECK(record::isBelievable(end));
}

TEST_CASE("what a record says of a clock is cut to what can be reckoned with", "[event]") {
  record::Event event;
  event.occurredUtc = std::numeric_limits<std::int64_t>::min();
  event.boottimeNanoseconds = std::numeric_limits<std::int64_t>::max();
  const waits::ClockReading early = event.clock();
  event.occurredUtc = std::numeric_limits<std::int64_t>::max();
  event.boottimeNanoseconds = std::numeric_limits<std::int64_t>::min();
  event.bootId = "another";
  const waits::ClockReading late = event.clock();
  CHECK(early.utcMilliseconds == -waits::kLatestWritableUtc);
  CHECK(early.boottimeNanoseconds == waits::kLongestUptime);
  CHECK(late.boottimeNanoseconds == 0);
  const auto between = waits::elapsedBetween(early, late, {});
  CHECK(between.time >= units::Duration());
  CHECK(between.time <= between.most);
}

TEST_CASE("the same events in any order, twice over, give the same state", "[event]") {
  Bench bench(demoJobText(), shippedTechniques());
  for (int i = 0; i < 12; ++i) bench.finishShown();
  const std::string expected = jobs::dump(bench.state());
  std::mt19937 random(3);
  auto events = bench.events();
  events.insert(events.end(), bench.events().begin(), bench.events().end());
  for (int round = 0; round < 20; ++round) {
    std::shuffle(events.begin(), events.end(), random);
    CHECK(jobs::dump(jobs::fold(bench.plan(), events)) == expected);
  }
}

TEST_CASE("an unknown event of the job is kept and makes the job read-only", "[event]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.finishShown();
  auto events = bench.events();
  record::Event strange = events.back();
  strange.eventId = "strange";
  strange.type = "GildedTwice";
  events.push_back(strange);
  strange.eventId = "newer";
  strange.type = record::StepDone::kType;
  strange.version = 2;
  events.push_back(strange);
  const auto state = jobs::fold(bench.plan(), events);
  CHECK(state.readOnly());
  CHECK(state.unknownEvents == std::vector<std::string>{"GildedTwice/1", "StepDone/2"});
  const shop::Shop shop;
  const jobs::JobAt at(state, shop, bench.now());
  const auto decision = decisions::decide(at, intents::Undo{state.lastIntent});
  REQUIRE_FALSE(decision);
  CHECK(decision.error().id == "record.read-only");
}

TEST_CASE("folding a prefix and then all is folding all", "[event]") {
  Bench bench(demoJobText(), shippedTechniques());
  std::vector<std::string> dumps;
  for (int i = 0; i < 10; ++i) {
    dumps.push_back(jobs::dump(bench.state()));
    bench.finishShown();
  }
  const auto all = bench.events();
  std::size_t matched = 0;
  for (std::size_t length = 0; length <= all.size(); ++length) {
    const auto prefix = jobs::dump(jobs::fold(bench.plan(), {all.begin(), all.begin() + static_cast<long>(length)}));
    if (matched < dumps.size() && prefix == dumps[matched]) ++matched;
  }
  CHECK(matched == dumps.size());
}
