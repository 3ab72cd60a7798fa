#include <algorithm>
#include <map>

#include "app/stores/data_dir.h"
#include "app/stores/sqlite_event_store.h"
#include "core/waits/drying.h"
#include "tests/app/commands/ran.h"
#include "tests/app/commands/techniques.h"
#include "tests/app/workbench/bench.h"

using core::base::Value;
using tests::Commands;
using tests::contains;

namespace {

struct Listed {
  std::string id;
  std::vector<std::string> needs, makes;
};

std::vector<std::string> textsOf(const Value& list) {
  std::vector<std::string> texts;
  for (const Value& item : list.items()) texts.push_back(item.asText());
  return texts;
}

std::vector<Listed> stepsOf(const Commands& commands, const QString& recipes) {
  const auto ran =
      commands.run({QStringLiteral("steps"), commands.file(QStringLiteral("c.job.json"), tests::workedExample()),
                    QStringLiteral("--json"), QStringLiteral("--recipes"), recipes});
  INFO(ran.err);
  REQUIRE(ran.exit == 0);
  const Value root = tests::parsed(ran.out);
  REQUIRE(root.find("format")->asText() == "mountwright-steps/1");
  std::vector<Listed> steps;
  for (const Value& step : root.find("steps")->items()) {
    Listed listed{step.find("id")->asText(), textsOf(*step.find("needs")), textsOf(*step.find("makes"))};
    for (const Value& wait : step.find("waits")->items()) listed.makes.push_back(wait.find("makes")->asText());
    steps.push_back(std::move(listed));
  }
  return steps;
}

std::ptrdiff_t placeOf(const std::vector<Listed>& steps, const std::string& id) {
  const auto found = std::find_if(steps.begin(), steps.end(), [&](const Listed& step) { return step.id == id; });
  INFO(id);
  REQUIRE(found != steps.end());
  return found - steps.begin();
}

std::ptrdiff_t makerOf(const std::vector<Listed>& steps, const std::string& fact) {
  const auto found = std::find_if(steps.begin(), steps.end(), [&](const Listed& step) {
    return std::count(step.makes.begin(), step.makes.end(), fact) > 0;
  });
  INFO(fact);
  REQUIRE(found != steps.end());
  return found - steps.begin();
}

}  // namespace

TEST_CASE("the steps of the chart come in an order in which every need is made before") {
  const Commands commands;
  const auto steps = stepsOf(commands, commands.recipes());
  CHECK(steps.size() > 50);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    for (const std::string& fact : steps[i].needs) {
      INFO(steps[i].id << " needs " << fact);
      CHECK(makerOf(steps, fact) < static_cast<std::ptrdiff_t>(i));
    }
  }
}

TEST_CASE("a step's JSON has every member of the contract") {
  const Commands commands;
  const auto ran =
      commands.run({QStringLiteral("steps"), commands.file(QStringLiteral("c.job.json"), tests::workedExample()),
                    QStringLiteral("--json")});
  REQUIRE(ran.exit == 0);
  const Value root = tests::parsed(ran.out);
  bool closing = false;
  for (const Value& step : root.find("steps")->items()) {
    for (const char* key : {"id", "title", "technique", "thing", "needs", "makes", "ends", "figures", "tools", "checks",
                            "cautions", "hands", "work", "uninterruptible", "waits"}) {
      INFO(step.find("id")->asText() << ' ' << key);
      REQUIRE(step.find(key) != nullptr);
    }
    for (const Value& wait : step.find("waits")->items()) {
      for (const char* key : {"kind", "makes", "opens", "closes", "opensSpan", "closesSpan", "basis"}) {
        INFO(key);
        REQUIRE(wait.find(key) != nullptr);
      }
      CHECK((wait.find("basis")->asText() == "label" || wait.find("basis")->asText() == "model"));
      closing = closing || !wait.find("closes")->isNull();
    }
  }
  CHECK(closing);
}

