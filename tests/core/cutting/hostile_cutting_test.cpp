#include "tests/core/cutting/checked_plan.h"
#include "tests/support/catch.h"

using namespace core::cutting;
using tests::mm;

namespace {

StockSheet sheetOf(double width, double height) {
  StockSheet sheet;
  sheet.width = mm(width);
  sheet.height = mm(height);
  return sheet;
}

void check(const tests::CuttingTask& task) {
  const CuttingPlan plan = cutSheets(task.pieces, task.stock);
  CHECK(tests::faultOf(task, plan) == "");
}

}  // namespace

TEST_CASE("five hundred equal strips are cut in as few sheets as can be proven") {
  tests::CuttingTask task;
  task.pieces.assign(500, {"strip", mm(40), mm(700), false});
  task.stock = {sheetOf(1000, 700)};
  const CuttingPlan plan = cutSheets(task.pieces, task.stock);
  CHECK(tests::faultOf(task, plan) == "");
  CHECK(plan.sheets.size() == 20);
  CHECK(plan.exact);
}

TEST_CASE("the longest lengths and the widest blades do not overflow") {
  tests::CuttingTask task;
  for (int i = 0; i < 40; ++i) task.pieces.push_back({"board", mm(10'000 - 37.000'001 * i), mm(4'000 + i), true});
  task.stock = {sheetOf(10'000, 10'000), sheetOf(10'000, 9'999.999'999)};
  check(task);
  for (StockSheet& sheet : task.stock) sheet.kerf = mm(10'000);
  check(task);
  task.stock[0].price = 1e300;
  task.stock[1].price = 1e-300;
  check(task);
  task.stock[0].price = 0;
  check(task);
}

TEST_CASE("slivers of a nanometre and sheets that are all margin are cut as they are") {
  tests::CuttingTask task;
  for (int i = 1; i <= 12; ++i) task.pieces.push_back({"sliver", Length::nanometres(i), mm(1), true});
  task.stock = {sheetOf(1, 1), sheetOf(2, 2)};
  task.stock[0].kerf = Length::nanometres(1);
  task.stock[1].margin = mm(1);
  check(task);
}

TEST_CASE("many kinds of pieces and of stock end in a plan") {
  std::mt19937 random(20'260'801);
  tests::CuttingTask task = tests::anyTask(random, 300);
  for (int i = 0; i < 20; ++i) task.stock.push_back(sheetOf(500 + 13.7 * i, 900 - 9.1 * i));
  for (std::size_t i = 0; i < task.stock.size(); ++i) {
    task.stock[i].kerf = mm(0.05 * static_cast<double>(i));
    if (i % 5 == 1) task.stock[i].quantity = 1;
  }
  check(task);
}
