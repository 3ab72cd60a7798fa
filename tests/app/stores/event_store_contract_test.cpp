// What every event store promises, asked of each of them.
#include <QTemporaryDir>
#include <algorithm>
#include <functional>
#include <limits>
#include <memory>

#include "app/convert/content_hash.h"
#include "app/stores/sqlite_event_store.h"
#include "core/base/json.h"
#include "tests/app/stores/database_support.h"
#include "tests/support/catch.h"
#include "tests/support/events.h"
#include "tests/support/memory_event_store.h"
#include "tests/support/plain_event_store.h"

using core::base::writeJson;
using core::record::Event;
using core::record::EventStore;
using core::record::StoredText;
using tests::event;

namespace {

enum class Lies { InMemory, InSqlite, InItsFeed };

// A kind of store over one place: made and made again over the same, as after a restart.
struct Kind {
  std::string name;
  Lies lies = Lies::InMemory;
  QTemporaryDir folder;
  std::unique_ptr<EventStore> open() {
    if (lies == Lies::InMemory) return std::make_unique<tests::MemoryEventStore>();
    if (lies == Lies::InItsFeed) return std::make_unique<tests::PlainEventStore>();
    auto opened = app::stores::SqliteEventStore::open(folder.filePath("record.sqlite"));
    REQUIRE(opened.ok());
    return std::move(opened).value();
  }
};

std::unique_ptr<Kind> kindOf(Lies lies) {
  auto kind = std::make_unique<Kind>();
  kind->name = lies == Lies::InSqlite ? "SQLite" : lies == Lies::InMemory ? "memory" : "its feed alone";
  kind->lies = lies;
  return kind;
}

bool append(EventStore& store, const std::vector<Event>& events, const std::vector<StoredText>& texts = {}) {
  const auto done = store.append(events, texts);
  if (!done) UNSCOPED_INFO(core::base::dump(done.error()));
  return done.ok();
}

std::vector<std::string> asText(const std::vector<Event>& events) {
  std::vector<std::string> lines;
  for (const Event& one : events) lines.push_back(writeJson(core::record::eventJson(one), 0));
  return lines;
}

std::vector<Event> loaded(EventStore& store, const std::string& stream = "job/one") {
  auto events = store.load(stream);
  REQUIRE(events.ok());
  return events.value();
}

}  // namespace

TEST_CASE("an event comes back with every column as it was") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  Event odd = event("tablet", 1, 1000);
  odd.hlc = {999'999'999'999, 999'999};
  odd.deviceSequence = std::numeric_limits<std::int64_t>::max();
  odd.occurredUtc = -1;
  odd.version = 7;
  odd.zone = "";
  odd.intentId = "";
  Event plain = event("tablet", 2, 2000);
  plain.payload = core::base::Value();
  REQUIRE(append(*store, {odd, plain}));
  const std::vector<Event> back = loaded(*store);
  CHECK(asText(back) == asText({plain, odd}));
  REQUIRE(back.size() == 2);
  CHECK(back[1].hlc == odd.hlc);
  CHECK(back[1].boottimeNanoseconds == odd.boottimeNanoseconds);
}

TEST_CASE("events come back in fold order whatever order they went in") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const std::vector<Event> inOrder = {event("a", 1, 1000), event("a", 2, 1001), event("b", 1, 1001),
                                      event("b", 2, 1001), event("a", 3, 20'000)};
  const auto store = kind->open();
  for (const std::size_t index : {4U, 2U, 0U, 3U, 1U}) REQUIRE(append(*store, {inOrder[index]}));
  CHECK(asText(loaded(*store)) == asText(inOrder));
}

TEST_CASE("an event that is there already is skipped and changes nothing") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  REQUIRE(append(*store, {event("a", 1, 1000)}));
  Event again = event("a", 1, 1000);
  again.payload = core::base::Value::object();
  REQUIRE(append(*store, {again, event("a", 2, 1001), event("a", 2, 1001)}));
  CHECK(asText(loaded(*store)) == asText({event("a", 1, 1000), event("a", 2, 1001)}));
}

