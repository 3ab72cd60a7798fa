#include "core/record/offers.h"

#include "core/record/alert_schedule.h"
#include "core/record/bench_place.h"
#include "core/record/made_changes.h"

namespace core::record {
namespace {

using base::Message;
using intents::Verdict;

Verdict intentVerdict(waits::Verdict verdict) {
  switch (verdict) {
    case waits::Verdict::NotYet: return Verdict::NotYet;
    case waits::Verdict::Tacky: return Verdict::Tacky;
    case waits::Verdict::PastIt: return Verdict::PastIt;
    case waits::Verdict::Dry: return Verdict::Dry;
  }
  return Verdict::NotYet;
}

void offerLooks(const JobAt& job, std::vector<Offer>& offers) {
  for (const auto& wait : job.state().waits) {
    // Names of their own: clang 14 lets no lambda take those of a structured binding.
    const auto& id = wait.first;
    const auto& run = wait.second;
    if (!job.matters(run)) continue;
    const bool window = run.wait->closes.has_value();
    if (job.doubted(run)) {
      offers.push_back({intents::LookAt{id, intentVerdict(run.looks.back().second), true},
                        Message("offer.look.sure").with("wait", run.wait->title)});
    }
    if (!window && job.waitState(run).phase == waits::Phase::Over) continue;
    const auto offer = [&](Verdict verdict) {
      offers.push_back({intents::LookAt{id, verdict},
                        Message("offer.look." + std::string(intents::name(verdict))).with("wait", run.wait->title)});
    };
    offer(Verdict::NotYet);
    offer(window ? Verdict::Tacky : Verdict::Dry);
    if (window) offer(Verdict::PastIt);
  }
}

void offerHearing(const JobAt& job, std::vector<Offer>& offers) {
  for (const ScheduledAlert& alert : alertsOf(job).alerts) {
    if (alert.dueBoottimeNanoseconds > job.now().boottimeNanoseconds) continue;
    offers.push_back({intents::Hear{alert.wait, alert.alert}, Message("offer.heard")});
    for (const int minutes : kSnoozeMinutes) {
      if (!mayBePutOff(job, alert, units::Duration::minutes(minutes))) continue;
      offers.push_back({intents::Snooze{alert.wait, alert.alert, minutes},
                        Message("offer.snooze").with("minutes", std::int64_t{minutes})});
    }
  }
}

void offerFollowing(const JobAt& job, std::vector<Offer>& offers) {
  const std::string board = boardToFollow(job.state());
  if (board.empty()) return;
  const auto offer = [&](design::Follow follow, bool reveal, std::string_view label) {
    if (!designWith(job.state(), board, follow).design) return;
    offers.push_back({intents::ChooseFollow{board, reveal}, Message(label).with("board", board)});
  };
  offer(design::Follow::Cover, false, "offer.keep-cover");
  offer(design::Follow::Reveal, true, "offer.keep-reveal");
}

void offerFaults(const JobAt& job, std::optional<std::size_t> step, std::vector<Offer>& offers) {
  if (!step) return;
  const workflow::WorkflowStep& source = job.state().plan->workflow.steps[*step];
  for (const workflow::WorkflowFault& fault : source.faults) {
    offers.push_back({intents::ReportFault{source.id, fault.id}, Message("offer.fault").with("seen", fault.seen)});
  }
}

}  // namespace

std::vector<Offer> offers(const JobAt& job) {
  std::vector<Offer> offered;
  const JobState& state = job.state();
  if (state.readOnly()) return offered;
  const BenchPlace place = benchPlace(job);
  const bool works = !state.putAway;
  if (works && place.kind == BenchPlace::Kind::Step) {
    const workflow::WorkflowStep& step = state.plan->workflow.steps[*place.step];
    intents::FinishStep finish;
    finish.step = step.id;
    offered.push_back({finish, Message("offer.done")});
    if (state.steps[*place.step].status == StepStatus::Ahead) {
      offered.push_back({intents::BeginStep{step.id}, Message("offer.begin")});
    }
  }
  if (works && place.kind == BenchPlace::Kind::Missed) {
    offered.push_back({intents::MendMissed{place.wait}, Message("offer.mend")});
    intents::FinishStep inTime;
    inTime.step = state.plan->workflow.steps[*place.step].id;
    inTime.begunInTime = true;
    offered.push_back({inTime, Message("offer.begun-in-time")});
  }
  if (works) offerFollowing(job, offered);
  offerHearing(job, offered);
  offerLooks(job, offered);
  if (!state.lastUndo.empty()) offered.push_back({intents::Undo{state.lastUndo}, Message("offer.redo")});
  if (!state.lastIntent.empty()) offered.push_back({intents::Undo{state.lastIntent}, Message("offer.undo")});
  if (!works) return offered;
  if (place.kind == BenchPlace::Kind::Step) offerFaults(job, place.step, offered);
  if (place.lastDone != place.step) offerFaults(job, place.lastDone, offered);
  return offered;
}

}  // namespace core::record
