// What the record's file is, as any SQLite program can see it.
#include <QTemporaryDir>

#include "tests/app/stores/database_support.h"

using app::stores::SqliteEventStore;
using namespace tests;

TEST_CASE("the file says whose it is and which version of the tables it has") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  makeRecord(path);
  OtherConnection other(path);
  CHECK(other.ask("PRAGMA application_id") == "1299084375\n");
  CHECK(other.ask("PRAGMA user_version") == "2\n");
  CHECK(other.ask("PRAGMA journal_mode") == "wal\n");
  CHECK(other.ask("PRAGMA integrity_check") == "ok\n");
}

TEST_CASE("the events table has the columns of an event and no others") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  makeRecord(path);
  OtherConnection other(path);
  CHECK(other.ask("SELECT name FROM pragma_table_info('events')") ==
        "event_id\ndevice_id\ndevice_seq\nhlc\nintent_id\nstream\ntype\nversion\noccurred\nrecorded\nzone\nboot_id\n"
        "boottime_ns\nsynced\npayload\n");
}

TEST_CASE("streams and the order of the fold are indexed") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  makeRecord(path);
  QSqlDatabase::addDatabase("QSQLITE", "plan").setDatabaseName(path);
  {
    QSqlDatabase database = QSqlDatabase::database("plan");
    QSqlQuery query(database);
    REQUIRE(query.exec("EXPLAIN QUERY PLAN SELECT * FROM events WHERE stream = 'job/one'"));
    REQUIRE(query.next());
    CHECK(query.value("detail").toString().contains("events_stream"));
    REQUIRE(query.exec("EXPLAIN QUERY PLAN SELECT event_id FROM events ORDER BY hlc, device_id, device_seq"));
    REQUIRE(query.next());
    CHECK(query.value("detail").toString().contains("events_order"));
  }
  QSqlDatabase::removeDatabase("plan");
}

TEST_CASE("every commit of the store's own connection is forced to the disk") {
  QTemporaryDir folder;
  const auto store = SqliteEventStore::open(folder.filePath("record.sqlite"));
  REQUIRE(store.ok());
  int seen = 0;
  for (const QString& name : QSqlDatabase::connectionNames()) {
    if (!name.startsWith("record-")) continue;
    QSqlQuery query(QSqlDatabase::database(name));
    REQUIRE(query.exec("PRAGMA synchronous"));
    REQUIRE(query.next());
    CHECK(query.value(0).toInt() == 2);
    seen += 1;
  }
  CHECK(seen == 1);
}

TEST_CASE("a store that goes leaves no connection behind") {
  QTemporaryDir folder;
  makeRecord(folder.filePath("record.sqlite"));
  CHECK(troubleAt(folder.path()) == "store.is-directory");
  for (const QString& name : QSqlDatabase::connectionNames()) CHECK_FALSE(name.startsWith("record-"));
}

TEST_CASE("a file that was begun and never filled is taken up as a new record") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  writeBytes(path, "");
  CHECK(troubleAt(path).empty());
  OtherConnection other(path);
  CHECK(other.ask("PRAGMA user_version") == "2\n");
}

TEST_CASE("a name with marks that mean something in an address is a plain name") {
  QTemporaryDir folder;
  const QString path =
      folder.filePath(QString::fromUtf8("r\xC3\xA9"
                                        "cord?mode=ro#x%20.sqlite"));
  makeRecord(path);
  CHECK(QFile::exists(path));
}
