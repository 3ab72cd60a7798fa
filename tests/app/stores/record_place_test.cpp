// The record's file taken away, or another put in its place, while it is open: nothing is confirmed into what is gone,
// and nothing that was confirmed is lost.
#include "app/stores/record_place.h"

#include <QDir>
#include <QTemporaryDir>

#include "tests/app/stores/database_support.h"

using app::stores::SqliteEventStore;
using namespace tests;

namespace {

struct Running {
  Running() {
    auto opened = SqliteEventStore::open(path);
    REQUIRE(opened.ok());
    store = std::move(opened).value();
    keep(1, 5);
  }
  std::string act(int number) {
    const auto done = store->append({event("tablet", number, 1000 * number)},
                                    {{"hash-" + std::to_string(number), "job", "name", "body"}});
    return done ? "" : done.error().id;
  }
  void keep(int from, int to) {
    for (int number = from; number <= to; ++number) REQUIRE(act(number).empty());
  }
  QStringList saved() const { return QDir(folder.path()).entryList({app::stores::savedCopies()}, QDir::Files); }
  // What a bench that is opened there afterwards finds.
  std::size_t eventsIn(const QString& file) {
    store.reset();
    auto opened = SqliteEventStore::open(file);
    if (!opened) UNSCOPED_INFO(core::base::dump(opened.error()));
    REQUIRE(opened.ok());
    CHECK(opened.value()->text("hash-5").value().has_value());
    return opened.value()->load("job/one").value().size();
  }
  bool takeAway() const { return QFile::remove(path); }

  QTemporaryDir folder;
  QString path = folder.filePath("record.sqlite");
  std::unique_ptr<SqliteEventStore> store;
};

}  // namespace

TEST_CASE("a record that was taken away is written back, and the act is refused until it is opened again") {
  Running bench;
  const bool withLog = GENERATE(false, true);
  REQUIRE(bench.takeAway());
  if (withLog) {
    REQUIRE(QFile::remove(bench.path + "-wal"));
    REQUIRE(QFile::remove(bench.path + "-shm"));
  }
  CHECK(bench.act(6) == "store.written-back");
  CHECK(bench.act(7) == "store.written-back");
  const auto beat = bench.store->logClock("tablet", "heartbeat", {1, "boot", 1, true});
  REQUIRE_FALSE(beat.ok());
  CHECK(beat.error().id == "store.written-back");
  // What it holds can still be read.
  CHECK(bench.store->load("job/one").value().size() == 5);
  CHECK(bench.saved().isEmpty());
  CHECK_FALSE(QFile::exists(bench.path + "-wal"));
  CHECK(bench.eventsIn(bench.path) == 5);
}

TEST_CASE("a sign of life alone notices that the record is gone") {
  Running bench;
  REQUIRE(bench.takeAway());
  const auto beat = bench.store->logClock("tablet", "heartbeat", {1, "boot", 1, true});
  REQUIRE_FALSE(beat.ok());
  CHECK(beat.error().id == "store.written-back");
  CHECK(bench.eventsIn(bench.path) == 5);
}

TEST_CASE("a whole folder that was taken away is made again with the record in it") {
  Running bench;
  REQUIRE(QDir(bench.folder.path()).removeRecursively());
  CHECK(bench.act(6) == "store.written-back");
  CHECK(bench.eventsIn(bench.path) == 5);
}

TEST_CASE("another file in the record's place is left byte for byte, and what was kept lies beside it") {
  Running bench;
  const QString other = bench.folder.filePath("other.sqlite");
  const bool isRecord = GENERATE(true, false);
  if (isRecord) {
    makeRecord(other);
  } else {
    writeBytes(other, "tide tables");
  }
  const QByteArray bytes = bytesOf(other);
  REQUIRE(bench.takeAway());
  REQUIRE(QFile::rename(other, bench.path));
  CHECK(bench.act(6) == "store.saved-beside");
  CHECK(bench.act(7) == "store.saved-beside");
  CHECK(bytesOf(bench.path) == bytes);
  // Our log would be taken for that file's.
  CHECK_FALSE(QFile::exists(bench.path + "-wal"));
  REQUIRE(bench.saved().size() == 1);
  const QString copy = bench.folder.filePath(bench.saved().front());
  CHECK(bench.eventsIn(copy) == 5);
  if (isRecord) CHECK(troubleAt(bench.path).empty());
  CHECK(bytesOf(bench.path).size() >= bytes.size());
}

TEST_CASE("a log that was taken away leaves everything in the record") {
  Running bench;
  REQUIRE(QFile::remove(bench.path + "-wal"));
  CHECK(bench.act(6) == "store.log-gone");
  CHECK(bench.act(7) == "store.log-gone");
  CHECK(bench.eventsIn(bench.path) == 5);
}

TEST_CASE("where nothing can be saved that is told, and it is tried again with the next act") {
  Running bench;
  REQUIRE(QDir(bench.folder.path()).removeRecursively());
  writeBytes(bench.folder.path(), "in the way");
  CHECK(bench.act(6) == "store.not-saved");
  CHECK(bench.act(6) == "store.not-saved");
  REQUIRE(QFile::remove(bench.folder.path()));
  CHECK(bench.act(6) == "store.written-back");
  CHECK(bench.eventsIn(bench.path) == 5);
}

TEST_CASE("a record that stays where it is, read by others and long at work, is never taken for gone") {
  Running bench;
  {
    OtherConnection other(bench.path);
    other.run("PRAGMA wal_checkpoint(TRUNCATE)");
    CHECK(other.ask("SELECT count(*) FROM events") == "5\n");
  }
  bench.keep(6, 40);
  CHECK(bench.eventsIn(bench.path) == 40);
}

TEST_CASE("a record behind a link is watched where it lies") {
  QTemporaryDir folder;
  const QString real = folder.filePath("elsewhere.sqlite");
  makeRecord(real);
  REQUIRE(QFile::link(real, folder.filePath("record.sqlite")));
  auto opened = SqliteEventStore::open(folder.filePath("record.sqlite"));
  REQUIRE(opened.ok());
  CHECK(opened.value()->append({event("other", 1, 1)}, {}).ok());
  REQUIRE(QFile::remove(real));
  const auto refused = opened.value()->append({event("other", 2, 1)}, {});
  REQUIRE_FALSE(refused.ok());
  CHECK(refused.error().id == "store.written-back");
  CHECK(QFile::exists(real));
}
