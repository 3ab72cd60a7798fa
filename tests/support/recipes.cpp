#include "tests/support/recipes.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/base/text.h"
#include "core/craft/technique_reader.h"
#include "core/workflow/compose.h"
#include "tests/support/catch.h"

namespace tests {

std::string fileText(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) FAIL("cannot read " << path);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

void addTechnique(core::craft::Catalogue& catalogue, const std::string& text) {
  auto read = core::craft::readTechnique(text);
  for (const auto& problem : read.problems.sorted()) UNSCOPED_INFO(core::base::dump(problem));
  REQUIRE(read.technique);
  catalogue.add(*std::move(read.technique));
}

core::craft::Catalogue shippedTechniques(const std::vector<std::string>& leftOut) {
  constexpr std::string_view kSuffix = ".technique.json";
  core::craft::Catalogue catalogue;
  std::size_t added = 0;
  for (const auto& entry : std::filesystem::directory_iterator(std::string(PROJECT_ROOT) + "/recipes")) {
    const std::string name = entry.path().filename().string();
    if (!core::base::endsWith(name, kSuffix)) continue;
    const std::string id = name.substr(0, name.size() - kSuffix.size());
    if (std::count(leftOut.begin(), leftOut.end(), id) > 0) continue;
    addTechnique(catalogue, fileText(entry.path().string()));
    ++added;
  }
  REQUIRE(added > 10);
  return catalogue;
}

std::string demoJobText() { return fileText(std::string(PROJECT_ROOT) + "/recipes/jobs/pilots-chart.job.json"); }

std::string demoJobWith(const std::string& from, const std::string& to) {
  const std::string text = demoJobText();
  INFO(from);
  REQUIRE(text.find(from) != std::string::npos);
  return core::base::replaceAll(text, from, to);
}

std::vector<std::string> problemLines(const std::string& jobText) {
  std::vector<std::string> lines;
  for (const auto& problem : core::design::readDesign(jobText).problems.sorted()) {
    lines.push_back(core::base::dump(problem));
  }
  return lines;
}

core::workflow::Workflow composed(const core::design::Design& design, const core::craft::Catalogue& catalogue) {
  auto result = core::workflow::compose(design, catalogue);
  if (!result) {
    for (const auto& message : result.error()) UNSCOPED_INFO(core::base::dump(message.problem));
  }
  REQUIRE(result);
  return std::move(result).value();
}

std::vector<std::string> composeProblems(const core::design::Design& design, const core::craft::Catalogue& catalogue) {
  const auto result = core::workflow::compose(design, catalogue);
  std::vector<std::string> lines;
  if (result) return lines;
  for (const auto& told : result.error()) lines.push_back(core::base::dump(told.problem.message));
  return lines;
}

std::string oneStepTechnique(const std::string& id, const std::string& makes, const std::string& fileMembers,
                             const std::string& stepMembers) {
  return R"({"format": "mountwright-technique/1", "id": ")" + id + R"(", "title": "Invented", "rank": 500, )" +
         fileMembers + R"(, "steps": [{"id": "act", "title": "Do the act", "do": ["Do it."], "good": "It is done.",
    "trap": "It is not done.", "tools": [], "hands": "clean",
    "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"}, )" +
         stepMembers + R"("makes": [)" + makes + "]}]}";
}

}  // namespace tests
