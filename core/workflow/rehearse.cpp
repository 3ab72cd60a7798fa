#include "core/workflow/rehearse.h"

#include <algorithm>
#include <optional>

#include "core/workflow/acts.h"
#include "core/workflow/fast_clock.h"

namespace core::workflow {
namespace {

class Rehearser : FastClock::Listener {
 public:
  Rehearser(const Agenda& agenda, craft::Way way, std::vector<double> starts)
      : m_workflow(agenda.workflow()), m_way(way), m_clock(agenda, std::move(starts), this) {}

  Rehearsal run() {
    while (true) {
      if (const auto next = choose()) {
        work(*next);
      } else if (const double at = m_clock.nextMoment(); at < FastClock::kNever) {
        m_clock.passTo(at);
      } else if (const auto late = anyThatCan()) {
        work(*late);
      } else {
        break;
      }
    }
    // Windows still open when the hands have nothing left to do close all the same.
    m_clock.end();
    countHands();
    std::stable_sort(m_result.events.begin(), m_result.events.end(),
                     [](const RehearsalEvent& a, const RehearsalEvent& b) { return a.at < b.at; });
    return std::move(m_result);
  }

 private:
  const WorkflowStep& step(std::size_t index) const { return m_workflow.steps[index]; }

  void tell(double at, RehearsalKind kind, std::size_t index, const std::string& wait = "",
            const std::string& other = "") {
    m_result.events.push_back({at, kind, step(index).id, other, wait});
  }

  void begins(double at, std::size_t index, const WorkflowWait& wait) override {
    tell(at, RehearsalKind::Wait, index, wait.id);
  }
  void opens(double at, std::size_t index, const WorkflowWait& wait, bool gates) override {
    tell(at, RehearsalKind::Opens, index, wait.id);
    const bool atOnce = wait.opens.likely == units::Duration();
    if (gates && !atOnce) tell(at, RehearsalKind::Alert, index, wait.id);
  }
  void closes(double at, std::size_t index, const WorkflowWait& wait) override {
    tell(at, RehearsalKind::Closes, index, wait.id);
  }
  void misses(double at, std::size_t gated, std::size_t index, const WorkflowWait& wait,
              std::optional<std::size_t> inTheWay) override {
    m_result.missed = true;
    tell(at, RehearsalKind::Missed, gated, wait.id, step(inTheWay.value_or(index)).id);
  }

  std::optional<std::size_t> choose() const {
    std::optional<std::size_t> chosen;
    double closes = FastClock::kNever;
    bool inHand = false;
    for (const std::size_t i : m_clock.ready()) {
      if (!m_clock.canStart(i)) continue;
      const double closing = m_clock.closingOf(i);
      const bool ofAct = !m_result.acts.empty() && m_workflow.actOf(m_way, i) == m_result.acts.back().act;
      const bool better = !chosen || closing < closes || (closing == closes && ofAct && !inHand);
      if (!better || m_clock.wouldBreak({i})) continue;
      chosen = i;
      closes = closing;
      inHand = ofAct;
    }
    return chosen;
  }

  // Where every step would break a window, waiting would not save it.
  std::optional<std::size_t> anyThatCan() const {
    for (const std::size_t i : m_clock.ready()) {
      if (m_clock.canStart(i)) return i;
    }
    return std::nullopt;
  }

  void work(std::size_t index) {
    tell(m_clock.now(), RehearsalKind::Step, index);
    m_result.hands += m_clock.workOf(index);
    const std::size_t act = m_workflow.actOf(m_way, index);
    const bool goesOn = !m_result.acts.empty() && m_result.acts.back().act == act && m_until == m_clock.now();
    if (!goesOn) m_result.acts.push_back({m_clock.now(), act, {}});
    m_result.acts.back().steps.push_back(index);
    if (m_settings.sets(step(index))) ++m_result.setups;
    m_clock.work(index);
    m_until = m_clock.now();
    m_clock.handsAre(handsOf(m_workflow, m_result.acts.back().steps));
    m_result.minutes = std::max(m_result.minutes, m_until);
  }

  // The hands of an act are known once all of it that is worked in one go is known.
  void countHands() {
    m_result.handsChanges = 0;
    std::optional<craft::Hands> before;
    for (const ActWorked& act : m_result.acts) {
      const craft::Hands hands = handsOf(m_workflow, act.steps);
      if (before && *before != hands) ++m_result.handsChanges;
      before = hands;
    }
  }

  const Workflow& m_workflow;
  const craft::Way m_way;
  Rehearsal m_result;
  FastClock m_clock;
  Settings m_settings;
  double m_until = -1;
};

}  // namespace

Rehearsal rehearse(const Agenda& agenda, craft::Way way) {
  Rehearsal first = Rehearser(agenda, way, {}).run();
  const bool prepares = std::any_of(agenda.steps().begin(), agenda.steps().end(), [&](const AgendaStep& ahead) {
    return agenda.workflow().steps[ahead.step].ofShop;
  });
  if (!prepares && agenda.batches().empty()) return first;
  // When a preparation is wanted is known once the work was gone through.
  std::vector<double> starts(agenda.workflow().steps.size(), 0);
  for (const RehearsalEvent& event : first.events) {
    if (event.kind == RehearsalKind::Step) starts[*agenda.workflow().indexOf(event.step)] = event.at;
  }
  Rehearsal second = Rehearser(agenda, way, std::move(starts)).run();
  return second.missed && !first.missed ? first : second;
}

Rehearsal rehearse(const Workflow& workflow, craft::Way way) { return rehearse(Agenda(workflow), way); }

std::string_view name(RehearsalKind kind) {
  switch (kind) {
    case RehearsalKind::Step: return "step";
    case RehearsalKind::Wait: return "wait";
    case RehearsalKind::Opens: return "opens";
    case RehearsalKind::Closes: return "closes";
    case RehearsalKind::Alert: return "alert";
    case RehearsalKind::Missed: return "missed";
  }
  return "";
}

}  // namespace core::workflow
