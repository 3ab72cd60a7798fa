#include "core/decisions/decide.h"

#include <algorithm>
#include <map>
#include <type_traits>

#include "core/alerts/alert_schedule.h"
#include "core/base/text.h"
#include "core/decisions/decide_beside.h"
#include "core/decisions/decide_made.h"
#include "core/jobs/dependents.h"
#include "core/jobs/wait_groups.h"
#include "core/record/happening.h"
#include "core/workflow/agenda.h"

namespace core::decisions {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using base::Message;
using Drafts = std::vector<EventDraft>;
using Decision = base::Result<Drafts, Refusal>;

// What goes on with a job. Hearing, looking and taking back stay open in one that was put away: a wait of it may
// still call, when another device began it meanwhile.
template <typename One, typename... Some>
concept AnyOf = (std::is_same_v<One, Some> || ...);

bool isWork(const intents::Intent& intent) {
  using namespace intents;
  return std::visit(
      OneOf{[](const AnyOf<BeginStep, FinishStep, ReportFault, MendMissed, EnterAsMade, ForgetAsMade, ChooseFollow,
                           AcceptPreparation> auto&) { return true; },
            [](const AnyOf<TakeIn, intents::Undo, LookAt, Hear, Snooze, AddNote, ChangeNote, RemoveNote, KeepPhotograph,
                           ChangeCaption, RemovePhotograph, LinkBatches, PutAway, BringBack> auto&) { return false; }},
      intent);
}

class Decider {
 public:
  explicit Decider(const jobs::JobAt& job) : m_job(job), m_state(job.state()), m_workflow(job.state().plan->workflow) {}

  Decision operator()(const intents::TakeIn&) const { return Message("record.already-taken-in"); }

  Decision operator()(const intents::BeginStep& intent) const {
    const auto index = m_workflow.indexOf(intent.step);
    if (!index) return noSuchStep(intent.step);
    if (m_job.isDone(*index)) return alreadyDone(*index);
    if (m_state.steps[*index].status == jobs::StepStatus::Begun)
      return Message("record.already-begun").with("step", title(*index));
    if (!m_job.canStart(*index)) return notReady(*index);
    if (const auto reason = wouldMissWindow(*index)) return *reason;
    return Drafts{draftOf(StepBegun{intent.step})};
  }

  Decision operator()(const intents::FinishStep& intent) const {
    std::vector<std::string> ids{intent.step};
    ids.insert(ids.end(), intent.with.begin(), intent.with.end());
    std::int64_t checks = 0;
    for (const std::string& id : ids) {
      const auto index = m_workflow.indexOf(id);
      if (!index) return noSuchStep(id);
      checks += static_cast<std::int64_t>(m_workflow.steps[*index].checks.size());
    }
    Drafts drafts;
    jobs::JobState after = m_state;
    for (const std::string& id : ids) {
      const jobs::JobAt at(after, m_job.shop(), m_job.now());
      const std::size_t index = *m_workflow.indexOf(id);
      const workflow::WorkflowStep& step = m_workflow.steps[index];
      if (at.isDone(index)) return alreadyDone(index);
      if (!at.canFinish(index, intent.begunInTime)) return Decider(at).notReady(index);
      if (intent.checked != checks)
        return Message("record.checks-unanswered")
            .with("step", m_workflow.steps[*m_workflow.indexOf(intent.step)].title)
            .with("count", checks);
      // A preparation belongs to the shop; having begun it is this job's own affair.
      if (after.steps[index].status != jobs::StepStatus::Begun) drafts.push_back(draftOf(StepBegun{step.id}));
      // Made ready again because what there was is too old: not a second word of the same act.
      const bool anew = after.steps[index].status == jobs::StepStatus::Done;
      drafts.push_back(
          draftOf(StepDone{step.id, {}, static_cast<std::int64_t>(step.checks.size()), intent.begunInTime, anew},
                  step.ofShop ? EventDraft::Stream::Bench : EventDraft::Stream::Job));
      if (id != ids.back()) after = jobs::withDone(after, index, m_job.now());
    }
    return drafts;
  }

