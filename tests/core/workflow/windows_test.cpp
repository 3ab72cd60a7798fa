#include "core/workflow/windows.h"

#include <algorithm>
#include <numeric>
#include <random>

#include "tests/support/catch.h"

using core::workflow::Due;
using core::workflow::lateOf;

namespace {

// Whether some order of the steps starts each in its window.
bool canAllBeMet(const std::vector<Due>& dues, double at) {
  std::vector<std::size_t> order(dues.size());
  std::iota(order.begin(), order.end(), 0);
  do {
    double now = at;
    const bool met = std::all_of(order.begin(), order.end(), [&](std::size_t i) {
      const double start = std::max(now, dues[i].from) + dues[i].before;
      now = start + dues[i].work;
      return start <= dues[i].closes;
    });
    if (met) return true;
  } while (std::next_permutation(order.begin(), order.end()));
  return false;
}

}  // namespace

TEST_CASE("a step may start at the very closing of its window, and not after", "[windows]") {
  CHECK(lateOf({}, 0) == 0);
  CHECK(lateOf({{0, 10, 0, 5, 0}}, 10) == 0);
  CHECK(lateOf({{0, 10, 0, 5, 0}}, 10.1) == 1);
  CHECK(lateOf({{0, 10, 4, 5, 0}}, 6) == 0);
  CHECK(lateOf({{0, 10, 4, 5, 0}}, 7) == 1);
}

TEST_CASE("two windows that close while one of the two is worked: one is late", "[windows]") {
  CHECK(lateOf({{0, 10, 0, 20, 0}, {0, 10, 0, 20, 0}}, 0) == 1);
  CHECK(lateOf({{0, 10, 0, 20, 0}, {0, 20, 0, 20, 0}}, 0) == 0);
  CHECK(lateOf({{0, 20, 0, 20, 0}, {0, 10, 0, 20, 0}}, 0) == 0);
}

TEST_CASE("of two that close together, the one that comes before the other is worked first", "[windows]") {
  CHECK(lateOf({{0, 10, 0, 1, 1}, {0, 10, 0, 10, 0}}, 0) == 0);
}

TEST_CASE("what is said to be in time can be worked in time, and where all can be turned to nothing is missed",
          "[windows]") {
  std::mt19937 random(3);
  int late = 0;
  for (int round = 0; round < 3000; ++round) {
    std::vector<Due> dues(1 + random() % 5);
    const bool atOnce = round % 2 == 0;
    for (Due& due : dues) {
      due.from = atOnce ? 0 : static_cast<double>(random() % 30);
      due.work = 1 + static_cast<double>(random() % 10);
      due.closes = due.from + static_cast<double>(random() % 30);
    }
    const bool inTime = lateOf(dues, 0) == 0;
    if (inTime) CHECK(canAllBeMet(dues, 0));
    // With hands free for all of them no order is better.
    if (atOnce) CHECK(inTime == canAllBeMet(dues, 0));
    late += inTime ? 0 : 1;
  }
  CHECK(late > 300);
}
