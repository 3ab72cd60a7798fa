#include <algorithm>

#include "core/base/text.h"
#include "core/record/job_state.h"

namespace core::record {
namespace {

using intents::AlertClass;

std::string member(const base::Value& payload, std::string_view key) {
  const base::Value* value = payload.find(key);
  return value != nullptr && value->kind() == base::Value::Kind::Text ? value->asText() : std::string();
}

bool isKnown(const Event& event) {
  if (event.version != 1) return false;
  const std::string_view known[] = {type::kJobTakenIn, type::kStepBegun, type::kStepDone,      type::kUndone,
                                    type::kLooked,     type::kHeard,     type::kFaultReported, type::kMissedMended};
  return std::find(std::begin(known), std::end(known), event.type) != std::end(known);
}

// Acts of the maker that can be taken back; being heard or having begun is no act of its own.
bool isAct(const Event& event) {
  return event.type == type::kStepDone || event.type == type::kLooked || event.type == type::kFaultReported ||
         event.type == type::kMissedMended;
}

// Intents whose events count for nothing. Walked from the newest: an undo that was itself undone voids nothing.
std::set<std::string> voidedIntents(const std::vector<Event>& events) {
  std::set<std::string> voided;
  for (auto event = events.rbegin(); event != events.rend(); ++event) {
    if (event->type != type::kUndone || event->version != 1 || voided.contains(event->intentId)) continue;
    voided.insert(member(event->payload, "intent"));
  }
  return voided;
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
    const std::string about = member(event.payload, event.payload.find("wait") != nullptr ? "wait" : "step");
    if (mine || concernsThisJob(event, about)) {
      m_state.log.push_back({event.intentId, event.type, about, event.clock(), !live});
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
    if (event.type == type::kFaultReported) fault(about, member(event.payload, "fault"), event.intentId);
    if (event.type == type::kMissedMended) mend(about, event.intentId);
  }

 private:
  // An undo of an undo is a redo, after which there is nothing to redo.
  void noteUndo(const Event& event) {
    const bool isRedo = m_undos.contains(member(event.payload, "intent"));
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
    for (const std::string& fact : source.ends) endFact(fact);
    for (const std::string& fact : source.makes) m_state.facts[fact] = true;
    for (const workflow::WorkflowWait& wait : source.waits) {
      m_state.facts.erase(wait.makes);
      m_state.waits[wait.id] = RunningWait{wait.id, &source, &wait, event.clock(), {}, {}};
    }
  }

  void endFact(const std::string& fact) {
    m_state.facts[fact] = false;
    std::erase_if(m_state.waits, [&](const auto& entry) { return entry.second.wait->makes == fact; });
  }

  // Ends facts and brings back every step that makes them.
  void endAndBringBack(const std::vector<std::string>& facts, const std::string& intentId) {
    for (const std::string& fact : facts) {
      endFact(fact);
      for (const std::size_t maker : m_workflow.making(fact)) {
        m_state.steps[maker] = StepState{StepStatus::Ahead, {}, {}, intentId};
      }
    }
  }

  void look(const Event& event, const std::string& waitId) {
    const auto run = m_state.waits.find(waitId);
    if (run == m_state.waits.end()) return;
    const std::string verdict = member(event.payload, "verdict");
    waits::Verdict found = waits::Verdict::NotYet;
    if (verdict == "tacky") found = waits::Verdict::Tacky;
    if (verdict == "pastIt") found = waits::Verdict::PastIt;
    if (verdict == "dry") found = waits::Verdict::Dry;
    run->second.looks.emplace_back(event.clock(), found);
    // The opening moved, so its alert will be a new one.
    if (found == waits::Verdict::NotYet) run->second.heard.clear();
  }

  void hear(const Event& event, const std::string& waitId) {
    const auto run = m_state.waits.find(waitId);
    if (run == m_state.waits.end()) return;
    const std::string alert = member(event.payload, "alert");
    for (const AlertClass one : {AlertClass::Over, AlertClass::Open, AlertClass::Closing}) {
      if (intents::name(one) == alert) run->second.heard.insert(one);
    }
  }

  void fault(const std::string& stepId, const std::string& faultId, const std::string& intentId) {
    const workflow::WorkflowStep* step = m_workflow.find(stepId);
    if (step == nullptr) return;
    for (const workflow::WorkflowFault& entry : step->faults) {
      if (entry.id == faultId) endAndBringBack(entry.ends, intentId);
    }
  }

  void mend(const std::string& waitId, const std::string& intentId) {
    const auto found = m_workflow.findWait(waitId);
    if (found.wait == nullptr) return;
    m_state.waits.erase(waitId);
    endAndBringBack(found.wait->missedEnds, intentId);
  }

  JobState& m_state;
  const workflow::Workflow& m_workflow;
  std::set<std::string> m_undos;
};

}  // namespace

JobState fold(std::shared_ptr<const JobPlan> plan, std::vector<Event> events) {
  std::sort(events.begin(), events.end(), before);
  std::set<std::string> seen;
  std::erase_if(events, [&](const Event& event) { return !seen.insert(event.eventId).second; });
  JobState state;
  state.plan = std::move(plan);
  state.voidedIntents = voidedIntents(events);
  Folder folder(state);
  for (const Event& event : events) folder.apply(event);
  return state;
}

}  // namespace core::record
