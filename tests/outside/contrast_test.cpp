// Source: W3C, Web Content Accessibility Guidelines 2.x, "relative luminance" and "contrast ratio"; success
// criterion 1.4.6 (enhanced) asks for 7:1. The colours are read from the theme as it is shipped.
#include <cmath>
#include <map>
#include <regex>

#include "tests/support/catch.h"
#include "tests/support/files.h"

namespace {

double channel(int value) {
  const double share = value / 255.0;
  return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

double luminance(const std::string& hex) {
  const auto part = [&](std::size_t at) { return channel(std::stoi(hex.substr(at, 2), nullptr, 16)); };
  return 0.2126 * part(1) + 0.7152 * part(3) + 0.0722 * part(5);
}

double contrast(const std::string& a, const std::string& b) {
  const double first = luminance(a);
  const double second = luminance(b);
  return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

// Name -> its colours: one for each of light and lamp, in the order in which the theme writes them.
std::map<std::string, std::vector<std::string>> themeColours() {
  const auto text = tests::readWholeFile(PROJECT_ROOT "/qml/theme/Theme.qml");
  REQUIRE(text.has_value());
  static const std::regex kProperty(R"(property\s+color\s+(\w+)\s*:([^\n]*(?:\n\s*[?:][^\n]*)*))");
  static const std::regex kHex(R"(#[0-9A-Fa-f]{6}\b)");
  std::map<std::string, std::vector<std::string>> colours;
  for (auto it = std::sregex_iterator(text->begin(), text->end(), kProperty); it != std::sregex_iterator(); ++it) {
    const std::string value = (*it)[2];
    for (auto hex = std::sregex_iterator(value.begin(), value.end(), kHex); hex != std::sregex_iterator(); ++hex) {
      colours[(*it)[1]].push_back(hex->str());
    }
  }
  return colours;
}

}  // namespace

TEST_CASE("the contrast formula gives its known ends") {
  CHECK(contrast("#000000", "#FFFFFF") == Approx(21));
  CHECK(contrast("#7A3410", "#7A3410") == Approx(1));
  // The lightest grey that still has 4.5:1 on white.
  CHECK(contrast("#767676", "#FFFFFF") == Approx(4.54).margin(0.005));
}

TEST_CASE("everything that is read stands 7:1 on every ground it is put on, by day and by lamp") {
  const auto colours = themeColours();
  std::vector<std::pair<const char*, const char*>> pairs = {
      {"onAlert", "alertGround"}, {"ink", "keyDown"}, {"ink", "workedTint"}, {"ink", "calmTint"}};
  for (const char* front : {"ink", "quiet", "worked", "calm"}) {
    for (const char* ground : {"ground", "cloth", "card"}) pairs.emplace_back(front, ground);
  }
  for (const auto& [front, ground] : pairs) {
    INFO(front << " on " << ground);
    REQUIRE(colours.count(front) == 1);
    REQUIRE(colours.count(ground) == 1);
    REQUIRE(colours.at(front).size() == 2);
    REQUIRE(colours.at(ground).size() == 2);
    for (std::size_t i = 0; i < 2; ++i) {
      INFO(colours.at(front)[i] << " on " << colours.at(ground)[i]);
      CHECK(contrast(colours.at(front)[i], colours.at(ground)[i]) >= 7);
    }
  }
}
