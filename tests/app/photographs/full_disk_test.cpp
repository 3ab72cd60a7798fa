// A real disk of two megabytes, in a name space of its own so that nothing else sees it.
#include <QDir>

#include "app/photographs/photographs.h"
#include "tests/app/photographs/pictures.h"
#include "tests/support/catch.h"
#include "tests/support/folders.h"
#include "tests/support/in_child.h"
#include "tests/support/mounts_apart.h"

using namespace tests;
using app::photographs::Photographs;

TEST_CASE("a real disk that is full keeps what it holds, tells, and takes a smaller picture") {
  const Folders folders;
  REQUIRE(QDir().mkpath(folders.path("disk")));
  REQUIRE(folders.write("small.jpg", jpegBytes(300, 200)));
  REQUIRE(folders.write("large.jpg", encoded(noise(2200, 1600), "jpg", 95)));
  const QString disk = folders.path("disk");
  const int said = inChild([&] {
    MountsApart mounts(QFile::encodeName(disk).toStdString());
    if (!mounts.disk("size=2m")) return 10;
    const Photographs photographs(disk + "/photographs");
    const auto first = photographs.keep(folders.path("small.jpg"));
    if (!first) return 1;
    const auto large = photographs.keep(folders.path("large.jpg"));
    if (large || large.error().id != "photograph.disk-full") return 2;
    if (!photographs.trouble(first.value().hash).id.empty()) return 3;
    if (QDir(photographs.folder()).entryList(QDir::Files | QDir::Hidden).size() != 1) return 4;
    return photographs.keep(folders.path("small.jpg")) ? 0 : 5;
  });
  CHECK(said == 0);
}
