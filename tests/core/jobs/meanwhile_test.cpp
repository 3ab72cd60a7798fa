// What is offered for the hands while a piece waits: nothing that could still be in hand when a test is due.
#include "core/jobs/meanwhile.h"

#include "core/base/text.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using units::Duration;

namespace {

const std::string kAlways = R"("when": {"always": true})";

std::string technique(const std::string& id, const std::string& makes, const std::string& members,
                      const std::string& late = "3 min") {
  const std::string usual = R"({"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"})";
  const std::string said =
      R"({"early": "1 min", "likely": "2 min", "late": ")" + late + R"(", "source": "common practice"})";
  return base::replaceAll(oneStepTechnique(id, '"' + makes + '"', kAlways, members), usual, said);
}

// Paint that dries from a quarter of an hour on, and what needs it dry.
Bench painted() {
  craft::Catalogue catalogue;
  addTechnique(catalogue, technique("paint", "piece.painted", R"("waits": [{"id": "dry", "kind": "dry",
    "title": "paint dries", "makes": "piece.dry", "opens": {"early": "15 min", "likely": "20 min", "late": "30 min"},
    "model": "none", "test": "Touch it.", "source": "common practice"}], )"));
  addTechnique(catalogue, technique("varnish", "piece.varnished", R"("needs": ["piece.dry"], )"));
  Bench bench(demoJobText(), catalogue);
  REQUIRE(bench.finish("paint/act").empty());
  REQUIRE(bench.place().kind == jobs::BenchStand::Kind::Waiting);
  return bench;
}

// One act that takes so long at the most, of a piece due on that day.
Bench other(const std::string& late, const std::string& due = "2026-12-11") {
  craft::Catalogue catalogue;
  addTechnique(catalogue, technique("square", "piece.square", "", late));
  return {demoJobWith("2026-12-11", due), catalogue};
}

// A size that may close after forty minutes and was found open, with the laying it gates.
Bench sized(const std::string& late) {
  craft::Catalogue catalogue;
  addTechnique(catalogue, technique("size", "piece.sized", R"("waits": [{"id": "tack", "kind": "tack",
    "title": "size tacks", "makes": "piece.tack", "opens": {"early": "1 min", "likely": "2 min", "late": "3 min"},
    "closes": {"early": "40 min", "likely": "60 min", "late": "100 min"}, "model": "none", "test": "Touch it.",
    "source": "common practice", "ifMissed": {"do": "Size again.", "ends": ["piece.sized"]}}], )"));
  addTechnique(catalogue, technique("lay", "piece.laid", R"("needs": ["piece.tack"], )", late));
  Bench bench(demoJobText(), catalogue);
  REQUIRE(bench.finish("size/act").empty());
  return bench;
}

std::vector<jobs::JobAt> at(const std::vector<const Bench*>& benches) {
  std::vector<jobs::JobAt> jobs;
  for (const Bench* bench : benches) jobs.push_back(bench->at());
  return jobs;
}

std::optional<std::size_t> chosen(const std::vector<const Bench*>& benches) {
  const auto found = jobs::meanwhile(at(benches), 0);
  return found ? std::optional(found->job) : std::nullopt;
}

}  // namespace

TEST_CASE("an act is offered while a piece waits only where it surely ends before the test", "[meanwhile]") {
  Bench waits = painted();
  const auto free = jobs::freeUntilTest(at({&waits}));
  REQUIRE(free);
  // One in five is dry by then, and never before the earliest stated time.
  REQUIRE(*free >= Duration::minutes(15));
  REQUIRE(*free <= Duration::minutes(20));
  const Bench shorter = other("12 min");
  const Bench longer = other("25 min");
  CHECK(chosen({&waits, &shorter}) == 1);
  CHECK(jobs::meanwhile(at({&waits, &shorter}), 0)->work == Duration::minutes(12));
  CHECK_FALSE(chosen({&waits, &longer}));
  CHECK(chosen({&waits, &longer, &shorter}) == 2);
  // As time goes by there is less and less room for it.
  waits.advance(free->inMinutes() - 12);
  CHECK(chosen({&waits, &shorter}) == 1);
  waits.advance(0.5);
  CHECK_FALSE(chosen({&waits, &shorter}));
  // The test is due: it comes first, however short the act.
  waits.advance(13);
  CHECK(jobs::freeUntilTest(at({&waits})) == Duration());
  const Bench shortest = other("3 min");
  CHECK_FALSE(chosen({&waits, &shortest}));
}

