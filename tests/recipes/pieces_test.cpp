// Several identical pieces, and how far the work on them goes.
#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/materials/amounts.h"
#include "core/materials/cutting_list.h"
#include "core/workflow/compose.h"
#include "core/workflow/rehearse.h"
#include "tests/recipes/shipped_techniques.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using tests::composed;
using tests::designOf;
using tests::shippedCatalogue;

namespace {

std::string chartWith(const std::string& members) {
  return base::replaceAll(tests::demoJobText(), R"("room": {)", members + R"(, "room": {)");
}

std::set<std::string> idsOf(const workflow::Workflow& workflow) {
  std::set<std::string> ids;
  for (const auto& step : workflow.steps) ids.insert(step.id);
  return ids;
}

int countOf(const design::Design& design, const std::string& piece) {
  int count = 0;
  for (const auto& one : materials::cuttingList(design.job, design.layout)) {
    if (one.id == piece) count += one.count;
  }
  return count;
}

}  // namespace

TEST_CASE("of twelve pieces every step is done for each, but for what is done once for all") {
  const auto one = composed(designOf(chartWith(R"("deliver": "mount")")), shippedCatalogue());
  const auto many = composed(designOf(chartWith(R"("deliver": "mount", "count": 12)")), shippedCatalogue());
  const std::set<std::string> ids = idsOf(many);
  CHECK(ids.size() == many.steps.size());
  std::size_t once = 0;
  for (const auto& step : one.steps) {
    INFO(step.id);
    CHECK(ids.contains(step.id));
    const bool single = step.ofShop || step.once;
    once += single ? 1 : 0;
    for (const int piece : {2, 12}) CHECK(ids.contains(step.id + '#' + std::to_string(piece)) != single);
    CHECK_FALSE(ids.contains(step.id + "#13"));
  }
  CHECK(many.steps.size() == once + (one.steps.size() - once) * 12);
  // What dried one after another is worked in one go: a batch takes hardly more acts than one piece.
  // Strips are laid, corners closed and pressed, and a field in parts is sized, scattered and unmasked on each before
  // the next.
  CHECK(many.shortActs.size() <= one.shortActs.size() + 3 + 4 * 11);
  CHECK_FALSE(workflow::rehearse(many, craft::Way::Short).missed);
}

TEST_CASE("a fault of one piece brings back nothing of another") {
  tests::Bench bench(chartWith(R"("deliver": "mount", "count": 3)"), shippedCatalogue());
  bench.lead(craft::Way::Short);
  const std::string cut = "cut-windows/cut-window@top";
  const auto done = [&](const std::string& step) { return bench.at().isDone(*bench.plan()->workflow.indexOf(step)); };
  for (int i = 0; i < 500 && !done(cut + "#3"); ++i) {
    if (bench.place().kind == jobs::BenchStand::Kind::Step) {
      REQUIRE(bench.finishAct().empty());
    } else {
      bench.advance(5);
    }
  }
  REQUIRE(done(cut + "#3"));
  const auto& faults = bench.plan()->workflow.find(cut + "#2")->faults;
  const auto anew = std::find_if(faults.begin(), faults.end(), [](const auto& fault) { return !fault.ends.empty(); });
  REQUIRE(anew != faults.end());
  REQUIRE(bench.ask(intents::ReportFault{cut + "#2", anew->id}).empty());
  CHECK(done(cut));
  CHECK_FALSE(done(cut + "#2"));
  CHECK(done(cut + "#3"));
}

TEST_CASE("materials are for all pieces, and for what is delivered alone") {
  const auto framed = designOf(chartWith(R"("count": 1)"));
  const auto mounts = designOf(chartWith(R"("count": 12, "deliver": "mount")"));
  const auto attached = designOf(chartWith(R"("deliver": "attached")"));
  CHECK(countOf(framed, "board.top") == 1);
  CHECK(countOf(mounts, "board.top") == 12);
  CHECK(countOf(mounts, "band.inner.horizontal") == 24);
  for (const char* part : {"back-mount", "backing", "glazing"}) {
    INFO(part);
    CHECK(countOf(framed, part) == 1);
    CHECK(countOf(mounts, part) == 0);
    CHECK(countOf(attached, part) == (std::string(part) == "back-mount" ? 1 : 0));
  }
  const auto amount = [](const design::Design& design) {
    return materials::amountsOf(design.job, design.layout).front().value;
  };
  CHECK(amount(mounts) == Approx(12 * amount(framed)));
}

TEST_CASE("how far the work goes decides on its last steps") {
  const auto has = [](const std::string& deliver, const std::string& step) {
    const auto workflow = composed(designOf(chartWith("\"deliver\": \"" + deliver + '"')), shippedCatalogue());
    return workflow.find(step) != nullptr;
  };
  CHECK_FALSE(has("mount", "hinge-starch/hinge"));
  CHECK(has("attached", "hinge-starch/hinge"));
  CHECK_FALSE(has("attached", "close-package/stack"));
  CHECK(has("framed", "close-package/stack"));
  for (const std::string deliver : {"mount", "attached", "framed"}) CHECK(has(deliver, "final-look/record"));
}

TEST_CASE("ninety-nine pieces compose; no count but a whole number from one to that") {
  const auto all = composed(designOf(chartWith(R"("count": 99)")), shippedCatalogue());
  CHECK(all.steps.size() > 7000);
  for (const std::string count : {"0", "100", "1000", "-1", "1.5", "\"12\""}) {
    INFO(count);
    const auto lines = tests::problemLines(chartWith("\"count\": " + count));
    REQUIRE(lines.size() == 1);
    CHECK(lines.front().rfind("/count ", 0) == 0);
  }
  const auto lines = tests::problemLines(chartWith(R"("deliver": "posted")"));
  REQUIRE(lines.size() == 1);
  CHECK(lines.front().rfind("/deliver ", 0) == 0);
}

TEST_CASE("of forty pieces no more are sized than can be gilded before the tack is gone") {
  for (const char* job : {"pilots-chart", "heron", "tide-table"}) {
    INFO(job);
    std::string text = tests::fileText(PROJECT_ROOT "/recipes/jobs/" + std::string(job) + ".job.json");
    text.insert(text.find('{') + 1, R"("deliver": "mount", "count": 40, )");
    const auto many = composed(designOf(text), shippedCatalogue());
    for (const craft::Way way : units::kWays) CHECK_FALSE(workflow::rehearse(many, way).missed);
  }
}

TEST_CASE("the wet strips of each piece are pressed before those of the next are brushed") {
  for (const std::string way : {"strips-starch", "strips-mixed"}) {
    const auto many = composed(
        designOf(chartWith(R"("deliver": "mount", "count": 6, "techniques": {"strip-adhesive": ")" + way + "\"}")),
        shippedCatalogue());
    std::set<std::size_t> acts;
    for (int piece = 1; piece <= 6; ++piece) {
      const std::string end = piece == 1 ? "" : "#" + std::to_string(piece);
      const auto nip = many.indexOf(way + "/nip@inner" + end);
      INFO(way << ", piece " << piece);
      REQUIRE(nip);
      acts.insert(many.actOf(craft::Way::Short, *nip));
      for (const char* side : {"top", "right", "bottom", "left"}) {
        CHECK(*many.indexOf(way + "/lay@inner." + side + end) < *nip);
        if (piece < 6) CHECK(*many.indexOf(way + "/brush@inner." + side + '#' + std::to_string(piece + 1)) > *nip);
      }
    }
    CHECK(acts.size() == 6);
    CHECK_FALSE(workflow::rehearse(many, craft::Way::Short).missed);
  }
}
