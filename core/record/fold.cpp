#include <algorithm>

#include "core/record/counting.h"
#include "core/record/job_state.h"

namespace core::record {
namespace {

using intents::AlertClass;

bool isKnown(const Event& event) {
  if (event.version != 1) return false;
  const std::string_view known[] = {type::kJobTakenIn,
                                    type::kStepBegun,
                                    type::kStepDone,
                                    type::kUndone,
                                    type::kLooked,
                                    type::kHeard,
                                    type::kSnoozed,
                                    type::kFaultReported,
                                    type::kMissedMended,
                                    type::kMeasured,
                                    type::kMeasureForgotten,
                                    type::kFollowChosen,
                                    type::kNoteAdded,
                                    type::kNoteChanged,
                                    type::kNoteRemoved,
                                    type::kPhotographKept,
                                    type::kPhotographCaptioned,
                                    type::kPhotographRemoved,
                                    type::kBatchesLinked,
                                    type::kJobPutAway,
                                    type::kJobBroughtBack,
                                    type::kTechniquesRenewed,
                                    type::kPreparationAccepted};
  return std::find(std::begin(known), std::end(known), event.type) != std::end(known);
}

// What decide lets through is far below it.
constexpr std::int64_t kLongestSnooze = 60;

// Acts of the maker that can be taken back; being heard or having begun is no act of its own.
bool isAct(const Event& event) {
  return event.type == type::kStepDone || event.type == type::kLooked || event.type == type::kFaultReported ||
         event.type == type::kMissedMended || event.type == type::kMeasured || event.type == type::kMeasureForgotten ||
         event.type == type::kFollowChosen || event.type == type::kNoteAdded || event.type == type::kNoteChanged ||
         event.type == type::kNoteRemoved || event.type == type::kPhotographKept ||
         event.type == type::kPhotographCaptioned || event.type == type::kPhotographRemoved ||
         event.type == type::kBatchesLinked || event.type == type::kJobPutAway || event.type == type::kJobBroughtBack ||
         event.type == type::kTechniquesRenewed || event.type == type::kPreparationAccepted;
}

class Folder {
 public:
  Folder(JobState& state, const Counting& counting)
      : m_state(state), m_workflow(state.plan->workflow), m_counting(counting) {
    m_state.steps.resize(m_workflow.steps.size());
  }

  void apply(const Event& event) {
    const bool mine = event.stream == "job/" + m_state.plan->id;
    if (!isKnown(event)) {
      // What another program wrote of the shop does not touch this job; what it wrote of the job does.
      if (mine) m_state.unknownEvents.push_back(event.type + '/' + std::to_string(event.version));
      return;
    }
    const bool live = !m_state.voidedIntents.contains(event.intentId);
    const char* subject = event.payload.find("wait") != nullptr ? "wait" : "step";
    const std::string about = textOf(event.payload, event.type == type::kFollowChosen ? "board" : subject);
    // Of a bench's stream only its preparations are this job's, never its other work.
    if (!mine && event.type != type::kUndone && !isOfShop(about)) return;
    const bool again = live && event.type == type::kStepDone && isRepeated(event, about);
    if (again) m_state.repeated.insert(event.eventId);
    if (mine || event.type != type::kUndone) {
      m_state.log.push_back(
          {event.intentId, event.type, about, event.clock(), !live, textOf(event.payload, "figure"), again});
      if (live && isAct(event) && !again) {
        m_state.lastIntent = event.intentId;
        m_state.lastUndo.clear();
      }
      if (live && event.type == type::kUndone) noteUndo(event);
    }
    if (event.type == type::kUndone) m_undos.insert(event.intentId);
    if (!live || again) return;
    ++m_act;
    if (event.type == type::kStepBegun) begin(event, about);
    if (event.type == type::kStepDone) finish(event, about);
    if (event.type == type::kLooked) look(event, about);
    if (event.type == type::kHeard) hear(event, about);
    if (event.type == type::kSnoozed) snooze(event, about);
    if (event.type == type::kFaultReported) fault(event, about);
    if (event.type == type::kMissedMended) mend(event, about);
    if (event.type == type::kMeasured) measure(event, about);
    if (event.type == type::kMeasureForgotten) forgetMeasure(textOf(event.payload, "figure"));
    if (event.type == type::kFollowChosen) follow(about, textOf(event.payload, "keep"));
    if (event.type == type::kBatchesLinked) link(event, about);
    if (!mine) return;
    if (event.type == type::kJobPutAway) m_state.putAway = true;
    if (event.type == type::kJobBroughtBack) m_state.putAway = false;
  }

