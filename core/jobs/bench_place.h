#pragma once
// Finds where the maker is in a job at an instant: the step to show, the step done last, what follows and what runs.
#include <optional>
#include <string>
#include <vector>

#include "core/jobs/job_state.h"

namespace core::jobs {

// The kind of page the bench shows, and what it is about.
struct BenchStand {
  enum class Kind {
    Step,      // a step can be worked now
    Waiting,   // nothing can be started until a wait is over
    Missed,    // a window closed before its step began: the technique's remedy has to be taken up
    Finished,  // every step is done
    Stuck,     // nothing can start and nothing runs: only after a fault the techniques cannot mend
  };
  Kind kind = Kind::Step;
  std::optional<std::size_t> step;  // Step: the first to work; Missed: the one that was gated
  // Step: what of its act can be worked in one go from now on, in order, in the way this bench is led.
  std::vector<std::size_t> steps;
  std::string wait;  // Waiting: the one to be tested first; Missed: the window
  friend bool operator==(const BenchStand&, const BenchStand&) = default;
};

struct BenchPlace : BenchStand {
  std::optional<std::size_t> lastDone;  // newest live done step
  waits::ClockReading lastDoneAt;
  std::size_t done = 0;  // acts done and in all, of the way this bench is led
  std::size_t all = 0;
  std::size_t stepsDone = 0;
};

// What became of a stage of the piece.
enum class StageStanding { Ahead, Now, Drying, Done, Begun };
struct StageAt {
  craft::Stage stage = craft::Stage::None;
  StageStanding standing = StageStanding::Ahead;
  friend bool operator==(const StageAt&, const StageAt&) = default;
};
// Returns the stages this job passes through, in their order. Drying: something begun in it is still waited for. Begun:
// some of it is done, the rest comes later, and the hands are on another.
std::vector<StageAt> stagesOf(const JobAt& job, const BenchStand& place);

// Order of choice: a step begun; a step gated by an open window (the one closing soonest); a missed window;
// otherwise the first in list order that can start and is no preparation that would be too old when it is used.
BenchPlace benchPlace(const JobAt& job);

// Returns the steps that were done with the newest act, in list order.
std::vector<std::size_t> doneTogether(const JobAt& job, const BenchPlace& place);

// Returns what the bench will show once the act it shows is done now: the same choice, made from the state that
// follows. Returns nothing where it shows no step.
std::optional<BenchStand> standAfter(const JobAt& job, const BenchStand& here);

}  // namespace core::jobs
