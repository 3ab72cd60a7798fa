#include "core/workflow/rehearse.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <set>
#include <string_view>
#include <unordered_map>
#include <utility>

namespace core::workflow {
namespace {

constexpr double kNever = std::numeric_limits<double>::infinity();

// A wait that has started, in minutes since the start of the rehearsal.
struct Running {
  std::size_t step = 0;
  const WorkflowWait* wait = nullptr;
  std::size_t fact = 0;  // that it makes
  double opens = 0;
  double closes = kNever;
};

// A fact by number, since a rehearsal asks for each of them again and again.
struct Fact {
  std::vector<std::size_t> needing;   // steps, in list order
  std::size_t unstarted = 0;          // of those
  bool byWait = false;                // some wait makes it
  std::optional<std::size_t> newest;  // running wait that makes it
};

using Moments = std::set<std::pair<double, std::size_t>>;  // of running waits, by index

class Rehearser {
 public:
  explicit Rehearser(const Agenda& agenda)
      : m_workflow(agenda.workflow()),
        m_agenda(agenda),
        m_work(m_workflow.steps.size(), 0),
        m_started(m_workflow.steps.size(), true),
        m_needs(m_workflow.steps.size()),
        m_waitsFor(m_workflow.steps.size()),
        m_after(m_workflow.steps.size()) {
    for (const AgendaStep& ahead : agenda.steps()) {
      m_started[ahead.step] = false;
      m_work[ahead.step] = ahead.work.likely.inMinutes();
    }
    for (const AgendaStep& ahead : agenda.steps()) {
      const std::size_t i = ahead.step;
      for (const WorkflowWait& wait : step(i).waits) m_facts[numberOf(wait.makes)].byWait = true;
      for (const std::string& fact : step(i).needs) {
        const std::size_t number = numberOf(fact);
        m_needs[i].push_back(number);
        m_facts[number].needing.push_back(i);
        ++m_facts[number].unstarted;
      }
      for (const std::size_t earlier : step(i).before) {
        if (m_started[earlier]) continue;
        ++m_waitsFor[i];
        m_after[earlier].push_back(i);
      }
      if (m_waitsFor[i] == 0) m_ready.insert(i);
    }
    for (const AgendaRun& run : agenda.running()) {
      const double opens = begin(run.step, *run.wait, run.from);
      if (run.wait->attended) m_stay = std::max(m_stay, opens);
    }
  }