TEST_CASE("the test of any piece ends the time that is free, and a piece that does not wait has none", "[meanwhile]") {
  Bench waits = painted();
  const Bench filler = other("12 min");
  CHECK(chosen({&waits, &filler}) == 1);
  // Its own test comes ten minutes before that of the piece on the bench.
  Bench earlier = painted();
  earlier.advance(10);
  CHECK(jobs::freeUntilTest(at({&waits, &earlier})) < Duration::minutes(10));
  CHECK_FALSE(chosen({&waits, &filler, &earlier}));
  CHECK_FALSE(jobs::meanwhile(at({&filler, &waits}), 0));
  CHECK_FALSE(jobs::freeUntilTest(at({&filler})));
}

TEST_CASE("of several acts the piece that is due first is gone on with, then the one that fills the time best",
          "[meanwhile]") {
  const Bench waits = painted();
  const Bench undated = other("14 min", "2026-12-11");
  const Bench sooner = other("4 min", "2026-12-01");
  const Bench fuller = other("9 min", "2026-12-01");
  CHECK(chosen({&waits, &undated, &sooner}) == 2);
  CHECK(chosen({&waits, &undated, &sooner, &fuller}) == 3);
  CHECK(chosen({&waits, &fuller, &sooner, &undated}) == 1);
}

TEST_CASE("what an open window gates goes before all else, and its own closing does not stand against it",
          "[meanwhile]") {
  const Bench waits = painted();
  Bench open = sized("10 min");
  const Bench sooner = other("4 min", "2026-12-01");
  // Nobody has found it open yet: its test is due, and nothing else is offered beside it.
  open.advance(10);
  CHECK_FALSE(chosen({&waits, &open, &sooner}));
  const std::string wait = open.state().waits.begin()->first;
  REQUIRE(open.ask(intents::LookAt{wait, intents::Verdict::Tacky}).empty());
  CHECK(open.shown() == "lay/act");
  CHECK(chosen({&waits, &open, &sooner}) == 1);
  // One that takes longer than the time left at the piece that waits is not offered, open or not.
  Bench slow = sized("30 min");
  slow.advance(10);
  REQUIRE(slow.ask(intents::LookAt{wait, intents::Verdict::Tacky}).empty());
  CHECK(chosen({&waits, &slow, &sooner}) == 2);
}

TEST_CASE("an act in hand is gone on with, for what is left of it", "[meanwhile]") {
  const Bench waits = painted();
  Bench begun = other("20 min");
  const Bench sooner = other("4 min", "2026-12-01");
  CHECK(chosen({&waits, &begun, &sooner}) == 2);
  REQUIRE(begun.ask(intents::BeginStep{"square/act"}).empty());
  begun.advance(10);
  CHECK(chosen({&waits, &begun, &sooner}) == 1);
  CHECK(jobs::meanwhile(at({&waits, &begun}), 0)->work == Duration::minutes(10));
}

TEST_CASE("nothing is offered of a piece that is put away, nor while nobody knows how long the tablet was off",
          "[meanwhile]") {
  Bench waits = painted();
  Bench away = other("4 min");
  CHECK(chosen({&waits, &away}) == 1);
  REQUIRE(away.ask(intents::PutAway{}).empty());
  CHECK_FALSE(chosen({&waits, &away}));
  const Bench there = other("4 min");
  waits.setSynced(false);
  waits.reboot(5);
  CHECK_FALSE(chosen({&waits, &there}));
}
