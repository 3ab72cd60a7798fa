#pragma once
// The work ahead on a fast clock: one pair of hands, typical times, nights not counted. Whoever chooses what comes next
// asks what could be started and works it; the clock goes on, waits open and close. The rehearsal of a job and the
// order of its work are both found on this clock.
#include <limits>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/workflow/agenda.h"
#include "core/workflow/batches.h"
#include "core/workflow/preparations.h"
#include "core/workflow/windows.h"

namespace core::workflow {

class FastClock {
 public:
  static constexpr double kNever = std::numeric_limits<double>::infinity();

  // What happens on it, in minutes from now.
  class Listener {
   public:
    virtual ~Listener() = default;
    virtual void begins(double, std::size_t /*step*/, const WorkflowWait&) {}
    // `gates`: some step that needs it has not been started.
    virtual void opens(double, std::size_t /*step*/, const WorkflowWait&, bool /*gates*/) {}
    virtual void closes(double, std::size_t /*step*/, const WorkflowWait&) {}
    // `inTheWay`: what the hands were on, or where they were free what the gated step was still without; nothing where
    // neither kept it.
    virtual void misses(double, std::size_t /*gated*/, std::size_t /*step*/, const WorkflowWait&,
                        std::optional<std::size_t> /*inTheWay*/) {}
  };

  // `starts`: when each step is started in an earlier plan, for the preparations (leadsOf); empty for none.
  FastClock(const Agenda& agenda, std::vector<double> starts, Listener* listener);

  double now() const { return m_now; }
  double workOf(std::size_t step) const { return m_work[step]; }
  // The steps whose predecessors are done, in list order. Waits may still stand before them.
  const std::set<std::size_t>& ready() const { return m_ready; }
  bool isStarted(std::size_t step) const { return m_started[step]; }
  // Returns whether a ready step's facts all hold. A preparation that can still be left is started only where it
  // changes neither its freshness nor the hands.
  bool canStart(std::size_t step) const { return startOf(step) <= m_now && holdsAll(step); }
  // Returns whether a step could follow at once when `turn` is worked from now on, its steps not done yet.
  bool canFollow(std::size_t step, const std::vector<std::size_t>& turn) const;
  // When the running waits that a ready step needs are over; now where none runs.
  double opensAt(std::size_t step) const;
  // The closing of the window that gates a step, or the end of a punctual wait's time; never where neither does.
  double closingOf(std::size_t step) const;
  // Returns whether more steps would start too late for their windows, those that are open and those that would be
  // opened, if these steps were worked now.
  bool wouldBreak(const std::vector<std::size_t>& turn) const;
  // The next moment at which a wait opens that gates something, a preparation has to be begun, or a batch that is still
  // needed is too old.
  double nextMoment() const;

  void work(std::size_t step);
  // The hands the act in hand needs; until told, those of the step worked last.
  void handsAre(craft::Hands hands) { m_hands = hands; }
  void passTo(double until) { passTo(until, std::nullopt); }
  // Lets all windows that are still open close.
  void end();

 private:
  // A wait that has started, in minutes since the start.
  struct Running {
    std::size_t step = 0;
    const WorkflowWait* wait = nullptr;
    std::size_t fact = 0;  // that it makes
    double opens = 0;
    double closes = kNever;
    double heed = kNever;  // where it is punctual: the end of its time
  };
  // A fact by number, since it is asked for again and again.
  struct Fact {
    std::vector<std::size_t> needing;   // steps, in list order
    std::size_t unstarted = 0;          // of those
    bool byWait = false;                // some wait makes it
    std::optional<std::size_t> newest;  // running wait that makes it
  };
  // A batch on the clock.
  struct Made {
    Batch batch;
    double oldAt = kNever;  // never: not made
    int times = 0;          // made anew
  };
  // What is known of this moment.
  struct Unmoved {
    int late = 0;         // steps that start too late though nothing else is worked
    double harmless = 0;  // minutes of other work that make no more too late
    double harmful = kNever;
    std::map<std::size_t, double> leading;  // steps that come before those that windows gate, and when they can begin
  };
  using Dues = std::map<std::size_t, Due>;                   // by step
  using Moments = std::set<std::pair<double, std::size_t>>;  // of running waits, by index

  const WorkflowStep& step(std::size_t index) const { return m_workflow.steps[index]; }
  std::size_t numberOf(const std::string& fact);
  // The earliest start of a step as far as it is a preparation.
  double startOf(std::size_t index) const {
    return m_hands && *m_hands != step(index).hands ? m_leads[index].due : m_leads[index].notBefore;
  }
  bool gates(const Running& running) const { return m_facts[running.fact].unstarted > 0; }
  const Running* runningFor(std::size_t fact) const;
  bool holds(std::size_t fact, double at) const;
  bool holdsAll(std::size_t step) const;
  double overFrom(std::size_t index, double from) const;
  bool opensWindow(std::size_t index) const;
  int lateAfter(const std::vector<std::size_t>& turn, std::map<std::size_t, double>* leading = nullptr) const;
  double freeFrom(std::size_t index, double at, const std::set<std::size_t>& inTurn, const Dues& dues,
                  std::map<std::size_t, double>& known, Due& due) const;
  bool isWanted(const Made& made) const;
  bool willBeOld(const Made& made) const;
  void stand(std::size_t index);
  void make(std::size_t index);
  void makeAnew(Made& made);
  void discardOld();
  double begin(std::size_t index, const WorkflowWait& wait, const AgendaWait& from);
  void passTo(double until, std::optional<std::size_t> busy);
  std::optional<std::size_t> lackedBy(std::size_t gated, const Running& window) const;
  void tellOpenings(double until);
  void tellClosings(double until, std::optional<std::size_t> busy);

  const Workflow& m_workflow;
  const Agenda& m_agenda;
  Listener* m_listener;
  std::vector<double> m_work;  // minutes of each step that is still to do
  std::vector<double> m_starts;
  std::vector<Lead> m_leads;
  std::vector<Made> m_made;
  std::optional<craft::Hands> m_hands;  // of the step worked last
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
  Moments m_heeded;  // running waits that are punctual and not over their time, by its end
  double m_now = 0;
  mutable std::optional<Unmoved> m_unmoved;
};

}  // namespace core::workflow
