// Every screen is entered by its own key and left by its own way out, to where it was entered from.
#include <string>
#include <vector>

#include "core/base/json.h"
#include "tests/app/drive/driven_bench.h"
#include "tests/support/catch.h"

using tests::DrivenBench;
using tests::kJob;
using tests::textOf;

namespace {

const char* const kTaken = "Pilot's chart of the outer bar";

// By touch through each key to the screen it leads to; "<" is the pedal's way back.
void walk(DrivenBench& bench, const std::vector<std::pair<const char*, const char*>>& way) {
  for (const auto& [legend, screen] : way) {
    INFO(legend << " to " << screen);
    bench.letGuardPass();
    const std::string from = textOf(bench.state(), "screen");
    INFO("from " << from);
    if (std::string(legend) == "<") {
      bench.key("Page_Up");
    } else {
      bench.press(legend);
    }
    REQUIRE(textOf(bench.state(), "screen") == screen);
  }
}

}  // namespace

TEST_CASE("the bench's screens lead back to the bench", "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  walk(bench, {{"More", "more"}, {"Back", "bench"}, {"Afar", "far"}, {"<", "bench"}});
  walk(bench, {{"More", "more"}, {"Jobs", "jobs"}, {"Back", "bench"}});
  walk(bench,
       {{"More", "more"}, {"Jobs", "jobs"}, {kTaken, "job"}, {"Back", "jobs"}, {kTaken, "job"}, {"Done", "bench"}});
  walk(bench, {{"More", "more"}, {"Jobs", "jobs"}, {kTaken, "job"}, {"Cut sheets", "cutting"}, {"Back", "job"}});
  walk(bench, {{"<", "jobs"}, {"<", "bench"}});
  // Under a caution that stands in its place the shelf is no key; the next act has none.
  const std::string first = textOf(bench.state(), "step");
  for (int presses = 0; presses < 8 && textOf(bench.state(), "step") == first; ++presses) {
    bench.letGuardPass();
    bench.key("Page_Down");
  }
  bench.letGuardPass();
  walk(bench, {{"Waits", "waits"}, {"Back", "bench"}, {"Waits", "waits"}, {"<", "bench"}});
}

TEST_CASE("the desk's screens lead back to where they were entered from", "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  walk(bench, {{"More", "more"}, {"Jobs", "jobs"}, {"Desk", "pieces"}, {"Materials", "stock"}, {"Pieces", "pieces"}});
  walk(bench, {{kTaken, "piece"}, {"Record and care", "record"}, {"<", "piece"}, {"Cut sheets", "cutting"}});
  walk(bench, {{"Back", "piece"}, {"For another picture", "design"}, {"Pieces", "pieces"}, {kTaken, "piece"}});
  walk(bench, {{"<", "pieces"}, {"New piece", "design"}, {"<", "pieces"}});
  walk(bench, {{"This tablet", "settings"}, {"Enter it", "room"}, {"Back", "settings"}, {"To the bench", "bench"}});
}
