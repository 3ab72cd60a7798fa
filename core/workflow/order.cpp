#include "core/workflow/order.h"

#include <algorithm>
#include <optional>
#include <tuple>
#include <unordered_map>
#include <unordered_set>

#include "core/workflow/acts.h"
#include "core/workflow/edges.h"
#include "core/workflow/schedule.h"
#include "core/workflow/shared_settings.h"

namespace core::workflow {
namespace {

// With its thing and its technique, since steps of several files may bear one title.
std::string called(const WorkflowStep& step) {
  return step.title + (step.thingName.empty() ? " (" : " (" + step.thingName + ", ") + step.techniqueTitle + ')';
}

// A cycle among the steps that could not be placed, as they are called, in the order in which each is waited for.
std::string cyclePath(const std::vector<DraftStep>& drafts, const Edges& before, const std::vector<bool>& placed) {
  const auto first = std::find(placed.begin(), placed.end(), false);
  std::size_t at = static_cast<std::size_t>(first - placed.begin());
  std::vector<std::size_t> path;
  std::vector<bool> met(drafts.size(), false);
  // Each unplaced step has an unplaced one before it, so walking back must meet the path again.
  while (!met[at]) {
    met[at] = true;
    path.push_back(at);
    at = *std::find_if(before[at].begin(), before[at].end(), [&](std::size_t step) { return !placed[step]; });
  }
  path.erase(path.begin(), std::find(path.begin(), path.end(), at));
  std::reverse(path.begin(), path.end());
  // Starts from the smallest id, so that the same cycle is always reported in the same way.
  std::rotate(path.begin(),
              std::min_element(path.begin(), path.end(),
                               [&](std::size_t a, std::size_t b) { return drafts[a].step.id < drafts[b].step.id; }),
              path.end());
  // The beginning of a long cycle is enough to find the fault.
  constexpr std::size_t kMostTold = 12;
  std::string text;
  for (std::size_t i = 0; i < std::min(path.size(), kMostTold); ++i) text += called(drafts[path[i]].step) + " \u2192 ";
  if (path.size() > kMostTold) text += "\u2026 \u2192 ";
  return text + called(drafts[path.front()].step);
}

// How many steps stand before each, at the most, one after another.
std::vector<std::size_t> levelsOf(const Edges& before) {
  std::vector<std::size_t> level(before.size(), 0);
  for (const std::size_t step : sortedBy(before)) {
    for (const std::size_t earlier : before[step]) level[step] = std::max(level[step], level[earlier] + 1);
  }
  return level;
}

// What comes from one step, found from behind: whatever stands no deeper than it cannot.
class Following {
 public:
  Following(const Edges& before, const std::vector<std::size_t>& level, std::size_t from)
      : m_before(before), m_level(level), m_from(from) {}

  bool has(std::size_t step) {
    if (step == m_from) return true;
    if (m_level[step] <= m_level[m_from]) return false;
    const auto [found, isNew] = m_known.try_emplace(step, false);
    if (!isNew) return found->second;
    const bool follows =
        std::any_of(m_before[step].begin(), m_before[step].end(), [this](std::size_t earlier) { return has(earlier); });
    return m_known[step] = follows;
  }

