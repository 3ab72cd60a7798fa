// A job as one file: out of one record and into another.
#include <algorithm>

#include "app/convert/content_hash.h"
#include "core/base/text.h"
#include "core/record/record_file.h"
#include "tests/app/workbench/bench.h"
#include "tests/support/many_jobs.h"

using core::base::replaceAll;
using core::jobs::BenchPlace;
using namespace tests;

namespace {

// Worked on until a preparation of the shop and a wait are in its record, and further.
std::string workedJob(StoredBench& bench, const std::string& name, int acts) {
  const std::string job = bench.takeIn(demoJob(name));
  for (int i = 0; i < acts && core::jobs::benchPlace(bench.work.at(job)).kind != BenchPlace::Kind::Finished; ++i) {
    bench.clock.advance(61'000);
    if (i % 7 == 3) {
      REQUIRE(bench.refusal(job, core::intents::Undo{bench.work.job(job)->lastIntent}) == "");
    } else {
      bench.goOn(job);
    }
    if (i % 10 == 5) REQUIRE(bench.work.submit(core::intents::OfShop{core::intents::EnterRoom{}}).id.empty());
  }
  return job;
}

}  // namespace

TEST_CASE("a job handed on is the same job there, and handed on again the same bytes") {
  const std::string name = GENERATE("pilots-chart", "heron", "tide-table");
  const int acts = GENERATE(0, 1, 25, 60, 400);
  INFO(name << " after " << acts);
  MemoryEventStore ours;
  StoredBench bench(ours);
  const std::string job = workedJob(bench, name, acts);
  const std::string file = bench.work.exportJob(job);
  MemoryEventStore theirs;
  StoredBench other(theirs, "another");
  const auto imported = other.work.importJob(file);
  INFO(said(imported));
  REQUIRE(imported.jobId == job);
  CHECK(imported.problems.empty());
  CHECK(stateOf(other, job) == stateOf(bench, job));
  CHECK(other.work.exportJob(job) == file);
  CHECK(other.work.jobText(job) == demoJob(name));
  CHECK(other.work.shop().rooms.empty());
  // A second time nothing is new.
  const auto events = theirs.all().size();
  const auto again = other.work.importJob(file);
  CHECK(again.jobId == job);
  CHECK(again.added == 0);
  CHECK(theirs.all().size() == events);
  // And a third bench reads it from the store alike.
  StoredBench third(theirs, "another");
  CHECK(stateOf(third, job) == stateOf(bench, job));
}

TEST_CASE("the whole record as it is kept for proof can be taken up too, less what is the shop's alone") {
  MemoryEventStore ours;
  StoredBench bench(ours);
  const std::string job = workedJob(bench, "pilots-chart", 40);
  MemoryEventStore theirs;
  StoredBench other(theirs, "another");
  const auto imported = other.work.importJob(bench.work.exportRecord(job));
  REQUIRE(imported.jobId == job);
  REQUIRE(imported.problems.size() == 1);
  CHECK(imported.problems[0].message.id == "import.shop-left-out");
  CHECK(stateOf(other, job) == stateOf(bench, job));
  CHECK(other.work.exportJob(job) == bench.work.exportJob(job));
}

TEST_CASE("one job worked on two tablets becomes one with the acts of both, whichever takes up first") {
  MemoryEventStore ours;
  MemoryEventStore theirs;
  StoredBench bench(ours);
  StoredBench other(theirs, "another");
  const std::string job = workedJob(bench, "pilots-chart", 12);
  REQUIRE(other.work.importJob(bench.work.exportJob(job)).added > 0);
  for (int i = 0; i < 3; ++i) {
    bench.clock.advance(1000);
    bench.goOn(job);
  }
  other.clock.advance(86'400'000);
  for (int i = 0; i < 5; ++i) {
    other.clock.advance(1000);
    other.goOn(job);
  }
  const std::string fromUs = bench.work.exportJob(job);
  const std::string fromThem = other.work.exportJob(job);
  REQUIRE(bench.work.importJob(fromThem).jobId == job);
  REQUIRE(other.work.importJob(fromUs).jobId == job);
  CHECK(stateOf(bench, job) == stateOf(other, job));
  CHECK(bench.work.exportJob(job) == other.work.exportJob(job));
  // Our next act comes after theirs, though our clock is a day behind.
  bench.goOn(job);
  const auto& all = ours.all();
  CHECK(std::max_element(all.begin(), all.end(), core::record::before)->deviceId == "tablet");
}

TEST_CASE("a file that is not what it says it is takes nothing up and says where") {
  MemoryEventStore ours;
  StoredBench bench(ours);
  const std::string job = workedJob(bench, "pilots-chart", 20);
  const std::string file = bench.work.exportJob(job);
  MemoryEventStore theirs;
  StoredBench other(theirs, "another");
  const auto refused = [&](const std::string& wrong) {
    REQUIRE(wrong != file);
    const auto imported = other.work.importJob(wrong);
    CHECK(imported.jobId.empty());
    CHECK(theirs.all().empty());
    CHECK(theirs.texts().empty());
    CHECK(other.work.jobs().empty());
    return said(imported);
  };
  CHECK(refused(replaceAll(file, "copper", "silver")).find("/texts/0 import.wrong-hash") == 0);
  const std::string hash = app::convert::contentHash(demoJob());
  CHECK(refused(replaceAll(file, hash, std::string(64, '0'))).find("import.wrong-hash") != std::string::npos);
  CHECK(refused(file.substr(0, file.size() / 2)).find("json.syntax") != std::string::npos);
  CHECK(refused(std::string(core::record::kMaximumRecordBytes, ' ') + file).find("json.too-large") !=
        std::string::npos);
  CHECK(refused(demoJob()).find("import.no-record") != std::string::npos);
  auto read = core::record::readRecord(file);
  REQUIRE(read.record.has_value());
  read.record->texts.pop_back();
  CHECK(refused(core::record::writeRecord(*read.record)).find("kept.text-missing") != std::string::npos);
}

TEST_CASE("another content under an event id that is there is refused, and so is another job under its id") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string job = workedJob(bench, "pilots-chart", 6);
  const std::string before = stateOf(bench, job);
  const auto read = core::record::readRecord(bench.work.exportJob(job));
  REQUIRE(read.record.has_value());
  core::record::RecordFile record = *read.record;
  SECTION("an event") {
    record.events[3].occurredUtc += 1;
    const auto imported = bench.work.importJob(core::record::writeRecord(record));
    CHECK(imported.jobId.empty());
    CHECK(said(imported).find("/events/3 import.event-differs") == 0);
  }
  SECTION("a taking in") {
    record.events[0].eventId = "another-id";
    record.events[0].deviceId = "another-device";
    const auto imported = bench.work.importJob(core::record::writeRecord(record));
    CHECK(imported.jobId.empty());
    CHECK(said(imported).find("/job import.other-job") == 0);
  }
  SECTION("a number of a device's count that is taken") {
    auto more = record.events.back();
    more.eventId = "more";
    more.deviceSequence = 1;
    record.events = {record.events[1], record.events[2], more};
    auto taken = read.record->events[0];
    record.events.push_back(taken);
    record.events.erase(std::remove_if(record.events.begin(), record.events.end(),
                                       [](const auto& e) { return e.deviceSequence == 1 && e.eventId != "more"; }),
                        record.events.end());
    taken.deviceSequence = 99'999;
    record.events.push_back(taken);
    CHECK(bench.work.importJob(core::record::writeRecord(record)).jobId.empty());
  }
  CHECK(stateOf(bench, job) == before);
  StoredBench again(store);
  CHECK(stateOf(again, job) == before);
}

