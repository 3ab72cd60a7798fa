// A sheet cut up by touch on the real window, and what is kept of it in the record.
#include <vector>

#include "core/record/event.h"
#include "tests/app/drive/driven_bench.h"
#include "tests/support/catch.h"

using core::base::Value;
using tests::DrivenBench;
using tests::textOf;

namespace {

// To another screen, which is deaf for a moment.
void goTo(DrivenBench& bench, const std::string& legend, const char* screen) {
  bench.press(legend);
  CHECK(textOf(bench.state(), "screen") == screen);
  bench.letGuardPass();
}

}  // namespace

TEST_CASE("a sheet is cut up by touch, its offcuts are kept, and it is taken back", "[touch]") {
  DrivenBench bench(QString::fromLatin1(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json"));
  bench.letGuardPass();
  goTo(bench, "More", "more");
  goTo(bench, "Jobs", "jobs");
  goTo(bench, "Pilot's chart of the outer bar", "job");
  goTo(bench, "Cut sheets", "cutting");
  for (int page = 0; page < 12 && bench.payloads("SheetCut").empty(); ++page) bench.press("Done");
  const auto cut = bench.payloads("SheetCut");
  REQUIRE(cut.size() == 1);
  CHECK_FALSE(cut[0].find("pieces")->items().empty());
  REQUIRE_FALSE(cut[0].find("kept")->items().empty());
  CHECK(core::record::integerOf(cut[0].find("kept")->items()[0], "mark") == 1);
  CHECK(textOf(bench.state(), "screen") == "cutting");
  bench.press("Not cut");
  CHECK(bench.payloads("Undone").size() == 1);
  goTo(bench, "Back", "job");
  goTo(bench, "Done", "bench");
}
