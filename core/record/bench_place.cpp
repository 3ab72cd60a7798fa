#include "core/record/bench_place.h"

namespace core::record {
namespace {

// The open window that closes soonest and gates a step that can start; the missed one otherwise.
struct Windows {
  std::optional<std::size_t> open;
  std::string missed;
  std::optional<std::size_t> missedStep;
};

Windows windowsOf(const JobAt& job) {
  Windows windows;
  units::Duration soonest;
  for (const auto& [id, run] : job.state().waits) {
    if (!run.wait->closes) continue;
    const auto gated = job.gatedStep(run);
    if (!gated) continue;
    const waits::WaitState state = job.waitState(run);
    if (state.phase == waits::Phase::Closed) {
      if (windows.missed.empty()) {
        windows.missed = id;
        windows.missedStep = gated;
      }
    } else if (state.holds() && job.canStart(*gated)) {
      const units::Duration left = state.closes->likely - state.elapsed.time;
      if (!windows.open || left < soonest) {
        windows.open = gated;
        soonest = left;
      }
    }
  }
  return windows;
}

// The wait that opens first among those something still needs.
std::string firstToOpen(const JobAt& job) {
  std::string first;
  units::Duration soonest;
  for (const auto& [id, run] : job.state().waits) {
    if (!job.matters(run)) continue;
    const waits::WaitState state = job.waitState(run);
    if (state.phase != waits::Phase::Waiting) continue;
    const units::Duration left = state.opens.likely - state.elapsed.time;
    if (first.empty() || left < soonest) {
      first = id;
      soonest = left;
    }
  }
  return first;
}

}  // namespace

BenchPlace benchPlace(const JobAt& job) {
  const workflow::Workflow& workflow = job.state().plan->workflow;
  BenchPlace place;
  place.all = workflow.steps.size();
  std::optional<std::size_t> firstStart;
  for (std::size_t i = 0; i < workflow.steps.size(); ++i) {
    if (!job.isDone(i)) {
      if (!firstStart && job.canStart(i)) firstStart = i;
      continue;
    }
    ++place.done;
    // By the order of the acts: the wall clock may have gone back between them.
    const auto& steps = job.state().steps;
    if (!place.lastDone || steps[*place.lastDone].act <= steps[i].act) place.lastDone = i;
  }
  if (place.lastDone) place.lastDoneAt = job.state().steps[*place.lastDone].doneAt;
  const auto show = [&](std::size_t step) {
    place.kind = BenchPlace::Kind::Step;
    place.step = step;
    for (std::size_t i = 0; i < workflow.steps.size() && !place.next; ++i) {
      if (i != step && !job.isDone(i) && (i > step || job.canStart(i))) place.next = i;
    }
    return place;
  };

  if (place.done == place.all) {
    place.kind = BenchPlace::Kind::Finished;
    return place;
  }
  if (const auto inHand = job.inHand()) return show(*inHand);
  const Windows windows = windowsOf(job);
  if (windows.open) return show(*windows.open);
  if (windows.missedStep) {
    place.kind = BenchPlace::Kind::Missed;
    place.step = windows.missedStep;
    place.wait = windows.missed;
    return place;
  }
  if (firstStart) return show(*firstStart);
  place.wait = firstToOpen(job);
  place.kind = place.wait.empty() ? BenchPlace::Kind::Stuck : BenchPlace::Kind::Waiting;
  return place;
}

}  // namespace core::record
