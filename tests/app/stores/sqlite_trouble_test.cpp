// Every way in which the record's place can be wrong has its own words, and the file stays as it is.
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QDir>
#include <QElapsedTimer>
#include <QTemporaryDir>

#include "tests/app/stores/database_support.h"
#include "tests/support/in_child.h"

using app::stores::SqliteEventStore;
using namespace tests;

namespace {

constexpr unsigned kNobody = 65534;

std::string troubleForOthersAt(const QString& path) {
  return answerOfChild([&] {
    if (geteuid() == 0 && (setgid(kNobody) != 0 || setuid(kNobody) != 0)) return std::string("could not change user");
    return troubleAt(path);
  });
}

// A folder that other users can reach.
struct OpenFolder {
  OpenFolder() { REQUIRE(chmod(folder.path().toUtf8().constData(), 0755) == 0); }
  ~OpenFolder() { chmod(folder.path().toUtf8().constData(), 0755); }
  QString path(const char* name) const { return folder.filePath(name); }
  void permit(mode_t mode) { REQUIRE(chmod(folder.path().toUtf8().constData(), mode) == 0); }
  QTemporaryDir folder;
};

}  // namespace

TEST_CASE("a folder in the record's place is told") {
  QTemporaryDir folder;
  CHECK(troubleAt(folder.path()) == "store.is-directory");
}

TEST_CASE("a folder that does not exist is told and not made") {
  QTemporaryDir folder;
  CHECK(troubleAt(folder.filePath("nowhere/record.sqlite")) == "store.folder-missing");
  CHECK_FALSE(QDir(folder.filePath("nowhere")).exists());
}

TEST_CASE("a pipe in the record's place is told and does not hang") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  REQUIRE(mkfifo(path.toUtf8().constData(), 0600) == 0);
  CHECK(troubleAt(path) == "store.not-a-file");
}

TEST_CASE("a pipe, a folder or a dead link where the library keeps its journal is told and does not hang") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  makeRecord(path);
  const QString beside = path + GENERATE("-journal", "-wal", "-shm");
  SECTION("a pipe") { REQUIRE(mkfifo(beside.toUtf8().constData(), 0600) == 0); }
  SECTION("a folder") { REQUIRE(QDir().mkdir(beside)); }
  SECTION("a dead link") { REQUIRE(QFile::link(folder.filePath("elsewhere"), beside)); }
  CHECK(troubleAt(path) == "store.not-a-file");
}

TEST_CASE("a link that leads nowhere is told, and nothing is made where it leads") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  REQUIRE(QFile::link(folder.filePath("elsewhere"), path));
  CHECK(troubleAt(path) == "store.not-a-file");
  CHECK_FALSE(QFile::exists(folder.filePath("elsewhere")));
}

TEST_CASE("a record that is gone or empty is not begun anew where something shows that there was one") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  const bool empty = GENERATE(true, false);
  const QString beside = GENERATE(as<QString>{}, "photographs/" + QString(64, 'a') + ".jpg", "record.sqlite-wal",
                                  "record-saved-20261128-120000-000.sqlite");
  if (empty) writeBytes(path, "");
  REQUIRE(QDir(folder.path()).mkpath("photographs"));
  CHECK(troubleAt(folder.filePath("first/record.sqlite")) == "store.folder-missing");
  writeBytes(folder.filePath(beside), "what was left");
  const auto opened = SqliteEventStore::open(path);
  REQUIRE_FALSE(opened.ok());
  CHECK(opened.error().id == "store.lost-before");
  const QString named = beside.section('/', 0, 0);
  CHECK(core::base::dump(opened.error()).find("beside=" + folder.filePath(named).toStdString()) != std::string::npos);
  CHECK(QFile::exists(path) == empty);
  CHECK(bytesOf(folder.filePath(beside)) == "what was left");
  REQUIRE(QFile::remove(folder.filePath(beside)));
  CHECK(troubleAt(path).empty());
}

