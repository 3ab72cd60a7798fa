#include "tests/core/cutting/brute_force.h"
#include "tests/core/cutting/checked_plan.h"
#include "tests/support/catch.h"

using namespace core::cutting;
using tests::mm;

namespace {

void checkAgainstCounting(const tests::CuttingTask& task) {
  INFO(tests::describe(task));
  const CuttingPlan plan = cutSheets(task.pieces, task.stock);
  CHECK(tests::faultOf(task, plan) == "");
  CHECK(plan.exact);
  const tests::BestCutting best = tests::countedOut(task);
  CHECK(static_cast<int>(plan.unplaced.size()) == best.unplaced);
  CHECK(plan.worth == best.worth);
  CHECK(static_cast<int>(plan.sheets.size()) == best.sheets);
}

}  // namespace

TEST_CASE("few pieces are cut as well as counting everything out can") {
  std::mt19937 random(20'260'301);
  for (int i = 0; i < 300; ++i) checkAgainstCounting(tests::smallTask(random, 1 + i % 5, 14));
}

TEST_CASE("six pieces are cut as well as counting everything out can") {
  std::mt19937 random(20'260'302);
  for (int i = 0; i < 60; ++i) checkAgainstCounting(tests::smallTask(random, 6, 10));
}

TEST_CASE("pieces that mind fibres, and sheets that serve some pieces alone, are cut as well as counting out can") {
  std::mt19937 random(20'260'303);
  for (int i = 0; i < 300; ++i) {
    auto task = tests::smallTask(random, 1 + i % 5, 12);
    tests::mix(task, random);
    checkAgainstCounting(task);
  }
}

TEST_CASE("an offcut is cut where that saves on new sheets, and stays whole where a new one has room for all") {
  tests::CuttingTask task;
  StockSheet sheet, offcut;
  sheet.width = sheet.height = mm(100);
  offcut.width = offcut.height = mm(50);
  offcut.offcut = true;
  offcut.quantity = 1;
  task.stock = {sheet, offcut};
  task.pieces = {{"small", mm(50), mm(50)}};
  CuttingPlan plan = cutSheets(task.pieces, task.stock);
  REQUIRE(plan.sheets.size() == 1);
  CHECK(plan.sheets[0].stock == 1);
  task.pieces.push_back({"large", mm(100), mm(50)});
  plan = cutSheets(task.pieces, task.stock);
  REQUIRE(plan.sheets.size() == 1);
  CHECK(plan.sheets[0].stock == 0);
  // One more does not go on the new sheet beside them: a second is saved.
  task.pieces.push_back({"third", mm(60), mm(50)});
  plan = cutSheets(task.pieces, task.stock);
  REQUIRE(plan.sheets.size() == 2);
  CHECK(plan.sheets[0].stock == 1);
  CHECK(plan.worth == 100 * 100);
}

TEST_CASE("pieces that only fit round a hub cannot be cut from edge to edge") {
  // Four of 2 x 1 round a square of 1 fill a square of 3, but no straight cut goes through between them.
  tests::CuttingTask task;
  for (int i = 0; i < 4; ++i) task.pieces.push_back({"arm", mm(20), mm(10), true});
  task.pieces.push_back({"hub", mm(10), mm(10), false});
  StockSheet sheet;
  sheet.width = sheet.height = mm(30);
  task.stock.push_back(sheet);
  const CuttingPlan plan = cutSheets(task.pieces, task.stock);
  CHECK(tests::faultOf(task, plan) == "");
  // In rows they do: three of the arms' halves make a row of their own.
  CHECK(plan.sheets.size() == static_cast<std::size_t>(tests::countedOut(task).sheets));
}

TEST_CASE("one piece of the sheet's own size needs no cut") {
  StockSheet sheet;
  sheet.width = mm(300);
  sheet.height = mm(200);
  sheet.kerf = mm(3);
  const CuttingPlan plan = cutSheets({{"whole", mm(200), mm(300), true}}, {sheet});
  REQUIRE(plan.sheets.size() == 1);
  CHECK(plan.sheets[0].cuts.empty());
  CHECK(plan.sheets[0].rest.empty());
  CHECK(plan.sheets[0].pieces[0].turned);
  CHECK(plan.exact);
}

TEST_CASE("the saw may run out of the sheet") {
  // 100 + 3 + 100 leaves 2: less than the kerf, which needs no room of its own.
  StockSheet sheet;
  sheet.width = mm(205);
  sheet.height = mm(50);
  sheet.kerf = mm(3);
  const std::vector<WantedPiece> pieces{{"a", mm(100), mm(50), false}, {"b", mm(100), mm(50), false}};
  const CuttingPlan plan = cutSheets(pieces, {sheet});
  REQUIRE(plan.sheets.size() == 1);
  CHECK(plan.sheets[0].cuts.size() == 2);
  CHECK(plan.sheets[0].rest.empty());
  sheet.width = mm(202);
  CHECK(cutSheets(pieces, {sheet}).sheets.size() == 2);
}

TEST_CASE("an offcut is used before a sheet is bought") {
  StockSheet sheet;
  sheet.width = sheet.height = mm(500);
  sheet.price = 4;
  StockSheet offcut;
  offcut.width = offcut.height = mm(210);
  offcut.offcut = true;
  offcut.quantity = 1;
  const std::vector<WantedPiece> pieces{{"a", mm(200), mm(200), false}, {"b", mm(200), mm(200), false}};
  const CuttingPlan one = cutSheets({pieces[0]}, {sheet, offcut});
  REQUIRE(one.sheets.size() == 1);
  CHECK(one.sheets[0].stock == 1);
  CHECK(one.worth == 0);
  // A sheet has to be bought for the second piece, and then one sheet is fewer than two.
  const CuttingPlan two = cutSheets(pieces, {sheet, offcut});
  REQUIRE(two.sheets.size() == 1);
  CHECK(two.sheets[0].stock == 0);
  CHECK(two.worth == 4);
}

TEST_CASE("pieces no sheet has room for are left over and the rest is cut") {
  StockSheet sheet;
  sheet.width = mm(300);
  sheet.height = mm(200);
  sheet.margin = mm(5);
  const CuttingPlan plan = cutSheets(
      {{"wide", mm(295), mm(50), true}, {"fits", mm(290), mm(190), false}, {"high", mm(50), mm(191), false}}, {sheet});
  CHECK(plan.unplaced == std::vector<std::size_t>{0, 2});
  CHECK(plan.sheets.size() == 1);
  CHECK(plan.exact);
  CHECK(cutSheets({{"a", mm(1), mm(1), true}}, {}).unplaced.size() == 1);
  CHECK(cutSheets({}, {sheet}).exact);
}
