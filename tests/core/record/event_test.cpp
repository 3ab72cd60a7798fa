#include "core/record/event.h"

#include "core/base/text.h"
#include "core/record/job_state.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

#include <algorithm>
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

TEST_CASE("the same events in any order, twice over, give the same state", "[event]") {
  Bench bench(demoJobText(), shippedTechniques());
  for (int i = 0; i < 12; ++i) bench.finishShown();
  const std::string expected = record::dump(bench.state());
  std::mt19937 random(3);
  auto events = bench.events();
  events.insert(events.end(), bench.events().begin(), bench.events().end());
  for (int round = 0; round < 20; ++round) {
    std::shuffle(events.begin(), events.end(), random);
    CHECK(record::dump(record::fold(bench.plan(), events)) == expected);
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
  strange.type = record::type::kStepDone;
  strange.version = 2;
  events.push_back(strange);
  const auto state = record::fold(bench.plan(), events);
  CHECK(state.readOnly());
  CHECK(state.unknownEvents == std::vector<std::string>{"GildedTwice/1", "StepDone/2"});
  const record::Shop shop;
  const record::JobAt at(state, shop, bench.now());
  const auto decision = record::decide(at, intents::Undo{state.lastIntent});
  REQUIRE_FALSE(decision);
  CHECK(decision.error().id == "record.read-only");
}

TEST_CASE("folding a prefix and then all is folding all", "[event]") {
  Bench bench(demoJobText(), shippedTechniques());
  std::vector<std::string> dumps;
  for (int i = 0; i < 10; ++i) {
    dumps.push_back(record::dump(bench.state()));
    bench.finishShown();
  }
  const auto all = bench.events();
  std::size_t matched = 0;
  for (std::size_t length = 0; length <= all.size(); ++length) {
    const auto prefix =
        record::dump(record::fold(bench.plan(), {all.begin(), all.begin() + static_cast<long>(length)}));
    if (matched < dumps.size() && prefix == dumps[matched]) ++matched;
  }
  CHECK(matched == dumps.size());
}
