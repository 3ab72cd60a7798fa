#pragma once
// The state of one job: the fold of its events and the shop's over its workflow. Time is not part of it; questions that
// depend on the instant need a clock reading.
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

// The part of a job that does not change while it is worked, read once from the job file and its techniques.
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
  std::string deviceId;  // Done: the device that reported it
  // Grows from act to act in the order of the fold, whatever the clocks showed.
  std::size_t act = 0;
};

struct RunningWait {
  std::string id;
  const workflow::WorkflowStep* step = nullptr;
  const workflow::WorkflowWait* wait = nullptr;
  waits::ClockReading started;
  std::string startedBy;  // the act that began it
  std::vector<std::pair<waits::ClockReading, waits::Verdict>> looks;
  bool sure = false;  // the maker confirmed what he found, however far from what was expected
  std::set<intents::AlertClass> heard;
  struct Snoozed {
    waits::ClockReading at;
    units::Duration length;
  };
  std::map<intents::AlertClass, Snoozed> snoozed;
};

// A preparation of a bench that has not worked this job. It is shown, and counts here only once the maker accepts it.
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
  bool repeated = false;  // reports again what was done: it stays in the log and changes nothing

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
  // Why recorded measures can no longer be laid out; the design is then the plan's. Empty where they can be.
  base::Message unmeasurable;
  bool putAway = false;                      // off the bench, but not deleted; what runs still calls
  std::vector<LogLine> log;                  // everything, in order
  std::set<std::string> repeated;            // ids of events that report again what was done
  std::vector<PreparedElsewhere> elsewhere;  // what other benches made of the shop's steps, each oldest first
  std::set<std::string> voidedIntents;
  std::string lastIntent;                  // newest live act of the maker in this job, "" for none
  std::string lastUndo;                    // newest live undo, where nothing was done since; "" for none
  std::vector<std::string> unknownEvents;  // "type/version": stored, not folded
  bool readOnly() const { return !unknownEvents.empty(); }
  design::AsMade made() const;
};

// Folds events of the job's stream and the shop's bench streams (any order; duplicates are ignored). Which events of
// the benches count is defined in core/record/counting.h.
//
// A step of the job is done from the first live event that reports it, in the order of the fold, until it is brought
// back; a later report by another device moves no wait that runs. A step of the shop is done anew where the same bench
// does it again, where its shelf life was over, or where the maker took another bench's into use.
JobState fold(std::shared_ptr<const JobPlan> plan, std::vector<record::Event> events);

// Returns the state as it would be with that step done now and nothing else changed; the log stays as it is.
JobState withDone(const JobState& state, std::size_t step, const waits::ClockReading& now);

// Returns all state and no log as text: two jobs worked to the same place dump the same.
std::string dump(const JobState& state);

// Returns what was stated of a running wait and what has been found by touch since.
waits::WaitTerms termsOf(const JobState& state, const RunningWait& run, const waits::ClockLog& log);

// Answers what depends on the instant and on the shop. It refers to the state and the shop and owns neither.
class JobAt {
 public:
  // `way`: in which the maker is led.
  JobAt(const JobState& state, const shop::Shop& shop, const waits::ClockReading& now,
        craft::Way way = craft::Way::Every);

  const JobState& state() const { return m_state; }
  craft::Way way() const { return m_way; }
  const shop::Shop& shop() const { return m_shop; }
  const waits::ClockReading& now() const { return m_now; }
  waits::WaitState waitState(const RunningWait& wait) const;
  // Returns when it was expected to open, since its start, by its label and its rooms alone, before any touch test.
  units::Span expectedOpening(const RunningWait& wait) const;
  // Returns whether the maker has to confirm what was found: it is far from what was expected and has not been
  // confirmed yet. For a window that was taken up, this is put off until its act is done.
  bool asksWhetherSo(const RunningWait& wait) const;
  // Returns whether a wait still matters: a step that is not done (with a closing: not begun) needs its fact.
  bool matters(const RunningWait& wait) const;
  bool holds(const std::string& fact) const;
  bool isDone(std::size_t step) const;
  // Returns whether all needs of the step hold and all steps that must precede it are done.
  bool canStart(std::size_t step) const;
  // As canStart, but a step that has begun keeps the fact a window gave it, and `begunInTime` replaces the window.
  bool canFinish(std::size_t step, bool begunInTime) const;
  // Returns whether a shop preparation has outlived its shelf life while a step still needs it.
  bool expired(std::size_t step) const;
  // Returns how long ago the last thing was done to what a shop technique makes; nothing where nothing was.
  std::optional<units::Duration> ageOfBatch(const std::string& technique) const;
  // Returns the needs that do not hold, in the step's order.
  std::vector<std::string> missing(std::size_t step) const;
  // Returns the running tack window or open time that gates a step, open or not, or null.
  const RunningWait* gate(std::size_t step) const;
  // Returns the first step that needs the wait's fact and is neither done nor begun, if there is one.
  std::optional<std::size_t> gatedStep(const RunningWait& wait) const;
  // Returns the step of this job that was begun last and is not done; nothing where no step is in hand.
  std::optional<std::size_t> inHand() const;

 private:
  const JobState& m_state;
  const shop::Shop& m_shop;
  waits::ClockReading m_now;
  craft::Way m_way;
};

}  // namespace core::jobs