TEST_CASE("a file that is no database is told and left byte for byte") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  const QByteArray bytes =
      GENERATE(as<QByteArray>{}, "tide tables", "S", "SQLite format 4", QByteArray(5000, 'x'), QByteArray(1, '\0'));
  writeBytes(path, bytes);
  CHECK(troubleAt(path) == (bytes == "S" ? "store.damaged" : "store.not-a-database"));
  CHECK(bytesOf(path) == bytes);
}

TEST_CASE("another program's database is told and left byte for byte") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  const QString mark =
      GENERATE(as<QString>{}, "PRAGMA application_id = 0", "PRAGMA application_id = 12345", "PRAGMA user_version = 1");
  {
    OtherConnection other(path);
    other.run("CREATE TABLE tides(height REAL)");
    other.run(mark);
  }
  const QByteArray before = bytesOf(path);
  CHECK(troubleAt(path) == "store.other-program");
  CHECK(bytesOf(path) == before);
}

TEST_CASE("a newer program's record is told with both versions and left byte for byte") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  makeRecord(path);
  {
    OtherConnection other(path);
    other.run("PRAGMA user_version = 3");
  }
  const QByteArray before = bytesOf(path);
  const auto opened = SqliteEventStore::open(path);
  REQUIRE_FALSE(opened.ok());
  CHECK(core::base::dump(opened.error()) == "store.newer path=" + path.toStdString() + " found=3 known=2");
  CHECK(bytesOf(path) == before);
}

TEST_CASE("a newer version that is still in the write-ahead log is noticed") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  makeRecord(path);
  OtherConnection other(path);
  other.run("PRAGMA user_version = 3");
  REQUIRE(bytesOf(path + "-wal").size() > 0);
  CHECK(troubleAt(path) == "store.newer");
}

TEST_CASE("a locked record is told within three seconds and opens once it is free") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  makeRecord(path);
  {
    OtherConnection other(path);
    // Against writers only, or against readers as well.
    if (GENERATE(false, true)) other.run("PRAGMA locking_mode = EXCLUSIVE");
    other.run("BEGIN IMMEDIATE");
    QElapsedTimer timer;
    timer.start();
    CHECK(troubleAt(path) == "store.locked");
    CHECK(timer.elapsed() < 3000);
  }
  CHECK(troubleAt(path).empty());
}

TEST_CASE("an act on a locked record is refused within three seconds, not lost half-way") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  auto opened = SqliteEventStore::open(path);
  REQUIRE(opened.ok());
  SqliteEventStore& store = *opened.value();
  OtherConnection other(path);
  other.run("BEGIN IMMEDIATE");
  QElapsedTimer timer;
  timer.start();
  const auto refused = store.append({event("a", 1, 1000)}, {});
  CHECK(timer.elapsed() < 3000);
  REQUIRE_FALSE(refused.ok());
  CHECK(refused.error().id == "store.locked");
  CHECK(store.load("job/one").value().empty());
  other.run("ROLLBACK");
  CHECK(store.append({event("a", 1, 1000)}, {}).ok());
  CHECK(store.load("job/one").value().size() == 1);
}

TEST_CASE("a read-only file is told") {
  OpenFolder place;
  const QString path = place.path("record.sqlite");
  makeRecord(path);
  place.permit(0777);
  REQUIRE(chmod(path.toUtf8().constData(), 0444) == 0);
  CHECK(troubleForOthersAt(path) == "store.read-only-file");
}

TEST_CASE("a read-only folder is told, with a record in it and without") {
  OpenFolder place;
  const QString path = place.path("record.sqlite");
  if (GENERATE(false, true)) {
    makeRecord(path);
    REQUIRE(chmod(path.toUtf8().constData(), 0666) == 0);
  }
  place.permit(0555);
  CHECK(troubleForOthersAt(path) == "store.read-only-folder");
}

TEST_CASE("a file that may not be read is told") {
  OpenFolder place;
  const QString path = place.path("record.sqlite");
  makeRecord(path);
  REQUIRE(chmod(path.toUtf8().constData(), 0000) == 0);
  CHECK(troubleForOthersAt(path) == "store.unreadable");
}