TEST_CASE("an append that cannot be kept whole is not kept at all") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  REQUIRE(append(*store, {event("a", 1, 1000)}));
  Event clash = event("a", 1, 1002);
  clash.eventId = "another event under a sequence that is taken";
  CHECK_FALSE(store->append({event("a", 2, 1001), clash}, {{"hash", "job", "title", "body"}}).ok());
  CHECK(asText(loaded(*store)) == asText({event("a", 1, 1000)}));
  CHECK_FALSE(store->text("hash").value().has_value());
  REQUIRE(append(*store, {event("a", 2, 1003)}));
}

TEST_CASE("the feed tells each event once, in the order in which it came in, from wherever a reader stands") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  const auto since = [&](const std::string& cursor, std::size_t most) {
    auto feed = store->since(cursor, most);
    REQUIRE(feed.ok());
    return feed.value();
  };
  CHECK(since("", 10).events.empty());
  const std::vector<Event> arriving = {event("b", 1, 5000), event("a", 1, 1000), event("a", 2, 9000)};
  for (const Event& one : arriving) REQUIRE(append(*store, {one}));
  const auto first = since("", 2);
  CHECK(asText(first.events) == asText({arriving[0], arriving[1]}));
  const auto second = since(first.cursor, 2);
  CHECK(asText(second.events) == asText({arriving[2]}));
  const auto none = since(second.cursor, 2);
  CHECK(none.events.empty());
  CHECK(none.cursor == second.cursor);
  // What was there already did not come in; what goes before all others in the order of the fold did.
  const Event late = event("c", 1, 1);
  REQUIRE(append(*store, {arriving[1], late}));
  CHECK(asText(since(none.cursor, 10).events) == asText({late}));
  CHECK(asText(since("", 10).events) == asText({arriving[0], arriving[1], arriving[2], late}));
}

TEST_CASE("streams are kept apart and named") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  CHECK(store->streams().value().empty());
  REQUIRE(append(*store, {event("a", 1, 1000, "job/two"), event("a", 2, 1001, "bench/a"), event("a", 3, 1002)}));
  CHECK(store->streams().value() == std::vector<std::string>{"bench/a", "job/one", "job/two"});
  CHECK(loaded(*store, "job/two").size() == 1);
  CHECK(loaded(*store, "job").empty());
}

TEST_CASE("texts come back byte for byte and the first of a hash stays") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  static constexpr char kBytes[] = "\xEF\xBB\xBF{ \"title\": \"caf\xC3\xA9\"\r\n \0 \xFF }";
  const std::string body(kBytes, sizeof kBytes - 1);
  REQUIRE(append(*store, {}, {{"h1", "job", "", body}, {"h2", "technique", "cut-windows", ""}}));
  REQUIRE(append(*store, {}, {{"h1", "job", "other", "other"}}));
  const auto first = store->text("h1").value();
  REQUIRE(first.has_value());
  CHECK(first->body == body);
  CHECK(first->kind == "job");
  CHECK(first->name.empty());
  CHECK(store->text("h2").value()->body.empty());
  CHECK_FALSE(store->text("h3").value().has_value());
}

TEST_CASE("the position is the device's last count and everybody's greatest clock") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  CHECK(store->position("a").value().deviceSequence == 0);
  CHECK(store->position("a").value().hlc == core::record::Hlc{0, 0});
  REQUIRE(append(*store, {event("a", 4, 1000), event("b", 9, 5000), event("a", 3, 2000)}));
  CHECK(store->position("a").value().deviceSequence == 4);
  CHECK(store->position("a").value().hlc == core::record::Hlc{5000, 0});
  CHECK(store->position("c").value().deviceSequence == 0);
}

TEST_CASE("no number and no clock at the end of all numbers is where a device goes on from") {
  using namespace core::record;
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  auto far = event("a", std::numeric_limits<std::int64_t>::max() - 1, 9000);
  auto full = event("a", kMostSequence, 9500);
  auto rolledOver = event("b", 1, core::waits::kLatestBelievableUtc + 1);
  REQUIRE(append(*store, {event("a", 4, 1000), event("b", 9, 5000), far, full, rolledOver}));
  CHECK(store->position("a").value().deviceSequence == 4);
  CHECK(store->position("a").value().hlc == Hlc{9500, 0});
  CHECK(store->newestIntentOf("a").value() == event("a", 4, 1000).intentId);
  auto last = event("b", 10, kMostMilliseconds);
  last.hlc.counter = kMostCounts;
  REQUIRE(append(*store, {last}));
  CHECK(store->position("b").value().hlc == last.hlc);
}

