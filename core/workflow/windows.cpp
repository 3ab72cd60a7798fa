#include "core/workflow/windows.h"

#include <algorithm>
#include <queue>
#include <tuple>

namespace core::workflow {

int lateOf(std::vector<Due> dues, double at) {
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

}  // namespace core::workflow
