#include <cmath>

#include "core/cutting/few_pieces.h"
#include "core/cutting/many_pieces.h"
#include "core/cutting/most_worth.h"
#include "core/cutting/worth_bound.h"
#include "tests/core/cutting/checked_plan.h"
#include "tests/support/catch.h"

using namespace core::cutting;
using tests::mm;

namespace {

std::vector<int> countsOf(const CuttingProblem& problem, const std::vector<int>& left) {
  std::vector<int> counts;
  for (std::size_t i = 0; i < left.size(); ++i) counts.push_back(problem.pieces[i].count() - left[i]);
  return counts;
}

}  // namespace

TEST_CASE("no bound is above the best cutting and no rule of thumb below it") {
  std::mt19937 random(20'260'701);
  for (int i = 0; i < 400; ++i) {
    auto task = i % 2 == 0 ? tests::anyTask(random, 2 + i % 6) : tests::smallTask(random, 2 + i % 6, 14);
    if (i % 4 >= 2) tests::mix(task, random);
    INFO(tests::describe(task));
    const CuttingProblem problem = problemOf(task.pieces, task.stock);
    if (problem.pieces.empty()) continue;
    const SlicedPlan best = cutFewPieces(problem);
    const std::vector<int> placed = countsOf(problem, best.left);
    const Bounds bounds = boundsOf(problem, placed);
    const Bounds quick = boundsOf(problem, placed, nullptr, true);
    CHECK(bounds.worth <= best.worth);
    CHECK(bounds.sheets <= static_cast<int>(best.sheets.size()));
    CHECK(quick.worth <= bounds.worth);
    const SlicedPlan thumb =
        cutManyPieces(problem, boundsOf(problem, countsOf(problem, std::vector<int>(placed.size()))));
    CHECK_FALSE(thumb.isBetterThan(best));
  }
}

TEST_CASE("pieces too large to share a sheet need one each") {
  StockSheet sheet;
  sheet.width = mm(1000);
  sheet.height = mm(700);
  sheet.price = 7;
  std::vector<WantedPiece> pieces;
  for (int i = 0; i < 14; ++i) pieces.push_back({"large", mm(510 + i), mm(360), false});
  const CuttingPlan plan = cutSheets(pieces, {sheet});
  CHECK(plan.sheets.size() == 14);
  CHECK(plan.bound == 14 * 7);
  CHECK(plan.exact);
}

TEST_CASE("strips that do not lie end to end count for the whole length of the sheet, and so many across as go in") {
  StockSheet sheet;
  sheet.width = mm(500);
  sheet.height = mm(100);
  sheet.price = 7;
  std::vector<WantedPiece> strips;
  for (int i = 0; i < 16; ++i) strips.push_back({"strip", mm(300 + 7 * i), mm(26 + i * 0.5), false});
  // Three in a sheet: by area alone four sheets would do.
  const CuttingPlan plan = cutSheets(strips, {sheet});
  CHECK(plan.sheets.size() == 6);
  CHECK(plan.bound == 6 * 7);
  CHECK(plan.exact);
}

TEST_CASE("a bound is a sum of whole sheets' worth") {
  std::mt19937 random(20'260'702);
  for (int i = 0; i < 30; ++i) {
    auto task = tests::anyTask(random, 14);
    for (StockSheet& stock : task.stock) {
      stock.price = 7;
      stock.quantity.reset();
      stock.offcut = false;
    }
    INFO(tests::describe(task));
    const CuttingPlan plan = cutSheets(task.pieces, task.stock);
    CHECK(plan.bound == 7 * std::round(plan.bound / 7));
  }
}

TEST_CASE("the most worth of a sheet counts a piece as often as it goes in") {
  CHECK(mostWorth(10, 10, 0, {{5, 5, false, 7}}) == 28);
  CHECK(mostWorth(10, 10, 1, {{5, 5, false, 7}}) == 7);
  CHECK(mostWorth(11, 11, 1, {{5, 5, false, 7}}) == 28);
  CHECK(mostWorth(9, 4, 0, {{4, 9, false, 7}}) == 0);
  CHECK(mostWorth(9, 4, 0, {{4, 9, true, 7}}) == 7);
  CHECK(mostWorth(9, 4, 0, {}) == 0);
  CHECK_FALSE(mostWorth(1000, 1000, 0, {{7, 7, true, 1}, {11, 11, true, 1}}, 10).has_value());
}
