#include "core/jobs/bench_place.h"

#include "core/jobs/touch_tests.h"

namespace core::jobs {

// This file uses the types of the record throughout.
using namespace record;
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

// The wait that is due to be tested first, where something waits at all: what is likely ready already is asked for
// before what still takes its time. What was found by touch or has closed asks for nothing more.
std::string firstToTest(const JobAt& job) {
  std::string first;
  bool something = false;
  for (const TouchTest& test : touchTests(job)) {
    const waits::Phase phase = job.waitState(job.state().waits.at(test.wait)).phase;
    something = something || phase == waits::Phase::Waiting;
    if (first.empty() && !test.found && phase != waits::Phase::Closed) first = test.wait;
  }
  return something ? first : std::string();
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
  place.wait = firstToTest(job);
  place.kind = place.wait.empty() ? BenchPlace::Kind::Stuck : BenchPlace::Kind::Waiting;
  return place;
}

// Uses the times learned so far: the act itself teaches something only once it is recorded.
std::optional<BenchStand> standAfter(const JobAt& job, const BenchStand& here) {
  if (here.kind != BenchStand::Kind::Step || !here.step) return std::nullopt;
  const JobState after = withDone(job.state(), *here.step, job.now());
  return benchPlace(JobAt(after, job.shop(), job.now()));
}

}  // namespace core::jobs