TEST_CASE("without the technique that makes a needed fact, what is missed stands at its thing in the maker's words") {
  const Commands commands;
  const QString recipes = commands.recipes();
  REQUIRE(QFile::remove(recipes + QStringLiteral("/look-edge-over.technique.json")));
  const auto ran =
      commands.run({QStringLiteral("steps"), commands.file(QStringLiteral("c.job.json"), tests::workedExample()),
                    QStringLiteral("--json"), QStringLiteral("--recipes"), recipes});
  CHECK(ran.exit == 1);
  CHECK(ran.out.empty());
  CHECK(contains(ran.err, "c.job.json:/mount/boards/0: no technique at hand does what has to be done before \""));
  CHECK(contains(ran.err, ", of the top board"));
  CHECK_FALSE(contains(ran.err, "window.clean"));
}

TEST_CASE("every delivered technique the chart uses is missed when it is taken away, or has another in its place") {
  const Commands commands;
  const QString job = commands.file(QStringLiteral("c.job.json"), tests::workedExample());
  int missed = 0;
  const QString recipes = commands.recipes();
  for (const QString& name : QDir(recipes).entryList({QStringLiteral("*.technique.json")}, QDir::Files)) {
    const QString path = recipes + u'/' + name;
    const QString away = path + QStringLiteral(".away");
    REQUIRE(QFile::rename(path, away));
    const auto ran = commands.run({QStringLiteral("steps"), job, QStringLiteral("--recipes"), recipes});
    INFO(name.toStdString() << '\n' << ran.err);
    if (ran.exit != 0) {
      ++missed;
      CHECK(ran.exit == 1);
      CHECK(contains(ran.err, "no technique "));
      CHECK_FALSE(contains(ran.err, "@"));
    }
    REQUIRE(QFile::rename(away, path));
  }
  CHECK(missed >= 6);
}

TEST_CASE("a broken technique is told at its place and left out, and the job goes on without it where it can") {
  const Commands commands;
  const QString recipes = commands.recipes();
  commands.file(QStringLiteral("recipes/odd.technique.json"),
                "{\"format\": \"mountwright-technique/1\", \"id\": \"odd\"}");
  const QString job = commands.file(QStringLiteral("c.job.json"), tests::workedExample());
  const auto ran = commands.run({QStringLiteral("steps"), job, QStringLiteral("--recipes"), recipes});
  CHECK(ran.exit == 0);
  CHECK(contains(ran.err, "odd.technique.json:: the key \"steps\" is missing"));
  CHECK(contains(ran.err, "odd.technique.json:: this technique is left out until it is mended"));
}

TEST_CASE("a technique nobody has seen before lands where its facts put it") {
  const Commands commands;
  const QString recipes = commands.recipes();
  // Named and ranked so that neither name nor rank could put them in order.
  commands.file(
      QStringLiteral("recipes/aa-gather.technique.json"),
      tests::techniqueText(
          "aa-gather", 0, R"({"always": true})",
          {{"gather", "2", R"(, "needs": [{"every": "board", "is": "quurled"}], "makes": ["piece.gathered"])"}}));
  commands.file(
      QStringLiteral("recipes/zz-quurl.technique.json"),
      tests::techniqueText("zz-quurl", 9999, R"({"each": "board"})",
                           {{"quurl", "2", R"(, "needs": ["this.window.clean"], "makes": ["this.quurled"])"}}));
  const auto steps = stepsOf(commands, recipes);
  for (const std::string board : {"top", "under"}) {
    const auto quurl = placeOf(steps, "zz-quurl/quurl@" + board);
    CHECK(makerOf(steps, board + ".window.clean") < quurl);
    CHECK(quurl < placeOf(steps, "aa-gather/gather"));
  }
}

TEST_CASE("a role or technique the job names but that does not exist is told") {
  const Commands commands;
  const std::string job =
      tests::changed(tests::workedExample(), "\"room\"", "\"techniques\": {\"no-such\": \"thing\"}, \"room\"");
  const auto ran = commands.run({QStringLiteral("steps"), commands.file(QStringLiteral("c.job.json"), job)});
  CHECK(ran.exit == 1);
  CHECK(contains(ran.err, "c.job.json:/techniques/no-such: no technique has the role \"no-such\""));
}

