#include "core/jobs/bench_place.h"

#include <algorithm>
#include <set>

#include "core/jobs/agenda.h"
#include "core/jobs/touch_tests.h"
#include "core/workflow/preparations.h"

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

// The first step in list order that can start. A preparation that would be too old when it is used is passed over, as
// long as anything else can be done or waited for.
std::optional<std::size_t> firstToStart(const JobAt& job) {
  const workflow::Workflow& workflow = job.state().plan->workflow;
  std::optional<std::vector<workflow::Lead>> leads;
  std::optional<std::size_t> early;
  for (std::size_t i = 0; i < workflow.steps.size(); ++i) {
    if (job.isDone(i) || !job.canStart(i)) continue;
    const workflow::WorkflowStep& step = workflow.steps[i];
    if (!step.ofShop || !step.keeps) return i;
    if (!leads) leads = workflow::leadsOf(agendaOf(job));
    if ((*leads)[i].notBefore <= 0) return i;
    if (!early) early = i;
  }
  const bool waits = std::any_of(job.state().waits.begin(), job.state().waits.end(),
                                 [&](const auto& entry) { return job.matters(entry.second); });
  return waits ? std::nullopt : early;
}

// The steps of an act that can be worked in one go, beginning with `first`: each is free once those before it are done.
std::vector<std::size_t> inOneGo(const JobAt& job, std::size_t first) {
  const workflow::Workflow& workflow = job.state().plan->workflow;
  const craft::Way way = job.way();
  std::vector<std::size_t> steps{first};
  std::set<std::string> made;
  const auto add = [&](std::size_t index) {
    const workflow::WorkflowStep& step = workflow.steps[index];
    made.insert(step.makes.begin(), step.makes.end());
    for (const workflow::WorkflowWait& wait : step.waits) {
      made.erase(wait.makes);
      if (wait.opens.late == units::Duration()) made.insert(wait.makes);
    }
  };
  add(first);
  for (const std::size_t index : workflow.acts(way)[workflow.actOf(way, first)].steps) {
    if (index <= first || job.isDone(index)) continue;
    const workflow::WorkflowStep& step = workflow.steps[index];
    const bool free = std::all_of(step.before.begin(), step.before.end(), [&](std::size_t earlier) {
      return job.isDone(earlier) || std::count(steps.begin(), steps.end(), earlier) > 0;
    });
    const bool ready = free && std::all_of(step.needs.begin(), step.needs.end(), [&](const std::string& fact) {
                         return made.contains(fact) || job.holds(fact);
                       });
    if (!ready) continue;
    steps.push_back(index);
    add(index);
  }
  return steps;
}

}  // namespace

std::vector<StageAt> stagesOf(const JobAt& job, const BenchStand& place) {
  const workflow::Workflow& workflow = job.state().plan->workflow;
  std::vector<StageAt> stages;
  for (const craft::Stage stage : craft::allStages()) {
    bool any = false;
    bool left = false;
    bool begun = false;
    for (std::size_t i = 0; i < workflow.steps.size(); ++i) {
      if (workflow.steps[i].stage != stage) continue;
      any = true;
      left = left || !job.isDone(i);
      begun = begun || job.isDone(i);
    }
    if (!any) continue;
    const bool dries = std::any_of(job.state().waits.begin(), job.state().waits.end(), [&](const auto& entry) {
      const RunningWait& run = entry.second;
      return run.step->stage == stage && job.matters(run) && !job.waitState(run).holds();
    });
    const bool here = place.step && workflow.steps[*place.step].stage == stage;
    const StageStanding standing = here    ? StageStanding::Now
                                   : dries ? StageStanding::Drying
                                   : !left ? StageStanding::Done
                                   : begun ? StageStanding::Begun
                                           : StageStanding::Ahead;
    stages.push_back({stage, standing});
  }
  return stages;
}

BenchPlace benchPlace(const JobAt& job) {
  const workflow::Workflow& workflow = job.state().plan->workflow;
  BenchPlace place;
  const std::vector<workflow::Act>& acts = workflow.acts(job.way());
  place.all = acts.size();
  for (const workflow::Act& act : acts) {
    if (std::all_of(act.steps.begin(), act.steps.end(), [&](std::size_t step) { return job.isDone(step); }))
      ++place.done;
  }
  for (std::size_t i = 0; i < workflow.steps.size(); ++i) {
    if (!job.isDone(i)) continue;
    ++place.stepsDone;
    // By the order of the acts: the wall clock may have gone back between them.
    const auto& steps = job.state().steps;
    if (!place.lastDone || steps[*place.lastDone].act <= steps[i].act) place.lastDone = i;
  }
  if (place.lastDone) place.lastDoneAt = job.state().steps[*place.lastDone].doneAt;
  const auto show = [&](std::size_t step) {
    place.kind = BenchPlace::Kind::Step;
    place.step = step;
    place.steps = inOneGo(job, step);
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
  if (const auto first = firstToStart(job)) return show(*first);
  place.wait = firstToTest(job);
  place.kind = place.wait.empty() ? BenchPlace::Kind::Stuck : BenchPlace::Kind::Waiting;
  return place;
}

std::vector<std::size_t> doneTogether(const JobAt& job, const BenchPlace& place) {
  std::vector<std::size_t> steps;
  if (!place.lastDone) return steps;
  const auto& states = job.state().steps;
  for (std::size_t i = 0; i < states.size(); ++i) {
    if (job.isDone(i) && states[i].intentId == states[*place.lastDone].intentId) steps.push_back(i);
  }
  return steps;
}

// Uses the times learned so far: the act itself teaches something only once it is recorded.
std::optional<BenchStand> standAfter(const JobAt& job, const BenchStand& here) {
  if (here.kind != BenchStand::Kind::Step || !here.step) return std::nullopt;
  JobState after = job.state();
  for (const std::size_t step : here.steps) after = withDone(after, step, job.now());
  return benchPlace(JobAt(after, job.shop(), job.now(), job.way()));
}

}  // namespace core::jobs