  Decision operator()(const intents::AcceptPreparation& intent) const {
    const auto index = m_workflow.indexOf(intent.step);
    if (!index) return noSuchStep(intent.step);
    if (m_job.isDone(*index)) return alreadyDone(*index);
    const std::string& technique = m_workflow.steps[*index].technique;
    std::map<std::string, std::string> newest;  // the act by its step
    for (const jobs::PreparedElsewhere& one : m_state.elsewhere) {
      if (one.deviceId == intent.deviceId && m_workflow.find(one.step)->technique == technique)
        newest[one.step] = one.intentId;
    }
    if (!newest.contains(intent.step)) return Message("record.not-prepared-elsewhere").with("step", title(*index));
    std::vector<std::string> acts;
    for (const auto& [step, act] : newest) acts.push_back(act);
    return Drafts{draftOf(PreparationAccepted{intent.step, intent.deviceId, acts})};
  }

  Decision operator()(const intents::LookAt& intent) const {
    const auto run = m_state.waits.find(intent.wait);
    if (run == m_state.waits.end()) return Message("record.no-such-wait").with("wait", intent.wait);
    if (intent.sure) {
      if (!m_job.asksWhetherSo(run->second))
        return Message("record.nothing-doubted").with("wait", run->second.wait->title);
      Drafts drafts;
      for (const auto& [id, other] : m_state.waits) {
        if (!m_job.asksWhetherSo(other) || other.looks.back() != run->second.looks.back() ||
            workflow::kindOf(*other.wait) != workflow::kindOf(*run->second.wait)) {
          continue;
        }
        drafts.push_back(draftOf(Looked{other.id, other.startedBy, intent.verdict, true}));
      }
      return drafts;
    }
    if (!m_job.matters(run->second)) return Message("record.wait-over").with("wait", run->second.wait->title);
    Drafts drafts;
    for (const jobs::RunningWait* one : jobs::groupOf(m_job, run->second)) {
      drafts.push_back(draftOf(Looked{one->id, one->startedBy, intent.verdict, std::nullopt}));
    }
    // A window found open by touch is taken up at once: the gated step begins with the verdict.
    const auto gated = m_job.gatedStep(run->second);
    if (intent.verdict == intents::Verdict::Tacky && run->second.wait->closes && gated &&
        readyButFor(*gated, run->second)) {
      drafts.push_back(draftOf(StepBegun{m_workflow.steps[*gated].id}));
    }
    return drafts;
  }

  Decision operator()(const intents::Hear& intent) const {
    const auto run = m_state.waits.find(intent.wait);
    if (run == m_state.waits.end()) return Message("record.no-such-wait").with("wait", intent.wait);
    if (run->second.heard.contains(intent.alert)) return Message("record.already-heard");
    Drafts drafts;
    for (const jobs::RunningWait* one : jobs::groupOf(m_job, run->second)) {
      if (!one->heard.contains(intent.alert)) drafts.push_back(draftOf(Heard{one->id, one->startedBy, intent.alert}));
    }
    return drafts;
  }

  Decision operator()(const intents::Snooze& intent) const {
    const auto run = m_state.waits.find(intent.wait);
    if (run == m_state.waits.end()) return Message("record.no-such-wait").with("wait", intent.wait);
    const auto& alerts = alerts::alertsOf(m_job).alerts;
    const auto due = std::find_if(alerts.begin(), alerts.end(), [&](const alerts::ScheduledAlert& alert) {
      return alert.wait == intent.wait && alert.alert == intent.alert &&
             alert.dueBoottimeNanoseconds <= m_job.now().boottimeNanoseconds;
    });
    if (due == alerts.end()) return Message("record.nothing-to-put-off").with("wait", run->second.wait->title);
    const bool offered =
        std::count(std::begin(alerts::kSnoozeMinutes), std::end(alerts::kSnoozeMinutes), intent.minutes) > 0;
    if (!offered || !alerts::mayBePutOff(m_job, *due, units::Duration::minutes(intent.minutes))) {
      return Message("record.not-put-off").with("wait", run->second.wait->title);
    }
    Drafts drafts;
    for (const jobs::RunningWait* one : jobs::groupOf(m_job, run->second)) {
      drafts.push_back(draftOf(Snoozed{one->id, one->startedBy, intent.alert, intent.minutes}));
    }
    return drafts;
  }

