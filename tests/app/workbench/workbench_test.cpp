#include <QObject>
#include <algorithm>

#include "core/base/json.h"
#include "core/base/text.h"
#include "core/decisions/decide.h"
#include "tests/app/workbench/bench.h"

using namespace tests;

TEST_CASE("screens, schedule and acknowledgement learn of an act after it is kept") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string job = bench.takeIn(demoJob());
  std::vector<std::string> told;
  QObject::connect(&bench.work, &app::workbench::Workbench::jobChanged, [&](const QString& id) {
    CHECK(store.all().size() > 1);
    told.push_back("changed " + id.toStdString());
  });
  bench.work.onCommitted = [&](const std::string& intentId) {
    CHECK(store.all().back().intentId == intentId);
    told.push_back("committed");
  };
  bench.goOn(job);
  CHECK(told == std::vector<std::string>{"changed " + job, "committed"});
  CHECK(bench.work.lastIntentId() == store.all().back().intentId);
}

TEST_CASE("an act that cannot be kept changes nothing and tells nobody") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string job = bench.takeIn(demoJob());
  const std::string before = core::jobs::dump(*bench.work.job(job));
  const std::string last = bench.work.lastIntentId();
  bool told = false;
  QObject::connect(&bench.work, &app::workbench::Workbench::jobChanged, [&](const QString&) { told = true; });
  bench.work.onCommitted = [&](const std::string&) { told = true; };
  store.failWrites(core::base::Message("store.full"));
  const auto place = core::jobs::benchPlace(bench.work.at(job));
  CHECK(bench.refusal(job, bench.finish(job, *place.step)) == "store.full");
  CHECK(core::jobs::dump(*bench.work.job(job)) == before);
  CHECK(bench.work.lastIntentId() == last);
  CHECK_FALSE(told);
  store.failWrites({});
  bench.goOn(job);
  // No number of the device's count was used up by the act that failed.
  for (std::size_t index = 0; index < store.all().size(); ++index) {
    CHECK(store.all()[index].deviceSequence == static_cast<std::int64_t>(index) + 1);
  }
}

TEST_CASE("what the core refuses is passed on and not kept") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string job = bench.takeIn(demoJob());
  const auto events = store.all().size();
  CHECK_FALSE(bench.work.submit(core::intents::OfJob{job, core::intents::BeginStep{"no/such@step"}}).id.empty());
  CHECK(bench.work.submit(core::intents::OfJob{"no such job", core::intents::BeginStep{"no/such@step"}}).id ==
        "bench.no-such-job");
  CHECK(store.all().size() == events);
}

TEST_CASE("stamps rise and go on after a restart, even with the wall clock set back") {
  MemoryEventStore store;
  std::string job;
  {
    StoredBench bench(store);
    job = bench.takeIn(demoJob());
    bench.goOn(job);
  }
  StoredBench bench(store);
  bench.clock.jump(-86'400'000);
  for (int act = 0; act < 3; ++act) bench.goOn(job);
  for (std::size_t index = 1; index < store.all().size(); ++index) {
    CHECK(store.all()[index].deviceSequence == store.all()[index - 1].deviceSequence + 1);
    CHECK(store.all()[index - 1].hlc < store.all()[index].hlc);
  }
}

TEST_CASE("the whole demo job can be worked to its end, and is the same after every restart") {
  MemoryEventStore store;
  std::string job;
  {
    StoredBench bench(store);
    job = bench.takeIn(demoJob(GENERATE("pilots-chart", "heron")));
    for (int acts = 0; core::jobs::benchPlace(bench.work.at(job)).kind != core::jobs::BenchPlace::Kind::Finished;
         ++acts) {
      REQUIRE(acts < 2000);
      bench.clock.advance(1000);
      bench.goOn(job);
      if (acts % 10 == 0) {
        StoredBench again(store);
        CHECK(core::jobs::dump(*again.work.job(job)) == core::jobs::dump(*bench.work.job(job)));
      }
    }
  }
  StoredBench again(store);
  CHECK(core::jobs::benchPlace(again.work.at(job)).kind == core::jobs::BenchPlace::Kind::Finished);
}

TEST_CASE("a preparation of the shop done in one job is done in the other") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string first = bench.takeIn(demoJob());
  const std::string second = bench.takeIn(demoJob() + "\n");
  const auto shared = [&] {
    for (const auto& event : store.all()) {
      if (event.stream == "bench/tablet") return true;
    }
    return false;
  };
  std::vector<std::string> changed;
  QObject::connect(&bench.work, &app::workbench::Workbench::jobChanged,
                   [&](const QString& id) { changed.push_back(id.toStdString()); });
  for (int acts = 0; !shared(); ++acts) {
    REQUIRE(acts < 500);
    changed.clear();
    bench.goOn(first);
  }
  CHECK(changed == std::vector<std::string>{first, second});
  const std::string step = store.all().back().payload.find("step")->asText();
  const auto index = bench.work.job(second)->plan->workflow.indexOf(step);
  REQUIRE(index.has_value());
  CHECK(bench.work.at(second).isDone(*index));

  // Taken back in the first, it is taken back in the second, and done again with it.
  const std::string act = bench.work.lastIntentId();
  REQUIRE(bench.refusal(first, core::intents::Undo{act}) == "");
  CHECK_FALSE(bench.work.at(first).isDone(*index));
  CHECK_FALSE(bench.work.at(second).isDone(*index));
  REQUIRE(bench.refusal(first, core::intents::Undo{bench.work.lastIntentId()}) == "");
  CHECK(bench.work.at(first).isDone(*index));
  CHECK(bench.work.at(second).isDone(*index));
}