TEST_CASE("a maker's own technique stands in for the delivered one of its id") {
  const Commands commands;
  const QString recipes = commands.recipes();
  const auto delivered = tests::readWholeFile((recipes + QStringLiteral("/final-look.technique.json")).toStdString());
  REQUIRE(delivered.has_value());
  const auto before = stepsOf(commands, recipes);
  commands.file(
      QStringLiteral("data/techniques/final-look.technique.json"),
      tests::techniqueText("final-look", 9000, R"({"always": true})",
                           {{"glance", "1", R"(, "needs": ["package.closed"], "makes": ["piece.recorded"])"}}));
  const auto after = stepsOf(commands, recipes);
  CHECK(after.back().id == "final-look/glance");
  CHECK(after.size() < before.size() + 1);
}

namespace {

std::string inRoom(const std::string& temperature, const std::string& humidity) {
  return tests::changed(tests::workedExample(), R"("temperature": "19 C", "humidity": "58 %")",
                        "\"temperature\": \"" + temperature + "\", \"humidity\": \"" + humidity + "\"");
}

struct Listing {
  double opens = 0, early = 0, late = 0;
  std::string basis;
};

// By "step/kind makes", each wait as it is listed.
std::map<std::string, Listing> waitsOf(const Commands& commands, const std::string& job, tests::Ran* said = nullptr) {
  const auto ran = commands.run(
      {QStringLiteral("steps"), commands.file(QStringLiteral("c.job.json"), job), QStringLiteral("--json")});
  INFO(ran.err);
  REQUIRE(ran.exit == 0);
  if (said != nullptr) *said = ran;
  std::map<std::string, Listing> waits;
  const Value root = tests::parsed(ran.out);
  for (const Value& step : root.find("steps")->items()) {
    for (const Value& wait : step.find("waits")->items()) {
      const auto& span = wait.find("opensSpan")->items();
      waits[wait.find("id")->asText()] = {wait.find("opens")->asNumber(), span.at(0).asNumber(), span.at(1).asNumber(),
                                          wait.find("basis")->asText()};
    }
  }
  return waits;
}

}  // namespace

TEST_CASE("the waits of the steps are those of the job's room, and say so") {
  const Commands commands;
  const auto stated = waitsOf(commands, inRoom("23 C", "50 %"));
  const auto cold = waitsOf(commands, inRoom("10 C", "80 %"));
  REQUIRE(stated.size() == cold.size());
  int longer = 0;
  int untouched = 0;
  for (const auto& [id, wait] : cold) {
    INFO(id);
    CHECK(wait.early <= wait.opens);
    CHECK(wait.opens <= wait.late);
    const Listing& before = stated.at(id);
    if (wait.basis == "label") {
      ++untouched;
      CHECK(wait.opens == before.opens);
    } else {
      CHECK(wait.basis == "model");
      if (before.opens == 0) continue;
      ++longer;
      CHECK(wait.opens > 1.5 * before.opens);
    }
  }
  CHECK(longer > 5);
  CHECK(untouched > 5);
}

TEST_CASE("a room nothing can be predicted in is told at its place, and the waits stay as they are stated") {
  const Commands commands;
  tests::Ran hot;
  const auto waits = waitsOf(commands, inRoom("40 C", "50 %"), &hot);
  CHECK(contains(hot.err, "c.job.json:/room: "));
  CHECK(contains(hot.err, "40 °C is too warm to predict"));
  const auto stated = waitsOf(commands, inRoom("23 C", "50 %"));
  for (const auto& [id, wait] : waits) {
    INFO(id);
    CHECK(wait.basis == "label");
    CHECK(wait.opens == stated.at(id).opens);
  }
}