  Decision operator()(const intents::ReportFault& intent) const {
    const workflow::WorkflowStep* step = m_workflow.find(intent.step);
    if (step == nullptr) return noSuchStep(intent.step);
    const auto fault = std::find_if(step->faults.begin(), step->faults.end(),
                                    [&](const workflow::WorkflowFault& one) { return one.id == intent.fault; });
    if (fault == step->faults.end())
      return Message("record.no-such-fault").with("step", step->title).with("fault", intent.fault);
    const bool leavesChoice = !fault->ways.empty();
    if (leavesChoice && intent.way.empty()) return Message("record.way-not-chosen").with("fault", fault->seen);
    if (!intent.way.empty() && fault->way(intent.way) == nullptr)
      return Message("record.no-such-way").with("fault", fault->seen).with("way", intent.way);
    FaultReported reported{intent.step, intent.fault, leavesChoice ? intent.way : std::string(), ""};
    const jobs::StepState& state = m_state.steps[*m_workflow.indexOf(intent.step)];
    if (state.status == jobs::StepStatus::Done) reported.of = state.intentId;
    return Drafts{draftOf(reported)};
  }

  Decision operator()(const intents::MendMissed& intent) const {
    const auto run = m_state.waits.find(intent.wait);
    if (run == m_state.waits.end() || !run->second.wait->closes) {
      return Message("record.no-such-wait").with("wait", intent.wait);
    }
    if (m_job.waitState(run->second).phase != waits::Phase::Closed || !m_job.matters(run->second)) {
      return Message("record.not-missed").with("wait", run->second.wait->title);
    }
    return Drafts{draftOf(MissedMended{run->second.id, run->second.startedBy})};
  }

  Decision operator()(const intents::EnterAsMade& intent) const { return decideMeasure(m_job, intent); }
  Decision operator()(const intents::ForgetAsMade& intent) const { return decideForget(m_job, intent); }
  Decision operator()(const intents::ChooseFollow& intent) const { return decideFollow(m_job, intent); }
  // Notes, photographs, batches.
  template <typename Beside>
  Decision operator()(const Beside& intent) const {
    return decideBeside(m_job, intent);
  }

  // A job that would still call is not put out of sight.
  Decision operator()(const intents::PutAway&) const {
    if (m_state.putAway) return Message("record.already-put-away");
    if (const auto step = m_job.inHand()) return Message("record.put-away-in-hand").with("step", title(*step));
    for (const auto& [id, run] : m_state.waits) {
      if (!m_job.matters(run) || m_job.waitState(run).phase == waits::Phase::Over) continue;
      return Message("record.put-away-waits").with("wait", run.wait->title);
    }
    return Drafts{draftOf(JobPutAway())};
  }

  Decision operator()(const intents::BringBack&) const {
    if (!m_state.putAway) return Message("record.not-put-away");
    return Drafts{draftOf(JobBroughtBack())};
  }

