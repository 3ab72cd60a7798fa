// What the care sheets take from the record: measures, faults, rooms, batches, and what is left out of it.
#include "core/sheets/care_sheet.h"

#include "tests/core/shop/tiny_shop.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using sheets::CareFor;
using sheets::CareKnown;
using sheets::CareLine;
using sheets::CareSheet;

namespace {

CareSheet sheetOf(const Bench& bench, CareFor kind, const std::string& jobText = demoJobText()) {
  sheets::CareWords words;
  words.moment = [](std::int64_t utc, const std::string&) { return "moment " + std::to_string(utc); };
  words.day = [](std::int64_t utc, const std::string&) { return "day " + std::to_string(utc / 86'400'000); };
  words.figure = [](const design::Figure& figure) { return figure.id; };
  words.duration = [](units::Duration duration) { return std::to_string(duration.inMilliseconds()); };
  const jobs::JobAt at = bench.at();
  const auto timeline = jobs::timelineOf(bench.state(), at.shop(), bench.events(), jobs::Order::OldestFirst);
  return careSheet(kind, {bench.state(), at.shop(), timeline, jobText, units::UnitSystem::Millimetres, words});
}

// Every line of a section, "label | values | known".
std::vector<std::string> linesOf(const CareSheet& sheet, const std::string& section) {
  std::vector<std::string> lines;
  for (const auto& one : sheet.sections) {
    if (one.id != section) continue;
    for (const CareLine& line : one.lines) {
      std::string text = base::dump(line.label) + " |";
      for (const auto& value : line.values) text += ' ' + base::dump(value);
      lines.push_back(text + " | " + std::string(name(line.known)));
    }
  }
  return lines;
}

bool has(const std::vector<std::string>& lines, const std::string& part) {
  for (const std::string& line : lines) {
    if (line.find(part) != std::string::npos) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("a measure stands beside its plan, and the figure it makes is observed", "[care]") {
  Bench bench(demoJobText(), shippedTechniques());
  CHECK(has(linesOf(sheetOf(bench, CareFor::Conservator), "measures"), "care.nothing-measured"));
  bench.workUntil("cut-windows/measure-window@top");
  REQUIRE(bench.ask(intents::EnterAsMade{"cut-windows/measure-window@top", "board.top.sight.width",
                                         units::Length::wholeMillimetres(317), ""}) == "");
  const CareSheet sheet = sheetOf(bench, CareFor::Conservator);
  CHECK(linesOf(sheet, "measures") ==
        std::vector<std::string>{
            "care.text text=board.top.sight.width | care.measured made=317mm planned=316mm | observed"});
  CHECK(has(linesOf(sheet, "layers"), "care.sight-width id=top | care.text text=317.0 mm | observed"));
  CHECK(has(linesOf(sheet, "layers"), "care.sight-height id=top | care.text text=246.0 mm | computed"));
}

TEST_CASE("a fault is a departure, and is none once it is taken back", "[care]") {
  Bench bench(demoJobText(), shippedTechniques());
  std::string step, fault, way;
  for (const auto& one : bench.plan()->workflow.steps) {
    if (one.faults.empty() || !step.empty()) continue;
    step = one.id;
    fault = one.faults[0].id;
    way = one.faults[0].ways.empty() ? "" : one.faults[0].ways[0].id;
  }
  REQUIRE_FALSE(step.empty());
  bench.workUntil(step);
  REQUIRE(bench.finish(step) == "");
  REQUIRE(bench.ask(intents::ReportFault{step, fault, way}) == "");
  const auto lines = linesOf(sheetOf(bench, CareFor::Conservator), "departures");
  REQUIRE(lines.size() == 1);
  CHECK(lines[0].find("timeline.fault") != std::string::npos);
  REQUIRE(bench.ask(intents::Undo{bench.lastIntent()}) == "");
  CHECK(has(linesOf(sheetOf(bench, CareFor::Conservator), "departures"), "care.none-recorded"));
}

TEST_CASE("what a wrong clock said is no date on a sheet", "[care]") {
  Bench bench(demoJobText(), shippedTechniques());
  const std::string first = bench.finishShown();
  const auto* step = bench.plan()->workflow.find(first);
  bench.advance(80.0 * 366 * 24 * 60);
  REQUIRE_FALSE(bench.finishShown().empty());
  const auto* faulty = step->faults.empty() ? nullptr : &step->faults[0];
  if (faulty != nullptr) REQUIRE(bench.ask(intents::ReportFault{first, faulty->id}) == "");
  for (const CareFor kind : {CareFor::Client, CareFor::Conservator}) {
    for (const auto& section : sheetOf(bench, kind).sections) {
      for (const std::string& line : linesOf(sheetOf(bench, kind), section.id)) {
        INFO(line);
        CHECK(line.find("moment 42") == std::string::npos);
        CHECK(line.find("day 49") == std::string::npos);
      }
    }
  }
}

TEST_CASE("a batch used past its shelf life is said to be, and one taken back is said to be gone", "[care]") {
  Bench bench(demoJobText(), shippedTechniques());
  const std::int64_t old = bench.now().utcMilliseconds - 30LL * 24 * 3'600'000;
  REQUIRE(bench.askShop(intents::EnterBatch{pasteBatch(old)}) == "");
  const std::string entering = bench.lastIntent();
  const std::string batch = bench.at().shop().stock.batches.at(0).id;
  std::string step;
  while (step.empty() || bench.plan()->workflow.find(step)->materials.empty()) step = bench.finishShown();
  REQUIRE(bench.ask(intents::LinkBatches{step, {batch}}) == "");
  const auto all = [&] {
    const CareSheet sheet = sheetOf(bench, CareFor::Conservator);
    auto lines = linesOf(sheet, "making");
    const auto prepared = linesOf(sheet, "preparations");
    lines.insert(lines.end(), prepared.begin(), prepared.end());
    return lines;
  };
  CHECK(has(all(), "care.batch-made mark=1 of=starch paste, wheat starch 1 : 7 day=day "));
  CHECK(has(all(), "care.batch-past-shelf"));
  REQUIRE(bench.askShop(intents::UndoInShop{entering}) == "");
  CHECK(has(all(), "care.batch-unknown"));
}

TEST_CASE("what the job's file leaves to its default is not called entered, where the file is at hand", "[care]") {
  const Bench bench(demoJobText(), shippedTechniques());
  const auto with = linesOf(sheetOf(bench, CareFor::Conservator), "layers");
  CHECK(has(with, "care.layer-seal | care.length length=0.5mm | default"));
  CHECK(has(with, "care.layer-glazing | care.length length=2mm | entered"));
  CHECK(has(linesOf(sheetOf(bench, CareFor::Conservator, ""), "layers"),
            "care.layer-seal | care.length length=0.5mm | entered"));
}

TEST_CASE("no section of a care sheet is empty, and no line without a label and a value", "[care]") {
  Bench bench(demoJobText(), shippedTechniques());
  for (int i = 0; i < 20; ++i) bench.finishShown();
  for (const CareFor kind : {CareFor::Client, CareFor::Conservator}) {
    const CareSheet sheet = sheetOf(bench, kind);
    CHECK(sheet.sections.size() >= 4);
    for (const auto& section : sheet.sections) {
      CHECK_FALSE(section.lines.empty());
      for (const CareLine& line : section.lines) {
        CHECK_FALSE(line.label.id.empty());
        CHECK_FALSE(line.values.empty());
      }
    }
  }
}

TEST_CASE("of what a piece is delivered without, nothing is said", "[care]") {
  const auto delivered = [](const std::string& how) {
    return demoJobWith("\"room\": {", "\"deliver\": \"" + how + "\", \"room\": {");
  };
  const auto layers = [](const std::string& text) {
    const Bench bench(text, shippedTechniques());
    return linesOf(sheetOf(bench, CareFor::Conservator, text), "layers");
  };
  const auto care = [](const std::string& text) {
    const Bench bench(text, shippedTechniques());
    return linesOf(sheetOf(bench, CareFor::Client, text), "care");
  };
  for (const char* how : {"framed", "attached", "mount"}) {
    INFO(how);
    const bool framed = std::string(how) == "framed";
    const bool mount = std::string(how) == "mount";
    const auto lines = layers(delivered(how));
    CHECK(has(lines, "care.layer-glazing") == framed);
    CHECK(has(lines, "care.layer-backing") == framed);
    CHECK(has(lines, "care.layer-hinge") != mount);
    CHECK(has(lines, "care.layer-back-mount") != mount);
    CHECK(has(lines, "care.layer-board"));
    CHECK(has(care(delivered(how)), "care.opening") == framed);
    CHECK(has(care(delivered(how)), "care.handling"));
  }
}
