#include "core/workflow/edges.h"

#include <algorithm>
#include <string_view>
#include <unordered_map>

namespace core::workflow {
namespace {

// The order has to be stored for each pair of steps. Beyond this many, facts are used for too many things at once.
constexpr std::size_t kMostPairs = 500'000;

struct Facts {
  std::vector<std::size_t> makers;
  std::vector<std::size_t> needers;
};

}  // namespace

std::optional<Edges> edgesOf(const std::vector<DraftStep>& drafts) {
  std::unordered_map<std::string_view, Facts> facts;
  for (std::size_t i = 0; i < drafts.size(); ++i) {
    const WorkflowStep& step = drafts[i].step;
    for (const std::string& fact : step.makes) facts[fact].makers.push_back(i);
    for (const WorkflowWait& wait : step.waits) facts[wait.makes].makers.push_back(i);
    for (const std::string& fact : step.needs) facts[fact].needers.push_back(i);
  }
  std::size_t pairs = 0;
  Edges before(drafts.size());
  for (std::size_t i = 0; i < drafts.size(); ++i) {
    const auto come = [&](const std::vector<std::size_t>& first) {
      pairs += first.size();
      if (pairs <= kMostPairs) before[i].insert(before[i].end(), first.begin(), first.end());
    };
    for (const std::string& fact : drafts[i].step.needs) come(facts[fact].makers);
    for (const std::string& fact : drafts[i].step.ends) {
      const auto said = facts.find(fact);
      if (said == facts.end()) continue;
      come(said->second.makers);
      come(said->second.needers);
    }
    if (pairs > kMostPairs) return std::nullopt;
    std::sort(before[i].begin(), before[i].end());
    before[i].erase(std::unique(before[i].begin(), before[i].end()), before[i].end());
    std::erase(before[i], i);
  }
  return before;
}

std::vector<std::size_t> sortedBy(const Edges& before) {
  std::vector<std::vector<std::size_t>> after(before.size());
  std::vector<std::size_t> waitsFor(before.size());
  std::vector<std::size_t> sorted;
  for (std::size_t i = 0; i < before.size(); ++i) {
    waitsFor[i] = before[i].size();
    for (const std::size_t earlier : before[i]) after[earlier].push_back(i);
    if (before[i].empty()) sorted.push_back(i);
  }
  for (std::size_t at = 0; at < sorted.size(); ++at) {
    for (const std::size_t later : after[sorted[at]]) {
      if (--waitsFor[later] == 0) sorted.push_back(later);
    }
  }
  return sorted;
}

}  // namespace core::workflow
