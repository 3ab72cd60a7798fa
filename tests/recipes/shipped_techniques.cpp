#include "tests/recipes/shipped_techniques.h"

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "core/base/text.h"
#include "core/craft/technique_reader.h"
#include "core/workflow/compose.h"
#include "tests/support/catch.h"

namespace tests {

std::vector<std::string> filesEnding(const std::string& folder, const std::string& suffix) {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    const std::string name = entry.path().filename().string();
    if (core::base::endsWith(name, suffix)) names.push_back(name);
  }
  std::sort(names.begin(), names.end());
  return names;
}

std::string textOf(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  INFO(path);
  REQUIRE(file);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

std::string lowered(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return text;
}

// Whether `phrase` stands in `text` as whole words, a plural s allowed.
bool speaksOf(const std::string& text, std::string_view phrase) {
  const auto isLetter = [&](std::size_t at) {
    return at < text.size() && std::isalpha(static_cast<unsigned char>(text[at])) != 0;
  };
  for (std::size_t at = text.find(phrase); at != std::string::npos; at = text.find(phrase, at + 1)) {
    std::size_t end = at + phrase.size();
    if (end < text.size() && text[end] == 's') ++end;
    if ((at == 0 || !isLetter(at - 1)) && !isLetter(end)) return true;
  }
  return false;
}

core::craft::Catalogue shippedCatalogue() {
  core::craft::Catalogue catalogue;
  for (const std::string& name : filesEnding(RECIPES_DIR, ".technique.json")) {
    auto read = core::craft::readTechnique(textOf(std::string(RECIPES_DIR) + '/' + name));
    INFO(name);
    REQUIRE(read.technique);
    catalogue.add(*std::move(read.technique));
  }
  return catalogue;
}

core::workflow::Workflow composedJob(const std::string& file) {
  const auto read = core::design::readDesign(textOf(std::string(RECIPES_DIR) + "/jobs/" + file));
  INFO(file);
  REQUIRE(read.design);
  auto composed = core::workflow::compose(*read.design, shippedCatalogue());
  if (!composed) {
    for (const auto& told : composed.error()) UNSCOPED_INFO(core::base::dump(told.problem));
  }
  REQUIRE(composed);
  return composed.value();
}

}  // namespace tests
