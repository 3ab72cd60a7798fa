#include "core/jobs/wait_groups.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "core/workflow/agenda.h"

namespace core::jobs {
namespace {

// "technique/step/wait", without the thing.
std::string kindOf(const RunningWait& run) { return workflow::kindOf(*run.wait).name; }

bool begunBefore(const RunningWait* a, const RunningWait* b) {
  return std::tie(a->started.utcMilliseconds, a->id) < std::tie(b->started.utcMilliseconds, b->id);
}

}  // namespace

std::vector<WaitGroup> waitGroups(const JobAt& job) {
  std::map<std::string, WaitGroup> byKind;
  std::vector<WaitGroup> groups;
  for (const auto& [id, run] : job.state().waits) {
    if (!job.matters(run)) continue;
    if (run.wait->closes) {
      groups.push_back({&run});
    } else {
      byKind[kindOf(run)].push_back(&run);
    }
  }
  for (auto& [kind, runs] : byKind) {
    std::sort(runs.begin(), runs.end(), begunBefore);
    for (const RunningWait* run : runs) {
      const bool joins =
          !groups.empty() && kindOf(*groups.back().front()) == kind &&
          waits::elapsedBetween(groups.back().front()->started, run->started, job.shop().clockLog).time <=
              kBegunTogether;
      if (!joins) groups.emplace_back();
      groups.back().push_back(run);
    }
  }
  std::sort(groups.begin(), groups.end(),
            [](const WaitGroup& a, const WaitGroup& b) { return a.front()->id < b.front()->id; });
  return groups;
}

WaitGroup groupOf(const JobAt& job, const RunningWait& run) {
  for (WaitGroup& group : waitGroups(job)) {
    if (std::count(group.begin(), group.end(), &run) > 0) return std::move(group);
  }
  return {&run};
}

}  // namespace core::jobs