TEST_CASE("the list of steps says which spans are those of the reference room, and only where no other is reckoned") {
  const Commands commands;
  const auto listed = [&](const char* celsius) {
    const auto ran =
        commands.run({QStringLiteral("steps"), commands.file(QStringLiteral("c.job.json"), inRoom(celsius, "50 %"))});
    REQUIRE(ran.exit == 0);
    return ran.out;
  };
  CHECK(contains(listed("40 C"), "; stated for 23 °C and 50 %, not for this room: by touch"));
  CHECK_FALSE(contains(listed("23 C"), "not for this room"));
}

TEST_CASE("a window that is open from the start is said so, and no span is listed as nothing") {
  const Commands commands;
  const QString job = commands.file(QStringLiteral("t.job.json"),
                                    tests::readWholeFile(PROJECT_ROOT "/recipes/jobs/tide-table.job.json").value());
  const auto ran = commands.run({QStringLiteral("steps"), job});
  REQUIRE(ran.exit == 0);
  CHECK(contains(ran.out, "glue open: open at once, closes "));
  CHECK_FALSE(contains(ran.out, " 0 s"));
}

TEST_CASE("what the looks of the data folder's record taught is in the waits, each time the same") {
  const Commands commands;
  const auto before = waitsOf(commands, tests::demoJob());
  REQUIRE(QDir().mkpath(commands.path(QStringLiteral("data"))));
  std::string kind;
  {
    auto opened = app::stores::SqliteEventStore::open(app::stores::recordFile(commands.path(QStringLiteral("data"))));
    REQUIRE(opened.ok());
    tests::StoredBench bench(*opened.value(), "this-tablet");
    const std::string job = bench.takeIn(tests::demoJob());
    // Until a wait of paint is found dry at four fifths of its time.
    for (int act = 0; act < 400 && kind.empty(); ++act) {
      for (const auto& [id, run] : bench.work.job(job)->waits) {
        const auto state = bench.work.at(job).waitState(run);
        if (run.wait->model != core::craft::DryingModel::Evaporation || run.wait->closes || !run.looks.empty())
          continue;
        if (state.opens.likely <= core::units::Duration() || !bench.work.at(job).matters(run)) continue;
        // What is asked makes a new state, and this one goes.
        kind = id;
        bench.clock.advance(state.opens.likely.inMilliseconds() * 4 / 5);
        REQUIRE(bench.refusal(job, core::intents::LookAt{kind, core::intents::Verdict::Dry}) == "");
        break;
      }
      if (kind.empty()) bench.goOn(job);
    }
    REQUIRE_FALSE(kind.empty());
  }
  const auto after = waitsOf(commands, tests::demoJob());
  INFO(kind);
  REQUIRE(before.contains(kind));
  REQUIRE(after.contains(kind));
  CHECK(before.at(kind).basis == "model");
  CHECK(after.at(kind).basis == "learned");
  CHECK(after.at(kind).opens < before.at(kind).opens);
  tests::Ran first;
  tests::Ran again;
  waitsOf(commands, tests::demoJob(), &first);
  waitsOf(commands, tests::demoJob(), &again);
  CHECK(first.out == again.out);
  // A folder without a record says nothing of it.
  const Commands other;
  CHECK(waitsOf(other, tests::demoJob()).at(kind).basis == "model");
}

TEST_CASE("leaf scattered on a size nobody scatters on is told by check and by steps alike, at the size") {
  const Commands commands;
  const std::string job = tests::changed(tests::workedExample(), "\"methylCellulose\"", "\"water\"");
  const std::string said =
      "a.job.json:/leaf/0/size: no technique scatters leaf on water size; choose methyl cellulose or starch";
  const auto lines = commands.problems(job);
  CHECK(std::count(lines.begin(), lines.end(), said) == 1);
  const auto ran = commands.run({QStringLiteral("steps"), commands.file(QStringLiteral("a.job.json"), job)});
  CHECK(ran.exit == 1);
  CHECK(contains(ran.err, said));
}
