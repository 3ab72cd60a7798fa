// Files a person names, whatever lies under the name.
#include "app/files/whole_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QDir>
#include <QFile>

#include "tests/support/catch.h"
#include "tests/support/files.h"
#include "tests/support/folders.h"

using namespace tests;
using app::files::readWhole;
using app::files::writeWhole;

namespace {

std::string trouble(const QString& path) {
  const auto read = readWhole(path, 100);
  return read ? "" : core::base::dump(read.error());
}

std::string writing(const QString& path, const std::string& bytes) {
  const auto failed = writeWhole(path, bytes);
  return failed ? core::base::dump(*failed) : "";
}

std::string bytesOf(const QString& path) { return readWholeFile(path.toStdString()).value_or("(none)"); }

void pipeAt(const QString& path) { REQUIRE(::mkfifo(QFile::encodeName(path).constData(), 0600) == 0); }

QStringList all(const QString& folder) {
  return QDir(folder).entryList(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot, QDir::Name);
}

}  // namespace

TEST_CASE("a file is read to its end, and one byte beyond the limit where it is longer") {
  const Folders folders;
  REQUIRE(folders.write("short", QByteArray("a\0b", 3)));
  REQUIRE(folders.write("exact", QByteArray(100, 'x')));
  REQUIRE(folders.write("long", QByteArray(5'000'000, 'x')));
  REQUIRE(folders.write("nothing", ""));
  CHECK(readWhole(folders.path("short"), 100).value() == std::string("a\0b", 3));
  CHECK(readWhole(folders.path("exact"), 100).value().size() == 100);
  CHECK(readWhole(folders.path("long"), 100).value().size() == 101);
  CHECK(readWhole(folders.path("long"), 8'000'000).value().size() == 5'000'000);
  CHECK(readWhole(folders.path("nothing"), 100).value().empty());
  REQUIRE(QFile::link(folders.path("short"), folders.path("link")));
  CHECK(readWhole(folders.path("link"), 100).value().size() == 3);
}

TEST_CASE("what is no ordinary file is refused at once, behind a link too") {
  const Folders folders;
  CHECK(trouble(folders.path("nowhere")) == "file.missing");
  CHECK(trouble(folders.path()) == "file.is-folder");
  pipeAt(folders.path("pipe"));
  CHECK(trouble(folders.path("pipe")) == "file.not-a-file");
  CHECK(trouble("/dev/zero") == "file.not-a-file");
  for (const char* target : {"pipe", "nowhere", "/dev/zero", "/dev/full"}) {
    const QString link = folders.path("link");
    QFile::remove(link);
    REQUIRE(QFile::link(target, link));
    CHECK(trouble(link) == (std::string(target) == "nowhere" ? "file.missing" : "file.not-a-file"));
  }
}

TEST_CASE("a file is written whole, for its user alone, and takes the place of the one that was there") {
  const Folders folders;
  const QString path = folders.path("handed.json");
  REQUIRE(writing(path, "first").empty());
  CHECK(bytesOf(path) == "first");
  struct stat found {};
  REQUIRE(::stat(QFile::encodeName(path).constData(), &found) == 0);
  CHECK((found.st_mode & 07777) == 0600);
  REQUIRE(writing(path, std::string(3'000'000, 'y')).empty());
  CHECK(bytesOf(path).size() == 3'000'000);
  CHECK(all(folders.path()) == QStringList{"handed.json"});
}

TEST_CASE("a link of that name is replaced and never followed") {
  const Folders folders;
  REQUIRE(folders.write("elsewhere/letter", "dear maker"));
  REQUIRE(QFile::link(folders.path("elsewhere/letter"), folders.path("leads")));
  REQUIRE(QFile::link(folders.path("elsewhere/new"), folders.path("dangles")));
  CHECK(writing(folders.path("leads"), "job").empty());
  CHECK(writing(folders.path("dangles"), "job").empty());
  CHECK(bytesOf(folders.path("elsewhere/letter")) == "dear maker");
  CHECK(all(folders.path("elsewhere")) == QStringList{"letter"});
  CHECK(bytesOf(folders.path("leads")) == "job");
  CHECK(bytesOf(folders.path("dangles")) == "job");
}

TEST_CASE("a pipe or a folder of that name stays, and is told without waiting") {
  const Folders folders;
  pipeAt(folders.path("pipe"));
  REQUIRE(QDir().mkpath(folders.path("folder")));
  CHECK(writing(folders.path("pipe"), "job") == "file.not-a-file");
  CHECK(writing(folders.path("folder"), "job") == "file.not-a-file");
  CHECK(writing(folders.path("no/such/folder/file"), "job") == "file.cannot-write");
  CHECK(all(folders.path()) == QStringList{"folder", "pipe"});
}
