#include "core/jobs/dependents.h"

#include <algorithm>

#include "core/base/text.h"

namespace core::jobs {

// This file uses the types of the record throughout.
using namespace record;
namespace {

// The types without a function of their own in restsOn.
template <typename One>
concept GivesNothingToRestOn = !One::kTraits.restedOn;

class Dependents {
 public:
  explicit Dependents(const JobState& state) : m_state(state), m_workflow(state.plan->workflow) {}

  std::string on(const std::string& intentId) const {
    std::vector<std::string> dependents;
    const auto add = [&](const std::string& dependent) {
      if (!std::count(dependents.begin(), dependents.end(), dependent)) dependents.push_back(dependent);
    };
    bool reached = false;
    for (const LogLine& line : m_state.log) {
      if (line.intentId == intentId) {
        reached = true;
        continue;
      }
      if (!reached || line.voided || line.repeated) continue;
      for (const LogLine& target : m_state.log) {
        if (target.intentId == intentId && !target.repeated && restsOn(line, target)) add(nameOf(line));
      }
    }
    return base::join(dependents, ", ");
  }

 private:
  // A later step that uses a figure changed by a measure or a choice depends on that act.
  bool usesWhat(const LogLine& target, const design::AsMade& without, const LogLine& later) const {
    const auto* step = later.is<StepDone>() ? m_workflow.find(later.about) : nullptr;
    // The step it was measured at shows it and does not depend on it.
    if (step == nullptr || later.about == target.about) return false;
    const auto read = design::remeasured(m_state.plan->design, without);
    if (!read.design) return true;
    return std::any_of(step->figures.begin(), step->figures.end(), [&](const workflow::WorkflowFigure& used) {
      const auto* with = m_state.design->figures.find(used.id);
      const auto* less = read.design->figures.find(used.id);
      return with != nullptr && less != nullptr && with->display != less->display;
    });
  }

  bool restsOnMeasure(const LogLine& target, const std::string& figure, const LogLine& later) const {
    const auto measure = m_state.measures.find(figure);
    // It was measured again since, or forgotten: nothing depends on the old measure.
    if (measure == m_state.measures.end() || measure->second.intentId != target.intentId) return false;
    design::AsMade without = m_state.made();
    without.pins.erase(figure);
    return usesWhat(target, without, later);
  }

  bool comesBefore(std::size_t earlier, std::size_t later) const {
    const auto& before = m_workflow.steps[later].before;
    return std::count(before.begin(), before.end(), earlier) > 0;
  }

  bool restsOnStep(const std::string& stepId, const LogLine& later) const {
    const auto step = m_workflow.indexOf(stepId);
    const auto laterStep = m_workflow.indexOf(later.about);
    if (!step) return false;
    if (later.is<Measured>() && laterStep) return comesBefore(*step, *laterStep);
    if (later.is<StepDone>() && laterStep) return *laterStep == *step || comesBefore(*step, *laterStep);
    const auto wait = m_workflow.findWait(later.about);
    return (later.is<Looked>() || later.is<MissedMended>()) && wait.step != nullptr && wait.step->id == stepId;
  }

  bool restsOnLook(const std::string& waitId, const LogLine& later) const {
    const auto laterStep = later.is<StepDone>() ? m_workflow.find(later.about) : nullptr;
    const auto wait = m_workflow.findWait(waitId);
    return laterStep != nullptr && wait.wait != nullptr &&
           std::count(laterStep->needs.begin(), laterStep->needs.end(), wait.wait->makes) > 0;
  }

  // A fault or a missed window brought steps back: steps worked again depend on it.
  bool isWorkedAgain(const LogLine& later) const {
    if (!later.is<StepDone>() || m_workflow.find(later.about) == nullptr) return false;
    return std::any_of(m_state.log.begin(), m_state.log.end(), [&](const LogLine& line) {
      return line.is<StepDone>() && line.about == later.about && &line != &later && !line.voided && !line.repeated;
    });
  }

  static bool isWork(const LogLine& line) {
    return line.is<StepBegun>() || line.is<StepDone>() || line.is<Looked>() || line.is<Measured>() ||
           line.is<FaultReported>() || line.is<MissedMended>();
  }

  bool restsOn(const LogLine& later, const LogLine& target) const {
    return std::visit(OneOf{[&](const TechniquesRenewed&) { return isWork(later); },
                            [&](const Measured& measured) { return restsOnMeasure(target, measured.figure, later); },
                            [&](const FollowChosen& chosen) {
                              design::AsMade without = m_state.made();
                              without.follows.erase(chosen.board);
                              return usesWhat(target, without, later);
                            },
                            [&](const StepDone& done) { return restsOnStep(done.step, later); },
                            [&](const PreparationAccepted& accepted) { return restsOnStep(accepted.step, later); },
                            [&](const Looked& looked) { return restsOnLook(looked.wait, later); },
                            [&](const FaultReported&) { return isWorkedAgain(later); },
                            [&](const MissedMended&) { return isWorkedAgain(later); },
                            [](const GivesNothingToRestOn auto&) { return false; }},
                      *target.what);
  }

  std::string nameOf(const LogLine& line) const {
    if (const auto* step = m_workflow.find(line.about)) return step->title;
    const auto wait = m_workflow.findWait(line.about);
    return wait.wait != nullptr ? wait.wait->title : line.about;
  }

  const JobState& m_state;
  const workflow::Workflow& m_workflow;
};

}  // namespace

std::string restingOn(const JobState& state, const std::string& intentId) { return Dependents(state).on(intentId); }

}  // namespace core::jobs