 private:
  const Edges& m_before;
  const std::vector<std::size_t>& m_level;
  std::size_t m_from;
  std::unordered_map<std::size_t, bool> m_known;
};

// A step that opens a window comes after all that the gated step waits for and that does not follow from the window
// itself: the size is not brushed before the leaf lies ready.
Edges withWindows(const Workflow& workflow, const Edges& before) {
  Edges more = before;
  const std::vector<std::size_t> level = levelsOf(before);
  for (std::size_t opener = 0; opener < before.size(); ++opener) {
    for (const WorkflowWait& wait : workflow.steps[opener].waits) {
      if (!wait.closes) continue;
      Following later(before, level, opener);
      std::vector<std::size_t> open = workflow.needing(wait.makes);
      std::unordered_set<std::size_t> met;
      while (!open.empty()) {
        const std::size_t step = open.back();
        open.pop_back();
        if (!met.insert(step).second) continue;
        for (const std::size_t earlier : before[step]) {
          if (earlier == opener) continue;
          if (later.has(earlier)) {
            open.push_back(earlier);
          } else {
            more[opener].push_back(earlier);
          }
        }
      }
    }
    std::sort(more[opener].begin(), more[opener].end());
    more[opener].erase(std::unique(more[opener].begin(), more[opener].end()), more[opener].end());
  }
  return sortedBy(more).size() == before.size() ? more : before;
}

// Puts the steps in the order of the turns.
Workflow renumbered(Workflow unordered, std::vector<DraftStep>& drafts, std::vector<Turn> turns) {
  std::vector<std::size_t> newIndex(drafts.size());
  std::vector<DraftStep> ordered;
  for (Turn& turn : turns) {
    for (std::size_t& step : turn.steps) {
      newIndex[step] = ordered.size();
      ordered.push_back(std::move(drafts[step]));
      step = newIndex[step];
    }
  }
  for (Turn& turn : turns) {
    for (std::size_t& step : turn.anew) step = newIndex[step];
  }
  Workflow workflow;
  workflow.steps.resize(ordered.size());
  for (std::size_t i = 0; i < unordered.steps.size(); ++i) {
    WorkflowStep& step = workflow.steps[newIndex[i]] = std::move(unordered.steps[i]);
    for (std::size_t& earlier : step.before) earlier = newIndex[earlier];
    std::sort(step.before.begin(), step.before.end());
  }
  Acts acts = actsOf(workflow, ordered, turns);
  workflow.everyActs = std::move(acts.every);
  workflow.shortActs = std::move(acts.brief);
  workflow.index();
  return workflow;
}

base::Result<Workflow, base::Message> orderOf(std::vector<DraftStep> drafts) {
  const std::optional<Edges> edges = edgesOf(drafts);
  if (!edges) return base::Message("compose.too-much");
  if (const std::vector<std::size_t> sorted = sortedBy(*edges); sorted.size() < drafts.size()) {
    std::vector<bool> placed(drafts.size(), false);
    for (const std::size_t step : sorted) placed[step] = true;
    return base::Message("compose.cycle").with("path", cyclePath(drafts, *edges, placed));
  }
  Workflow unordered;
  for (const DraftStep& draft : drafts) unordered.steps.push_back(draft.step);
  unordered.index();
  const Edges before = withWindows(unordered, *edges);
  for (std::size_t i = 0; i < drafts.size(); ++i) unordered.steps[i].before = before[i];
  std::vector<Turn> turns = turnsOf(unordered, drafts);
  return renumbered(std::move(unordered), drafts, std::move(turns));
}

}  // namespace

base::Result<Workflow, base::Message> inOrder(std::vector<DraftStep> drafts) {
  std::sort(drafts.begin(), drafts.end(), [](const DraftStep& a, const DraftStep& b) {
    return std::tie(a.rank, a.thingOrder, a.step.technique, a.stepOrder, a.step.id) <
           std::tie(b.rank, b.thingOrder, b.step.technique, b.stepOrder, b.step.id);
  });
  std::vector<DraftStep> shared = withSharedSettings(drafts);
  if (shared.size() < drafts.size()) {
    auto ordered = orderOf(std::move(shared));
    // Where settings of several tools stand in each other's way, each is made whenever it is wanted.
    if (ordered && areSettingsHeld(ordered.value())) return ordered;
  }
  auto ordered = orderOf(drafts);
  if (!ordered || areSettingsHeld(ordered.value())) return ordered;
  const auto clash = settingsClash(drafts);
  if (!clash) return ordered;
  return base::Message("compose.settings-clash")
      .with("tool", drafts[clash->one].step.setup->tool)
      .with("one", called(drafts[clash->one].step))
      .with("other", called(drafts[clash->other].step))
      .with("step", called(drafts[clash->step].step));
}

}  // namespace core::workflow
