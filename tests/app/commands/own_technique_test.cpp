// The worked example of recipes/README.md: the file it shows is checked, composed into a job and spoilt as it says.
#include "tests/app/commands/ran.h"
#include "tests/support/catch.h"

using tests::changed;
using tests::Commands;
using tests::contains;

namespace {

// The fenced blocks of that language, in order.
std::vector<std::string> blocks(const std::string& language) {
  const auto page = tests::readWholeFile(PROJECT_ROOT "/recipes/README.md");
  REQUIRE(page.has_value());
  std::vector<std::string> found;
  const std::string fence = "```" + language + "\n";
  for (std::size_t at = page->find(fence); at != std::string::npos; at = page->find(fence, at + 1)) {
    const std::size_t from = at + fence.size();
    found.push_back(page->substr(from, page->find("```", from) - from));
  }
  return found;
}

// What a command said, with the folder of the file left out.
std::string plain(std::string said, const QString& file) {
  const std::string path = file.toStdString();
  const std::string folder = path.substr(0, path.rfind('/') + 1);
  for (std::size_t at = said.find(folder); at != std::string::npos; at = said.find(folder))
    said.erase(at, folder.size());
  return said;
}

}  // namespace

TEST_CASE("the technique the handbook page teaches is read back as the page shows") {
  const Commands commands;
  const auto files = blocks("json");
  const auto said = blocks("text");
  REQUIRE(files.size() == 1);
  REQUIRE(said.size() == 2);
  const QString file = commands.file(QStringLiteral("graphite-bevel.technique.json"), files[0]);
  const auto ran = commands.run({QStringLiteral("check"), file, QStringLiteral("--recipes"), commands.recipes()});
  CHECK(ran.exit == 0);
  CHECK(ran.out.empty());
  CHECK(plain(ran.err, file) == said[0]);
}

TEST_CASE("its mistakes are told as the page shows") {
  const Commands commands;
  const QString recipes = commands.recipes();
  std::string text = changed(blocks("json").at(0), "\"title\": \"Rub the bevel with graphite\"",
                             "\"tittle\": \"Rub the bevel with graphite\"");
  const QString file = commands.file(QStringLiteral("graphite-bevel.technique.json"), text);
  const auto ran = commands.run({QStringLiteral("check"), file, QStringLiteral("--recipes"), recipes});
  CHECK(ran.exit == app::commands::kProblem);
  CHECK(plain(ran.out, file) == blocks("text").at(1));
  // A fact a letter short, once the rest reads.
  text = changed(blocks("json").at(0), "\"needs\": [\"this.face.masked\"]", "\"needs\": [\"this.face.maskd\"]");
  const QString second = commands.file(QStringLiteral("graphite-bevel.technique.json"), text);
  const auto facts = commands.run({QStringLiteral("check"), second, QStringLiteral("--recipes"), recipes});
  CHECK(facts.exit == app::commands::kProblem);
  CHECK(contains(facts.out, "/steps/1/needs/0: "));
  CHECK(contains(facts.out, "is \"face.masked\" meant?"));
  // A time that nobody stands for.
  text = changed(blocks("json").at(0), "\"likely\": \"8 min\", \"late\": \"15 min\", \"source\": \"my own bench\"",
                 "\"likely\": \"8 min\", \"late\": \"15 min\"");
  const QString third = commands.file(QStringLiteral("graphite-bevel.technique.json"), text);
  const auto source = commands.run({QStringLiteral("check"), third, QStringLiteral("--recipes"), recipes});
  CHECK(contains(source.out, "/steps/0/work: the key \"source\" is missing"));
}

TEST_CASE("from its place beside the record it is worked by the job that chooses it") {
  const Commands commands;
  const QString own = QStringLiteral("data/techniques/graphite-bevel.technique.json");
  commands.file(own, blocks("json").at(0));
  const std::string job =
      changed(tests::workedExample(), "\"room\":", R"("techniques": { "bevel-mask": "graphite-bevel" }, "room":)");
  const QString file = commands.file(QStringLiteral("a.job.json"), job);
  const auto steps = commands.run({QStringLiteral("steps"), QStringLiteral("--json"), file});
  INFO(steps.err);
  CHECK(steps.exit == app::commands::kDone);
  CHECK(contains(steps.out, "graphite-bevel/rub@top"));
  CHECK(contains(steps.out, "graphite-bevel/rub@under"));
  CHECK_FALSE(contains(steps.out, "colour-bevel/"));
  // Broken, it puts itself out of use and nothing else; the job says what it misses.
  commands.file(own, "{ \"format\": \"mountwright-technique/1\", ");
  const auto broken = commands.run({QStringLiteral("steps"), QStringLiteral("--json"), file});
  CHECK(broken.exit == app::commands::kProblem);
  CHECK(contains(broken.err, "graphite-bevel.technique.json:1:"));
  const QString plainJob = commands.file(QStringLiteral("b.job.json"), tests::workedExample());
  CHECK(commands.run({QStringLiteral("steps"), QStringLiteral("--json"), plainJob}).exit == app::commands::kDone);
}
