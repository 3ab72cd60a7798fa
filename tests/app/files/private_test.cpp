#include "app/files/private.h"

#include <sys/stat.h>

#include <QDir>
#include <QFile>

#include "tests/support/catch.h"
#include "tests/support/folders.h"

using namespace tests;

namespace {

unsigned modeOf(const QString& path) {
  struct stat found {};
  REQUIRE(::lstat(QFile::encodeName(path).constData(), &found) == 0);
  return found.st_mode & 07777;
}

void permit(const QString& path, mode_t mode) { REQUIRE(::chmod(QFile::encodeName(path).constData(), mode) == 0); }

}  // namespace

TEST_CASE("others lose their rights and the user keeps his") {
  const Folders folders;
  REQUIRE(folders.write("file", "x"));
  REQUIRE(folders.write("read-only", "x"));
  REQUIRE(folders.write("folder/file", "x"));
  permit(folders.path("file"), 0644);
  permit(folders.path("read-only"), 0444);
  permit(folders.path("folder"), 0755);
  for (const char* name : {"file", "read-only", "folder"}) app::files::closeToOthers(folders.path(name));
  CHECK(modeOf(folders.path("file")) == 0600);
  CHECK(modeOf(folders.path("read-only")) == 0400);
  CHECK(modeOf(folders.path("folder")) == 0700);
}

TEST_CASE("what a link leads to, a folder many share, and what is not there are left as they are") {
  const Folders folders;
  REQUIRE(folders.write("file", "x"));
  permit(folders.path("file"), 0644);
  REQUIRE(QFile::link(folders.path("file"), folders.path("link")));
  REQUIRE(QDir().mkpath(folders.path("shared")));
  permit(folders.path("shared"), 01777);
  app::files::closeToOthers(folders.path("link"));
  app::files::closeToOthers(folders.path("shared"));
  app::files::closeToOthers(folders.path("nowhere"));
  CHECK(modeOf(folders.path("file")) == 0644);
  CHECK(modeOf(folders.path("shared")) == 01777);
}

TEST_CASE("a folder that is made is its user's alone, one that was there is another's affair") {
  const Folders folders;
  REQUIRE(QDir().mkpath(folders.path("there")));
  permit(folders.path("there"), 0755);
  CHECK(app::files::makePrivateFolder(folders.path("there")));
  CHECK(app::files::makePrivateFolder(folders.path("new/deeper")));
  CHECK(modeOf(folders.path("there")) == 0755);
  CHECK(modeOf(folders.path("new/deeper")) == 0700);
  REQUIRE(folders.write("file", "x"));
  CHECK_FALSE(app::files::makePrivateFolder(folders.path("file/below")));
}
