#include "core/materials/sheet_plan.h"

#include <algorithm>
#include <map>
#include <numeric>

#include "core/materials/group_plan.h"

namespace core::materials {
namespace {

// Pieces that may come from the same stock, or from stock that a third may come from too.
std::vector<StockGroup> groupsOf(const std::vector<StockMatch>& matches, std::size_t stock) {
  std::vector<std::size_t> joined(stock);
  std::iota(joined.begin(), joined.end(), std::size_t{0});
  const auto rootOf = [&](std::size_t i) {
    while (joined[i] != i) i = joined[i] = joined[joined[i]];
    return i;
  };
  for (const StockMatch& match : matches) {
    for (const std::size_t i : match.stock) joined[rootOf(i)] = rootOf(match.stock.front());
  }
  std::vector<StockGroup> groups;
  std::map<std::size_t, std::size_t> known;  // the group of a root
  for (std::size_t piece = 0; piece < matches.size(); ++piece) {
    if (matches[piece].stock.empty()) continue;
    const auto [place, isFresh] = known.emplace(rootOf(matches[piece].stock.front()), groups.size());
    if (isFresh) groups.emplace_back();
    groups[place->second].pieces.push_back(piece);
  }
  std::vector<bool> isAsked(stock, false);
  for (const StockMatch& match : matches) {
    for (const std::size_t i : match.stock) isAsked[i] = true;
  }
  for (std::size_t i = 0; i < stock; ++i) {
    if (isAsked[i]) groups[known.at(rootOf(i))].stock.push_back(i);
  }
  return groups;
}

}  // namespace

bool SheetPlan::isShort() const {
  return std::any_of(groups.begin(), groups.end(), [](const StockGroup& group) { return !group.unplaced.empty(); });
}

SheetPlan planSheets(const std::vector<CutPiece>& pieces, const SheetsThere& there) {
  SheetPlan plan;
  plan.matches = matchSheets(pieces, there);
  plan.groups = groupsOf(plan.matches, there.size());
  for (StockGroup& group : plan.groups) detail::planGroup(pieces, plan.matches, there, group);
  return plan;
}

}  // namespace core::materials
