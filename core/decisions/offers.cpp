#include "core/decisions/offers.h"

#include <algorithm>

#include "core/alerts/alert_schedule.h"
#include "core/decisions/made_changes.h"
#include "core/jobs/bench_place.h"
#include "core/jobs/touch_tests.h"

namespace core::decisions {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using base::Message;

void offerLooks(const jobs::JobAt& job, std::vector<Offer>& offers) {
  for (const intents::LookAt& doubted : jobs::doubtedLooks(job)) {
    const std::string& title = job.state().waits.at(doubted.wait).wait->title;
    offers.push_back({doubted, Message("offer.look.sure").with("wait", title)});
  }
  for (const jobs::TouchTest& test : jobs::touchTests(job)) {
    const workflow::WorkflowWait& wait = *job.state().waits.at(test.wait).wait;
    for (const intents::Verdict verdict : jobs::verdictsOf(wait)) {
      offers.push_back({intents::LookAt{test.wait, verdict},
                        Message("offer.look").with("wait", wait.title).with("answer", jobs::answerOf(wait, verdict))});
    }
  }
}

void offerHearing(const jobs::JobAt& job, std::vector<Offer>& offers) {
  for (const alerts::ScheduledAlert& alert : alerts::alertsOf(job).alerts) {
    if (alert.dueBoottimeNanoseconds > job.now().boottimeNanoseconds) continue;
    offers.push_back({intents::Hear{alert.wait, alert.alert}, Message("offer.heard")});
    for (const int minutes : alerts::kSnoozeMinutes) {
      if (!alerts::mayBePutOff(job, alert, units::Duration::minutes(minutes))) continue;
      offers.push_back({intents::Snooze{alert.wait, alert.alert, minutes},
                        Message("offer.snooze").with("minutes", std::int64_t{minutes})});
    }
  }
}

void offerFollowing(const jobs::JobAt& job, std::vector<Offer>& offers) {
  const std::string board = boardToFollow(job.state());
  if (board.empty()) return;
  const auto offer = [&](design::Follow follow, bool reveal, std::string_view label) {
    if (!designWith(job.state(), board, follow).design) return;
    offers.push_back({intents::ChooseFollow{board, reveal}, Message(label).with("board", board)});
  };
  offer(design::Follow::Cover, false, "offer.keep-cover");
  offer(design::Follow::Reveal, true, "offer.keep-reveal");
}

void offerFaults(const jobs::JobAt& job, std::size_t step, std::vector<Offer>& offers) {
  const workflow::WorkflowStep& source = job.state().plan->workflow.steps[step];
  for (const workflow::WorkflowFault& fault : source.faults) {
    if (fault.ways.empty())
      offers.push_back({intents::ReportFault{source.id, fault.id}, Message("offer.fault").with("seen", fault.seen)});
    for (const workflow::WorkflowFaultWay& way : fault.ways) {
      offers.push_back({intents::ReportFault{source.id, fault.id, way.id},
                        Message("offer.fault-way").with("seen", fault.seen).with("way", way.key)});
    }
  }
}

// The newest of what other benches have ready of the step shown, where it is not too old by its own clock.
void offerElsewhere(const jobs::JobAt& job, std::size_t index, std::vector<Offer>& offers) {
  const workflow::WorkflowStep& step = job.state().plan->workflow.steps[index];
  const jobs::PreparedElsewhere* newest = nullptr;
  for (const jobs::PreparedElsewhere& one : job.state().elsewhere) {
    if (one.step == step.id) newest = &one;
  }
  if (newest == nullptr || job.isDone(index)) return;
  const std::int64_t age = job.now().utcMilliseconds - newest->doneAt.utcMilliseconds;
  if (step.keeps && age > step.keeps->inMilliseconds()) return;
  offers.push_back({intents::AcceptPreparation{step.id, newest->deviceId}, Message("offer.use-prepared")});
}

// The whole of these steps is done, the one at the head of them first.
intents::FinishStep finishOf(const workflow::Workflow& workflow, std::size_t head,
                             const std::vector<std::size_t>& steps) {
  intents::FinishStep finish;
  finish.step = workflow.steps[head].id;
  for (const std::size_t index : steps) {
    const workflow::WorkflowStep& one = workflow.steps[index];
    finish.checked += static_cast<std::int64_t>(one.checks.size());
    if (index != head) finish.with.push_back(one.id);
  }
  return finish;
}

// Of several things worked in one act, the first alone: the act's steps up to the first of another thing.
std::vector<std::size_t> ofFirstThing(const workflow::Workflow& workflow, const std::vector<std::size_t>& steps) {
  const std::string& thing = workflow.steps[steps.front()].thing;
  const auto other =
      std::find_if(steps.begin(), steps.end(), [&](std::size_t index) { return workflow.steps[index].thing != thing; });
  return {steps.begin(), other};
}

}  // namespace

std::vector<Offer> offers(const jobs::JobAt& job) {
  std::vector<Offer> offered;
  const jobs::JobState& state = job.state();
  if (state.readOnly()) return offered;
  const jobs::BenchPlace place = jobs::benchPlace(job);
  const bool works = !state.putAway;
  if (works && place.kind == jobs::BenchPlace::Kind::Step) {
    const workflow::WorkflowStep& step = state.plan->workflow.steps[*place.step];
    const workflow::Workflow& workflow = state.plan->workflow;
    offered.push_back({finishOf(workflow, *place.step, place.steps), Message("offer.done")});
    const std::vector<std::size_t> first = ofFirstThing(workflow, place.steps);
    if (first.size() < place.steps.size()) {
      offered.push_back({finishOf(workflow, first.front(), first),
                         Message("offer.done-one").with("thing", step.thingName).with("step", step.title)});
    }
    if (first.size() > 1) {
      offered.push_back(
          {finishOf(workflow, first.front(), {first.front()}), Message("offer.done-this").with("step", step.title)});
    }
    if (state.steps[*place.step].status == jobs::StepStatus::Ahead) {
      offered.push_back({intents::BeginStep{step.id}, Message("offer.begin")});
    }
  }
  if (works && place.kind == jobs::BenchPlace::Kind::Step) offerElsewhere(job, *place.step, offered);
  if (works && place.kind == jobs::BenchPlace::Kind::Missed) {
    offered.push_back({intents::MendMissed{place.wait}, Message("offer.mend")});
    const workflow::WorkflowStep& missed = state.plan->workflow.steps[*place.step];
    intents::FinishStep inTime;
    inTime.step = missed.id;
    inTime.checked = static_cast<std::int64_t>(missed.checks.size());
    inTime.begunInTime = true;
    offered.push_back({inTime, Message("offer.begun-in-time")});
  }
  if (works) offerFollowing(job, offered);
  offerHearing(job, offered);
  offerLooks(job, offered);
  if (!state.lastUndo.empty()) offered.push_back({intents::Undo{state.lastUndo}, Message("offer.redo")});
  if (!state.lastIntent.empty()) offered.push_back({intents::Undo{state.lastIntent}, Message("offer.undo")});
  if (!works) return offered;
  for (const std::size_t step : place.steps) offerFaults(job, step, offered);
  for (const std::size_t step : jobs::doneTogether(job, place)) {
    if (std::count(place.steps.begin(), place.steps.end(), step) == 0) offerFaults(job, step, offered);
  }
  return offered;
}

}  // namespace core::decisions
