#include "core/jobs/meanwhile.h"

#include <algorithm>
#include <tuple>

#include "core/jobs/touch_tests.h"
#include "core/waits/telling.h"

namespace core::jobs {
namespace {

using units::Duration;
using waits::Telling;

waits::Told toldOf(const JobAt& job, const RunningWait& run) {
  return waits::tell(termsOf(job.state(), run, job.shop().clockLog), job.waitState(run));
}

// Until the wait asks for the maker; nothing where it never does. What may be due by now is due.
std::optional<Duration> callOf(const JobAt& job, const RunningWait& run) {
  const waits::Told told = toldOf(job, run);
  switch (told.telling) {
    case Telling::FirstTest:
    case Telling::WideTest:
    case Telling::TestAgain:
    case Telling::TackAhead: return told.early - told.passed;
    case Telling::TestNow:
    case Telling::TackNow:
    case Telling::MayClose:
    case Telling::About: return Duration();
    case Telling::TackOpen:
    case Telling::PasteOpen:
    case Telling::LastMinutes: return told.closes->early - told.passed;
    // Nothing is predicted: the stated time is all there is to keep clear of.
    case Telling::ByTouch: return told.early - told.passed;
    case Telling::Ready:
    case Telling::LikelyClosed:
    case Telling::PastIt: break;
  }
  return std::nullopt;
}

Duration longest(const JobAt& job, const std::vector<std::size_t>& steps) {
  Duration all;
  for (const std::size_t step : steps) {
    Duration work = job.state().plan->workflow.steps[step].work.late;
    const StepState& state = job.state().steps[step];
    if (state.status == StepStatus::Begun) {
      work = std::max(Duration(), work - waits::elapsedBetween(state.begunAt, job.now(), job.shop().clockLog).time);
    }
    all = all + work;
  }
  return all;
}

bool isGated(const JobAt& job, const std::vector<std::size_t>& steps) {
  return std::any_of(steps.begin(), steps.end(), [&](std::size_t step) { return job.gate(step) != nullptr; });
}

}  // namespace

std::optional<Duration> freeUntilTest(const std::vector<JobAt>& jobs, std::optional<std::size_t> but,
                                      const std::vector<std::size_t>& steps) {
  std::optional<Duration> soonest;
  for (std::size_t i = 0; i < jobs.size(); ++i) {
    for (const TouchTest& test : touchTests(jobs[i])) {
      const RunningWait& run = jobs[i].state().waits.at(test.wait);
      const auto gated = jobs[i].gatedStep(run);
      const bool toWork = but == i && gated && std::count(steps.begin(), steps.end(), *gated) > 0;
      if (toWork && toldOf(jobs[i], run).found) continue;
      const std::optional<Duration> call = callOf(jobs[i], run);
      if (call && (!soonest || *call < *soonest)) soonest = std::max(*call, Duration());
    }
  }
  return soonest;
}

std::optional<Meanwhile> meanwhile(const std::vector<JobAt>& jobs, std::size_t waiting) {
  if (benchPlace(jobs[waiting]).kind != BenchStand::Kind::Waiting) return std::nullopt;
  std::optional<Meanwhile> best;
  const auto key = [&](const Meanwhile& one) {
    const JobAt& job = jobs[one.job];
    const std::string& due = job.state().plan->design.job.due;
    // What has no day is due last.
    return std::tuple(!job.inHand(), !isGated(job, one.place.steps), due.empty(), due, Duration() - one.work);
  };
  for (std::size_t i = 0; i < jobs.size(); ++i) {
    const JobState& state = jobs[i].state();
    if (i == waiting || state.putAway || state.readOnly()) continue;
    Meanwhile one{i, benchPlace(jobs[i]), {}};
    if (one.place.kind != BenchStand::Kind::Step) continue;
    one.work = longest(jobs[i], one.place.steps);
    const auto free = freeUntilTest(jobs, i, one.place.steps);
    if (free && one.work > *free) continue;
    if (!best || key(one) < key(*best)) best = std::move(one);
  }
  return best;
}

}  // namespace core::jobs
