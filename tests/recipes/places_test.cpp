// The numbers in the drawings of acts, over every step of every technique that is shipped.
#include <algorithm>
#include <cmath>

#include "core/sheets/act.h"
#include "tests/recipes/shipped_techniques.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;

namespace {

// A number is drawn about this wide on the sample of 120 by 80 mm.
constexpr double kWide = 10;

}  // namespace

TEST_CASE("each of a step's first three sentences has its number in the drawing of the act, or is said to have none",
          "[recipes]") {
  std::size_t numbered = 0;
  std::size_t drawn = 0;
  const auto catalogue = tests::shippedCatalogue();
  for (const craft::Technique* technique : catalogue.all()) {
    for (const craft::Step& step : technique->steps) {
      INFO(technique->id << '/' << step.id);
      if (!step.act) {
        CHECK(step.places.empty());
        continue;
      }
      REQUIRE(step.places.size() == std::min<std::size_t>(3, step.sentences.size()));
      const auto drawing = sheets::drawAct(*step.act, step.up);
      const auto numerals = sheets::numerals(drawing, step.places);
      // What is named is drawn, so that no sentence waits for its number.
      const auto named = std::count_if(step.places.begin(), step.places.end(), [](const auto& one) { return !!one; });
      CHECK(numerals.size() == static_cast<std::size_t>(named));
      for (const auto& numeral : numerals) {
        INFO(numeral.number);
        CHECK(numeral.number >= 1);
        CHECK(static_cast<std::size_t>(numeral.number) <= step.sentences.size());
        CHECK(numeral.at.x >= kWide / 2);
        CHECK(numeral.at.x <= drawing.width - kWide / 2);
        CHECK(numeral.at.y >= kWide / 2);
        CHECK(numeral.at.y <= drawing.height - kWide / 2);
        for (const auto& other : numerals) {
          if (other.number > numeral.number) CHECK(geometry::length(other.at - numeral.at) >= kWide);
        }
      }
      drawn += numerals.empty() ? 0 : 1;
      numbered += numerals.size();
    }
  }
  CHECK(drawn > 120);
  CHECK(numbered > 200);
}

TEST_CASE("the page of the format tells which parts the drawing of each act has", "[recipes]") {
  const std::string page = tests::textOf(RECIPES_DIR "/README.md");
  for (const craft::Act act : craft::allActs()) {
    std::string row = "`";
    for (const auto& drawn : sheets::drawAct(act, craft::WayUp::Back).places) {
      row += (row.size() > 1 ? " " : "") + std::string(craft::name(drawn.place));
    }
    const std::size_t at = page.find("\n| `" + std::string(craft::name(act)) + "` |");
    INFO(craft::name(act) << ' ' << row);
    REQUIRE(at != std::string::npos);
    const std::string line = page.substr(at + 1, page.find('\n', at + 1) - at - 1);
    CHECK(line.find("| " + row + "` |") != std::string::npos);
  }
}
