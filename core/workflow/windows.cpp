#include "core/workflow/windows.h"

#include <algorithm>
#include <queue>
#include <tuple>

namespace core::workflow {

namespace {

// Whatever the hands can turn to, the one that must be over first.
int lateAtOnce(std::vector<Due> dues, double at) {
  std::sort(dues.begin(), dues.end(), [](const Due& a, const Due& b) { return a.from > b.from; });
  const auto isLater = [](const Due& a, const Due& b) {
    return std::tuple(a.closes + a.work, a.after) > std::tuple(b.closes + b.work, b.after);
  };
  std::priority_queue<Due, std::vector<Due>, decltype(isLater)> open(isLater);
  int late = 0;
  while (!dues.empty() || !open.empty()) {
    if (open.empty()) at = std::max(at, dues.back().from);
    for (; !dues.empty() && dues.back().from <= at; dues.pop_back()) open.push(dues.back());
    const Due next = open.top();
    open.pop();
    if (at + next.before > next.closes) {
      ++late;
    } else {
      at += next.before + next.work;
    }
  }
  return late;
}

// One after another in this order, waiting for each.
int lateInOrder(const std::vector<Due>& dues, double at) {
  int late = 0;
  for (const Due& due : dues) {
    const double start = std::max(at, due.from) + due.before;
    if (start > due.closes) {
      ++late;
    } else {
      at = start + due.work;
    }
  }
  return late;
}

}  // namespace

int lateOf(std::vector<Due> dues, double at) {
  int late = lateAtOnce(dues, at);
  if (late == 0 || dues.size() < 2) return late;
  std::sort(dues.begin(), dues.end(), [](const Due& a, const Due& b) {
    return std::tuple(a.closes + a.work, a.after) < std::tuple(b.closes + b.work, b.after);
  });
  late = std::min(late, lateInOrder(dues, at));
  std::sort(dues.begin(), dues.end(), [](const Due& a, const Due& b) {
    return std::tuple(a.from, a.after, a.closes) < std::tuple(b.from, b.after, b.closes);
  });
  return std::min(late, lateInOrder(dues, at));
}

}  // namespace core::workflow
