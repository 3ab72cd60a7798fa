// Records of earlier versions: opened, brought up to date with everything in them, and never half-way.
#include <QTemporaryDir>

#include "app/stores/schema.h"
#include "tests/app/stores/database_support.h"

using app::stores::SqliteEventStore;
using namespace tests;

namespace {

// The tables as version 1 made them, with a record in them.
void makeVersion1(const QString& path) {
  OtherConnection other(path);
  other.run("PRAGMA journal_mode = WAL");
  other.run(
      "CREATE TABLE events(event_id TEXT NOT NULL PRIMARY KEY, device_id TEXT NOT NULL, device_seq INTEGER NOT NULL, "
      "hlc TEXT NOT NULL, intent_id TEXT NOT NULL, stream TEXT NOT NULL, type TEXT NOT NULL, version INTEGER NOT NULL, "
      "occurred INTEGER NOT NULL, recorded INTEGER NOT NULL, zone TEXT NOT NULL, boot_id TEXT NOT NULL, boottime_ns "
      "INTEGER NOT NULL, synced INTEGER NOT NULL, payload TEXT NOT NULL) STRICT");
  other.run("CREATE UNIQUE INDEX events_device ON events(device_id, device_seq)");
  other.run("CREATE INDEX events_stream ON events(stream)");
  other.run("CREATE INDEX events_order ON events(hlc, device_id, device_seq)");
  other.run(
      "CREATE TABLE texts(hash TEXT NOT NULL PRIMARY KEY, kind TEXT NOT NULL, name TEXT NOT NULL, body BLOB NOT NULL) "
      "STRICT");
  other.run(
      "CREATE TABLE clock_log(number INTEGER PRIMARY KEY, device_id TEXT NOT NULL, kind TEXT NOT NULL, utc INTEGER NOT "
      "NULL, boot_id TEXT NOT NULL, boottime_ns INTEGER NOT NULL, synced INTEGER NOT NULL) STRICT");
  other.run("CREATE INDEX clock_log_device ON clock_log(device_id, number)");
  other.run("CREATE TABLE bench(only INTEGER PRIMARY KEY CHECK(only = 1), device_id TEXT NOT NULL) STRICT");
  other.run("INSERT INTO bench VALUES(1, 'old-tablet')");
  other.run(
      "INSERT INTO events VALUES('e1', 'old-tablet', 1, '0000000000001000-000000', 'i1', 'job/one', 'StepDone', 1, "
      "1000, 1000, 'Europe/London', 'boot', 5, 1, '{\"step\":\"a\"}')");
  other.run("INSERT INTO texts VALUES('hash', 'job', 'title', x'7b7d')");
  other.run("INSERT INTO clock_log VALUES(1, 'old-tablet', 'heartbeat', 1000, 'boot', 5, 1)");
  other.run(QStringLiteral("PRAGMA application_id = 1299084375"));
  other.run("PRAGMA user_version = 1");
}

}  // namespace

TEST_CASE("a record of version 1 is brought up to date with everything in it") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  makeVersion1(path);
  for (int opening = 0; opening < 2; ++opening) {
    auto opened = SqliteEventStore::open(path);
    REQUIRE(opened.ok());
    SqliteEventStore& store = *opened.value();
    CHECK(store.formerDevice() == "old-tablet");
    const auto events = store.load("job/one").value();
    REQUIRE(events.size() == 1);
    CHECK(events[0].eventId == "e1");
    CHECK(store.text("hash").value()->body == "{}");
    CHECK(store.clockLog("old-tablet").value().heartbeats.size() == 1);
    CHECK(store.summaries().value().size() == static_cast<std::size_t>(opening));
    REQUIRE(store.keepSummaries({{"job/one", "stamp", "body", "detail"}}).ok());
  }
  OtherConnection other(path);
  CHECK(other.ask("PRAGMA user_version") == std::to_string(app::stores::kSchemaVersion) + "\n");
  CHECK(other.ask("PRAGMA integrity_check") == "ok\n");
}

TEST_CASE("bringing a record up to date that cannot be done whole changes nothing of it") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  makeVersion1(path);
  {
    OtherConnection other(path);
    other.run("CREATE TABLE summaries(somebody TEXT)");
  }
  CHECK_FALSE(troubleAt(path).empty());
  OtherConnection other(path);
  CHECK(other.ask("PRAGMA user_version") == "1\n");
  CHECK(other.ask("SELECT count(*) FROM events") == "1\n");
}
