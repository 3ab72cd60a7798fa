#include <QDir>
#include <QTemporaryDir>

#include "app/stores/data_dir.h"
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

TEST_CASE("record and own techniques lie in the data folder") {
  CHECK(app::stores::recordFile("/bench") == "/bench/record.sqlite");
  CHECK(app::stores::ownTechniques("/bench") == "/bench/techniques");
}
