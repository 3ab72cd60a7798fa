// How a material looks is told at the desk by touch, and the way leads back to the materials.
#include "core/base/json.h"
#include "core/record/event.h"
#include "tests/app/drive/driven_bench.h"
#include "tests/support/catch.h"

using tests::DrivenBench;
using tests::textOf;

TEST_CASE("a board in stock is given a colour by a press, and it is taken back", "[touch]") {
  DrivenBench bench(QString::fromLatin1(PROJECT_ROOT "/recipes/jobs/heron.job.json"));
  const auto enter = [&](const char* legend, const char* screen) {
    bench.letGuardPass();
    bench.press(legend);
    REQUIRE(textOf(bench.state(), "screen") == screen);
  };
  enter("More", "more");
  enter("Jobs", "jobs");
  enter("Desk", "pieces");
  enter("Materials", "stock");
  bench.letGuardPass();
  bench.press("Into stock");
  bench.press("name, as jobs call it");
  bench.type("cotton board");
  bench.press("Enter");
  for (const char* measure : {"815", "1120", "1.6"}) {
    bench.type(measure);
    bench.press("Enter");
  }
  // The way back from a field is the pedal's, whatever field it is.
  bench.key("Page_Up");
  bench.letGuardPass();
  bench.press("Keep it");
  REQUIRE(bench.payloads("StockEntered").size() == 1);
  bench.press("cotton board");
  enter("Its look", "appearance");
  bench.letGuardPass();
  bench.press("sand");
  const auto given = bench.payloads("AppearanceGiven");
  REQUIRE(given.size() == 1);
  CHECK(core::record::textOf(given[0], "material") == "cotton board");
  CHECK(core::record::textOf(given[0], "colour") == "#d8c49a");
  bench.press("Undo");
  CHECK(bench.payloads("Undone").size() == 1);
  enter("Back", "stock");
}
