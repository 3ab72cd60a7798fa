// Jobs handed on by the command line, from one record to another.
#include <algorithm>

#include "app/stores/data_dir.h"
#include "app/stores/sqlite_event_store.h"
#include "app/workbench/library_loader.h"
#include "app/workbench/workbench.h"
#include "tests/app/commands/ran.h"
#include "tests/support/catch.h"
#include "tests/support/fake_clock.h"

using namespace tests;

namespace {

// A record with the demo job in it, where the commands look for it.
void takeIn(const QString& folder, const std::string& text) {
  const auto data = app::stores::dataDirectory(folder);
  REQUIRE(data.ok());
  auto store = app::stores::SqliteEventStore::open(app::stores::recordFile(data.value()));
  REQUIRE(store.ok());
  const FakeClock clock;
  app::workbench::Workbench bench(*store.value(), clock,
                                  app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), "").library,
                                  store.value()->deviceId());
  REQUIRE(bench.load().id.empty());
  REQUIRE_FALSE(bench.takeIn(text).jobId.empty());
}

}  // namespace

TEST_CASE("a job exported from one record and imported into another is there with its record, once") {
  const Commands ours;
  const Commands theirs;
  const auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json");
  REQUIRE(text.has_value());
  takeIn(ours.path("data"), *text);
  const core::base::Value job = parsed(*text);
  const std::string reference = job.find("reference")->asText();
  const Ran exported = ours.run({"export", QString::fromStdString(reference)});
  INFO(exported.err);
  REQUIRE(exported.exit == 0);
  CHECK(exported.err.empty());
  const QString file = theirs.file("handed.record.json", exported.out);
  const Ran imported = theirs.run({"import", file});
  INFO(imported.err);
  CHECK(imported.exit == 0);
  CHECK(imported.out.empty());
  CHECK(imported.err.find("new in its record: 1 events") != std::string::npos);
  const Ran again = theirs.run({"import", file, file});
  CHECK(again.exit == 0);
  CHECK(again.err.find("is there already") != std::string::npos);
  CHECK(theirs.run({"export", QString::fromStdString(reference)}).out == exported.out);
}

TEST_CASE("what cannot be imported or exported is told with its file, and the exit says why") {
  const Commands commands;
  const QString wrong = commands.file("wrong.json", "{\"format\": \"mountwright-record/1\"}");
  const Ran refused = commands.run({"import", wrong});
  CHECK(refused.exit == 1);
  CHECK(core::base::startsWith(refused.err, wrong.toStdString() + ":: "));
  const Ran missing = commands.run({"import", commands.path("nowhere.json")});
  CHECK(missing.exit == 3);
  const Ran none = commands.run({"export", "26-041"});
  CHECK(none.exit == 1);
  CHECK(none.out.empty());
  CHECK(none.err == "there is no job in this record yet\n");
  const Ran job = commands.run({"import", QStringLiteral(PROJECT_ROOT "/recipes/jobs/heron.job.json")});
  CHECK(job.exit == 1);
  CHECK(job.err.find("heron.job.json:/format: ") != std::string::npos);
  CHECK(std::count(job.err.begin(), job.err.end(), '\n') == 1);
  CHECK(commands.run({"export"}).exit == 2);
  CHECK(commands.run({"import"}).exit == 2);
  CHECK(commands.run({"export", "a", "b"}).exit == 2);
}
