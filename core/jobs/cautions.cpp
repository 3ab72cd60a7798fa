#include "core/jobs/cautions.h"

#include <algorithm>

namespace core::jobs {
namespace {

bool sameWords(const craft::Caution& a, const craft::Caution& b) { return a.hazard == b.hazard && a.text == b.text; }

bool wasRead(const JobState& state, const craft::Caution& caution) {
  const auto& steps = state.plan->workflow.steps;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (state.steps[i].status != StepStatus::Done) continue;
    const auto& cautions = steps[i].cautions;
    if (std::any_of(cautions.begin(), cautions.end(), [&](const auto& one) { return sameWords(one, caution); })) {
      return true;
    }
  }
  return false;
}

bool isForThisRoom(const JobAt& job, const craft::Caution& caution) {
  const std::optional<units::Room>& planned = job.state().plan->design.job.room;
  std::optional<units::Room> newest;
  if (!job.shop().rooms.empty()) newest = job.shop().rooms.back().room;
  if (!planned) return craft::concerns(caution.room, newest);
  return craft::concerns(caution.room, planned) || (newest && craft::concerns(caution.room, newest));
}

}  // namespace

std::vector<CautionAt> cautionsOf(const JobAt& job, const std::vector<std::size_t>& steps) {
  const JobState& state = job.state();
  std::vector<CautionAt> cautions;
  for (const std::size_t step : steps) {
    for (const craft::Caution& caution : state.plan->workflow.steps[step].cautions) {
      if (!isForThisRoom(job, caution)) continue;
      const bool met = std::any_of(cautions.begin(), cautions.end(),
                                   [&](const CautionAt& one) { return sameWords(one.caution, caution); });
      if (!met) cautions.push_back({caution, wasRead(state, caution)});
    }
  }
  std::stable_sort(cautions.begin(), cautions.end(),
                   [](const CautionAt& a, const CautionAt& b) { return a.caution.word < b.caution.word; });
  return cautions;
}

}  // namespace core::jobs