TEST_CASE("what a device wrote under a number is found, whatever its stream") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  REQUIRE(append(*store, {event("a", 1, 1000), event("a", 2, 2000, "bench/a"), event("b", 2, 9000, "design/d")}));
  CHECK(store->written("a", 2).value() == event("a", 2, 2000).eventId);
  CHECK(store->written("b", 2).value() == event("b", 2, 9000).eventId);
  CHECK(store->written("b", 1).value().empty());
}

TEST_CASE("of heartbeats that follow each other in one boot the newest stays") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  REQUIRE(store->logClock("a", "heartbeat", {1000, "boot-1", 10, true}).ok());
  REQUIRE(store->logClock("b", "heartbeat", {1500, "boot-9", 10, true}).ok());
  REQUIRE(store->logClock("a", "heartbeat", {2000, "boot-1", 20, true}).ok());
  REQUIRE(store->logClock("a", "heartbeat", {3000, "boot-2", 5, true}).ok());
  const auto log = store->clockLog("a").value();
  REQUIRE(log.heartbeats.size() == 2);
  CHECK(log.heartbeats[0] == core::waits::ClockReading{2000, "boot-1", 20, true});
  CHECK(log.heartbeats[1] == core::waits::ClockReading{3000, "boot-2", 5, true});
  CHECK(store->clockLog("b").value().heartbeats.size() == 1);
  CHECK(store->clockLog("c").value().heartbeats.empty());
}

TEST_CASE("a heartbeat of a clock nobody steers does not hide one that was steered") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  REQUIRE(store->logClock("a", "heartbeat", {1000, "boot-1", 10, true}).ok());
  REQUIRE(store->logClock("a", "heartbeat", {2000, "boot-1", 20, false}).ok());
  REQUIRE(store->logClock("a", "heartbeat", {3000, "boot-1", 30, false}).ok());
  const auto log = store->clockLog("a").value();
  REQUIRE(log.heartbeats.size() == 2);
  CHECK(log.heartbeats[0].synced);
  CHECK(log.heartbeats[1].utcMilliseconds == 3000);
}

TEST_CASE("a heartbeat with a wall clock set back does not hide the later one") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  REQUIRE(store->logClock("a", "heartbeat", {9000, "boot-1", 10, true}).ok());
  REQUIRE(store->logClock("a", "heartbeat", {2000, "boot-1", 20, true}).ok());
  REQUIRE(store->logClock("a", "jump", {2000, "boot-1", 30, true}).ok());
  REQUIRE(store->logClock("a", "heartbeat", {2010, "boot-1", 40, true}).ok());
  CHECK(store->clockLog("a").value().heartbeats.size() == 4);
}

TEST_CASE("what SQLite has kept is there after it is opened again") {
  const auto kind = kindOf(Lies::InSqlite);
  std::vector<std::string> before;
  {
    const auto store = kind->open();
    REQUIRE(append(*store, {event("a", 1, 1000), event("b", 1, 1001)}, {{"h", "job", "title", "body"}}));
    REQUIRE(store->logClock("a", "heartbeat", {1000, "boot-1", 10, true}).ok());
    before = asText(loaded(*store));
  }
  const auto store = kind->open();
  CHECK(asText(loaded(*store)) == before);
  CHECK(store->text("h").value()->body == "body");
  CHECK(store->clockLog("a").value().heartbeats.size() == 1);
}

namespace {

std::string arrivedIn(EventStore& store, const std::string& stream) {
  const auto heads = store.heads();
  REQUIRE(heads.ok());
  for (const auto& head : heads.value()) {
    if (head.stream == stream) return head.arrived;
  }
  return "";
}

}  // namespace

TEST_CASE("the head of a stream is another whenever an event comes in, late ones too") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  CHECK(store->heads().value().empty());
  REQUIRE(append(*store, {event("a", 2, 2000), event("b", 1, 9000, "job/two"), event("a", 3, 3000)}));
  const std::string before = arrivedIn(*store, "job/one");
  const std::string other = arrivedIn(*store, "job/two");
  CHECK_FALSE(before.empty());
  CHECK(store->heads().value().size() == 2);
  REQUIRE(append(*store, {event("a", 3, 3000)}));
  CHECK(arrivedIn(*store, "job/one") == before);
  REQUIRE(append(*store, {event("a", 1, 1)}));
  CHECK(arrivedIn(*store, "job/one") != before);
  CHECK(arrivedIn(*store, "job/two") == other);
  std::vector<std::string> streams;
  const auto heads = store->heads();
  for (const auto& head : heads.value()) streams.push_back(head.stream);
  CHECK(streams == store->streams().value());
}

