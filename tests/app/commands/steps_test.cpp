#include <algorithm>

#include "tests/app/commands/ran.h"
#include "tests/app/commands/techniques.h"

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
      CHECK(wait.find("basis")->asText() == "label");
      closing = closing || !wait.find("closes")->isNull();
    }
  }
  CHECK(closing);
}

TEST_CASE("without the technique that makes a needed fact, the fact and who needs it are named") {
  const Commands commands;
  const QString recipes = commands.recipes();
  REQUIRE(QFile::remove(recipes + QStringLiteral("/look-edge-over.technique.json")));
  const auto ran =
      commands.run({QStringLiteral("steps"), commands.file(QStringLiteral("c.job.json"), tests::workedExample()),
                    QStringLiteral("--json"), QStringLiteral("--recipes"), recipes});
  CHECK(ran.exit == 1);
  CHECK(ran.out.empty());
  CHECK(contains(ran.err, "c.job.json:: nothing makes \"top.window.clean\", which colour-bevel"));
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
      CHECK(contains(ran.err, "nothing makes \""));
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
  CHECK(contains(ran.err, "c.job.json:: no technique has the role \"no-such\""));
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
