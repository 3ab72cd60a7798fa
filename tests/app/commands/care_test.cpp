// The sheets that go with a piece: of a job nobody has worked yet, and of one that was worked to its end.
#include <regex>

#include "app/stores/data_dir.h"
#include "app/stores/sqlite_event_store.h"
#include "tests/app/commands/ran.h"
#include "tests/app/workbench/bench.h"
#include "tests/support/golden.h"

using core::base::Value;
using tests::Commands;

namespace {

constexpr const char* kChart = PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json";
constexpr const char* kHeron = PROJECT_ROOT "/recipes/jobs/heron.job.json";

QStringList careOf(const QString& job, const QString& kind, const QStringList& more = {}) {
  return QStringList{QStringLiteral("care"), job, QStringLiteral("--for"), kind} + more;
}

// Works the demo job to its end in the record of these commands; the figures, a note, a photograph, a fault and a
// batch with it. Returns the job's id.
std::string workedIn(const Commands& commands) {
  using namespace core::intents;
  REQUIRE(QDir().mkpath(commands.path(QStringLiteral("data"))));
  auto opened = app::stores::SqliteEventStore::open(app::stores::recordFile(commands.path(QStringLiteral("data"))));
  REQUIRE(opened.ok());
  tests::StoredBench bench(*opened.value(), "this-tablet");
  const std::string job = bench.takeIn(tests::demoJob());
  const auto shop = [&](const ShopIntent& intent) {
    const auto refused = bench.work.submit(core::intents::OfShop{intent});
    INFO(core::base::dump(refused));
    REQUIRE(refused.id.empty());
  };
  const auto ask = [&](const Intent& intent) { REQUIRE(bench.refusal(job, intent) == ""); };
  shop(NameMaker{"A. Maker", "The Old Net Loft\nbehind the quay"});
  shop(EnterRoom{{core::units::Temperature::celsius(20.5), core::units::Humidity::percent(54)}, false});
  BatchEntry paste;
  paste.kind = BatchKind::Paste;
  paste.name = "starch paste";
  paste.of = "wheat starch 1 : 7";
  paste.madeUtc = bench.clock.now().utcMilliseconds;
  paste.keeps = core::units::Duration::minutes(7 * 24 * 60);
  paste.keepsSource = "common practice";
  shop(EnterBatch{paste});
  const std::string batch = bench.work.shop().stock.batches.at(0).id;
  bool linked = false;
  using Kind = core::jobs::BenchPlace::Kind;
  for (int act = 0; act < 2000; ++act) {
    const auto place = core::jobs::benchPlace(bench.work.at(job));
    if (place.kind != Kind::Step && place.kind != Kind::Waiting && place.kind != Kind::Missed) break;
    bench.goOn(job);
    bench.clock.advance(20'000);
    const auto& steps = bench.work.job(job)->plan->workflow.steps;
    for (std::size_t i = 0; i < steps.size() && !linked; ++i) {
      const bool done = bench.work.job(job)->steps[i].status == core::jobs::StepStatus::Done;
      if (steps[i].id != "hinge-starch/hinge" || !done) continue;
      ask(LinkBatches{steps[i].id, {batch}});
      linked = true;
    }
  }
  CHECK(linked);
  ask(AddNote{"Left flat overnight\nbefore closing", ""});
  const std::string note = bench.work.job(job)->beside.notes.at(0).id;
  ask(ChangeNote{note, "Left flat for two nights before closing"});
  ask(KeepPhotograph{std::string(64, 'c'), 3'000'000, "jpeg", 4000, 3000, "Before closing", ""});
  return job;
}

}  // namespace

TEST_CASE("no care sheet calls anything safe, archival or permanent, as it is read") {
  const std::regex verdict(R"(\b(safe|safely|archival|permanent|permanently|acid-free|conservation grade|cured)\b)",
                           std::regex::icase);
  CHECK(std::regex_search(std::string("An Archival board."), verdict));
  const Commands commands;
  const QString worked = QString::fromStdString(workedIn(commands));
  for (const QString& job : {QString::fromUtf8(kChart), QString::fromUtf8(kHeron), worked}) {
    for (const char* kind : {"client", "conservator"}) {
      const auto ran = commands.run(careOf(job, QString::fromUtf8(kind)));
      INFO(ran.out);
      REQUIRE(ran.exit == app::commands::kDone);
      CHECK(ran.out.size() > 400);
      CHECK_FALSE(std::regex_search(ran.out, verdict));
    }
  }
}

TEST_CASE("the care sheets of the demo jobs are as they were") {
  const Commands commands;
  const auto text = [&](const char* job, const char* kind, const char* units) {
    const auto ran = commands.run(
        careOf(QString::fromUtf8(job), QString::fromUtf8(kind), {QStringLiteral("--units"), QString::fromUtf8(units)}));
    CHECK(ran.exit == app::commands::kDone);
    CHECK(tests::contains(ran.err, "its plan"));
    return ran.out;
  };
  tests::checkGolden(PROJECT_ROOT, "care/chart.client.txt", text(kChart, "client", "mm"));
  tests::checkGolden(PROJECT_ROOT, "care/chart.conservator.txt", text(kChart, "conservator", "mm"));
  tests::checkGolden(PROJECT_ROOT, "care/heron.client.txt", text(kHeron, "client", "in"));
  tests::checkGolden(PROJECT_ROOT, "care/heron.conservator.txt", text(kHeron, "conservator", "in"));
}

TEST_CASE(
    "the care sheet of a worked job tells when, in what room and with which batch, by its reference or its file") {
  const Commands commands;
  const std::string job = workedIn(commands);
  const auto byReference = commands.run(careOf(QStringLiteral("26-041"), QStringLiteral("conservator")));
  INFO(byReference.err);
  REQUIRE(byReference.exit == app::commands::kDone);
  CHECK(byReference.err.empty());
  tests::checkGolden(PROJECT_ROOT, "care/worked.conservator.txt", byReference.out);
  CHECK(tests::contains(byReference.out, "no. 1: starch paste, wheat starch 1 : 7, made 2025-11-25"));
  CHECK(tests::contains(byReference.out,
                        "20.5 \xC2\xB0"
                        "C, 54.0 % relative humidity"));
  CHECK(tests::contains(byReference.out, "Left flat for two nights before closing"));
  CHECK_FALSE(tests::contains(byReference.out, "Left flat overnight"));
  CHECK(commands.run(careOf(QString::fromUtf8(kChart), QStringLiteral("conservator"))).out == byReference.out);
  CHECK(commands.run(careOf(QString::fromStdString(job), QStringLiteral("conservator"))).out == byReference.out);
  const auto client = commands.run(careOf(QStringLiteral("26-041"), QStringLiteral("client")));
  tests::checkGolden(PROJECT_ROOT, "care/worked.client.txt", client.out);
}

TEST_CASE("as JSON every line of a care sheet says what it rests on") {
  const Commands commands;
  const auto ran = commands.run({QStringLiteral("care"), QString::fromUtf8(kHeron), QStringLiteral("--json"),
                                 QStringLiteral("--for=conservator")});
  const Value root = tests::parsed(ran.out);
  CHECK(root.find("format")->asText() == "mountwright-care/1");
  CHECK(root.find("units")->asText() == "in");
  CHECK_FALSE(root.find("recorded")->asBoolean());
  const std::set<std::string> known = {"entered", "default", "computed", "observed", "stated", "unknown"};
  std::set<std::string> seen;
  for (const Value& section : root.find("sections")->items()) {
    for (const Value& line : section.find("lines")->items()) {
      const std::string word = line.find("known")->asText();
      CHECK(known.contains(word));
      seen.insert(word);
      CHECK_FALSE(line.find("values")->items().empty());
      CHECK_FALSE(line.find("label")->asText().empty());
    }
  }
  CHECK(seen == known);
  // What the job's file leaves to its default is not said to have been entered.
  CHECK(tests::contains(ran.out, "\"known\": \"default\""));
}

TEST_CASE("a care sheet makes no record, and tells what it cannot find") {
  const Commands commands;
  CHECK(commands.run(careOf(QStringLiteral("26-041"), QStringLiteral("client"))).exit == app::commands::kUnreadable);
  CHECK(commands.run(careOf(commands.path(QStringLiteral("none.job.json")), QStringLiteral("client"))).exit ==
        app::commands::kUnreadable);
  CHECK_FALSE(QFileInfo::exists(commands.path(QStringLiteral("data/record.sqlite"))));
  CHECK(commands.run(careOf(QString::fromUtf8(kChart), QStringLiteral("nobody"))).exit == app::commands::kWrongUse);
  CHECK(commands.run({QStringLiteral("figures"), QString::fromUtf8(kChart), QStringLiteral("--for=client")}).exit ==
        app::commands::kWrongUse);
  const auto bad = commands.file(QStringLiteral("bad.job.json"), "{}");
  CHECK(commands.run(careOf(bad, QStringLiteral("client"))).exit == app::commands::kProblem);
  const auto data = commands.file(QStringLiteral("data/record.sqlite"), "not a database at all, but words");
  CHECK(commands.run(careOf(QString::fromUtf8(kChart), QStringLiteral("client"))).exit == app::commands::kUnreadable);
}