  void finish(const Event& event, const std::string& stepId) {
    const auto index = m_workflow.indexOf(stepId);
    if (!index) return;
    const workflow::WorkflowStep& source = m_workflow.steps[*index];
    StepState& step = m_state.steps[*index];
    step.status = StepStatus::Done;
    step.doneAt = event.clock();
    step.intentId = event.intentId;
    step.deviceId = event.deviceId;
    step.act = m_act;
    // Done again it was worked with other batches, or with the same, but nobody has said so.
    m_state.beside.batches.erase(stepId);
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
  void noteUndo(const Event& event) {
    const bool isRedo = m_undos.contains(textOf(event.payload, "intent"));
    m_state.lastUndo = isRedo ? std::string() : event.intentId;
  }

  bool isOfShop(const std::string& stepId) const {
    const workflow::WorkflowStep* step = m_workflow.find(stepId);
    return step != nullptr && step->ofShop;
  }

  // Whether a step that is said to be done was done before, and this word of it is one too many. A preparation is made
  // anew: by the bench that made it, when it was too old, and where the maker takes another bench's into use.
  bool isRepeated(const Event& event, const std::string& stepId) const {
    const auto index = m_workflow.indexOf(stepId);
    if (!index || m_state.steps[*index].status != StepStatus::Done) return false;
    const workflow::WorkflowStep& source = m_workflow.steps[*index];
    const StepState& step = m_state.steps[*index];
    if (!source.ofShop) return true;
    const base::Value* anew = event.payload.find("anew");
    const bool saysAnew = anew != nullptr && anew->kind() == base::Value::Kind::Boolean && anew->asBoolean();
    const bool wasTooOld =
        source.keeps && event.clock().utcMilliseconds - step.doneAt.utcMilliseconds > source.keeps->inMilliseconds();
    return step.deviceId != event.deviceId && !saysAnew && !wasTooOld && !m_counting.accepted(event.intentId);
  }

  void begin(const Event& event, const std::string& stepId) {
    const auto index = m_workflow.indexOf(stepId);
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
  RunningWait* runOf(const Event& event, const std::string& waitId) {
    const auto run = m_state.waits.find(waitId);
    if (run == m_state.waits.end() || !isOf(event, run->second.startedBy)) return nullptr;
    return &run->second;
  }

  static bool isOf(const Event& event, const std::string& act) {
    const std::string of = textOf(event.payload, "of");
    return of.empty() || of == act;
  }

  void look(const Event& event, const std::string& waitId) {
    RunningWait* run = runOf(event, waitId);
    if (run == nullptr) return;
    if (const base::Value* sure = event.payload.find("sure");
        sure != nullptr && sure->kind() == base::Value::Kind::Boolean) {
      run->sure = sure->asBoolean();
      return;
    }
    run->sure = false;
    const std::string verdict = textOf(event.payload, "verdict");
    waits::Verdict found = waits::Verdict::NotYet;
    if (verdict == "tacky") found = waits::Verdict::Tacky;
    if (verdict == "pastIt") found = waits::Verdict::PastIt;
    if (verdict == "dry") found = waits::Verdict::Dry;
    run->looks.emplace_back(event.clock(), found);
    // The opening moved, so its alert will be a new one.
    if (found == waits::Verdict::NotYet) {
      run->heard.clear();
      run->snoozed.clear();
    }
  }

  void hear(const Event& event, const std::string& waitId) {
    RunningWait* run = runOf(event, waitId);
    const auto alert = alertOf(event);
    if (run != nullptr && alert) run->heard.insert(*alert);
  }

  void snooze(const Event& event, const std::string& waitId) {
    RunningWait* run = runOf(event, waitId);
    const auto alert = alertOf(event);
    const auto minutes = integerOf(event.payload, "minutes");
    if (run == nullptr || !alert || !minutes || *minutes < 0 || *minutes > kLongestSnooze) return;
    run->snoozed[*alert] = {event.clock(), units::Duration::minutes(*minutes)};
  }

  static std::optional<AlertClass> alertOf(const Event& event) {
    const std::string alert = textOf(event.payload, "alert");
    for (const AlertClass one : intents::kAlertClasses) {
      if (intents::name(one) == alert) return one;
    }
    return std::nullopt;
  }

  // Where the fault leaves a choice and the event names none, nothing is known to have been done over.
  void fault(const Event& event, const std::string& stepId) {
    const auto index = m_workflow.indexOf(stepId);
    if (!index) return;
    // The step was done again since: this was seen on what is no more.
    const StepState& step = m_state.steps[*index];
    if (step.status == StepStatus::Done && !isOf(event, step.intentId)) return;
    for (const workflow::WorkflowFault& entry : m_workflow.steps[*index].faults) {
      if (entry.id != textOf(event.payload, "fault")) continue;
      const workflow::WorkflowFaultWay* way = entry.way(textOf(event.payload, "way"));
      endAndBringBack(way != nullptr ? way->ends : entry.ends, event.intentId);
    }
  }

  void measure(const Event& event, const std::string& stepId) {
    const std::string figure = textOf(event.payload, "figure");
    const auto nanometres = integerOf(event.payload, "nanometres");
    if (!nanometres || *nanometres <= 0 || *nanometres > units::kLongestLength.inNanometres()) return;
    if (!design::isPinnable(figure) || m_state.plan->design.figures.find(figure) == nullptr) return;
    if (const std::string overruled = textOf(event.payload, "overrules"); !overruled.empty()) forgetMeasure(overruled);
    std::vector<MadeMeasure>& found = m_measuredAt[figure];
    std::erase_if(found, [&](const MadeMeasure& one) { return one.step == stepId; });
    found.push_back({units::Length::nanometres(*nanometres), stepId, event.intentId});
    settleMeasure(figure);
  }

  // The measure that came last stands.
  void settleMeasure(const std::string& figure) {
    const std::vector<MadeMeasure>& found = m_measuredAt[figure];
    if (found.empty()) {
      m_state.measures.erase(figure);
    } else {
      m_state.measures[figure] = found.back();
    }
  }

  void forgetMeasure(const std::string& figure) {
    m_measuredAt.erase(figure);
    m_state.measures.erase(figure);
  }

  // What is done to a size that was measured on another piece has that size as well: should the other piece have to be
  // made anew, it is made to the one that lies there.
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

  void link(const Event& event, const std::string& stepId) {
    const auto index = m_workflow.indexOf(stepId);
    const auto batches = linkedBatches(event);
    if (!index || !batches || m_state.steps[*index].status != StepStatus::Done) return;
    m_state.beside.batches[stepId] = *batches;
    if (batches->empty()) m_state.beside.batches.erase(stepId);
  }

  void follow(const std::string& board, const std::string& keep) {
    if (keep != "reveal" && keep != "cover") return;
    m_state.follows[board] = keep == "reveal" ? design::Follow::Reveal : design::Follow::Cover;
  }

  // A step that is done again measures another piece.
  void forgetMeasuredAt(const std::string& stepId) {
    for (auto& [figure, found] : m_measuredAt) {
      if (std::erase_if(found, [&](const MadeMeasure& one) { return one.step == stepId; }) > 0) settleMeasure(figure);
    }
  }

  void mend(const Event& event, const std::string& waitId) {
    const auto found = m_workflow.findWait(waitId);
    if (found.wait == nullptr) return;
    if (event.payload.find("of") != nullptr && runOf(event, waitId) == nullptr) return;
    lay(waitId);
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

// What benches that have not worked this job made ready of what it needs, and did not take back. Fold order.
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
    if (event.type != type::kStepDone || event.version != 1 || counting.counts(event)) continue;
    const workflow::WorkflowStep* step = workflow.find(textOf(event.payload, "step"));
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
  done.type = type::kStepDone;
  done.occurredUtc = at.utcMilliseconds;
  done.bootId = at.bootId;
  done.boottimeNanoseconds = at.boottimeNanoseconds;
  done.synced = at.synced;
  const Counting counting({});
  Folder(after, counting).finish(done, after.plan->workflow.steps[step].id);
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
  std::vector<const Event*> ofJob;
  for (const Event& event : events) {
    folder.apply(event);
    if (event.stream == stream) ofJob.push_back(&event);
  }
  foldBeside(state.beside, ofJob, state.voidedIntents);
  settleDesign(state);
  return state;
}

}  // namespace core::record
