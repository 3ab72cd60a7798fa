#include "core/jobs/job_state.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/jobs/looks.h"
#include "core/workflow/agenda.h"

namespace core::jobs {

// This file uses the types of the record throughout.
using namespace record;
namespace {

std::string text(const waits::ClockReading& clock) {
  return std::to_string(clock.utcMilliseconds) + '/' + clock.bootId + '/' + std::to_string(clock.boottimeNanoseconds);
}

}  // namespace

std::string dump(const JobState& state) {
  std::string out;
  for (std::size_t i = 0; i < state.steps.size(); ++i) {
    const StepState& step = state.steps[i];
    if (step.status == StepStatus::Ahead) continue;
    out += state.plan->workflow.steps[i].id;
    out += step.status == StepStatus::Done ? " done " + text(step.doneAt) : " begun " + text(step.begunAt);
    out += '\n';
  }
  for (const auto& [fact, holds] : state.facts) out += "fact " + fact + (holds ? " true\n" : " ended\n");
  for (const auto& [figure, measure] : state.measures) {
    out += "measured " + figure + ' ' + std::to_string(measure.value.inNanometres()) + '\n';
  }
  for (const auto& [board, follow] : state.follows) {
    out += "follow " + board + (follow == design::Follow::Reveal ? " reveal\n" : " cover\n");
  }
  for (const Note& note : state.beside.notes) out += "note " + note.id + ' ' + note.step + ' ' + note.text + '\n';
  for (const Photograph& one : state.beside.photographs) {
    out += "photograph " + one.id + ' ' + one.step + ' ' + one.hash + ' ' + one.caption + '\n';
  }
  for (const auto& [step, batches] : state.beside.batches) {
    out += "batches " + step + ' ' + base::join(batches, " ") + '\n';
  }
  for (const auto& [id, run] : state.waits) {
    out += "wait " + id + ' ' + text(run.started);
    for (const auto& [clock, verdict] : run.looks) {
      out += " look " + std::to_string(static_cast<int>(verdict)) + '@' + text(clock);
    }
    if (run.sure) out += " sure";
    for (const auto alert : run.heard) out += " heard " + std::string(intents::name(alert));
    for (const auto& [alert, snoozed] : run.snoozed) {
      out += " snoozed " + std::string(intents::name(alert)) + '@' + text(snoozed.at);
    }
    out += '\n';
  }
  if (state.putAway) out += "put away\n";
  for (const std::string& unknown : state.unknownEvents) out += "unknown " + unknown + '\n';
  return out;
}

design::AsMade JobState::made() const {
  design::AsMade made;
  for (const auto& [figure, measure] : measures) made.pins[figure] = measure.value;
  made.follows = follows;
  return made;
}

waits::WaitTerms termsOf(const JobState& state, const RunningWait& run, const waits::ClockLog& log) {
  waits::WaitTerms terms = workflow::termsOf(state.plan->workflow, *run.wait, state.plan->design.job.room);
  for (const auto& [clock, verdict] : run.looks) {
    terms.looks.push_back({waits::elapsedBetween(run.started, clock, log).time, verdict});
  }
  return terms;
}

JobAt::JobAt(const JobState& state, const shop::Shop& shop, const waits::ClockReading& now, craft::Way way)
    : m_state(state), m_shop(shop), m_now(now), m_way(way) {}

waits::WaitState JobAt::waitState(const RunningWait& run) const {
  return waits::waitState(termsOf(m_state, run, m_shop.clockLog), m_shop.learning.of(workflow::kindOf(*run.wait)),
                          run.started, m_shop.rooms, m_shop.clockLog, m_now);
}

units::Span JobAt::expectedOpening(const RunningWait& run) const {
  waits::WaitTerms terms = termsOf(m_state, run, m_shop.clockLog);
  terms.looks.clear();
  return waits::waitState(terms, {}, run.started, m_shop.rooms, m_shop.clockLog, m_now).opens;
}

bool JobAt::asksWhetherSo(const RunningWait& run) const {
  if (run.sure || !farOutside(m_state, run, m_shop.clockLog, m_shop.rooms)) return false;
  if (matters(run)) return true;
  const auto needing = m_state.plan->workflow.needing(run.wait->makes);
  return run.wait->closes &&
         std::any_of(needing.begin(), needing.end(), [&](std::size_t step) { return isDone(step); });
}

std::optional<std::size_t> JobAt::gatedStep(const RunningWait& run) const {
  for (const std::size_t step : m_state.plan->workflow.needing(run.wait->makes)) {
    if (!isDone(step) && m_state.steps[step].status != StepStatus::Begun) return step;
  }
  return std::nullopt;
}

bool JobAt::matters(const RunningWait& run) const {
  if (run.wait->closes) return gatedStep(run).has_value();
  const auto needing = m_state.plan->workflow.needing(run.wait->makes);
  return std::any_of(needing.begin(), needing.end(), [&](std::size_t step) { return !isDone(step); });
}

std::optional<units::Duration> JobAt::ageOfBatch(const std::string& technique) const {
  const workflow::Workflow& workflow = m_state.plan->workflow;
  std::optional<units::Duration> youngest;
  for (std::size_t i = 0; i < workflow.steps.size(); ++i) {
    if (workflow.steps[i].technique != technique || m_state.steps[i].status != StepStatus::Done) continue;
    const units::Duration age = waits::elapsedBetween(m_state.steps[i].doneAt, m_now, m_shop.clockLog).time;
    if (!youngest || age < *youngest) youngest = age;
  }
  return youngest;
}

bool JobAt::expired(std::size_t index) const {
  const workflow::Workflow& workflow = m_state.plan->workflow;
  const workflow::WorkflowStep& step = workflow.steps[index];
  if (!step.ofShop || !step.keeps) return false;
  const std::optional<units::Duration> age = ageOfBatch(step.technique);
  if (!age || *age <= *step.keeps) return false;
  // An old batch matters only to what is still to be done with it.
  const auto stillNeeded = [&](const std::string& fact) {
    const auto needing = workflow.needing(fact);
    return std::any_of(needing.begin(), needing.end(), [&](std::size_t i) {
      return !workflow.steps[i].ofShop && m_state.steps[i].status != StepStatus::Done;
    });
  };
  return std::any_of(workflow.steps.begin(), workflow.steps.end(), [&](const workflow::WorkflowStep& other) {
    if (other.technique != step.technique) return false;
    return std::any_of(other.makes.begin(), other.makes.end(), stillNeeded) ||
           std::any_of(other.waits.begin(), other.waits.end(),
                       [&](const workflow::WorkflowWait& wait) { return stillNeeded(wait.makes); });
  });
}

bool JobAt::isDone(std::size_t step) const { return m_state.steps[step].status == StepStatus::Done && !expired(step); }

bool JobAt::holds(const std::string& fact) const {
  for (const std::size_t maker : m_state.plan->workflow.making(fact)) {
    if (expired(maker)) return false;
  }
  const auto direct = m_state.facts.find(fact);
  if (direct != m_state.facts.end() && direct->second) {
    // A wait that is over ends the fact it follows: what has dried is no longer wet.
    return std::none_of(m_state.waits.begin(), m_state.waits.end(), [&](const auto& entry) {
      return entry.second.wait->follows == fact && waitState(entry.second).holds();
    });
  }
  return std::any_of(m_state.waits.begin(), m_state.waits.end(), [&](const auto& entry) {
    return entry.second.wait->makes == fact && waitState(entry.second).holds();
  });
}

const RunningWait* JobAt::gate(std::size_t step) const {
  for (const std::string& fact : m_state.plan->workflow.steps[step].needs) {
    for (const auto& [id, run] : m_state.waits) {
      if (run.wait->makes == fact && run.wait->closes) return &run;
    }
  }
  return nullptr;
}

std::vector<std::string> JobAt::missing(std::size_t step) const {
  std::vector<std::string> facts;
  for (const std::string& fact : m_state.plan->workflow.steps[step].needs) {
    if (!holds(fact)) facts.push_back(fact);
  }
  return facts;
}

bool JobAt::canStart(std::size_t step) const {
  if (isDone(step)) return false;
  const auto& before = m_state.plan->workflow.steps[step].before;
  return std::all_of(before.begin(), before.end(), [&](std::size_t i) { return isDone(i); }) && missing(step).empty();
}

bool JobAt::canFinish(std::size_t step, bool begunInTime) const {
  if (isDone(step)) return false;
  const auto& before = m_state.plan->workflow.steps[step].before;
  if (!std::all_of(before.begin(), before.end(), [&](std::size_t i) { return isDone(i); })) return false;
  const bool inside = begunInTime || m_state.steps[step].status == StepStatus::Begun;
  const RunningWait* window = gate(step);
  for (const std::string& fact : missing(step)) {
    const bool byWindow =
        window != nullptr && window->wait->makes == fact && waitState(*window).phase == waits::Phase::Closed;
    if (!(inside && byWindow)) return false;
  }
  return true;
}

std::optional<std::size_t> JobAt::inHand() const {
  std::optional<std::size_t> newest;
  for (std::size_t i = 0; i < m_state.steps.size(); ++i) {
    if (m_state.steps[i].status != StepStatus::Begun || !canFinish(i, true)) continue;
    if (!newest || m_state.steps[*newest].act <= m_state.steps[i].act) newest = i;
  }
  return newest;
}

}  // namespace core::jobs
