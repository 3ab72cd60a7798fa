#include "core/workflow/rehearse.h"

#include <algorithm>
#include <limits>
#include <optional>

namespace core::workflow {
namespace {

constexpr double kNever = std::numeric_limits<double>::infinity();

// A wait that has started, in minutes since the start of the rehearsal.
struct Running {
  std::size_t step = 0;
  const WorkflowWait* wait = nullptr;
  double opens = 0;
  double closes = kNever;
  bool openTold = false;
  bool closeTold = false;
};

class Rehearser {
 public:
  Rehearser(const Workflow& workflow, const Expected& expected)
      : m_workflow(workflow),
        m_expected(expected),
        m_done(workflow.steps.size(), false),
        m_started(workflow.steps.size(), false) {}

  Rehearsal run() {
    while (true) {
      if (const auto next = choose()) {
        work(*next);
      } else if (const double at = nextOpening(); at < kNever) {
        passTo(at, "");
      } else {
        break;
      }
    }
    // Windows still open when the hands have nothing left to do close all the same.
    tellOpenings(kNever);
    tellClosings(kNever, "");
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

  // Steps that need the wait's fact and have not started.
  bool gates(const Running& running) const {
    const auto needing = m_workflow.needing(running.wait->makes);
    return std::any_of(needing.begin(), needing.end(), [&](std::size_t i) { return !m_started[i]; });
  }

  // The newest wait that makes a fact, or null where a step makes it directly.
  const Running* runningFor(const std::string& fact) const {
    for (auto it = m_running.rbegin(); it != m_running.rend(); ++it) {
      if (it->wait->makes == fact) return &*it;
    }
    return nullptr;
  }

  bool madeByWait(const std::string& fact) const {
    const auto makers = m_workflow.making(fact);
    return std::any_of(makers.begin(), makers.end(), [&](std::size_t i) {
      const auto& waits = step(i).waits;
      return std::any_of(waits.begin(), waits.end(), [&](const WorkflowWait& wait) { return wait.makes == fact; });
    });
  }

  bool holds(const std::string& fact) const {
    if (const Running* running = runningFor(fact)) return m_now >= running->opens && m_now <= running->closes;
    // Whoever makes it directly comes before, and is done: see canStart.
    return !madeByWait(fact);
  }

  bool canStart(std::size_t index) const {
    if (m_started[index]) return false;
    const WorkflowStep& candidate = step(index);
    return std::all_of(candidate.before.begin(), candidate.before.end(), [&](std::size_t i) { return m_done[i]; }) &&
           std::all_of(candidate.needs.begin(), candidate.needs.end(), [&](const std::string& f) { return holds(f); });
  }

  // The closing of the window that gates a step; never where none does.
  double closingOf(std::size_t index) const {
    double closes = kNever;
    for (const std::string& fact : step(index).needs) {
      if (const Running* running = runningFor(fact)) closes = std::min(closes, running->closes);
    }
    return closes;
  }

  std::optional<std::size_t> choose() const {
    std::optional<std::size_t> chosen;
    double closes = kNever;
    for (std::size_t i = 0; i < m_workflow.steps.size(); ++i) {
      if (!canStart(i)) continue;
      const double closing = closingOf(i);
      if (!chosen || closing < closes) {
        chosen = i;
        closes = closing;
      }
    }
    return chosen;
  }

  void work(std::size_t index) {
    const WorkflowStep& current = step(index);
    tell(m_now, RehearsalKind::Step, index);
    m_result.hands += current.work.likely.inMinutes();
    if (m_hands && *m_hands != current.hands) ++m_result.handsChanges;
    m_hands = current.hands;
    m_started[index] = true;
    passTo(m_now + current.work.likely.inMinutes(), current.id);
    m_done[index] = true;
    double stay = m_now;
    for (const WorkflowWait& wait : current.waits) {
      const ExpectedWait& expected = m_expected.of(wait);
      Running running{index, &wait, m_now + expected.opens.likely.inMinutes(), kNever, false, false};
      if (expected.closes) running.closes = m_now + expected.closes->likely.inMinutes();
      tell(m_now, RehearsalKind::Wait, index, wait.id);
      m_running.push_back(running);
      if (wait.attended) stay = std::max(stay, running.opens);
    }
    if (stay > m_now) passTo(stay, current.id);
    m_result.minutes = std::max(m_result.minutes, m_now);
  }

  double nextOpening() const {
    double next = kNever;
    for (const Running& running : m_running) {
      if (running.opens > m_now && gates(running)) next = std::min(next, running.opens);
    }
    return next;
  }

  // Lets time go by, telling what opens, closes and is missed on the way. `busy` is the step the hands are on.
  void passTo(double until, const std::string& busy) {
    tellOpenings(until);
    tellClosings(until, busy);
    m_now = std::max(m_now, until);
  }

  void tellOpenings(double until) {
    for (Running& running : m_running) {
      if (running.openTold || running.opens > until) continue;
      running.openTold = true;
      tell(running.opens, RehearsalKind::Opens, running.step, running.wait->id);
      const bool atOnce = running.wait->opens.likely == units::Duration();
      if (gates(running) && !atOnce) tell(running.opens, RehearsalKind::Alert, running.step, running.wait->id);
    }
  }

  // At the very moment of closing a step may still start, so only what lies behind is over.
  void tellClosings(double until, const std::string& busy) {
    for (Running& running : m_running) {
      if (running.closeTold || running.closes >= until || running.closes == kNever) continue;
      running.closeTold = true;
      tell(running.closes, RehearsalKind::Closes, running.step, running.wait->id);
      for (const std::size_t gated : m_workflow.needing(running.wait->makes)) {
        if (m_started[gated]) continue;
        m_result.missed = true;
        tell(running.closes, RehearsalKind::Missed, gated, running.wait->id,
             busy.empty() ? step(running.step).id : busy);
      }
    }
  }

  const Workflow& m_workflow;
  const Expected& m_expected;
  std::optional<craft::Hands> m_hands;  // of the step before
  std::vector<bool> m_done;
  std::vector<bool> m_started;
  std::vector<Running> m_running;
  double m_now = 0;
  Rehearsal m_result;
};

}  // namespace

Rehearsal rehearse(const Workflow& workflow, const Expected& expected) { return Rehearser(workflow, expected).run(); }

Rehearsal rehearse(const Workflow& workflow) { return rehearse(workflow, Expected(workflow)); }

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
