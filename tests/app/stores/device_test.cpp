// The name under which a machine writes: kept beside the record, never shared, and never guessed.
#include "app/stores/device.h"

#include <QDir>
#include <QTemporaryDir>

#include "app/stores/data_dir.h"
#include "app/stores/open_record.h"
#include "tests/app/stores/database_support.h"

using namespace tests;

namespace {

struct Folder {
  QTemporaryDir home;
  QString path = home.filePath("data");

  Folder() { REQUIRE(app::stores::dataDirectory(path).ok()); }
  QString record() const { return app::stores::recordFile(path); }
  std::string device() const {
    const auto opened = app::stores::openRecord(path);
    if (!opened) UNSCOPED_INFO(core::base::dump(opened.error()));
    REQUIRE(opened.ok());
    return opened.value().deviceId;
  }
  std::string trouble() const {
    const auto opened = app::stores::openRecord(path);
    return opened ? "" : core::base::dump(opened.error());
  }
  void copyRecordTo(const Folder& other) const { REQUIRE(QFile::copy(record(), other.record())); }
};

// As an earlier version left it: the record itself names its device.
void nameInRecord(const Folder& folder, const char* device) {
  OtherConnection other(folder.record());
  other.run(QStringLiteral("INSERT INTO bench VALUES(1, '%1')").arg(QLatin1String(device)));
}

}  // namespace

TEST_CASE("a folder keeps its device, and no two share one") {
  const Folder one;
  const Folder two;
  const std::string device = one.device();
  CHECK(device.size() == 36);
  CHECK(one.device() == device);
  CHECK(two.device() != device);
}

TEST_CASE("a record copied to another machine is written there under that machine's name") {
  const Folder one;
  const std::string device = one.device();
  const Folder two;
  one.copyRecordTo(two);
  CHECK(two.device() != device);
  const Folder whole;
  one.copyRecordTo(whole);
  REQUIRE(QFile::copy(app::stores::deviceFile(one.path), app::stores::deviceFile(whole.path)));
  CHECK(whole.device() == device);
}

TEST_CASE("what a record of an earlier version named goes on, and is no longer in the record") {
  const Folder folder;
  makeRecord(folder.record());
  nameInRecord(folder, "old-tablet");
  CHECK(folder.device() == "old-tablet");
  CHECK(folder.device() == "old-tablet");
  OtherConnection other(folder.record());
  CHECK(other.ask("SELECT count(*) FROM bench") == "0\n");
  const Folder copied;
  folder.copyRecordTo(copied);
  CHECK(copied.device() != "old-tablet");
}

TEST_CASE("a record made anew is written under a new name: the old one has given its numbers") {
  const Folder folder;
  const std::string device = folder.device();
  for (const char* end : {"", "-wal", "-shm"}) QFile::remove(folder.record() + QLatin1String(end));
  const std::string anew = folder.device();
  CHECK(anew != device);
  CHECK(folder.device() == anew);
}

TEST_CASE("a file that holds no name is told with its place and left as it is, and so is the record") {
  const Folder folder;
  const std::string device = folder.device();
  const QByteArray good = bytesOf(app::stores::deviceFile(folder.path));
  for (const QByteArray& text :
       {QByteArray(), QByteArray("{"), QByteArray("[]"),
        QByteArray("{\"format\": \"mountwright-device/1\", \"device\": \"\"}"),
        QByteArray("{\"format\": \"mountwright-device/1\", \"device\": 7}"),
        QByteArray("{\"format\": \"mountwright-device/1\", \"device\": \"") + QByteArray(200, 'a') + "\"}",
        QByteArray(100'000, 'x')}) {
    INFO(text.left(80).toStdString());
    writeBytes(app::stores::deviceFile(folder.path), text);
    const std::string told = folder.trouble();
    CHECK(told.find("data.device-unreadable") != std::string::npos);
    CHECK(told.find("device.json") != std::string::npos);
    CHECK(bytesOf(app::stores::deviceFile(folder.path)) == text);
  }
  // What could be written under such a name could not be handed on.
  for (const char* name : {" ", "a b", "a\\nb", "a\\u0000b", "\\u202eabc"}) {
    INFO(name);
    writeBytes(app::stores::deviceFile(folder.path),
               QByteArray("{\"format\": \"mountwright-device/1\", \"device\": \"") + name + "\"}");
    CHECK(folder.trouble().find("data.device-unreadable") != std::string::npos);
  }
  for (const char* text : {R"({"format": "mountwright-device/1", "device": "a", "device": "b"})",
                           R"({"format": "mountwright-device/1", "device": "a", "more": 1})"}) {
    writeBytes(app::stores::deviceFile(folder.path), text);
    CHECK(folder.trouble().find("data.device-unreadable") != std::string::npos);
  }
  writeBytes(app::stores::deviceFile(folder.path), R"({"format": "mountwright-device/2", "name": "a"})");
  CHECK(folder.trouble().find("data.device-newer") != std::string::npos);
  writeBytes(app::stores::deviceFile(folder.path), good);
  CHECK(folder.device() == device);
  REQUIRE(QFile::remove(app::stores::deviceFile(folder.path)));
  REQUIRE(QDir().mkdir(app::stores::deviceFile(folder.path)));
  CHECK(folder.trouble().find("data.device-closed") != std::string::npos);
  REQUIRE(QDir().rmdir(app::stores::deviceFile(folder.path)));
  // The name may come back with the disk it lies on.
  REQUIRE(QFile::link(folder.path + "/elsewhere.json", app::stores::deviceFile(folder.path)));
  CHECK(folder.trouble().find("data.device-closed") != std::string::npos);
}
