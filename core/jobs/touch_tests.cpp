#include "core/jobs/touch_tests.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "core/jobs/wait_groups.h"
#include "core/workflow/agenda.h"

namespace core::jobs {

// This file uses the types of the record throughout.
using namespace record;

using intents::Verdict;

namespace {

Verdict intentVerdict(waits::Verdict verdict) {
  switch (verdict) {
    case waits::Verdict::NotYet: return Verdict::NotYet;
    case waits::Verdict::Tacky: return Verdict::Tacky;
    case waits::Verdict::PastIt: return Verdict::PastIt;
    case waits::Verdict::Dry: return Verdict::Dry;
  }
  return Verdict::NotYet;
}

}  // namespace

bool comesFirst(const TouchTest& a, const TouchTest& b) {
  const auto key = [](const TouchTest& test) { return std::tuple(test.found, !test.windowOpen, test.left); };
  return key(a) < key(b);
}

std::optional<TouchTest> touchTestOf(const JobAt& job, const RunningWait& run) {
  if (!job.matters(run)) return std::nullopt;
  const waits::WaitState state = job.waitState(run);
  if (!state.closes && state.phase == waits::Phase::Over) return std::nullopt;
  TouchTest test;
  test.wait = run.id;
  test.found = state.foundByTouch;
  test.windowOpen = state.closes && state.holds();
  const units::Duration due = test.windowOpen ? state.closes->likely
                              : state.byTouch ? state.opens.likely
                                              : state.lookAt;
  test.left = due - state.elapsed.time;
  return test;
}

std::vector<TouchTest> touchTests(const JobAt& job) {
  std::vector<TouchTest> tests;
  for (const WaitGroup& group : waitGroups(job)) {
    if (auto test = touchTestOf(job, *group.back())) tests.push_back(*std::move(test));
  }
  std::stable_sort(tests.begin(), tests.end(), comesFirst);
  return tests;
}

std::vector<intents::LookAt> doubtedLooks(const JobAt& job) {
  // Waits answered by one touch test are doubted as one: by the one that spoke for them.
  std::map<std::tuple<std::string, std::int64_t, waits::Verdict>, const RunningWait*> byTest;
  for (const auto& [id, run] : job.state().waits) {
    if (!job.asksWhetherSo(run)) continue;
    const auto& [at, verdict] = run.looks.back();
    const RunningWait*& spoke = byTest[{workflow::kindOf(*run.wait).name, at.utcMilliseconds, verdict}];
    if (spoke == nullptr || spoke->started.utcMilliseconds <= run.started.utcMilliseconds) spoke = &run;
  }
  std::vector<intents::LookAt> doubted;
  for (const auto& [test, run] : byTest) {
    doubted.push_back({run->id, intentVerdict(run->looks.back().second), true});
  }
  return doubted;
}

std::vector<Verdict> verdictsOf(const workflow::WorkflowWait& wait) {
  std::vector<Verdict> verdicts;
  if (wait.opens.late > units::Duration()) verdicts.push_back(Verdict::NotYet);
  verdicts.push_back(foundOf(wait));
  if (wait.closes) verdicts.push_back(Verdict::PastIt);
  return verdicts;
}

Verdict foundOf(const workflow::WorkflowWait& wait) { return wait.closes ? Verdict::Tacky : Verdict::Dry; }

const std::string& answerOf(const workflow::WorkflowWait& wait, Verdict verdict) {
  switch (verdict) {
    case Verdict::NotYet: return wait.answers.notYet;
    case Verdict::PastIt: return wait.answers.pastIt;
    case Verdict::Tacky:
    case Verdict::Dry: break;
  }
  return wait.answers.found;
}

}  // namespace core::jobs
