#include <sys/stat.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include "app/workbench/library_loader.h"
#include "tests/app/workbench/bench.h"

using app::workbench::loadLibrary;
using namespace tests;

namespace {

std::string technique(const char* name) {
  const auto text = readWholeFile(std::string(PROJECT_ROOT "/recipes/") + name + ".technique.json");
  REQUIRE(text.has_value());
  return *text;
}

void put(const QTemporaryDir& folder, const char* name, const std::string& text) {
  REQUIRE(writeWholeFile(folder.filePath(name).toStdString(), text));
}

}  // namespace

TEST_CASE("every technique delivered is read without a problem and with its text") {
  const auto& loaded = tradeLibrary();
  for (const auto& problem : loaded.problems) UNSCOPED_INFO(problem.file << core::base::dump(problem.problem));
  CHECK(loaded.problems.empty());
  REQUIRE_FALSE(loaded.library.texts.empty());
  CHECK(loaded.library.texts.size() == loaded.library.catalogue.all().size());
  CHECK(loaded.library.texts.at("cut-windows") == technique("cut-windows"));
}

TEST_CASE("a broken technique is told with its file and the others are there") {
  QTemporaryDir folder;
  put(folder, "broken.technique.json", "{ \"format\": ");
  put(folder, "cut-windows.technique.json", technique("cut-windows"));
  put(folder, "notes.json", "not a technique");
  const auto loaded = loadLibrary(folder.path(), QString());
  CHECK(loaded.library.texts.size() == 1);
  REQUIRE(loaded.problems.size() == 1);
  CHECK(loaded.problems[0].file == folder.filePath("broken.technique.json").toStdString());
}

TEST_CASE("a pipe or a device behind a link in the folder is told and holds nothing up") {
  QTemporaryDir folder;
  put(folder, "cut-windows.technique.json", technique("cut-windows"));
  REQUIRE(mkfifo(QFile::encodeName(folder.filePath("pipe")).constData(), 0600) == 0);
  REQUIRE(QFile::link(folder.filePath("pipe"), folder.filePath("a.technique.json")));
  REQUIRE(QFile::link("/dev/zero", folder.filePath("b.technique.json")));
  REQUIRE(mkfifo(QFile::encodeName(folder.filePath("c.technique.json")).constData(), 0600) == 0);
  REQUIRE(QFile::link(folder.filePath("a stick taken out"), folder.filePath("d.technique.json")));
  REQUIRE(QDir(folder.path()).mkdir("e.technique.json"));
  const auto loaded = loadLibrary(folder.path(), QString());
  CHECK(loaded.library.texts.size() == 1);
  std::vector<std::string> told;
  for (const auto& problem : loaded.problems) told.push_back(problem.problem.message.id);
  CHECK(told == std::vector<std::string>{"file.not-a-file", "file.not-a-file", "file.not-a-file", "file.missing",
                                         "file.is-folder"});
}

TEST_CASE("a technique of the bench's own stands in for the delivered one") {
  QTemporaryDir trade;
  QTemporaryDir own;
  put(trade, "cut-windows.technique.json", technique("cut-windows"));
  put(trade, "final-look.technique.json", technique("final-look"));
  put(own, "mine.technique.json", technique("cut-windows") + "\n");
  const auto loaded = loadLibrary(trade.path(), own.path());
  CHECK(loaded.problems.empty());
  CHECK(loaded.library.texts.size() == 2);
  CHECK(loaded.library.texts.at("cut-windows") == technique("cut-windows") + "\n");
}

TEST_CASE("a second file of one folder with the same id is told and left out") {
  QTemporaryDir folder;
  put(folder, "a.technique.json", technique("cut-windows"));
  put(folder, "b.technique.json", technique("cut-windows") + "\n");
  const auto loaded = loadLibrary(folder.path(), QString());
  REQUIRE(loaded.problems.size() == 1);
  CHECK(core::base::dump(loaded.problems[0].problem.message) ==
        "technique.same-id id=cut-windows other=a.technique.json");
  CHECK(loaded.library.texts.at("cut-windows") == technique("cut-windows"));
}

TEST_CASE("a folder of techniques that is not there is told, one of the bench's own need not be") {
  QTemporaryDir folder;
  const auto loaded = loadLibrary(folder.filePath("nowhere"), folder.filePath("nor here"));
  REQUIRE(loaded.problems.size() == 1);
  CHECK(loaded.problems[0].problem.message.id == "technique.folder-missing");
}

TEST_CASE("where the bench's own techniques lie in no folder that can be read, that is told") {
  QTemporaryDir folder;
  const QString own = folder.filePath("techniques");
  SECTION("a file") { put(folder, "techniques", "not a folder"); }
  SECTION("a dead link") { REQUIRE(QFile::link(folder.filePath("elsewhere"), own)); }
  const auto loaded = loadLibrary(folder.path(), own);
  REQUIRE(loaded.problems.size() == 1);
  CHECK(loaded.problems[0].problem.message.id == "technique.folder-unreadable");
  CHECK(loaded.problems[0].file == own.toStdString());
}

TEST_CASE("of more technique files than anybody writes the rest is not read, and that is told") {
  QTemporaryDir folder;
  for (int i = 0; i < 160; ++i) put(folder, ("t" + std::to_string(i) + ".technique.json").c_str(), "{}");
  const auto loaded = loadLibrary(folder.path(), QString());
  CHECK(loaded.problems.back().problem.message.id == "technique.too-many-files");
}

TEST_CASE("recipes are looked for where asked, and only there") {
  QTemporaryDir folder;
  CHECK(app::workbench::recipesFolder(folder.path()).value() == folder.path());
  const auto missing = app::workbench::recipesFolder(folder.filePath("nowhere"));
  REQUIRE_FALSE(missing.ok());
  CHECK(missing.error().id == "recipes.not-found");
  const auto found = app::workbench::recipesFolder(QString());
  REQUIRE(found.ok());
  CHECK_FALSE(loadLibrary(found.value(), QString()).library.texts.empty());
}
