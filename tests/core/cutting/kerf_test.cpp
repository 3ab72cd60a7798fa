#include "tests/core/cutting/checked_plan.h"
#include "tests/support/catch.h"

using namespace core::cutting;

namespace {

// With falling kerfs no more pieces are left over, and where as many are left no more worth is needed.
void checkFalling(tests::CuttingTask task, const std::vector<double>& kerfs) {
  INFO(tests::describe(task));
  std::size_t left = task.pieces.size() + 1;
  double worth = 0;
  for (const double kerf : kerfs) {
    for (StockSheet& sheet : task.stock) sheet.kerf = tests::mm(kerf);
    const CuttingPlan plan = cutSheets(task.pieces, task.stock);
    INFO("kerf " << kerf);
    CHECK(plan.unplaced.size() <= left);
    if (plan.unplaced.size() == left) CHECK(plan.worth <= worth);
    left = plan.unplaced.size();
    worth = plan.worth;
  }
}

}  // namespace

TEST_CASE("a smaller kerf never needs sheets of more worth") {
  std::mt19937 random(20'260'601);
  for (int i = 0; i < 60; ++i) checkFalling(tests::anyTask(random, 1 + i % 8), {40, 6, 3.2, 3.1, 1, 0});
  for (int i = 0; i < 12; ++i) {
    checkFalling(tests::anyTask(random, 11 + 4 * i), {25, 7, 4.2, 3.2, 3.175, 2.3333, 1.05, 0.7, 0});
  }
}
