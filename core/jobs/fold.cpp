#include <algorithm>

#include "core/jobs/job_state.h"
#include "core/record/counting.h"
#include "core/record/happening.h"

namespace core::jobs {

// This file uses the types of the record throughout.
using namespace record;
namespace {

// The snoozes that decide allows are far shorter.
constexpr std::int64_t kLongestSnooze = 60;

// The step, the wait or the board an event is about; "" for none.
struct AboutOf {
  template <typename One>
  std::string operator()(const One& one) const {
    if constexpr (requires { one.wait; })
      return one.wait;
    else if constexpr (requires { one.step; })
      return one.step;
    else if constexpr (requires { one.board; })
      return one.board;
    else
      return "";
  }
};

class Folder {
 public:
  Folder(JobState& state, const Counting& counting)
      : m_state(state), m_workflow(state.plan->workflow), m_counting(counting) {
    m_state.steps.resize(m_workflow.steps.size());
  }

  void apply(const Event& event, const std::shared_ptr<const Happening>& happening) {
    const bool mine = event.stream == "job/" + m_state.plan->id;
    const Traits& traits = traitsOf(*happening);
    if ((traits.streams & kOfJob) == 0) {
      // An unknown event of the shop does not touch this job; an unknown event of the job does.
      if (mine) m_state.unknownEvents.push_back(event.type + '/' + std::to_string(event.version));
      return;
    }
    const bool live = !m_state.voidedIntents.contains(event.intentId);
    const std::string about = std::visit(AboutOf(), *happening);
    const auto* undone = std::get_if<Undone>(happening.get());
    // Only the preparations in a bench's stream concern this job, never its other work.
    if (!mine && undone == nullptr && !isOfShop(about)) return;
    const auto* done = std::get_if<StepDone>(happening.get());
    const bool again = live && done != nullptr && isRepeated(event, *done);
    if (again) m_state.repeated.insert(event.eventId);
    if (mine || undone == nullptr) {
      m_state.log.push_back({event.intentId, happening, about, event.clock(), !live, again});
      if (live && traits.undo == Undo::Possible && !again) {
        m_state.lastIntent = event.intentId;
        m_state.lastUndo.clear();
      }
      if (live && undone != nullptr) noteUndo(event, *undone);
    }
    if (undone != nullptr) m_undos.insert(event.intentId);
    if (!live || again) return;
    ++m_act;
    std::visit([&](const auto& one) { on(event, one); }, *happening);
  }

  void on(const Event& event, const StepDone& done) {
    const auto index = m_workflow.indexOf(done.step);
    if (!index) return;
    const workflow::WorkflowStep& source = m_workflow.steps[*index];
    StepState& step = m_state.steps[*index];
    step.status = StepStatus::Done;
    step.doneAt = event.clock();
    step.intentId = event.intentId;
    step.deviceId = event.deviceId;
    step.act = m_act;
    // A step done again may have been worked with other batches or the same, but no event records which.
    m_state.beside.batches.erase(done.step);
    takeOverMeasures(source);
    for (const std::string& fact : source.ends) endFact(fact);
    for (const std::string& fact : source.makes) m_state.facts[fact] = true;
    for (const workflow::WorkflowWait& wait : source.waits) {
      m_state.facts.erase(wait.makes);
      lay(wait.id);
      RunningWait run;
      run.id = wait.id;
      run.step = &source;
      run.wait = &wait;
      run.started = event.clock();
      run.startedBy = event.intentId;
      m_state.waits[wait.id] = std::move(run);
    }
  }

 private:
  // An undo of an undo is a redo, after which there is nothing to redo.
  void noteUndo(const Event& event, const Undone& undone) {
    const bool isRedo = m_undos.contains(undone.intent);
    m_state.lastUndo = isRedo ? std::string() : event.intentId;
  }

  bool isOfShop(const std::string& stepId) const {
    const workflow::WorkflowStep* step = m_workflow.find(stepId);
    return step != nullptr && step->ofShop;
  }