  Rehearsal run() {
    if (m_stay > 0) passTo(m_stay, "");
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

  std::size_t numberOf(const std::string& fact) {
    const auto [found, isNew] = m_numbers.emplace(fact, m_facts.size());
    if (isNew) m_facts.emplace_back();
    return found->second;
  }

  void tell(double at, RehearsalKind kind, std::size_t index, const std::string& wait = "",
            const std::string& other = "") {
    m_result.events.push_back({at, kind, step(index).id, other, wait});
  }

  // Whether steps that need the wait's fact have not started.
  bool gates(const Running& running) const { return m_facts[running.fact].unstarted > 0; }

  // The newest wait that makes a fact, or null where a step makes it directly.
  const Running* runningFor(std::size_t fact) const {
    const auto& newest = m_facts[fact].newest;
    return newest ? &m_running[*newest] : nullptr;
  }

  bool holds(std::size_t fact) const {
    if (const Running* running = runningFor(fact)) return m_now >= running->opens && m_now <= running->closes;
    // The step that makes it directly precedes this one and is done: only steps that are free to start are asked about.
    return !m_facts[fact].byWait;
  }

  // The closing of the window that gates a step; never where none does.
  double closingOf(std::size_t index) const {
    double closes = kNever;
    for (const std::size_t fact : m_needs[index]) {
      if (const Running* running = runningFor(fact)) closes = std::min(closes, running->closes);
    }
    return closes;
  }

  std::optional<std::size_t> choose() const {
    std::optional<std::size_t> chosen;
    double closes = kNever;
    for (const std::size_t i : m_ready) {
      if (!std::all_of(m_needs[i].begin(), m_needs[i].end(), [&](std::size_t fact) { return holds(fact); })) continue;
      const double closing = closingOf(i);
      if (!chosen || closing < closes) {
        chosen = i;
        closes = closing;
      }
    }
    return chosen;
  }

  void start(std::size_t index) {
    m_started[index] = true;
    m_ready.erase(index);
    for (const std::size_t fact : m_needs[index]) --m_facts[fact].unstarted;
  }

  void finish(std::size_t index) {
    for (const std::size_t later : m_after[index]) {
      if (--m_waitsFor[later] == 0) m_ready.insert(later);
    }
  }

  // A wait that starts now, or ran before; returns when it opens.
  double begin(std::size_t index, const WorkflowWait& wait, const AgendaWait& from) {
    Running running{index, &wait, numberOf(wait.makes), m_now + from.opens.likely.inMinutes(), kNever};
    if (from.closes) running.closes = m_now + from.closes->likely.inMinutes();
    m_facts[running.fact].byWait = true;
    m_facts[running.fact].newest = m_running.size();
    // A wait that opened before the agenda was made is not reported again.
    if (running.opens >= 0) m_openings.emplace(running.opens, m_running.size());
    if (running.closes < kNever) m_closings.emplace(running.closes, m_running.size());
    m_running.push_back(running);
    return running.opens;
  }

  void work(std::size_t index) {
    const WorkflowStep& current = step(index);
    tell(m_now, RehearsalKind::Step, index);
    m_result.hands += m_work[index];
    if (m_hands && *m_hands != current.hands) ++m_result.handsChanges;
    m_hands = current.hands;
    start(index);
    passTo(m_now + m_work[index], current.id);
    finish(index);
    double stay = m_now;
    for (const WorkflowWait& wait : current.waits) {
      tell(m_now, RehearsalKind::Wait, index, wait.id);
      const double opens = begin(index, wait, m_agenda.of(wait));
      if (wait.attended) stay = std::max(stay, opens);
    }
    if (stay > m_now) passTo(stay, current.id);
    m_result.minutes = std::max(m_result.minutes, m_now);
  }

  double nextOpening() const {
    for (auto next = m_openings.upper_bound({m_now, m_running.size()}); next != m_openings.end(); ++next) {
      if (gates(m_running[next->second])) return next->first;
    }
    return kNever;
  }

  // Lets time go by, telling what opens, closes and is missed on the way. `busy` is the step the hands are on.
  void passTo(double until, const std::string& busy) {
    tellOpenings(until);
    tellClosings(until, busy);
    m_now = std::max(m_now, until);
  }

  void tellOpenings(double until) {
    while (!m_openings.empty() && m_openings.begin()->first <= until) {
      const Running& running = m_running[m_openings.begin()->second];
      m_openings.erase(m_openings.begin());
      tell(running.opens, RehearsalKind::Opens, running.step, running.wait->id);
      const bool atOnce = running.wait->opens.likely == units::Duration();
      if (gates(running) && !atOnce) tell(running.opens, RehearsalKind::Alert, running.step, running.wait->id);
    }
  }

  // At the very moment of closing a step may still start, so only a closing before now is over.
  void tellClosings(double until, const std::string& busy) {
    while (!m_closings.empty() && m_closings.begin()->first < until) {
      const Running& running = m_running[m_closings.begin()->second];
      m_closings.erase(m_closings.begin());
      tell(running.closes, RehearsalKind::Closes, running.step, running.wait->id);
      for (const std::size_t gated : m_facts[running.fact].needing) {
        if (m_started[gated]) continue;
        m_result.missed = true;
        tell(running.closes, RehearsalKind::Missed, gated, running.wait->id,
             busy.empty() ? step(running.step).id : busy);
      }
    }
  }

  const Workflow& m_workflow;
  const Agenda& m_agenda;
  std::vector<double> m_work;           // minutes of each step that is still to do
  std::optional<craft::Hands> m_hands;  // of the step before
  std::vector<bool> m_started;          // or done before
  std::unordered_map<std::string_view, std::size_t> m_numbers;
  std::vector<Fact> m_facts;
  std::vector<std::vector<std::size_t>> m_needs;  // of each step, facts by number
  std::vector<std::size_t> m_waitsFor;            // of each step, how many that come before are not done
  std::vector<std::vector<std::size_t>> m_after;
  std::set<std::size_t> m_ready;  // neither started nor waiting for another
  std::vector<Running> m_running;
  Moments m_openings;  // not reported yet
  Moments m_closings;
  double m_stay = 0;  // until when a wait that runs keeps the hands
  double m_now = 0;
  Rehearsal m_result;
};

}  // namespace

Rehearsal rehearse(const Agenda& agenda) { return Rehearser(agenda).run(); }

Rehearsal rehearse(const Workflow& workflow) { return rehearse(Agenda(workflow)); }

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