  Decision operator()(const intents::Undo& intent) const {
    const auto& log = m_state.log;
    const auto first = std::find_if(log.begin(), log.end(),
                                    [&](const jobs::LogLine& line) { return line.intentId == intent.intentId; });
    if (first == log.end()) return Message("record.nothing-to-undo");
    if (first->voided) return Message("record.already-undone");
    if (first->is<Undone>()) {
      if (m_state.lastUndo != intent.intentId) return Message("record.redo-too-late");
    } else if (first->is<JobTakenIn>()) {
      return Message("record.cannot-undo-taking-in");
    } else if (const std::string dependents = jobs::restingOn(m_state, intent.intentId); !dependents.empty()) {
      return Message("record.others-rest-on-it").with("steps", dependents);
    }
    return Drafts{draftOf(Undone{intent.intentId})};
  }

 private:
  const std::string& title(std::size_t index) const { return m_workflow.steps[index].title; }

  static Message noSuchStep(const std::string& step) { return Message("record.no-such-step").with("step", step); }
  Message alreadyDone(std::size_t index) const { return Message("record.already-done").with("step", title(index)); }

  // Why a step cannot be worked now, naming what is missing.
  Message notReady(std::size_t index) const {
    if (const jobs::RunningWait* window = m_job.gate(index)) {
      const auto phase = m_job.waitState(*window).phase;
      if (phase == waits::Phase::Closed) {
        return Message("record.window-closed").with("step", title(index)).with("wait", window->wait->title);
      }
      if (phase == waits::Phase::Waiting) {
        return Message("record.window-not-open").with("step", title(index)).with("wait", window->wait->title);
      }
    }
    for (const std::size_t earlier : m_workflow.steps[index].before) {
      if (!m_job.isDone(earlier)) {
        return Message("record.comes-after").with("step", title(index)).with("earlier", title(earlier));
      }
    }
    const auto missing = m_job.missing(index);
    for (const std::string& fact : missing) {
      for (const auto& [id, run] : m_state.waits) {
        if (run.wait->makes == fact) {
          return Message("record.still-waiting").with("step", title(index)).with("wait", run.wait->title);
        }
      }
    }
    return Message("record.needs").with("step", title(index)).with("facts", base::join(missing, ", "));
  }

  bool readyButFor(std::size_t index, const jobs::RunningWait& window) const {
    const auto missing = m_job.missing(index);
    const auto& before = m_workflow.steps[index].before;
    return std::all_of(before.begin(), before.end(), [&](std::size_t i) { return m_job.isDone(i); }) &&
           std::all_of(missing.begin(), missing.end(), [&](const std::string& f) { return f == window.wait->makes; });
  }

  // A step that cannot be interrupted must not be begun so late that an open window closes meanwhile.
  std::optional<Message> wouldMissWindow(std::size_t index) const {
    const workflow::WorkflowStep& step = m_workflow.steps[index];
    if (!step.uninterruptible) return std::nullopt;
    for (const auto& [id, run] : m_state.waits) {
      const auto gated = run.wait->closes ? m_job.gatedStep(run) : std::nullopt;
      if (!gated || *gated == index) continue;
      const waits::WaitState state = m_job.waitState(run);
      if (state.phase == waits::Phase::Closed) continue;
      const units::Duration left = state.closes->early - state.elapsed.time;
      if (step.work.likely <= left) continue;
      return Message("record.would-miss-window")
          .with("step", step.title)
          .with("gated", title(*gated))
          .with("wait", run.wait->title);
    }
    return std::nullopt;
  }

  const jobs::JobAt& m_job;
  const jobs::JobState& m_state;
  const workflow::Workflow& m_workflow;
};

}  // namespace

base::Result<std::vector<EventDraft>, Refusal> decide(const jobs::JobAt& job, const intents::Intent& intent) {
  if (job.state().readOnly())
    return Message("record.read-only").with("events", base::join(job.state().unknownEvents, ", "));
  if (job.state().putAway && isWork(intent)) return Message("record.put-away");
  return std::visit(Decider(job), intent);
}

EventDraft takeInDraft(const intents::TakeIn& intent) {
  return draftOf(JobTakenIn{intent.jobHash, intent.title, intent.reference, intent.techniques});
}

}  // namespace core::decisions