  // Returns whether a step that is reported done was done already, so that this report is a repetition. A preparation
  // made again is none where the same bench made it, where the old one was too old, and where the maker took another
  // bench's into use.
  bool isRepeated(const Event& event, const StepDone& done) const {
    const auto index = m_workflow.indexOf(done.step);
    if (!index || m_state.steps[*index].status != StepStatus::Done) return false;
    const workflow::WorkflowStep& source = m_workflow.steps[*index];
    const StepState& step = m_state.steps[*index];
    if (!source.ofShop) return true;
    const bool wasTooOld =
        source.keeps && event.clock().utcMilliseconds - step.doneAt.utcMilliseconds > source.keeps->inMilliseconds();
    return step.deviceId != event.deviceId && !done.anew && !wasTooOld && !m_counting.accepted(event.intentId);
  }

  // These events do not move a job's work: undos are in `voidedIntents`, notes and photographs are folded in
  // beside_work.h, and the techniques of the plan are chosen before it is folded.
  template <typename One>
  requires(!One::kTraits.work) void on(const Event&, const One&) {}

  void on(const Event& event, const StepBegun& begun) {
    const auto index = m_workflow.indexOf(begun.step);
    if (!index) return;
    StepState& step = m_state.steps[*index];
    if (step.status != StepStatus::Ahead) return;
    step.status = StepStatus::Begun;
    step.begunAt = event.clock();
    step.intentId = event.intentId;
    step.act = m_act;
  }

  // Ends a run; what was found of it by touch stays for learning.
  void lay(const std::string& waitId) {
    const auto run = m_state.waits.find(waitId);
    if (run == m_state.waits.end()) return;
    if (!run->second.looks.empty()) m_state.earlierWaits.push_back(std::move(run->second));
    m_state.waits.erase(run);
  }

  void endFact(const std::string& fact) {
    m_state.facts[fact] = false;
    std::vector<std::string> ended;
    for (const auto& [id, run] : m_state.waits) {
      if (run.wait->makes == fact) ended.push_back(id);
    }
    for (const std::string& id : ended) lay(id);
  }

  // Ends facts and brings back every step that makes them.
  void endAndBringBack(const std::vector<std::string>& facts, const std::string& intentId) {
    for (const std::string& fact : facts) {
      endFact(fact);
      for (const std::size_t maker : m_workflow.making(fact)) {
        m_state.steps[maker] = StepState();
        m_state.steps[maker].intentId = intentId;
        forgetMeasuredAt(m_workflow.steps[maker].id);
        m_state.beside.batches.erase(m_workflow.steps[maker].id);
      }
    }
  }

  // The run an event is about. What a device says of a run that is over by then is no word of the one begun since:
  // null. Older events do not say which run they are about, and are about the one that is there.
  RunningWait* runOf(const auto& said) {
    const auto run = m_state.waits.find(said.wait);
    if (run == m_state.waits.end() || !isOf(said.of, run->second.startedBy)) return nullptr;
    return &run->second;
  }

  static bool isOf(const std::string& of, const std::string& act) { return of.empty() || of == act; }

  static waits::Verdict found(intents::Verdict verdict) {
    switch (verdict) {
      case intents::Verdict::NotYet: return waits::Verdict::NotYet;
      case intents::Verdict::Tacky: return waits::Verdict::Tacky;
      case intents::Verdict::PastIt: return waits::Verdict::PastIt;
      case intents::Verdict::Dry: return waits::Verdict::Dry;
    }
    return waits::Verdict::NotYet;
  }

  void on(const Event& event, const Looked& looked) {
    RunningWait* run = runOf(looked);
    if (run == nullptr) return;
    run->sure = looked.sure.value_or(false);
    if (looked.sure) return;
    run->looks.emplace_back(event.clock(), found(looked.verdict));
    // The opening moved, so its alert will be a new one.
    if (looked.verdict == intents::Verdict::NotYet) {
      run->heard.clear();
      run->snoozed.clear();
    }
  }

  void on(const Event&, const Heard& heard) {
    RunningWait* run = runOf(heard);
    if (run != nullptr && heard.alert) run->heard.insert(*heard.alert);
  }

