#include <algorithm>

#include "tests/core/cutting/checked_plan.h"
#include "tests/support/catch.h"

using namespace core::cutting;

namespace {

void checkShuffled(std::mt19937& random, int pieces) {
  tests::CuttingTask task = tests::anyTask(random, pieces);
  if (random() % 2 == 0) tests::mix(task, random);
  INFO(tests::describe(task));
  const std::string layout = tests::layoutOf(task, cutSheets(task.pieces, task.stock));
  for (int i = 0; i < 2; ++i) {
    std::shuffle(task.pieces.begin(), task.pieces.end(), random);
    std::shuffle(task.stock.begin(), task.stock.end(), random);
    CHECK(tests::layoutOf(task, cutSheets(task.pieces, task.stock)) == layout);
  }
}

}  // namespace

TEST_CASE("the order of pieces and of stock changes nothing but the indices") {
  std::mt19937 random(20'260'501);
  for (int i = 0; i < 60; ++i) checkShuffled(random, 1 + i % 7);
  for (int i = 0; i < 4; ++i) checkShuffled(random, 15 + 10 * i);
}

TEST_CASE("the same input gives the same plan") {
  std::mt19937 random(20'260'502);
  const tests::CuttingTask task = tests::anyTask(random, 25);
  CHECK(tests::layoutOf(task, cutSheets(task.pieces, task.stock)) ==
        tests::layoutOf(task, cutSheets(task.pieces, task.stock)));
}
