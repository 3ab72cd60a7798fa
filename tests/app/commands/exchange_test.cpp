// Jobs handed on by the command line, from one record to another.
#include <sys/stat.h>

#include <algorithm>

#include "app/stores/data_dir.h"
#include "app/stores/open_record.h"
#include "app/workbench/library_loader.h"
#include "app/workbench/workbench.h"
#include "tests/app/commands/ran.h"
#include "tests/app/stores/database_support.h"
#include "tests/support/catch.h"
#include "tests/support/fake_clock.h"

using namespace tests;

namespace {

// A record with the demo job in it, where the commands look for it.
void takeIn(const QString& folder, const std::string& text) {
  const auto data = app::stores::dataDirectory(folder);
  REQUIRE(data.ok());
  const auto opened = app::stores::openRecord(data.value());
  REQUIRE(opened.ok());
  const FakeClock clock;
  app::workbench::Workbench bench(*opened.value().store, clock,
                                  app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), "").library,
                                  opened.value().deviceId);
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

TEST_CASE("a job whose kept text is damaged or missing is not exported by half, and a good backup mends it") {
  const Commands ours;
  const auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json");
  REQUIRE(text.has_value());
  takeIn(ours.path("data"), *text);
  const Ran backup = ours.run({"export", "26-041"});
  REQUIRE(backup.exit == 0);
  const QString file = ours.file("backup.record.json", backup.out);
  const char* damage =
      GENERATE("UPDATE texts SET body = x'7b7d' WHERE kind = 'job'", "DELETE FROM texts WHERE kind = 'job'",
               "UPDATE texts SET body = zeroblob(4194304) WHERE name = 'cut-windows'",
               "DELETE FROM texts WHERE kind = 'technique'",
               "UPDATE texts SET body = CAST(body || ' ' AS BLOB), kind = 'letter', name = ''");
  INFO(damage);
  OtherConnection(app::stores::recordFile(ours.path("data"))).run(damage);
  const Ran refused = ours.run({"export", "26-041"});
  CHECK(refused.exit == 3);
  CHECK(refused.out.empty());
  CHECK(contains(refused.err, "What was done is still in"));
  const Ran mended = ours.run({"import", file});
  INFO(mended.err);
  CHECK(mended.exit == 0);
  CHECK(contains(mended.err, "was put right from this file"));
  CHECK_FALSE(contains(mended.err, "is there already"));
  const Ran again = ours.run({"export", "26-041"});
  CHECK(again.exit == 0);
  CHECK(again.out == backup.out);
  CHECK(contains(ours.run({"import", file}).err, "is there already"));
}

