// A sheet cut up by touch on the real window, and what is kept of it in the record.
#include <vector>

#include "core/base/json.h"
#include "core/record/event.h"
#include "tests/app/drive/driven_bench.h"
#include "tests/support/catch.h"

using core::base::Value;
using tests::DrivenBench;
using tests::textOf;

namespace {

const char* const kChart = "Pilot's chart of the outer bar";
const char* const kHeron = "Heron at low water, linocut";

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

TEST_CASE("boards entered at the desk are cut up for a piece whose file lists none", "[touch]") {
  DrivenBench bench(QString::fromLatin1(PROJECT_ROOT "/recipes/jobs/heron.job.json"));
  bench.letGuardPass();
  goTo(bench, "More", "more");
  goTo(bench, "Jobs", "jobs");
  goTo(bench, "Desk", "pieces");
  goTo(bench, kHeron, "piece");
  goTo(bench, "Cut sheets", "cutting");
  CHECK(textOf(bench.state(), "cutting").find("No sheet to cut from") == 0);
  goTo(bench, "Back", "piece");
  goTo(bench, "Materials", "stock");
  bench.press("Into stock");
  bench.press("name, as jobs call it");
  bench.type("cotton board");
  bench.press("Enter");
  // On to the next field, the width. The heron's boards are 1/16 in: what a rule says is 1.6 mm.
  for (const char* measure : {"815", "1120", "1.6"}) {
    bench.type(measure);
    bench.press("Enter");
  }
  // The way back from a field is the pedal's, whatever field it is.
  bench.key("Page_Up");
  bench.letGuardPass();
  bench.press("Keep it");
  const auto entered = bench.payloads("StockEntered");
  REQUIRE(entered.size() == 1);
  goTo(bench, "Pieces", "pieces");
  goTo(bench, kHeron, "piece");
  goTo(bench, "Cut sheets", "cutting");
  CHECK(textOf(bench.state(), "cutting").find("No sheet to cut from") == std::string::npos);
  for (int page = 0; page < 12 && bench.payloads("SheetCut").empty(); ++page) bench.press("Done");
  const auto cut = bench.payloads("SheetCut");
  REQUIRE(cut.size() == 1);
  INFO(core::base::writeJson(cut[0], 0));
  // The three boards of 1/16 in.
  CHECK(cut[0].find("pieces")->items().size() == 3);
  // There was one sheet, and it is cut: the rest, and the middle board, lack what they come from.
  CHECK(textOf(bench.state(), "cutting").find("of another material or thickness than these") != std::string::npos);
  goTo(bench, "Back", "piece");
}

TEST_CASE("Back from a sheet leads to where it was asked for, whichever piece it is of", "[touch]") {
  DrivenBench bench(QStringList{QString::fromLatin1(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json"),
                                QString::fromLatin1(PROJECT_ROOT "/recipes/jobs/heron.job.json")});
  bench.letGuardPass();
  goTo(bench, "More", "more");
  goTo(bench, "Jobs", "jobs");
  goTo(bench, "Desk", "pieces");
  const auto pieceAndBack = [&](const char* title) {
    goTo(bench, title, "piece");
    goTo(bench, "Cut sheets", "cutting");
    goTo(bench, "Back", "piece");
    CHECK(textOf(bench.state(), "pieceChosen") == title);
    goTo(bench, "Pieces", "pieces");
  };
  pieceAndBack(kChart);
  pieceAndBack(kHeron);
  goTo(bench, kHeron, "piece");
  goTo(bench, "To the bench", "bench");
  goTo(bench, "More", "more");
  goTo(bench, "Jobs", "jobs");
  for (const char* title : {kChart, kHeron}) {
    goTo(bench, title, "job");
    goTo(bench, "Cut sheets", "cutting");
    goTo(bench, "Back", "job");
    CHECK(textOf(bench.state(), "jobChosen") == title);
    goTo(bench, "Back", "jobs");
  }
  // From the bench's list to one piece, then at the desk to the other.
  goTo(bench, "Desk", "pieces");
  pieceAndBack(kChart);
}
