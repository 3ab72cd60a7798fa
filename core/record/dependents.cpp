#include "core/record/dependents.h"

#include <algorithm>

#include "core/base/text.h"

namespace core::record {
namespace {

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
  // What is worked later with a figure that a measure or a choice changed rests on it.
  bool usesChanged(const workflow::WorkflowStep& step, const LogLine& target) const {
    design::AsMade without = m_state.made();
    if (target.type == type::kFollowChosen) {
      without.follows.erase(target.step);
    } else {
      const auto measure = m_state.measures.find(target.figure);
      // Measured again since, or forgotten: nothing rests on the old one.
      if (measure == m_state.measures.end() || measure->second.intentId != target.intentId) return false;
      without.pins.erase(target.figure);
    }
    const auto read = design::remeasured(m_state.plan->design, std::move(without));
    if (!read.design) return true;
    return std::any_of(step.figures.begin(), step.figures.end(), [&](const workflow::WorkflowFigure& used) {
      const auto* with = m_state.design->figures.find(used.id);
      const auto* less = read.design->figures.find(used.id);
      return with != nullptr && less != nullptr && with->display != less->display;
    });
  }

  bool restsOn(const LogLine& later, const LogLine& target) const {
    // Whatever was worked after techniques were taken anew was worked by them.
    if (target.type == type::kTechniquesRenewed) {
      return later.type == type::kStepBegun || later.type == type::kStepDone || later.type == type::kLooked ||
             later.type == type::kMeasured || later.type == type::kFaultReported || later.type == type::kMissedMended;
    }
    if (target.type == type::kMeasured || target.type == type::kFollowChosen) {
      const auto* step = later.type == type::kStepDone ? m_workflow.find(later.step) : nullptr;
      // The step it was measured at shows it and does not rest on it.
      return step != nullptr && later.step != target.step && usesChanged(*step, target);
    }
    const auto targetStep = m_workflow.indexOf(target.step);
    const auto laterStep = m_workflow.indexOf(later.step);
    const bool laterWorks = later.type == type::kStepDone && laterStep;
    if ((target.type == type::kStepDone || target.type == type::kPreparationAccepted) && targetStep) {
      if (later.type == type::kMeasured && laterStep) {
        const auto& before = m_workflow.steps[*laterStep].before;
        return std::count(before.begin(), before.end(), *targetStep) > 0;
      }
      if (laterWorks) {
        const auto& before = m_workflow.steps[*laterStep].before;
        return *laterStep == *targetStep || std::count(before.begin(), before.end(), *targetStep) > 0;
      }
      const auto wait = m_workflow.findWait(later.step);
      return (later.type == type::kLooked || later.type == type::kMissedMended) && wait.step != nullptr &&
             wait.step->id == target.step;
    }
    if (!laterWorks) return false;
    if (target.type == type::kLooked) {
      const auto wait = m_workflow.findWait(target.step);
      const auto& needs = m_workflow.steps[*laterStep].needs;
      return wait.wait != nullptr && std::count(needs.begin(), needs.end(), wait.wait->makes) > 0;
    }
    // A fault or a missed window brought steps back: whatever was worked again rests on it.
    if (target.type == type::kFaultReported || target.type == type::kMissedMended) {
      return std::any_of(m_state.log.begin(), m_state.log.end(), [&](const LogLine& line) {
        return line.type == type::kStepDone && line.step == later.step && &line != &later && !line.voided &&
               !line.repeated;
      });
    }
    return false;
  }

  std::string nameOf(const LogLine& line) const {
    if (const auto* step = m_workflow.find(line.step)) return step->title;
    const auto wait = m_workflow.findWait(line.step);
    return wait.wait != nullptr ? wait.wait->title : line.step;
  }

  const JobState& m_state;
  const workflow::Workflow& m_workflow;
};

}  // namespace

std::string restingOn(const JobState& state, const std::string& intentId) { return Dependents(state).on(intentId); }

}  // namespace core::record
