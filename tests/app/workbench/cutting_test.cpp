// Sheets cut at one job, their offcuts used at the next, on the real store and through a restart.
#include "core/supply/cutting.h"

#include <QTemporaryDir>

#include "app/stores/sqlite_event_store.h"
#include "tests/app/workbench/bench.h"
#include "tests/app/workbench/own_store.h"

using namespace tests;
using core::supply::cutOf;
using core::supply::Cutting;
using core::supply::cuttingOf;

namespace {

Cutting cuttingAt(const StoredBench& bench, const std::string& job) {
  return cuttingOf(job, *bench.work.job(job)->design, bench.work.shop());
}

int pieceCount(const Cutting& cutting) {
  int count = 0;
  for (const auto& piece : cutting.pieces) count += piece.count;
  return count;
}

const core::materials::PlanSheet* firstSheet(const Cutting& cutting) {
  for (const auto& group : cutting.plan.groups) {
    if (!group.sheets.empty()) return &group.sheets.front();
  }
  return nullptr;
}

// Cuts sheet after sheet as planned; returns how many new ones it took.
int cutEverything(StoredBench& bench, const std::string& job) {
  int fresh = 0;
  for (int sheets = 0; sheets < 100; ++sheets) {
    const Cutting cutting = cuttingAt(bench, job);
    const auto* sheet = firstSheet(cutting);
    if (sheet == nullptr) return fresh;
    const int before = pieceCount(cutting);
    const int onIt = static_cast<int>(sheet->pieces.size());
    if (!cutting.there.at(sheet->stock).offcut) ++fresh;
    REQUIRE(bench.work.submit(core::intents::OfShop{cutOf(cutting, *sheet, true)}).id.empty());
    CHECK(pieceCount(cuttingAt(bench, job)) == before - onIt);
  }
  FAIL("the cutting never ends");
  return 0;
}

}  // namespace

TEST_CASE("a job cut to the last piece leaves offcuts that the same job again is cut from first") {
  QTemporaryDir folder;
  std::string job;
  std::vector<std::string> marks;
  int fresh = 0;
  const auto marksOf = [](const StoredBench& bench) {
    std::vector<std::string> all;
    for (const auto& offcut : bench.work.shop().onHand.offcuts) all.push_back(offcut.id);
    return all;
  };
  {
    const auto store = openIn(folder);
    StoredBench bench(*store, "this-tablet");
    job = bench.takeIn(demoJob());
    fresh = cutEverything(bench, job);
    CHECK(fresh > 1);
    // Glass is not cut from stock.
    const Cutting left = cuttingAt(bench, job);
    REQUIRE(left.pieces.size() == 1);
    CHECK(left.pieces[0].id == "glazing");
    marks = marksOf(bench);
    CHECK_FALSE(marks.empty());
  }
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  CHECK(marksOf(bench) == marks);
  CHECK(firstSheet(cuttingAt(bench, job)) == nullptr);
  const std::string again = bench.takeIn(demoJob() + "\n");
  REQUIRE(again != job);
  const Cutting cutting = cuttingAt(bench, again);
  const auto* first = firstSheet(cutting);
  REQUIRE(first != nullptr);
  CHECK(cutEverything(bench, again) < fresh);
  CHECK(marksOf(bench) != marks);
}

TEST_CASE("a sheet listed once is not cut twice") {
  QTemporaryDir folder;
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  const std::string job = bench.takeIn(demoJob());
  core::intents::CutSheet cut;
  cut.job = job;
  cut.stock = "wave-end";
  cut.pieces = {{"band.inner.vertical", 1}};
  REQUIRE(bench.work.submit(core::intents::OfShop{cut}).id.empty());
  const Cutting cutting = cuttingAt(bench, job);
  for (const auto& group : cutting.plan.groups) {
    for (const auto& sheet : group.sheets) CHECK(cutting.there.at(sheet.stock).id != "wave-end");
  }
  REQUIRE(bench.work.submit(core::intents::OfShop{core::intents::UndoInShop{bench.work.lastIntentId()}}).id.empty());
  CHECK(bench.work.shop().onHand.cut.empty());
}

TEST_CASE("a sheet taken back is planned again as it was") {
  QTemporaryDir folder;
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  const std::string job = bench.takeIn(demoJob());
  const Cutting before = cuttingAt(bench, job);
  const auto* sheet = firstSheet(before);
  REQUIRE(sheet != nullptr);
  REQUIRE_FALSE(sheet->offcuts.empty());
  REQUIRE(bench.work.submit(core::intents::OfShop{cutOf(before, *sheet, true)}).id.empty());
  CHECK(bench.work.shop().onHand.offcuts.size() == sheet->offcuts.size());
  const std::string act = bench.work.shop().onHand.acts.back().intentId;
  CHECK(core::base::dump(bench.work.submit(core::intents::OfShop{core::intents::UndoInShop{act}})) == "");
  CHECK(bench.work.shop().onHand.offcuts.empty());
  CHECK(pieceCount(cuttingAt(bench, job)) == pieceCount(before));
}