  void on(const Event& event, const Snoozed& snoozed) {
    RunningWait* run = runOf(snoozed);
    if (run == nullptr || !snoozed.alert || !snoozed.minutes) return;
    if (*snoozed.minutes < 0 || *snoozed.minutes > kLongestSnooze) return;
    run->snoozed[*snoozed.alert] = {event.clock(), units::Duration::minutes(*snoozed.minutes)};
  }

  // Where the fault leaves a choice and the event names no way, it is not known that anything was done over.
  void on(const Event& event, const FaultReported& reported) {
    const auto index = m_workflow.indexOf(reported.step);
    if (!index) return;
    // The step was done again since: the fault was seen on work that no longer exists.
    const StepState& step = m_state.steps[*index];
    if (step.status == StepStatus::Done && !isOf(reported.of, step.intentId)) return;
    for (const workflow::WorkflowFault& entry : m_workflow.steps[*index].faults) {
      if (entry.id != reported.fault) continue;
      const workflow::WorkflowFaultWay* way = entry.way(reported.way);
      endAndBringBack(way != nullptr ? way->ends : entry.ends, event.intentId);
    }
  }

  void on(const Event& event, const Measured& measured) {
    const std::string& figure = measured.figure;
    const auto nanometres = measured.nanometres;
    if (!nanometres || *nanometres <= 0 || *nanometres > units::kLongestLength.inNanometres()) return;
    if (!design::isPinnable(figure) || m_state.plan->design.figures.find(figure) == nullptr) return;
    if (!measured.overrules.empty()) forgetMeasure(measured.overrules);
    std::vector<MadeMeasure>& found = m_measuredAt[figure];
    std::erase_if(found, [&](const MadeMeasure& one) { return one.step == measured.step; });
    found.push_back({units::Length::nanometres(*nanometres), measured.step, event.intentId});
    settleMeasure(figure);
  }

  // The latest measure is valid.
  void settleMeasure(const std::string& figure) {
    const std::vector<MadeMeasure>& found = m_measuredAt[figure];
    if (found.empty()) {
      m_state.measures.erase(figure);
    } else {
      m_state.measures[figure] = found.back();
    }
  }

  void on(const Event&, const MeasureForgotten& forgotten) { forgetMeasure(forgotten.figure); }

  void forgetMeasure(const std::string& figure) {
    m_measuredAt.erase(figure);
    m_state.measures.erase(figure);
  }

  // A piece made to a size that was measured on another piece has that size as well: if the other piece has to be made
  // anew, it is made to fit this one.
  void takeOverMeasures(const workflow::WorkflowStep& step) {
    for (const std::string& figure : step.asMade) {
      const auto found = m_measuredAt.find(figure);
      if (found == m_measuredAt.end() || found->second.empty()) continue;
      std::vector<MadeMeasure>& measures = found->second;
      const bool own =
          std::any_of(measures.begin(), measures.end(), [&](const MadeMeasure& one) { return one.step == step.id; });
      if (own) continue;
      MadeMeasure taken = measures.back();
      taken.step = step.id;
      measures.insert(measures.end() - 1, std::move(taken));
    }
  }

  void on(const Event&, const BatchesLinked& linked) {
    const auto index = m_workflow.indexOf(linked.step);
    const auto batches = linkedBatches(linked);
    if (!index || !batches || m_state.steps[*index].status != StepStatus::Done) return;
    m_state.beside.batches[linked.step] = *batches;
    if (batches->empty()) m_state.beside.batches.erase(linked.step);
  }

  void on(const Event&, const FollowChosen& chosen) {
    if (chosen.keep) m_state.follows[chosen.board] = *chosen.keep;
  }

  void on(const Event&, const JobPutAway&) { m_state.putAway = true; }
  void on(const Event&, const JobBroughtBack&) { m_state.putAway = false; }

  // A step that is done again measures another piece.
  void forgetMeasuredAt(const std::string& stepId) {
    for (auto& [figure, found] : m_measuredAt) {
      if (std::erase_if(found, [&](const MadeMeasure& one) { return one.step == stepId; }) > 0) settleMeasure(figure);
    }
  }