TEST_CASE("a preparation that another job has built on is not taken back, naming what rests on it") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string first = bench.takeIn(demoJob());
  const std::string second = bench.takeIn(demoJob() + "\n");
  const auto ofBench = [&] { return store.all().back().stream == "bench/tablet"; };
  for (int acts = 0; !ofBench(); ++acts) {
    REQUIRE(acts < 500);
    bench.goOn(first);
  }
  const std::string act = bench.work.lastIntentId();
  std::string refusal;
  for (int acts = 0; refusal.empty(); ++acts) {
    REQUIRE(acts < 500);
    bench.goOn(second);
    refusal = bench.refusal(first, core::intents::Undo{act});
    if (refusal.empty()) REQUIRE(bench.refusal(first, core::intents::Undo{bench.work.lastIntentId()}) == "");
  }
  CHECK(core::base::startsWith(refusal, "record.others-rest-on-it steps="));
  const auto& log = bench.work.job(first)->log;
  CHECK(std::none_of(log.begin(), log.end(), [&](const auto& line) { return line.intentId == act && line.voided; }));
}

TEST_CASE("waits go on through a reboot by the wall clock and the last heartbeat") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string job = bench.takeIn(demoJob());
  for (int acts = 0; bench.work.job(job)->waits.empty(); ++acts) {
    REQUIRE(acts < 500);
    bench.goOn(job);
  }
  const auto elapsed = [&] {
    const auto at = bench.work.at(job);
    return at.waitState(at.state().waits.begin()->second).elapsed;
  };
  bench.clock.advance(60'000);
  REQUIRE(bench.work.heartbeat().id.empty());
  CHECK(elapsed().time.inMilliseconds() == 60'000);
  bench.clock.reboot(120'000, 20'000);
  CHECK(elapsed().time.inMilliseconds() == 200'000);
  CHECK(elapsed().known());
  bench.clock.jump(-150'000);
  CHECK(elapsed().certainty == core::waits::Certainty::Unknown);
  CHECK(elapsed().time.inMilliseconds() == 80'000);
}

TEST_CASE("the clock log tells a jump of the wall clock from a heartbeat") {
  MemoryEventStore store;
  StoredBench bench(store);
  for (int beat = 0; beat < 5; ++beat) {
    bench.clock.advance(30'000);
    REQUIRE(bench.work.heartbeat().id.empty());
  }
  CHECK(bench.work.shop().clockLog.heartbeats.size() == 1);
  bench.clock.jump(3'600'000);
  REQUIRE(bench.work.heartbeat().id.empty());
  CHECK(bench.work.shop().clockLog.heartbeats.size() == 2);
  bench.clock.setZone("Atlantic/Faroe");
  REQUIRE(bench.work.heartbeat().id.empty());
  CHECK(bench.work.shop().clockLog.heartbeats.size() == 3);
  store.failWrites(core::base::Message("store.full"));
  CHECK(bench.work.heartbeat().id == "store.full");
}

TEST_CASE("the schedule is published when a wait starts and is the same object until it changes") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string job = bench.takeIn(demoJob());
  int published = 0;
  QObject::connect(&bench.work, &app::workbench::Workbench::scheduleChanged, [&] { published += 1; });
  CHECK(bench.work.schedule()->alerts.empty());
  for (int acts = 0; bench.work.schedule()->alerts.empty(); ++acts) {
    REQUIRE(acts < 500);
    bench.goOn(job);
  }
  CHECK(published >= 1);
  const auto schedule = bench.work.schedule();
  CHECK(schedule->alerts.front().job == job);
  REQUIRE(bench.work.heartbeat().id.empty());
  CHECK(bench.work.schedule() == schedule);
  StoredBench again(store);
  CHECK(again.work.schedule()->alerts == schedule->alerts);
}

TEST_CASE("an exported record is JSON with every text and every event") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string job = bench.takeIn(demoJob());
  bench.goOn(job);
  const auto json = core::base::parseJson(bench.work.exportRecord(job));
  REQUIRE(json.readable);
  CHECK(json.problems.empty());
  CHECK(json.root.find("events")->items().size() == store.all().size());
  CHECK(json.root.find("texts")->items().at(0).find("body")->asText() == demoJob());
  CHECK(json.root.find("texts")->items().size() > 5);
  CHECK(bench.work.exportRecord("no such job").empty());
}
