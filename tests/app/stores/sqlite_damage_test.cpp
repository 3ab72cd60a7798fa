// Files cut short or with bytes gone wrong: said, never crashed over, never written to.
#include <QTemporaryDir>
#include <set>

#include "core/base/json.h"
#include "tests/app/stores/database_support.h"

using app::stores::SqliteEventStore;
using namespace tests;

namespace {

constexpr qsizetype kPage = 4096;

// Reads everything there is; the id of the first trouble, "" for none.
std::string troubleReading(SqliteEventStore& store) {
  const auto streams = store.streams();
  if (!streams) return streams.error().id;
  for (const std::string& stream : streams.value()) {
    if (const auto events = store.load(stream); !events) return events.error().id;
  }
  for (int act = 1; act <= 12; ++act) {
    if (const auto text = store.text("hash-" + std::to_string(act)); !text) return text.error().id;
  }
  if (const auto position = store.position("tablet"); !position) return position.error().id;
  if (const auto log = store.clockLog("tablet"); !log) return log.error().id;
  return "";
}

}  // namespace

TEST_CASE("a record cut short at any length is told and left as it is") {
  QTemporaryDir folder;
  const QString whole = folder.filePath("whole.sqlite");
  makeRecord(whole);
  const QByteArray bytes = bytesOf(whole);
  REQUIRE(bytes.size() >= 6 * kPage);
  REQUIRE(bytes.size() % kPage == 0);
  std::set<qsizetype> lengths;
  for (qsizetype length = 1; length < bytes.size(); length += 97) lengths.insert(length);
  for (qsizetype page = kPage; page < bytes.size(); page += kPage) {
    lengths.insert({page - 1, page, page + 1});
  }
  lengths.insert({15, 16, 99, 100, bytes.size() - 1});
  const QString path = folder.filePath("record.sqlite");
  for (const qsizetype length : lengths) {
    INFO("cut to " << length << " of " << bytes.size() << " bytes");
    writeBytes(path, bytes.left(length));
    REQUIRE(troubleAt(path) == "store.damaged");
    REQUIRE(bytesOf(path) == bytes.left(length));
  }
}

TEST_CASE("a byte gone wrong anywhere is told or read past, never crashed over") {
  QTemporaryDir folder;
  const QString whole = folder.filePath("whole.sqlite");
  makeRecord(whole);
  const QByteArray bytes = bytesOf(whole);
  const std::set<std::string> sayable = {"",
                                         "store.damaged",
                                         "store.not-a-database",
                                         "store.other-program",
                                         "store.newer",
                                         "store.read-only-file",
                                         "store.cannot-open"};
  int told = 0;
  for (int part = 0; part < 200; ++part) {
    const qsizetype at = bytes.size() * part / 200 + part % 7;
    const QString path = folder.filePath("record.sqlite");
    QByteArray wrong = bytes;
    wrong[at] = static_cast<char>(~wrong[at]);
    QFile::remove(path + "-wal");
    QFile::remove(path + "-shm");
    writeBytes(path, wrong);
    INFO("byte " << at);
    auto opened = SqliteEventStore::open(path);
    const std::string said = opened ? troubleReading(*opened.value()) : opened.error().id;
    INFO("said " << said);
    REQUIRE(sayable.count(said) == 1);
    if (!opened) REQUIRE(bytesOf(path) == wrong);
    if (!said.empty()) told += 1;
  }
  CHECK(told > 5);
}

TEST_CASE("an event whose payload is no longer JSON is told when its stream is read") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  makeRecord(path);
  {
    OtherConnection other(path);
    other.run("UPDATE events SET payload = '{\"step\":' WHERE device_seq = 7");
  }
  auto opened = SqliteEventStore::open(path);
  REQUIRE(opened.ok());
  const auto events = opened.value()->load("job/one");
  REQUIRE_FALSE(events.ok());
  CHECK(events.error().id == "store.damaged");
}

TEST_CASE("a write-ahead log cut short at any length gives whole acts, oldest first") {
  QTemporaryDir folder;
  const QString live = folder.filePath("live.sqlite");
  auto opened = SqliteEventStore::open(live);
  REQUIRE(opened.ok());
  for (int act = 0; act < 6; ++act) {
    REQUIRE(opened.value()->append({event("a", 2 * act + 1, act + 1), event("a", 2 * act + 2, act + 1)}, {}).ok());
  }
  const QByteArray file = bytesOf(live);
  const QByteArray log = bytesOf(live + "-wal");
  REQUIRE(log.size() > 10 * kPage);
  const QString path = folder.filePath("record.sqlite");
  std::size_t most = 0;
  for (qsizetype length = 0; length <= log.size(); length += 2003) {
    INFO("log cut to " << length << " of " << log.size() << " bytes");
    QFile::remove(path + "-shm");
    writeBytes(path, file);
    writeBytes(path + "-wal", log.left(length));
    auto again = SqliteEventStore::open(path);
    REQUIRE(again.ok());
    const auto events = again.value()->load("job/one").value();
    REQUIRE(events.size() % 2 == 0);
    REQUIRE(events.size() >= most);
    most = events.size();
    for (std::size_t index = 0; index < events.size(); ++index) {
      REQUIRE(events[index].deviceSequence == static_cast<std::int64_t>(index) + 1);
    }
  }
  CHECK(most >= 10);
}

TEST_CASE("a large record is held against its length when it opens and read through beside the work") {
  QTemporaryDir folder;
  const QString path = folder.filePath("record.sqlite");
  makeRecord(path);
  {
    auto opened = SqliteEventStore::open(path);
    REQUIRE(opened.ok());
    std::vector<core::record::StoredText> texts;
    for (int i = 0; i < 10; ++i) {
      texts.push_back({"large-" + std::to_string(i), "job", "", std::string(1'000'000, static_cast<char>('a' + i))});
    }
    REQUIRE(opened.value()->append({}, texts).ok());
  }
  const QByteArray whole = bytesOf(path);
  REQUIRE(whole.size() > SqliteEventStore::kReadThrough + 4 * kPage);
  CHECK(troubleAt(path).empty());
  CHECK(SqliteEventStore::checkWhole(path).id.empty());
  for (const qsizetype cut : {qsizetype{1}, kPage, 3 * kPage + 7}) {
    writeBytes(path, whole.left(whole.size() - cut));
    CHECK(troubleAt(path) == "store.damaged");
  }
  QByteArray wrong = whole;
  for (qsizetype at = 2 * kPage; at < 8 * kPage; ++at) wrong[at] = static_cast<char>(at * 31);
  writeBytes(path, wrong);
  CHECK(SqliteEventStore::checkWhole(path).id == "store.damaged");
  CHECK(bytesOf(path) == wrong);
  CHECK_FALSE(SqliteEventStore::checkWhole(folder.filePath("nowhere.sqlite")).id.empty());
  CHECK_FALSE(QFile::exists(folder.filePath("nowhere.sqlite")));
}
