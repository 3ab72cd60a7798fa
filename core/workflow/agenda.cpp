#include "core/workflow/agenda.h"

#include <algorithm>

namespace core::workflow {
namespace {

// The craft's word for it and the model's own: a technique knows nothing of how waits are computed.
waits::DryingModel modelOf(craft::DryingModel model) {
  switch (model) {
    case craft::DryingModel::None: return waits::DryingModel::None;
    case craft::DryingModel::Evaporation: return waits::DryingModel::Evaporation;
    case craft::DryingModel::Oxidation: return waits::DryingModel::Oxidation;
  }
  return waits::DryingModel::None;
}

}  // namespace

waits::Kind kindOf(const WorkflowWait& wait) {
  waits::Kind kind;
  // Without the thing and the number of the piece.
  const std::size_t at = wait.id.find_first_of("@#");
  const std::size_t last = wait.id.rfind('/');
  const bool ofThing = at != std::string::npos && last != std::string::npos && last > at;
  kind.name = ofThing ? wait.id.substr(0, at) + wait.id.substr(last) : wait.id;
  const bool film = wait.kind == craft::WaitKind::Dry && wait.model == craft::DryingModel::Evaporation;
  kind.cause = film ? waits::Cause::Film : waits::Cause::Own;
  return kind;
}

waits::WaitTerms termsOf(const Workflow& workflow, const WorkflowWait& wait,
                         const std::optional<units::Room>& planned) {
  waits::WaitTerms terms;
  terms.opens = wait.opens;
  terms.closes = wait.closes;
  terms.model = modelOf(wait.model);
  terms.reference = wait.reference;
  terms.planned = planned;
  for (const std::size_t gated : workflow.needing(wait.makes)) {
    terms.actionTime = std::max(terms.actionTime, workflow.steps[gated].work.likely);
  }
  return terms;
}

Agenda::Agenda(const Workflow& workflow, const Bench& bench) : m_workflow(&workflow) {
  m_steps.reserve(workflow.steps.size());
  for (std::size_t i = 0; i < workflow.steps.size(); ++i) m_steps.push_back({i, workflow.steps[i].work});
  expect(bench);
}

Agenda::Agenda(const Workflow& workflow, const Bench& bench, std::vector<AgendaStep> steps,
               std::vector<AgendaRun> running, std::vector<AgendaBatch> batches)
    : m_workflow(&workflow), m_steps(std::move(steps)), m_running(std::move(running)), m_batches(std::move(batches)) {
  expect(bench);
}

void Agenda::expect(const Bench& bench) {
  m_room = bench.room;
  for (const AgendaStep& ahead : m_steps) {
    for (const WorkflowWait& wait : m_workflow->steps[ahead.step].waits) expect(bench, wait);
  }
  for (const AgendaBatch& batch : m_batches) {
    for (const WorkflowStep& step : m_workflow->steps) {
      if (step.technique != batch.technique) continue;
      for (const WorkflowWait& wait : step.waits) expect(bench, wait);
    }
  }
}

void Agenda::expect(const Bench& bench, const WorkflowWait& wait) {
  waits::ClockReading beginning;
  beginning.bootId = "-";
  const auto state = waits::waitState(termsOf(*m_workflow, wait, bench.room), bench.learning.of(kindOf(wait)),
                                      beginning, {}, {}, beginning);
  if (!state.byTouch) {
    m_byId[wait.id] = {state.opens, state.closes, state.basis};
    return;
  }
  m_byId[wait.id] = {wait.opens, wait.closes, waits::Basis::Label, true};
  if (std::count(m_byTouch.begin(), m_byTouch.end(), *state.byTouch) == 0) m_byTouch.push_back(*state.byTouch);
}

}  // namespace core::workflow
