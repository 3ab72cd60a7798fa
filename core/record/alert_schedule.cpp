#include "core/record/alert_schedule.h"

#include <algorithm>
#include <tuple>

namespace core::record {
namespace {

using intents::AlertClass;

constexpr std::int64_t kNanosecondsPerMillisecond = 1'000'000;

bool foundByTouch(const RunningWait& run) {
  return !run.looks.empty() && run.looks.back().second != waits::Verdict::NotYet;
}

}  // namespace

std::vector<ScheduledAlert> alertsOf(const JobAt& job) {
  std::vector<ScheduledAlert> alerts;
  for (const auto& [id, run] : job.state().waits) {
    // An alert with no act attached may not sound.
    if (!job.matters(run) || foundByTouch(run)) continue;
    const waits::WaitState state = job.waitState(run);
    const std::string& waitId = id;
    const RunningWait& running = run;
    const auto add = [&](AlertClass alert, units::Duration due) {
      if (running.heard.contains(alert)) return;
      const units::Duration left = due - state.elapsed.time;
      alerts.push_back({job.state().plan->id, waitId, alert,
                        job.now().boottimeNanoseconds + left.inMilliseconds() * kNanosecondsPerMillisecond,
                        state.elapsed.certain});
    };
    if (!state.closes) {
      add(AlertClass::Over, state.opens.likely);
      continue;
    }
    // A missed window has nothing left to save: the bench says it, nothing sounds.
    if (state.phase == waits::Phase::Closed) continue;
    // What is open from the start needs no telling.
    if (running.wait->opens.likely > units::Duration()) add(AlertClass::Open, state.opens.likely);
    add(AlertClass::Closing, *state.closingAt);
  }
  return alerts;
}

bool bladeInHand(const JobAt& job) {
  const auto step = job.inHand();
  return step && job.state().plan->workflow.steps[*step].hands == craft::Hands::Blade;
}

AlertSchedule merge(std::vector<std::vector<ScheduledAlert>> jobs, bool blade) {
  AlertSchedule schedule;
  for (auto& alerts : jobs) {
    schedule.alerts.insert(schedule.alerts.end(), alerts.begin(), alerts.end());
  }
  std::sort(schedule.alerts.begin(), schedule.alerts.end(), [](const ScheduledAlert& a, const ScheduledAlert& b) {
    return std::tie(a.dueBoottimeNanoseconds, a.job, a.wait, a.alert) <
           std::tie(b.dueBoottimeNanoseconds, b.job, b.wait, b.alert);
  });
  schedule.bladeInHand = blade;
  return schedule;
}

}  // namespace core::record
