#include <algorithm>
#include <random>

#include "core/decisions/offers.h"
#include "core/jobs/standing.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;

TEST_CASE("a job is put away and brought back, each once, and both can be taken back") {
  Bench bench(demoJobText(), shippedTechniques());
  const std::string before = jobs::dump(bench.state());
  CHECK(bench.ask(intents::BringBack{}) == "record.not-put-away");
  REQUIRE(bench.ask(intents::PutAway{}).empty());
  CHECK(bench.state().putAway);
  CHECK(bench.ask(intents::PutAway{}) == "record.already-put-away");
  const std::string act = bench.lastIntent();
  REQUIRE(bench.ask(intents::BringBack{}).empty());
  CHECK(jobs::dump(bench.state()) == before);
  REQUIRE(bench.ask(intents::Undo{bench.lastIntent()}).empty());
  CHECK(bench.state().putAway);
  REQUIRE(bench.ask(intents::Undo{act}).empty());
  CHECK(jobs::dump(bench.state()) == before);
}

TEST_CASE("a job put away is not gone on with until it is brought back") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.finishShown();
  const std::string step = bench.shown();
  REQUIRE(bench.ask(intents::PutAway{}).empty());
  CHECK(bench.finish(step) == "record.put-away");
  CHECK(bench.ask(intents::BeginStep{step}) == "record.put-away");
  const auto offers = decisions::offers(bench.at());
  CHECK(std::none_of(offers.begin(), offers.end(), [](const decisions::Offer& offer) {
    return std::holds_alternative<intents::FinishStep>(offer.intent) ||
           std::holds_alternative<intents::ReportFault>(offer.intent);
  }));
  REQUIRE(bench.ask(intents::BringBack{}).empty());
  CHECK(bench.finish(step).empty());
}

TEST_CASE("a job is not put away while a step is in hand or a wait would still call") {
  Bench bench(demoJobText(), shippedTechniques());
  REQUIRE(bench.ask(intents::BeginStep{bench.shown()}).empty());
  CHECK(bench.ask(intents::PutAway{}) == "record.put-away-in-hand");
  bench.finishShown();
  while (alerts::alertsOf(bench.at()).alerts.empty()) REQUIRE_FALSE(bench.finishShown().empty());
  CHECK(bench.ask(intents::PutAway{}) == "record.put-away-waits");
  CHECK_FALSE(jobs::rests(bench.state()));
}

TEST_CASE("putting away and bringing back fold to the same in any order and twice") {
  Bench bench(demoJobText(), shippedTechniques());
  for (int i = 0; i < 3; ++i) {
    REQUIRE(bench.ask(intents::PutAway{}).empty());
    if (i < 2) REQUIRE(bench.ask(intents::BringBack{}).empty());
  }
  std::vector<record::Event> events = bench.events();
  events.insert(events.end(), bench.events().begin(), bench.events().end());
  std::mt19937 random(3);
  for (int i = 0; i < 20; ++i) {
    std::shuffle(events.begin(), events.end(), random);
    CHECK(jobs::dump(jobs::fold(bench.plan(), events)) == jobs::dump(bench.state()));
  }
}

TEST_CASE("a job that rests looks the same at any time and calls for nothing") {
  Bench bench(demoJobText(), shippedTechniques());
  int rested = 0;
  for (int acts = 0; acts < 400 && bench.place().kind != jobs::BenchPlace::Kind::Finished; ++acts) {
    if (jobs::rests(bench.state())) {
      ++rested;
      const auto now = bench.place();
      Bench later = bench;
      later.advance(500.0 * 24 * 60);
      const auto then = later.place();
      CHECK(now.kind == then.kind);
      CHECK(now.step == then.step);
      CHECK(now.done == then.done);
      CHECK(alerts::alertsOf(later.at()).alerts.empty());
    }
    if (bench.finishShown().empty()) bench.advance(30);
  }
  CHECK(rested > 0);
  CHECK(jobs::rests(bench.state()));
  CHECK(jobs::settled(bench.state()));
}