TEST_CASE("a job whose record is larger than a job file may be is exported and taken up again") {
  const Commands ours;
  const Commands theirs;
  auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json");
  REQUIRE(text.has_value());
  // Nearly all that a job file may have; each line end takes two bytes in the record.
  text->append(core::base::kMaximumJsonBytes - text->size(), '\n');
  takeIn(ours.path("data"), *text);
  const Ran exported = ours.run({"export", "26-041"});
  INFO(exported.err);
  REQUIRE(exported.exit == 0);
  CHECK(exported.out.size() > 2 * core::base::kMaximumJsonBytes - 10'000);
  const Ran imported = theirs.run({"import", theirs.file("large.record.json", exported.out)});
  INFO(imported.err);
  CHECK(imported.exit == 0);
  CHECK(theirs.run({"export", "26-041"}).out == exported.out);
}

TEST_CASE("a record larger than import takes is not written, and says so") {
  const Commands ours;
  const auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json");
  REQUIRE(text.has_value());
  takeIn(ours.path("data"), *text);
  {
    // Notes enough for a lifetime, as another program may have left them.
    OtherConnection other(app::stores::recordFile(ours.path("data")));
    other.run(
        "INSERT INTO events SELECT 'note-' || value, 'other', value, '0001764063195123-000001', 'i-' || value, "
        "(SELECT stream FROM events WHERE stream GLOB 'job/*' LIMIT 1), 'NoteAdded', 1, 1, 1, 'UTC', 'b', 1, 0, "
        "'{\"text\":\"' || substr(hex(zeroblob(4000)), 1, 7900) || '\"}' FROM (WITH RECURSIVE n(value) AS (SELECT 1 "
        "UNION ALL SELECT value + 1 FROM n WHERE value < 2200) SELECT value FROM n)");
  }
  const Ran refused = ours.run({"export", "26-041"});
  CHECK(refused.exit == 3);
  CHECK(refused.out.empty());
  CHECK(contains(refused.err, "16 MiB"));
}

TEST_CASE("a pipe, a device or a folder is no file to import, and holds nothing up") {
  const Commands commands;
  const QString pipe = commands.path("pipe.json");
  REQUIRE(mkfifo(QFile::encodeName(pipe).constData(), 0600) == 0);
  for (const QString& path : {pipe, QStringLiteral("/dev/zero"), commands.path("")}) {
    for (const char* command : {"import", "check", "figures", "materials", "steps", "rehearse", "care"}) {
      INFO(command << ' ' << path.toStdString());
      const Ran ran = commands.run({command, path});
      CHECK(ran.exit == 3);
      CHECK(ran.out.empty());
      CHECK(core::base::startsWith(ran.err, path.toStdString() + ":: "));
    }
  }
}

TEST_CASE("a record another program works with is left alone, one that nobody holds is not") {
  const Commands commands;
  const auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json");
  REQUIRE(text.has_value());
  takeIn(commands.path("data"), *text);
  const QString record = app::stores::recordFile(commands.path("data"));
  {
    const auto held = app::stores::RecordLock::take(record);
    REQUIRE(held.ok());
    const Ran refused = commands.run({"export", "26-041"});
    CHECK(refused.exit == 3);
    CHECK(contains(refused.err, "Another bench already works"));
  }
  // As it came with a copy of the folder from a tablet that is no more.
  commands.file("data/record.sqlite.lock", "1\nmountwright\nmill-tablet\n");
  CHECK(commands.run({"export", "26-041"}).exit == 0);
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

TEST_CASE("a piece taken up after its whole says in one line what is there already, and so does the whole after it") {
  const Commands ours;
  const Commands wholeFirst;
  const Commands pieceFirst;
  auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json");
  REQUIRE(text.has_value());
  text->insert(text->find('{') + 1, R"("deliver": "mount", "count": 3, )");
  takeIn(ours.path("data"), *text);
  const QString whole = ours.file("whole.record.json", ours.run({"export", "26-041"}).out);
  const QString piece = ours.file("piece.record.json", ours.run({"export", "26-041", "--piece", "2"}).out);
  const std::string title = "\"Pilot's chart of the outer bar, 26-041";
  const auto told = [](const Ran& ran) {
    REQUIRE(ran.exit == 0);
    std::vector<std::string> lines = core::base::split(ran.err, '\n');
    REQUIRE(lines.size() == 3);
    lines.pop_back();
    return lines;
  };
  const std::string added = " was taken up; new in its record: 1 events";
  const std::string beside = ". Already there, and left as it was: 26-041";
  CHECK(told(wholeFirst.run({"import", whole, piece})) ==
        std::vector<std::string>{title + '"' + added, title + " 2/3\"" + added + beside});
  CHECK(told(pieceFirst.run({"import", piece, whole})) ==
        std::vector<std::string>{title + " 2/3\"" + added, title + '"' + added + beside + " 2/3"});
  const std::string there = " is there already, with all of its record";
  CHECK(told(wholeFirst.run({"import", whole, piece})) ==
        std::vector<std::string>{title + '"' + there, title + " 2/3\"" + there});
}

TEST_CASE("one of several pieces is exported by its number, and no other number") {
  const Commands ours;
  const Commands theirs;
  auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json");
  REQUIRE(text.has_value());
  text->insert(text->find('{') + 1, R"("deliver": "mount", "count": 12, )");
  takeIn(ours.path("data"), *text);
  const Ran third = ours.run({"export", "26-041", "--piece", "3"});
  INFO(third.err);
  REQUIRE(third.exit == 0);
  const Ran imported = theirs.run({"import", theirs.file("third.record.json", third.out)});
  INFO(imported.err);
  CHECK(imported.exit == 0);
  CHECK(theirs.run({"export", "26-041 3/12"}).out == third.out);
  CHECK(theirs.run({"care", "26-041 3/12"}).exit == 0);
  CHECK(theirs.run({"care", "26-041 4/12"}).exit == 3);
  for (const char* number : {"13", "99999"}) {
    const Ran none = ours.run({"export", "26-041", "--piece", number});
    CHECK(none.exit == 1);
    CHECK(none.out.empty());
    CHECK(none.err.find("it is of 12") != std::string::npos);
  }
  for (const char* number : {"0", "-1", "two", "3.5", "99999999999"}) {
    CHECK(ours.run({"export", "26-041", "--piece", number}).exit == 2);
  }
  CHECK(ours.run({"steps", "26-041", "--piece", "3"}).exit == 2);
}
