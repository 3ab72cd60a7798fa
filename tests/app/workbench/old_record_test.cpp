// A record that an earlier program wrote, with every type of event in it, opens to what that program made of it.
//
// tests/golden/records/every_event.sqlite was written by the program as it was before its events became types, by two
// benches and a third whose preparation was taken into use; every_event.txt is what that program said of it.
#include <QFile>
#include <QTemporaryDir>
#include <set>

#include "core/record/happening.h"
#include "tests/app/workbench/old_record_seen.h"
#include "tests/app/workbench/own_store.h"
#include "tests/support/golden.h"

using namespace tests;

namespace {

// Where the clock stood when the record was left: 3487193 s after the fake clock begins, twenty seconds after a boot.
FakeClock clockThen() {
  FakeClock clock;
  clock.jump(3'487'193'000);
  clock.reboot(0, 20'000);
  return clock;
}

std::unique_ptr<app::stores::SqliteEventStore> openCopy(const QTemporaryDir& folder) {
  const QString path = folder.filePath(QStringLiteral("record.sqlite"));
  REQUIRE(QFile::copy(QStringLiteral(PROJECT_ROOT "/tests/golden/records/every_event.sqlite"), path));
  REQUIRE(QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner));
  return openIn(folder);
}

std::vector<core::record::Event> allEvents(core::record::EventStore& store) {
  std::vector<core::record::Event> all;
  const auto streams = store.streams();
  REQUIRE(streams.ok());
  for (const std::string& stream : streams.value()) {
    const auto events = store.load(stream);
    REQUIRE(events.ok());
    all.insert(all.end(), events.value().begin(), events.value().end());
  }
  return all;
}

}  // namespace

TEST_CASE("a record of an earlier program opens, folds, tells and exports as it did there") {
  QTemporaryDir folder;
  const auto store = openCopy(folder);
  const bool believes = GENERATE(true, false);
  if (!believes) {
    // Without what was kept beside it everything is folded anew.
    const auto read = store->summaries();
    REQUIRE(read.ok());
    std::vector<core::record::Summary> kept = read.value();
    REQUIRE_FALSE(kept.empty());
    for (core::record::Summary& summary : kept) summary.stamp = "none";
    REQUIRE(store->keepSummaries(kept).ok());
  }
  StoredBench bench(*store, store->formerDevice());
  bench.clock = clockThen();
  REQUIRE(bench.work.heartbeat().id.empty());
  checkGolden(PROJECT_ROOT, "records/every_event.txt", seen(bench));
}

TEST_CASE("every event of an earlier program is known, and written again it is the same to the byte") {
  QTemporaryDir folder;
  const auto store = openCopy(folder);
  std::set<std::string> types;
  for (const core::record::Event& event : allEvents(*store)) {
    INFO(core::base::writeJson(core::record::eventJson(event), 0));
    const core::record::Happening happening = core::record::happeningOf(event);
    REQUIRE_FALSE(std::holds_alternative<core::record::Unknown>(happening));
    const core::record::EventDraft again = core::record::draftOf(happening);
    CHECK(again.type == event.type);
    CHECK(core::base::writeJson(again.payload, 0) == core::base::writeJson(event.payload, 0));
    types.insert(event.type);
  }
  CHECK(types.size() == 43);
}