  void on(const Event& event, const MissedMended& mended) {
    const auto found = m_workflow.findWait(mended.wait);
    if (found.wait == nullptr) return;
    if (!mended.of.empty() && runOf(mended) == nullptr) return;
    lay(mended.wait);
    endAndBringBack(found.wait->missedEnds, event.intentId);
  }

  JobState& m_state;
  const workflow::Workflow& m_workflow;
  const Counting& m_counting;
  std::set<std::string> m_undos;
  // By figure, the newest last; one for each step it was measured at.
  std::map<std::string, std::vector<MadeMeasure>> m_measuredAt;
  std::size_t m_act = 0;
};

// Returns the preparations this job needs that benches which have not worked it made and did not take back. Requires
// fold order.
std::vector<PreparedElsewhere> preparedElsewhere(const workflow::Workflow& workflow, const Counting& counting,
                                                 const std::vector<Event>& bench) {
  std::map<std::string, std::vector<Event>> others;  // by device
  for (const Event& event : bench) {
    if (touchesJobs(event) && !counting.counts(event)) others[event.deviceId].push_back(event);
  }
  std::set<std::string> takenBack;  // event ids
  for (const auto& [device, events] : others) {
    const std::set<std::string> voided = voidedIntents(events);
    for (const Event& event : events) {
      if (voided.contains(event.intentId)) takenBack.insert(event.eventId);
    }
  }
  std::vector<PreparedElsewhere> found;
  for (const Event& event : bench) {
    const auto done = counting.counts(event) ? std::nullopt : as<StepDone>(event);
    if (!done) continue;
    const workflow::WorkflowStep* step = workflow.find(done->step);
    if (step == nullptr || !step->ofShop || takenBack.contains(event.eventId)) continue;
    found.push_back({step->id, event.deviceId, event.intentId, event.clock()});
  }
  return found;
}

void settleDesign(JobState& state) {
  state.design = {state.plan, &state.plan->design};
  const design::AsMade made = state.made();
  if (made.empty()) return;
  design::ReadDesign read = design::remeasured(state.plan->design, made);
  if (read.design) {
    state.design = std::make_shared<const design::Design>(std::move(*read.design));
    return;
  }
  for (const base::Problem& problem : read.problems.sorted()) {
    if (problem.severity == base::Severity::Error && state.unmeasurable.id.empty())
      state.unmeasurable = problem.message;
  }
}

}  // namespace

JobState withDone(const JobState& state, std::size_t step, const waits::ClockReading& at) {
  JobState after = state;
  Event done;
  done.occurredUtc = at.utcMilliseconds;
  done.bootId = at.bootId;
  done.boottimeNanoseconds = at.boottimeNanoseconds;
  done.synced = at.synced;
  const Counting counting({});
  Folder(after, counting).on(done, StepDone{after.plan->workflow.steps[step].id, {}, false, false});
  return after;
}

JobState fold(std::shared_ptr<const JobPlan> plan, std::vector<Event> events) {
  arrange(events);
  JobState state;
  state.plan = std::move(plan);
  const std::string stream = "job/" + state.plan->id;
  std::vector<Event> own;
  std::vector<Event> bench;
  for (Event& event : events) (event.stream == stream ? own : bench).push_back(std::move(event));
  const Counting counting(own);
  state.elsewhere = preparedElsewhere(state.plan->workflow, counting, bench);
  events = counting.of(bench);
  events.insert(events.end(), own.begin(), own.end());
  arrange(events);
  state.voidedIntents = voidedIntents(events);
  Folder folder(state, counting);
  std::vector<ReadEvent> ofJob;
  for (const Event& event : events) {
    const auto what = std::make_shared<const Happening>(happeningOf(event));
    folder.apply(event, what);
    if (event.stream == stream) ofJob.push_back({&event, what});
  }
  foldBeside(state.beside, ofJob, state.voidedIntents);
  settleDesign(state);
  return state;
}

}  // namespace core::jobs
