// Files of jobs that were made to harm, and records that such a file has reached already: whatever comes in, every act
// goes on, every job opens that opened, and what is handed on can be taken up.
#include <algorithm>
#include <limits>

#include "app/stores/sqlite_event_store.h"
#include "app/workbench/record_exchange.h"
#include "core/base/text.h"
#include "core/craft/technique_reader.h"
#include "core/record/record_file.h"
#include "tests/app/workbench/bench.h"
#include "tests/support/folders.h"
#include "tests/support/tiny_job.h"

using core::base::Value;
using core::record::Event;
using core::record::RecordFile;
using namespace tests;

namespace {

const app::workbench::Library& tinyLibrary() {
  static const app::workbench::Library made = [] {
    app::workbench::Library library;
    for (const char* text : {kTinyPaste, kTinySize}) {
      auto read = core::craft::readTechnique(text);
      REQUIRE(read.technique.has_value());
      library.texts[read.technique->id] = text;
      library.catalogue.add(*read.technique);
    }
    return library;
  }();
  return made;
}

struct TinyBench : StoredBench {
  explicit TinyBench(core::record::EventStore& store, const std::string& device = "tablet")
      : StoredBench(store, device, tinyLibrary()) {}
};

RecordFile recordOf(const StoredBench& bench, const std::string& job) {
  const auto read = core::record::readRecord(bench.work.exportJob(job));
  REQUIRE(read.record.has_value());
  return *read.record;
}

Event& add(RecordFile& record, std::string_view from, const char* type, std::int64_t sequence) {
  const std::string device(from);
  Event event = record.events.back();
  event.eventId = device + "-added-" + std::to_string(sequence);
  event.intentId = device + "-act-" + std::to_string(sequence);
  event.deviceId = device;
  event.deviceSequence = sequence;
  event.stream = "job/" + record.job;
  event.type = type;
  event.version = 1;
  event.hlc.milliseconds += sequence;
  event.payload = Value::object();
  record.events.push_back(event);
  return record.events.back();
}

// One more act of each kind, after a restart too: nothing that came in stands in its way.
void worksOn(core::record::EventStore& store, const std::string& job, const std::string& device = "tablet") {
  for (int round = 0; round < 2; ++round) {
    TinyBench bench(store, device);
    REQUIRE(bench.refusal(job, core::intents::AddNote{"goes on", ""}) == "");
    REQUIRE(bench.work.submit(core::intents::OfShop{core::intents::EnterRoom{}}).id.empty());
    const std::string other = bench.work.duplicate(job).jobId;
    REQUIRE_FALSE(other.empty());
    REQUIRE(bench.refusal(other, core::intents::AddNote{"goes on", ""}) == "");
  }
}

}  // namespace

TEST_CASE("an event that this bench is said to have written and does not hold is refused, whatever its number") {
  MemoryEventStore store;
  TinyBench bench(store);
  const std::string job = bench.takeIn(kTinyJob);
  bench.goOn(job);
  const RecordFile record = recordOf(bench, job);
  const std::size_t before = store.all().size();
  for (const std::int64_t sequence :
       {std::int64_t{77}, core::record::kMostSequence, std::numeric_limits<std::int64_t>::max() - 1}) {
    RecordFile wrong = record;
    add(wrong, "tablet", core::record::Heard::kType, 1).deviceSequence = sequence;
    const auto imported = bench.work.importJob(core::record::writeRecord(wrong));
    INFO(said(imported));
    CHECK(imported.jobId.empty());
    const std::string place = "/events/" + std::to_string(wrong.events.size() - 1);
    CHECK((said(imported).find(place + " import.not-written-here") == 0 ||
           said(imported).find(place + "/device_seq read.out-of-range") == 0));
    CHECK(store.all().size() == before);
  }
  // Its own events, as they are, are nothing new.
  CHECK(bench.work.importJob(core::record::writeRecord(record)).added == 0);
  worksOn(store, job);
}

