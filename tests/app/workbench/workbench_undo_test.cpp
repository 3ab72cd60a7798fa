// Taking back, on the real store, through restarts; and two devices' events in either order.
#include <QTemporaryDir>

#include "app/stores/sqlite_event_store.h"
#include "tests/app/workbench/bench.h"
#include "tests/app/workbench/own_store.h"

using namespace tests;

TEST_CASE("done, undone, redone, undone, reopened: as if never done, and the act is still in the log") {
  QTemporaryDir folder;
  std::string job;
  std::string never;
  std::string act;
  {
    const auto store = openIn(folder);
    StoredBench bench(*store, "this-tablet");
    job = bench.takeIn(demoJob());
    for (int acts = 0; acts < 5; ++acts) bench.goOn(job);
    never = core::jobs::dump(*bench.work.job(job));
    bench.goOn(job);
    act = bench.work.lastIntentId();
    const std::string done = core::jobs::dump(*bench.work.job(job));
    REQUIRE(done != never);
    REQUIRE(bench.refusal(job, core::intents::Undo{act}) == "");
    CHECK(core::jobs::dump(*bench.work.job(job)) == never);
    REQUIRE(bench.refusal(job, core::intents::Undo{bench.work.lastIntentId()}) == "");
    CHECK(core::jobs::dump(*bench.work.job(job)) == done);
    REQUIRE(bench.refusal(job, core::intents::Undo{act}) == "");
    CHECK(core::jobs::dump(*bench.work.job(job)) == never);
  }
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  REQUIRE(bench.work.job(job) != nullptr);
  CHECK(core::jobs::dump(*bench.work.job(job)) == never);
  const auto& log = bench.work.job(job)->log;
  const auto line = std::find_if(log.begin(), log.end(), [&](const auto& one) { return one.intentId == act; });
  REQUIRE(line != log.end());
  CHECK(line->voided);
  CHECK(bench.work.exportRecord(job).find(act) != std::string::npos);
}

TEST_CASE("an act can be taken back after a restart") {
  QTemporaryDir folder;
  std::string job;
  std::string before;
  {
    const auto store = openIn(folder);
    StoredBench bench(*store, "this-tablet");
    job = bench.takeIn(demoJob());
    before = core::jobs::dump(*bench.work.job(job));
    bench.goOn(job);
  }
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  REQUIRE(bench.refusal(job, core::intents::Undo{bench.work.lastIntentId()}) == "");
  CHECK(core::jobs::dump(*bench.work.job(job)) == before);
}

TEST_CASE("two devices' events fold to the same state in whichever order they were brought together") {
  MemoryEventStore tablet;
  std::string job;
  {
    StoredBench bench(tablet, "tablet");
    job = bench.takeIn(demoJob());
    bench.goOn(job);
  }
  // The second device starts from what the first had, and both go on apart.
  const auto common = tablet.all();
  std::vector<core::record::StoredText> texts;
  for (const auto& technique : tablet.texts()) texts.push_back(technique.second);
  MemoryEventStore second;
  REQUIRE(second.append(common, texts).ok());
  {
    StoredBench bench(tablet, "tablet");
    bench.clock.advance(1000);
    for (int acts = 0; acts < 4; ++acts) bench.goOn(job);
  }
  {
    StoredBench bench(second, "spare");
    bench.clock.advance(1500);
    for (int acts = 0; acts < 3; ++acts) bench.goOn(job);
    REQUIRE(bench.refusal(job, core::intents::Undo{bench.work.lastIntentId()}) == "");
  }
  const auto together = [&](const std::vector<core::record::Event>& first,
                            const std::vector<core::record::Event>& later) {
    MemoryEventStore store;
    REQUIRE(store.append(first, texts).ok());
    REQUIRE(store.append(later, texts).ok());
    REQUIRE(store.append(first, texts).ok());
    StoredBench bench(store, "third");
    REQUIRE(bench.work.job(job) != nullptr);
    return core::jobs::dump(*bench.work.job(job));
  };
  CHECK(together(tablet.all(), second.all()) == together(second.all(), tablet.all()));
}