TEST_CASE("a job that cannot be kept is not taken up by half") {
  MemoryEventStore ours;
  StoredBench bench(ours);
  const std::string job = workedJob(bench, "pilots-chart", 6);
  MemoryEventStore theirs;
  StoredBench other(theirs, "another");
  theirs.failWrites(core::base::Message("store.full"));
  const auto imported = other.work.importJob(bench.work.exportJob(job));
  CHECK(imported.jobId.empty());
  REQUIRE(imported.refusals.size() == 1);
  CHECK(imported.refusals[0].id == "store.full");
  CHECK(other.work.jobs().empty());
  theirs.failWrites({});
  CHECK(other.work.importJob(bench.work.exportJob(job)).jobId == job);
}

TEST_CASE("events this program does not know are taken up as they are, and the job is then read-only") {
  MemoryEventStore ours;
  StoredBench bench(ours);
  const std::string job = workedJob(bench, "pilots-chart", 3);
  auto read = core::record::readRecord(bench.work.exportJob(job));
  REQUIRE(read.record.has_value());
  auto strange = read.record->events.back();
  strange.eventId = "strange";
  strange.deviceId = "later-program";
  strange.type = "GlazedTwice";
  strange.version = 3;
  strange.payload = core::base::Value::object().set("deep", core::base::Value::texts({"a", "b"}));
  read.record->events.push_back(strange);
  const std::string file = core::record::writeRecord(*read.record);
  MemoryEventStore theirs;
  StoredBench other(theirs, "another");
  REQUIRE(other.work.importJob(file).jobId == job);
  CHECK(other.work.job(job)->readOnly());
  CHECK(other.work.exportJob(job) == file);
}

TEST_CASE("a job made once more is another job with the next number, and says what is another in it") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string job = workedJob(bench, "pilots-chart", 6);
  const std::string first = bench.work.jobs().at(0).reference;
  const auto taken = bench.work.duplicate(job);
  REQUIRE_FALSE(taken.jobId.empty());
  CHECK(taken.jobId != job);
  CHECK_FALSE(taken.already);
  CHECK(bench.work.jobs().at(1).reference == first + " / 2");
  CHECK(bench.work.jobs().at(1).title == bench.work.jobs().at(0).title);
  CHECK(bench.work.jobs().at(1).due.empty());
  REQUIRE(taken.notes.size() == 2);
  CHECK(core::base::dump(taken.notes[0]) == "job.numbered reference=" + first + " / 2");
  CHECK(taken.notes[1].id == "job.due-left-out");
  const auto third = bench.work.duplicate(taken.jobId);
  CHECK(third.notes.size() == 1);
  CHECK(bench.work.jobs().at(2).reference == first + " / 3");
  CHECK(bench.work.duplicate("no such job").jobId.empty());
  // The figures are the first one's.
  CHECK(bench.work.job(third.jobId)->design->figures.all().size() ==
        bench.work.job(job)->plan->design.figures.all().size());
}