TEST_CASE("an event is found by its id, and the newest act of a device by the device") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite, Lies::InItsFeed));
  INFO(kind->name);
  const auto store = kind->open();
  CHECK(store->newestIntentOf("a").value().empty());
  REQUIRE(append(*store, {event("a", 1, 1000), event("a", 2, 2000, "bench/a"), event("b", 1, 9000),
                          event("a", 3, 3000, "design/d")}));
  CHECK(store->newestIntentOf("a").value() == event("a", 2, 2000).intentId);
  const auto found = store->find(event("a", 2, 2000).eventId);
  REQUIRE(found.ok());
  REQUIRE(found.value().has_value());
  CHECK(asText({*found.value()}) == asText({event("a", 2, 2000, "bench/a")}));
  CHECK_FALSE(store->find("nobody").value().has_value());
}

TEST_CASE("summaries replace each other by stream and are no part of the record") {
  const auto kind = kindOf(GENERATE(Lies::InMemory, Lies::InSqlite));
  INFO(kind->name);
  auto store = kind->open();
  REQUIRE(store->keepSummaries({{"job/one", "s1", "b1", "d1"}, {"job/two", "s2", "b2", "d2"}}).ok());
  REQUIRE(store->keepSummaries({{"job/one", "s3", "b3", "d3"}}).ok());
  if (kind->lies == Lies::InSqlite) store = nullptr, store = kind->open();
  auto kept = store->summaries().value();
  std::sort(kept.begin(), kept.end(), [](const auto& a, const auto& b) { return a.stream < b.stream; });
  REQUIRE(kept.size() == 2);
  CHECK(kept[0].stamp == "s3");
  CHECK(kept[0].body == "b3");
  CHECK(kept[1].body == "b2");
  auto details = store->summaryDetails().value();
  std::sort(details.begin(), details.end(), [](const auto& a, const auto& b) { return a.stream < b.stream; });
  REQUIRE(details.size() == 2);
  CHECK(details[0].detail == "d3");
  CHECK(details[1].detail == "d2");
  CHECK(store->streams().value().empty());
}

TEST_CASE("a text that was damaged is put right by the one its hash was made of, and by no other") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  const StoredText whole = {app::convert::contentHash("tides"), "technique", "paste-up", "tides"};
  auto opened = app::stores::SqliteEventStore::open(path);
  REQUIRE(opened.ok());
  EventStore& store = *opened.value();
  REQUIRE(append(store, {}, {whole}));
  tests::OtherConnection(path).run("UPDATE texts SET body = x'74', kind = 'job', name = ''");
  REQUIRE(append(store, {}, {{whole.hash, "technique", "paste-up", "tide"}}));
  CHECK(store.text(whole.hash).value()->body == "t");
  REQUIRE(append(store, {event("a", 1, 1000)}, {whole}));
  CHECK(store.text(whole.hash).value()->body == "tides");
  CHECK(store.text(whole.hash).value()->kind == "technique");
  CHECK(store.text(whole.hash).value()->name == "paste-up");
  REQUIRE(append(store, {}, {{whole.hash, "job", "other", "tides"}}));
  CHECK(store.text(whole.hash).value()->name == "paste-up");
}

TEST_CASE("an event whose clock is none spoils its stream alone, and not what comes after") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  auto opened = app::stores::SqliteEventStore::open(path);
  REQUIRE(opened.ok());
  EventStore& store = *opened.value();
  REQUIRE(append(store, {event("a", 1, 1000), event("a", 2, 5000), event("a", 3, 6000, "job/two")}));
  const char* clock = GENERATE("yesterday", "0000000000001000-1", "0000000000001000-0000001", "");
  tests::OtherConnection(path).run(QStringLiteral("UPDATE events SET hlc = '%1' WHERE device_seq = 1").arg(clock));
  const auto spoilt = store.load("job/one");
  REQUIRE_FALSE(spoilt.ok());
  CHECK(spoilt.error().id == "store.damaged");
  CHECK(loaded(store, "job/two").size() == 1);
  CHECK(store.position("a").value().hlc == core::record::Hlc{6000, 0});
}
