// A read-only disk and a full one, real and in a name space of their own so that nothing else sees them.
#include <QTemporaryDir>

#include "tests/app/stores/database_support.h"
#include "tests/support/in_child.h"
#include "tests/support/mounts_apart.h"

using app::stores::SqliteEventStore;
using namespace tests;

TEST_CASE("a read-only file system is told, whoever asks") {
  QTemporaryDir folder;
  const std::string place = folder.path().toStdString();
  const std::string answer = answerOfChild([&]() -> std::string {
    MountsApart mounts(place);
    if (!mounts.disk(nullptr)) return "no disk";
    makeRecord(folder.filePath("record.sqlite"));
    if (!mounts.readOnly()) return "not read-only";
    return troubleAt(folder.filePath("record.sqlite")) + " " + troubleAt(folder.filePath("new.sqlite"));
  });
  CHECK(answer == "store.read-only-folder store.read-only-folder");
}

TEST_CASE("a full disk is told and what was kept before stays") {
  QTemporaryDir folder;
  const std::string place = folder.path().toStdString();
  const std::string answer = answerOfChild([&]() -> std::string {
    MountsApart mounts(place);
    if (!mounts.disk("size=1m")) return "no disk";
    auto opened = SqliteEventStore::open(folder.filePath("record.sqlite"));
    if (!opened) return opened.error().id;
    for (int act = 1; act < 1000; ++act) {
      const auto kept =
          opened.value()->append({event("a", act, act)}, {{std::to_string(act), "job", "", std::string(20'000, 'x')}});
      if (kept) continue;
      const auto events = opened.value()->load("job/one");
      const bool whole = events.ok() && events.value().size() == static_cast<std::size_t>(act - 1);
      return kept.error().id + (whole ? " whole" : " not whole");
    }
    return "never full";
  });
  CHECK(answer == "store.full whole");
}
