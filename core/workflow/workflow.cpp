#include "core/workflow/workflow.h"

namespace core::workflow {
namespace {

std::vector<std::size_t> indexActs(std::vector<Act>& acts, const std::vector<WorkflowStep>& steps) {
  if (acts.empty()) {
    for (std::size_t i = 0; i < steps.size(); ++i) acts.push_back({{i}, steps[i].title, steps[i].stage, {}});
  }
  std::vector<std::size_t> of(steps.size());
  for (std::size_t act = 0; act < acts.size(); ++act) {
    for (const std::size_t step : acts[act].steps) of[step] = act;
  }
  return of;
}

}  // namespace

std::string wholeThing(const std::string& thing) { return thing.substr(0, thing.find('#')); }

void Workflow::index() {
  m_byId.clear();
  m_needing.clear();
  m_making.clear();
  m_everyActOf = indexActs(everyActs, steps);
  m_shortActOf = indexActs(shortActs, steps);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const WorkflowStep& step = steps[i];
    m_byId[step.id] = i;
    for (const std::string& fact : step.needs) m_needing[fact].push_back(i);
    for (const std::string& fact : step.makes) m_making[fact].push_back(i);
    for (const WorkflowWait& wait : step.waits) m_making[wait.makes].push_back(i);
  }
}

const WorkflowStep* Workflow::find(const std::string& id) const {
  const auto found = m_byId.find(id);
  return found == m_byId.end() ? nullptr : &steps[found->second];
}

std::optional<std::size_t> Workflow::indexOf(const std::string& id) const {
  const auto found = m_byId.find(id);
  if (found == m_byId.end()) return std::nullopt;
  return found->second;
}

Workflow::FoundWait Workflow::findWait(const std::string& waitId) const {
  const auto slash = waitId.rfind('/');
  if (slash == std::string::npos) return {};
  const WorkflowStep* step = find(waitId.substr(0, slash));
  if (step == nullptr) return {};
  const WorkflowWait* wait = base::withId(step->waits, waitId);
  if (wait == nullptr) return {};
  return {step, wait};
}

std::vector<std::size_t> Workflow::needing(const std::string& fact) const {
  const auto found = m_needing.find(fact);
  return found == m_needing.end() ? std::vector<std::size_t>() : found->second;
}

std::vector<std::size_t> Workflow::making(const std::string& fact) const {
  const auto found = m_making.find(fact);
  return found == m_making.end() ? std::vector<std::size_t>() : found->second;
}

}  // namespace core::workflow
