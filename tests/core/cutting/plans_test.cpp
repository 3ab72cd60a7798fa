#include "tests/core/cutting/checked_plan.h"
#include "tests/support/catch.h"

using namespace core::cutting;

namespace {

void check(std::mt19937& random, int pieces) {
  tests::CuttingTask task = tests::anyTask(random, pieces);
  if (random() % 2 == 0) tests::mix(task, random);
  const CuttingPlan plan = cutSheets(task.pieces, task.stock);
  INFO(tests::describe(task));
  CHECK(tests::faultOf(task, plan) == "");
}

}  // namespace

TEST_CASE("a thousand plans can be cut as they say, and every square nanometre is accounted for") {
  std::mt19937 random(20'260'401);
  for (int i = 0; i < 1000; ++i) check(random, 1 + i % 7);
}

TEST_CASE("plans of many pieces can be cut as they say") {
  std::mt19937 random(20'260'402);
  for (int i = 0; i < 24; ++i) check(random, 8 + static_cast<int>(random() % 23));
  for (int i = 0; i < 6; ++i) check(random, 31 + static_cast<int>(random() % 30));
}