TEST_CASE("a record that holds an event with a number or a clock at the end of all numbers opens and takes every act") {
  const auto spoil = [](core::record::EventStore& store, const std::string& job, std::int64_t sequence,
                        const core::record::Hlc& hlc) {
    Event event;
    event.eventId = "planted";
    event.deviceId = "tablet";
    event.deviceSequence = sequence;
    event.hlc = hlc;
    event.intentId = "planted-act";
    event.stream = "job/" + job;
    event.type = core::record::NoteAdded::kType;
    event.occurredUtc = event.recordedUtc = std::numeric_limits<std::int64_t>::max();
    event.boottimeNanoseconds = std::numeric_limits<std::int64_t>::max();
    event.bootId = "boot-1";
    event.payload = Value::object().set("text", Value::text("planted"));
    REQUIRE(store.append({event}, {}));
  };
  const std::int64_t sequence =
      GENERATE(std::int64_t{500}, core::record::kMostSequence, std::numeric_limits<std::int64_t>::max() - 1,
               std::numeric_limits<std::int64_t>::max());
  const std::int64_t milliseconds =
      GENERATE(std::int64_t{1'764'063'195'999}, core::waits::kLatestBelievableUtc,
               core::waits::kLatestBelievableUtc + 1, std::int64_t{9'999'999'999'999'999});
  INFO(sequence << " at " << milliseconds);
  SECTION("in memory") {
    MemoryEventStore store;
    std::string job;
    {
      TinyBench bench(store);
      job = bench.takeIn(kTinyJob);
    }
    spoil(store, job, sequence, {milliseconds, core::record::kMostCounts});
    worksOn(store, job);
    // Later acts are later in the order, and what takes back names them.
    TinyBench bench(store);
    bench.goOn(job);
    // Behind the last believable clock with the last number there is no place left: such an event stays the newest.
    const bool atTheEnd = sequence > 500 && milliseconds == core::waits::kLatestBelievableUtc;
    CHECK((bench.work.job(job)->lastIntent == bench.work.lastIntentId()) != atTheEnd);
  }
  SECTION("in a file") {
    const Folders folder;
    auto store = app::stores::SqliteEventStore::open(folder.path(QStringLiteral("record.sqlite")));
    REQUIRE(store);
    std::string job;
    {
      TinyBench bench(*store.value());
      job = bench.takeIn(kTinyJob);
    }
    spoil(*store.value(), job, sequence, {milliseconds, core::record::kMostCounts});
    worksOn(*store.value(), job);
  }
}

TEST_CASE("a tablet whose clock rolled over keeps the order, says it, and hands on what can be taken up") {
  MemoryEventStore ours;
  TinyBench bench(ours);
  const std::string job = bench.takeIn(kTinyJob);
  bench.goOn(job);
  const std::int64_t ahead = GENERATE(std::int64_t{80} * 366 * 86'400'000, std::int64_t{4'000'000'000'000'000},
                                      std::int64_t{-60} * 366 * 86'400'000);
  bench.clock.jump(ahead);
  for (int i = 0; i < 2; ++i) {
    bench.clock.advance(60'000);
    REQUIRE(bench.refusal(job, core::intents::AddNote{"while it was wrong", ""}) == "");
  }
  bench.clock.jump(-ahead);
  REQUIRE(bench.refusal(job, core::intents::AddNote{"put right", ""}) == "");
  for (const Event& event : ours.all()) CHECK(core::record::isBelievable(event.hlc));
  const auto timeline = bench.work.timeline(job, core::jobs::Order::OldestFirst);
  REQUIRE(timeline.size() > 3);
  CHECK(timeline.back().what.id == "timeline.noted");
  CHECK(timeline.back().timeKnown);
  CHECK_FALSE(timeline[timeline.size() - 2].timeKnown);
  CHECK_FALSE(timeline[timeline.size() - 3].timeKnown);
  MemoryEventStore theirs;
  TinyBench other(theirs, "another");
  const auto imported = other.work.importJob(bench.work.exportJob(job));
  INFO(said(imported));
  REQUIRE(imported.jobId == job);
  CHECK(imported.problems.empty());
  CHECK(core::jobs::dump(*other.work.job(job)) == core::jobs::dump(*bench.work.job(job)));
  worksOn(theirs, job, "another");
}

TEST_CASE("a job is taken in by its own stream alone, and what does not open is not kept") {
  MemoryEventStore ours;
  TinyBench bench(ours);
  const std::string job = bench.takeIn(kTinyJob);
  bench.goOn(job);
  const RecordFile good = recordOf(bench, job);
  RecordFile wrong = good;
  const auto own = std::find_if(wrong.events.begin(), wrong.events.end(),
                                [](const Event& event) { return event.type == core::record::JobTakenIn::kType; });
  Event decoy = *own;
  decoy.eventId = "decoy";
  decoy.deviceId = "stranger";
  decoy.deviceSequence = 1;
  decoy.stream = "bench/stranger";
  decoy.hlc = {1'000, 0};
  const char* how =
      GENERATE("no payload", "another version", "a text that is not there", "techniques that do not read");
  INFO(how);
  own->eventId = "broken";
  own->deviceId = "stranger";
  own->deviceSequence = 2;
  if (how == std::string("no payload")) own->payload = Value::object();
  if (how == std::string("another version")) own->version = 2;
  if (how == std::string("a text that is not there")) own->payload.set("job", Value::text(std::string(64, '0')));
  if (how == std::string("techniques that do not read")) {
    own->payload = Value::object().set("job", Value::text(std::string(64, '0'))).set("techniques", Value::integer(1));
  }
  wrong.events.insert(wrong.events.begin(), decoy);
  MemoryEventStore theirs;
  TinyBench other(theirs, "another");
  const auto imported = other.work.importJob(core::record::writeRecord(wrong));
  INFO(said(imported));
  CHECK(imported.jobId.empty());
  CHECK(imported.added == 0);
  CHECK(theirs.all().empty());
  CHECK(theirs.texts().empty());
  const auto taken = other.work.importJob(core::record::writeRecord(good));
  INFO(said(taken));
  REQUIRE(taken.jobId == job);
  CHECK(core::jobs::dump(*other.work.job(job)) == core::jobs::dump(*bench.work.job(job)));
}

TEST_CASE("a record poisoned by a taking in that opens nothing takes the true one up, and hands it on") {
  MemoryEventStore ours;
  TinyBench bench(ours);
  const std::string job = bench.takeIn(kTinyJob);
  bench.goOn(job);
  const RecordFile good = recordOf(bench, job);
  Event broken = good.events.front();
  broken.eventId = "broken";
  broken.deviceId = "stranger";
  broken.deviceSequence = 1;
  broken.hlc = {1'000, 0};
  broken.payload =
      GENERATE(false, true)
          ? Value::object()
          : Value::object().set("job", Value::text(std::string(64, '0'))).set("techniques", Value::object());
  MemoryEventStore theirs;
  REQUIRE(theirs.append({broken}, {}));
  {
    TinyBench other(theirs, "another");
    REQUIRE(other.work.jobs().size() == 1);
    CHECK_FALSE(other.work.jobs()[0].trouble.id.empty());
    const auto taken = other.work.importJob(core::record::writeRecord(good));
    INFO(said(taken));
    REQUIRE(taken.jobId == job);
    REQUIRE(other.work.job(job) != nullptr);
  }
  worksOn(theirs, job, "another");
  TinyBench other(theirs, "another");
  CHECK(other.work.jobs()[0].title == "Reed bed");
  MemoryEventStore thirds;
  TinyBench third(thirds, "third");
  const auto onwards = third.work.importJob(other.work.exportJob(job));
  INFO(said(onwards));
  CHECK(onwards.jobId == job);
  CHECK(core::jobs::dump(*third.work.job(job)) == core::jobs::dump(*other.work.job(job)));
}

TEST_CASE("every plan that taking renewals back can lead to is proven before a job is taken up") {
  MemoryEventStore ours;
  TinyBench bench(ours);
  const std::string job = bench.takeIn(kTinyJob);
  RecordFile record = recordOf(bench, job);
  const Value techniques = *record.events.front().payload.find("techniques");
  Value lacking = Value::object();
  for (const auto& [id, hash] : techniques.members()) lacking.set(id, Value::text(std::string(64, 'a')));
  add(record, "stranger", core::record::TechniquesRenewed::kType, 1).payload.set("techniques", lacking);
  add(record, "stranger", core::record::TechniquesRenewed::kType, 2).payload.set("techniques", techniques);
  MemoryEventStore theirs;
  TinyBench other(theirs, "another");
  auto imported = other.work.importJob(core::record::writeRecord(record));
  CHECK(imported.jobId.empty());
  CHECK(said(imported).find("kept.text-missing") != std::string::npos);
  CHECK(theirs.all().empty());
  for (int i = 3; i < 60; ++i) {
    Value some = lacking;
    some.set("more-" + std::to_string(i), Value::text(std::string(64, 'b')));
    add(record, "stranger", core::record::TechniquesRenewed::kType, i).payload.set("techniques", some);
  }
  imported = other.work.importJob(core::record::writeRecord(record));
  CHECK(imported.jobId.empty());
  CHECK(said(imported).find("import.too-many-plans") != std::string::npos);
}

TEST_CASE("another event under a number that is taken is refused at its place, in words") {
  MemoryEventStore ours;
  TinyBench bench(ours);
  const std::string job = bench.takeIn(kTinyJob);
  RecordFile record = recordOf(bench, job);
  add(record, "stranger", core::record::Heard::kType, 5);
  MemoryEventStore theirs;
  TinyBench other(theirs, "another");
  REQUIRE(other.work.importJob(core::record::writeRecord(record)).jobId == job);
  record.events.back().eventId = "collides";
  const std::size_t before = theirs.all().size();
  const auto imported = other.work.importJob(core::record::writeRecord(record));
  CHECK(imported.jobId.empty());
  CHECK(imported.refusals.empty());
  CHECK(said(imported).find("/events/" + std::to_string(record.events.size() - 1) + " import.number-taken number=5") ==
        0);
  CHECK(theirs.all().size() == before);
}

TEST_CASE("taking up another shop's job moves none of mine on, until I use what that shop has ready") {
  MemoryEventStore ours;
  TinyBench bench(ours);
  const std::string theirs = [&] {
    const std::string job = bench.takeIn(kTinyJob);
    bench.goOn(job);
    return job;
  }();
  const std::string file = bench.work.exportJob(theirs);
  const std::string worked = core::jobs::dump(*bench.work.job(theirs));
  MemoryEventStore store;
  TinyBench mine(store, "mine");
  const std::string job = mine.takeIn(core::base::replaceAll(std::string(kTinyJob), "Reed bed", "Mud flats"));
  const std::string before = core::jobs::dump(*mine.work.job(job));
  REQUIRE(mine.work.importJob(file).jobId == theirs);
  // What was worked with it in that very job stays true.
  CHECK(core::jobs::dump(*mine.work.job(theirs)) == worked);
  CHECK(worked.find("paste/soak done") != std::string::npos);
  CHECK(core::jobs::dump(*mine.work.job(job)) == before);
  REQUIRE(mine.work.job(job)->elsewhere.size() == 1);
  CHECK(mine.refusal(job, core::intents::AcceptPreparation{"paste/soak", "nobody"})
            .find("record.not-prepared-elsewhere") == 0);
  REQUIRE(mine.refusal(job, core::intents::AcceptPreparation{"paste/soak", "tablet"}) == "");
  CHECK(core::jobs::dump(*mine.work.job(job)).find("paste/soak done") != std::string::npos);
  // Handed on, it takes along what it was worked with.
  MemoryEventStore thirds;
  TinyBench third(thirds, "third");
  REQUIRE(third.work.importJob(mine.work.exportJob(job)).jobId == job);
  CHECK(core::jobs::dump(*third.work.job(job)) == core::jobs::dump(*mine.work.job(job)));
  // After a restart as well.
  TinyBench again(store, "mine");
  CHECK(core::jobs::dump(*again.work.job(job)) == core::jobs::dump(*mine.work.job(job)));
  REQUIRE(again.refusal(job, core::intents::Undo{again.work.job(job)->lastIntent}) == "");
  CHECK(core::jobs::dump(*again.work.job(job)) == before);
}
