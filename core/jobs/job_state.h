#pragma once
// The state of one job: the fold of its events and the shop's over its workflow. Time is not part of it; what
// depends on the instant is asked with the clock in hand.
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <variant>
#include <vector>

#include "core/design/design.h"
#include "core/intents/intent.h"
#include "core/jobs/beside_work.h"
#include "core/record/event.h"
#include "core/record/happening.h"
#include "core/shop/shop.h"
#include "core/waits/wait_state.h"
#include "core/workflow/workflow.h"

namespace core::jobs {

// What does not change while a job is worked: read once from the texts it was taken in with.
struct JobPlan {
  std::string id;  // of the stream "job/<id>"
  std::string jobHash;
  design::Design design;
  workflow::Workflow workflow;
};

enum class StepStatus { Ahead, Begun, Done };

struct StepState {
  StepStatus status = StepStatus::Ahead;
  waits::ClockReading begunAt;
  waits::ClockReading doneAt;
  std::string intentId;  // of the act that last changed it
  std::string deviceId;  // Done: whose word it is
  // Grows from act to act in the order of the fold, whatever the clocks said.
  std::size_t act = 0;
};

struct RunningWait {
  std::string id;
  const workflow::WorkflowStep* step = nullptr;
  const workflow::WorkflowWait* wait = nullptr;
  waits::ClockReading started;
  std::string startedBy;  // the act that began it
  std::vector<std::pair<waits::ClockReading, waits::Verdict>> looks;
  bool sure = false;  // the maker said again that what he found is so, however far from what was expected
  std::set<intents::AlertClass> heard;
  struct Snoozed {
    waits::ClockReading at;
    units::Duration length;
  };
  std::map<intents::AlertClass, Snoozed> snoozed;
};

// A preparation of a bench that has not worked this job: it is told, and counts here only once the maker says so.
struct PreparedElsewhere {
  std::string step;
  std::string deviceId;
  std::string intentId;
  waits::ClockReading doneAt;
};

// A figure as it was measured.
struct MadeMeasure {
  units::Length value;
  std::string step;
  std::string intentId;
};

// One event of the job as the fold met it; undone acts stay in it.
struct LogLine {
  std::string intentId;
  std::shared_ptr<const record::Happening> what;  // never null
  std::string about;                              // the step, the wait or the board it is about; "" for none
  waits::ClockReading at;
  bool voided = false;
  bool repeated = false;  // said once more of what was done: it is kept and does nothing

  template <typename One>
  bool is() const {
    return std::holds_alternative<One>(*what);
  }
  template <typename One>
  const One* as() const {
    return std::get_if<One>(what.get());
  }
};

struct JobState {
  std::shared_ptr<const JobPlan> plan;
  std::vector<StepState> steps;                   // by workflow index
  std::map<std::string, bool> facts;              // facts made directly by steps; true or ended
  std::map<std::string, RunningWait> waits;       // by wait id: the newest run of each
  std::vector<RunningWait> earlierWaits;          // runs that ended and had been looked at, for learning
  std::map<std::string, MadeMeasure> measures;    // by figure
  std::map<std::string, design::Follow> follows;  // by board
  BesideWork beside;
  // The plan's design, with what was measured. Never null.
  std::shared_ptr<const design::Design> design;
  // Why measures on record cannot be laid out any more; the design is then the plan's. Empty where all is well.
  base::Message unmeasurable;
  bool putAway = false;                      // off the bench and kept; what runs still calls
  std::vector<LogLine> log;                  // everything, in order
  std::set<std::string> repeated;            // events that say once more what was done, by id
  std::vector<PreparedElsewhere> elsewhere;  // of each step of the shop what other benches have, oldest first
  std::set<std::string> voidedIntents;
  std::string lastIntent;                  // newest live act of the maker in this job, "" for none
  std::string lastUndo;                    // newest live undo, where nothing was done since; "" for none
  std::vector<std::string> unknownEvents;  // "type/version": kept, not folded
  bool readOnly() const { return !unknownEvents.empty(); }
  design::AsMade made() const;
};

// Folds events of the job's stream and the shop's bench streams (any order; duplicates are ignored). Of the benches'
// those count that core/record/counting.h names.
//
// A step of the job is done from the first live event on that says so, in the order of the fold, until it is brought
// back; what another device says of it later moves no wait that runs. A step of the shop is done anew where the same
// bench does it again, where its shelf life was over, or where the maker took another bench's into use.
JobState fold(std::shared_ptr<const JobPlan> plan, std::vector<record::Event> events);

// The state as it would be with that step done now and nothing else; the log and what it says stay as they are.
JobState withDone(const JobState& state, std::size_t step, const waits::ClockReading& now);

// Everything that is state and nothing that is log, as text: two jobs worked to the same place dump the same.
std::string dump(const JobState& state);

// What was stated of a running wait and what has been found by touch since.
waits::WaitTerms termsOf(const JobState& state, const RunningWait& run, const waits::ClockLog& log);

// What depends on the instant and on the shop. Looks at both; holds neither.
class JobAt {
 public:
  JobAt(const JobState& state, const shop::Shop& shop, const waits::ClockReading& now);

  const JobState& state() const { return m_state; }
  const shop::Shop& shop() const { return m_shop; }
  const waits::ClockReading& now() const { return m_now; }
  waits::WaitState waitState(const RunningWait& wait) const;
  // When it was expected to open before anything was found of it, since its start: by its label and its rooms alone.
  units::Span expectedOpening(const RunningWait& wait) const;
  // Whether the maker is to be asked if what was found of it is so: it lies far from what was expected and was not said
  // again. Of a window that was taken up the question waits until its act is done.
  bool asksWhetherSo(const RunningWait& wait) const;
  // Whether a wait still matters: something not yet done (with a closing: not yet begun) needs its fact.
  bool matters(const RunningWait& wait) const;
  bool holds(const std::string& fact) const;
  bool isDone(std::size_t step) const;
  // All needs hold and whoever must come before is done.
  bool canStart(std::size_t step) const;
  // As canStart, but a step that has begun keeps what a window gave it, and `begunInTime` stands for the window.
  bool canFinish(std::size_t step, bool begunInTime) const;
  // Whether a shop preparation has outlived its shelf life while something still needs it.
  bool expired(std::size_t step) const;
  // Needs that do not hold, in the step's order.
  std::vector<std::string> missing(std::size_t step) const;
  // The running tack window or open time that gates a step, open or not, or null.
  const RunningWait* gate(std::size_t step) const;
  // The first step that needs the wait's fact and is neither done nor begun; nothing where there is none.
  std::optional<std::size_t> gatedStep(const RunningWait& wait) const;
  // The step begun last and not done, in this job; nothing where no step is in hand.
  std::optional<std::size_t> inHand() const;

 private:
  const JobState& m_state;
  const shop::Shop& m_shop;
  waits::ClockReading m_now;
};

}  // namespace core::jobs
