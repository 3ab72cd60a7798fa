#include <algorithm>

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
                                    type::kTechniquesRenewed};
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
         event.type == type::kTechniquesRenewed;
}

class Folder {
 public:
  explicit Folder(JobState& state) : m_state(state), m_workflow(state.plan->workflow) {
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
    if (mine || concernsThisJob(event, about)) {
      m_state.log.push_back({event.intentId, event.type, about, event.clock(), !live, textOf(event.payload, "figure")});
      if (live && isAct(event)) {
        m_state.lastIntent = event.intentId;
        m_state.lastUndo.clear();
      }
      if (live && event.type == type::kUndone) noteUndo(event);
    }
    if (event.type == type::kUndone) m_undos.insert(event.intentId);
    if (!live) return;
    if (event.type == type::kStepBegun) begin(event, about);
    if (event.type == type::kStepDone) finish(event, about);
    if (event.type == type::kLooked) look(event, about);
    if (event.type == type::kHeard) hear(event, about);
    if (event.type == type::kSnoozed) snooze(event, about);
    if (event.type == type::kFaultReported) fault(about, textOf(event.payload, "fault"), event.intentId);
    if (event.type == type::kMissedMended) mend(about, event.intentId);
    if (event.type == type::kMeasured) measure(event, about);
    if (event.type == type::kMeasureForgotten) m_state.measures.erase(textOf(event.payload, "figure"));
    if (event.type == type::kFollowChosen) follow(about, textOf(event.payload, "keep"));
    if (event.type == type::kBatchesLinked) link(event, about);
    if (!mine) return;
    if (event.type == type::kJobPutAway) m_state.putAway = true;
    if (event.type == type::kJobBroughtBack) m_state.putAway = false;
  }

 private:
  // An undo of an undo is a redo, after which there is nothing to redo.
  void noteUndo(const Event& event) {
    const bool isRedo = m_undos.contains(textOf(event.payload, "intent"));
    m_state.lastUndo = isRedo ? std::string() : event.intentId;
  }

  bool concernsThisJob(const Event& event, const std::string& step) const {
    return event.type != type::kUndone && m_workflow.find(step) != nullptr;
  }

  void begin(const Event& event, const std::string& stepId) {
    const auto index = m_workflow.indexOf(stepId);
    if (!index) return;
    StepState& step = m_state.steps[*index];
    if (step.status != StepStatus::Ahead) return;
    step.status = StepStatus::Begun;
    step.begunAt = event.clock();
    step.intentId = event.intentId;
  }

  void finish(const Event& event, const std::string& stepId) {
    const auto index = m_workflow.indexOf(stepId);
    if (!index) return;
    const workflow::WorkflowStep& source = m_workflow.steps[*index];
    StepState& step = m_state.steps[*index];
    step.status = StepStatus::Done;
    step.doneAt = event.clock();
    step.intentId = event.intentId;
    // Done again it was worked with other batches, or with the same, but nobody has said so.
    m_state.beside.batches.erase(stepId);
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
      m_state.waits[wait.id] = std::move(run);
    }
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
        m_state.steps[maker] = StepState{StepStatus::Ahead, {}, {}, intentId};
        forgetMeasuredAt(m_workflow.steps[maker].id);
        m_state.beside.batches.erase(m_workflow.steps[maker].id);
      }
    }
  }

  void look(const Event& event, const std::string& waitId) {
    const auto run = m_state.waits.find(waitId);
    if (run == m_state.waits.end()) return;
    if (const base::Value* sure = event.payload.find("sure");
        sure != nullptr && sure->kind() == base::Value::Kind::Boolean) {
      run->second.sure = sure->asBoolean();
      return;
    }
    run->second.sure = false;
    const std::string verdict = textOf(event.payload, "verdict");
    waits::Verdict found = waits::Verdict::NotYet;
    if (verdict == "tacky") found = waits::Verdict::Tacky;
    if (verdict == "pastIt") found = waits::Verdict::PastIt;
    if (verdict == "dry") found = waits::Verdict::Dry;
    run->second.looks.emplace_back(event.clock(), found);
    // The opening moved, so its alert will be a new one.
    if (found == waits::Verdict::NotYet) {
      run->second.heard.clear();
      run->second.snoozed.clear();
    }
  }

  void hear(const Event& event, const std::string& waitId) {
    const auto run = m_state.waits.find(waitId);
    if (run == m_state.waits.end()) return;
    if (const auto alert = alertOf(event)) run->second.heard.insert(*alert);
  }

  void snooze(const Event& event, const std::string& waitId) {
    const auto run = m_state.waits.find(waitId);
    const auto alert = alertOf(event);
    const auto minutes = integerOf(event.payload, "minutes");
    if (run == m_state.waits.end() || !alert || !minutes || *minutes < 0 || *minutes > kLongestSnooze) return;
    run->second.snoozed[*alert] = {event.clock(), units::Duration::minutes(*minutes)};
  }

  static std::optional<AlertClass> alertOf(const Event& event) {
    const std::string alert = textOf(event.payload, "alert");
    for (const AlertClass one : intents::kAlertClasses) {
      if (intents::name(one) == alert) return one;
    }
    return std::nullopt;
  }

  void fault(const std::string& stepId, const std::string& faultId, const std::string& intentId) {
    const workflow::WorkflowStep* step = m_workflow.find(stepId);
    if (step == nullptr) return;
    for (const workflow::WorkflowFault& entry : step->faults) {
      if (entry.id == faultId) endAndBringBack(entry.ends, intentId);
    }
  }

  void measure(const Event& event, const std::string& stepId) {
    const std::string figure = textOf(event.payload, "figure");
    const auto nanometres = integerOf(event.payload, "nanometres");
    if (!nanometres || *nanometres <= 0 || *nanometres > units::kLongestLength.inNanometres()) return;
    if (!design::isPinnable(figure) || m_state.plan->design.figures.find(figure) == nullptr) return;
    m_state.measures.erase(textOf(event.payload, "overrules"));
    m_state.measures[figure] = {units::Length::nanometres(*nanometres), stepId, event.intentId};
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
    std::erase_if(m_state.measures, [&](const auto& entry) { return entry.second.step == stepId; });
  }

  void mend(const std::string& waitId, const std::string& intentId) {
    const auto found = m_workflow.findWait(waitId);
    if (found.wait == nullptr) return;
    lay(waitId);
    endAndBringBack(found.wait->missedEnds, intentId);
  }

  JobState& m_state;
  const workflow::Workflow& m_workflow;
  std::set<std::string> m_undos;
};

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

bool touchesJobs(const Event& event) { return isKnown(event); }

JobState fold(std::shared_ptr<const JobPlan> plan, std::vector<Event> events) {
  arrange(events);
  JobState state;
  state.plan = std::move(plan);
  state.voidedIntents = voidedIntents(events);
  Folder folder(state);
  std::vector<const Event*> ofJob;
  for (const Event& event : events) {
    folder.apply(event);
    if (event.stream == "job/" + state.plan->id) ofJob.push_back(&event);
  }
  foldBeside(state.beside, ofJob, state.voidedIntents);
  settleDesign(state);
  return state;
}

}  // namespace core::record
