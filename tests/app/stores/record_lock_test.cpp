// One program a record; whose name stands in the lock's file is nobody's proof of life.
#include "app/stores/record_lock.h"

#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QDir>
#include <QTemporaryDir>
#include <csignal>

#include "app/stores/open_record.h"
#include "tests/app/stores/database_support.h"

using app::stores::RecordLock;
using namespace tests;

namespace {

struct Place {
  QTemporaryDir folder;
  QString record = folder.filePath("record.sqlite");
  QString lock = record + ".lock";
  std::string trouble() const {
    const auto taken = RecordLock::take(record);
    return taken ? "" : taken.error().id;
  }
};

}  // namespace

TEST_CASE("a lock's file that nobody holds holds nobody up, whatever it says") {
  const Place place;
  const QByteArray text =
      GENERATE(as<QByteArray>{}, "", "\n", "garbage \x01\xff\n\n\n\n", "1\nmountwright\nmill-tablet\n",
               "1\nsystemd\nanother-machine\nid\nboot\n", QByteArray(100'000, 'x'));
  writeBytes(place.lock, text);
  CHECK(place.trouble().empty());
}

TEST_CASE("as long as one holds it the next is told who, and let in when he goes") {
  const Place place;
  {
    const auto first = RecordLock::take(place.record);
    REQUIRE(first.ok());
    const auto second = RecordLock::take(place.record);
    REQUIRE_FALSE(second.ok());
    CHECK(second.error().id == "store.in-use-by");
    CHECK(core::base::dump(second.error()).find("process=" + std::to_string(getpid())) != std::string::npos);
    // Who it is may have been wiped out; that he is there has not.
    writeBytes(place.lock, "");
    CHECK(place.trouble() == "store.in-use");
  }
  CHECK(place.trouble().empty());
}

TEST_CASE("a lock dies with its program, however that ends") {
  const Place place;
  int ends[2];
  REQUIRE(pipe(ends) == 0);
  const pid_t child = fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    const auto held = RecordLock::take(place.record);
    const char said = held ? 'y' : 'n';
    if (write(ends[1], &said, 1) != 1) _exit(1);
    for (;;) pause();
  }
  char said = 0;
  REQUIRE(read(ends[0], &said, 1) == 1);
  CHECK(said == 'y');
  CHECK(place.trouble() == "store.in-use-by");
  kill(child, SIGKILL);
  waitpid(child, nullptr, 0);
  close(ends[0]);
  close(ends[1]);
  CHECK(place.trouble().empty());
}

TEST_CASE("what is no file in the lock's place is told, and what a link leads to is not touched") {
  const Place place;
  const int kind = GENERATE(0, 1, 2, 3);
  if (kind == 0) REQUIRE(mkfifo(place.lock.toUtf8().constData(), 0600) == 0);
  if (kind == 1) REQUIRE(QDir().mkpath(place.lock));
  if (kind == 2) REQUIRE(QFile::link(place.folder.filePath("new"), place.lock));
  if (kind == 3) {
    writeBytes(place.folder.filePath("letter"), "dear maker");
    REQUIRE(QFile::link(place.folder.filePath("letter"), place.lock));
  }
  CHECK(place.trouble() == "store.lock-not-a-file");
  CHECK_FALSE(QFile::exists(place.folder.filePath("new")));
  if (kind == 3) CHECK(bytesOf(place.folder.filePath("letter")) == "dear maker");
}

TEST_CASE("a record is opened by one, and by the next when it is closed") {
  QTemporaryDir folder;
  {
    const auto first = app::stores::openRecord(folder.path());
    REQUIRE(first.ok());
    const auto second = app::stores::openRecord(folder.path());
    REQUIRE_FALSE(second.ok());
    CHECK(second.error().id == "store.in-use-by");
  }
  CHECK(app::stores::openRecord(folder.path()).ok());
}
