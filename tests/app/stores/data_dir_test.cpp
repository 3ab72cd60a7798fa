#include <sys/stat.h>

#include <QDir>
#include <QTemporaryDir>

#include "app/stores/data_dir.h"
#include "app/stores/open_record.h"
#include "tests/app/stores/database_support.h"

using app::stores::dataDirectory;
using namespace tests;

TEST_CASE("the folder asked for is made, with those above it") {
  QTemporaryDir folder;
  const auto made = dataDirectory(folder.filePath("a/b"));
  REQUIRE(made.ok());
  CHECK(made.value() == folder.filePath("a/b"));
  CHECK(QDir(made.value()).exists());
  CHECK(dataDirectory(folder.filePath("a/b")).ok());
}

TEST_CASE("a relative folder is from where the program was started") {
  QTemporaryDir folder;
  const QString before = QDir::currentPath();
  REQUIRE(QDir::setCurrent(folder.path()));
  const auto made = dataDirectory("bench");
  REQUIRE(QDir::setCurrent(before));
  REQUIRE(made.ok());
  CHECK(QDir(made.value()).isAbsolute());
  CHECK(QDir(folder.filePath("bench")).exists());
}

TEST_CASE("a file of that name, or on the way there, is told") {
  QTemporaryDir folder;
  writeBytes(folder.filePath("file"), "tide tables");
  const auto onIt = dataDirectory(folder.filePath("file"));
  REQUIRE_FALSE(onIt.ok());
  CHECK(onIt.error().id == "data.not-a-folder");
  const auto underIt = dataDirectory(folder.filePath("file/below"));
  REQUIRE_FALSE(underIt.ok());
  CHECK(underIt.error().id == "data.cannot-make");
  CHECK(bytesOf(folder.filePath("file")) == "tide tables");
}

TEST_CASE("without an option the user's own place for data is taken") {
  QTemporaryDir home;
  const QByteArray before = qgetenv("XDG_DATA_HOME");
  qputenv("XDG_DATA_HOME", home.path().toUtf8());
  const auto made = dataDirectory("");
  before.isNull() ? qunsetenv("XDG_DATA_HOME") : qputenv("XDG_DATA_HOME", before);
  REQUIRE(made.ok());
  CHECK(made.value().startsWith(home.path()));
  CHECK(QDir(made.value()).exists());
}

namespace {

unsigned modeOf(const QString& path) {
  struct stat found {};
  REQUIRE(lstat(QFile::encodeName(path).constData(), &found) == 0);
  return found.st_mode & 07777;
}

}  // namespace

TEST_CASE("what is kept is made for its user alone") {
  QTemporaryDir folder;
  const auto data = dataDirectory(folder.filePath("data"));
  REQUIRE(data.ok());
  const auto opened = app::stores::openRecord(data.value());
  REQUIRE(opened.ok());
  CHECK(modeOf(data.value()) == 0700);
  for (const char* name : {"", "-wal", "-shm", ".lock"}) {
    INFO(name);
    CHECK(modeOf(app::stores::recordFile(data.value()) + name) == 0600);
  }
}

TEST_CASE("what an earlier version made for everybody to read is put right, and nothing else of that folder") {
  QTemporaryDir folder;
  const QString data = folder.filePath("data");
  REQUIRE(QDir().mkpath(data + "/photographs"));
  REQUIRE(QDir().mkpath(data + "/techniques"));
  makeRecord(data + "/record.sqlite");
  const QStringList kept = {"record.sqlite", "record.sqlite.lock", "photographs/a.jpg"};
  for (const QString& name : kept.mid(1)) writeBytes(data + '/' + name, "x");
  writeBytes(data + "/techniques/mine.technique.json", "{}");
  const auto permit = [&](const QString& path, mode_t mode) {
    REQUIRE(chmod(QFile::encodeName(path).constData(), mode) == 0);
  };
  for (const QString& name : kept) permit(data + '/' + name, 0644);
  for (const QString& path : {data, data + "/photographs"}) permit(path, 0755);
  permit(data + "/techniques/mine.technique.json", 0644);
  REQUIRE(dataDirectory(data).ok());
  CHECK(modeOf(data) == 0700);
  CHECK(modeOf(data + "/photographs") == 0700);
  for (const QString& name : kept) CHECK(modeOf(data + '/' + name) == 0600);
  CHECK(modeOf(data + "/techniques/mine.technique.json") == 0644);
}

TEST_CASE("a folder without a record in it keeps its rights") {
  QTemporaryDir folder;
  REQUIRE(chmod(QFile::encodeName(folder.path()).constData(), 0755) == 0);
  REQUIRE(dataDirectory(folder.path()).ok());
  CHECK(modeOf(folder.path()) == 0755);
}

TEST_CASE("record and own techniques lie in the data folder") {
  CHECK(app::stores::recordFile("/bench") == "/bench/record.sqlite");
  CHECK(app::stores::ownTechniques("/bench") == "/bench/techniques");
}
