#include "core/cutting/fence_order.h"

#include <map>

namespace core::cutting {

std::vector<SheetCut> inFenceOrder(const std::vector<DependentCut>& cuts) {
  std::vector<bool> isDone(cuts.size(), false);
  std::map<Length, int> toDo;   // cuts of a setting
  std::map<Length, int> ready;  // of them those whose part is in hand
  const auto isReady = [&](std::size_t i) { return !isDone[i] && (cuts[i].after < 0 || isDone[cuts[i].after]); };
  std::vector<std::vector<std::size_t>> following(cuts.size());
  for (std::size_t i = 0; i < cuts.size(); ++i) {
    ++toDo[cuts[i].cut.fence];
    if (cuts[i].after < 0) {
      ++ready[cuts[i].cut.fence];
    } else {
      following[cuts[i].after].push_back(i);
    }
  }
  std::vector<SheetCut> ordered;
  while (ordered.size() < cuts.size()) {
    std::size_t next = cuts.size();
    int rank = 0;
    for (std::size_t i = 0; i < cuts.size() && rank < 3; ++i) {
      if (!isReady(i)) continue;
      const Length fence = cuts[i].cut.fence;
      const int its = !ordered.empty() && ordered.back().fence == fence ? 3 : ready[fence] == toDo[fence] ? 2 : 1;
      if (its > rank) {
        rank = its;
        next = i;
      }
    }
    isDone[next] = true;
    --toDo[cuts[next].cut.fence];
    --ready[cuts[next].cut.fence];
    for (const std::size_t i : following[next]) ++ready[cuts[i].cut.fence];
    ordered.push_back(cuts[next].cut);
  }
  return ordered;
}

}  // namespace core::cutting
