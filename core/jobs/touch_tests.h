#pragma once
// The touch tests of a job: which waits ask for one and in what order, what may be answered, and how the technique
// calls the answers. Every screen that speaks of a test reads it here.
#include <string>
#include <vector>

#include "core/jobs/job_state.h"

namespace core::jobs {

struct TouchTest {
  std::string wait;
  bool found = false;       // found by touch already; what is left is to find it past it
  bool windowOpen = false;  // a tack window or an open time runs: the hand is wanted before it closes
  units::Duration left;     // until it is due; below zero it is overdue. Of an open window, until it likely closes
  friend bool operator==(const TouchTest&, const TouchTest&) = default;
};

// What the hand is wanted for first: a window that runs, then what has been due for longest.
bool comesFirst(const TouchTest& a, const TouchTest& b);

// Nothing where a wait asks for no test: nobody needs its fact any more, or it is over for good.
std::optional<TouchTest> touchTestOf(const JobAt& job, const RunningWait& run);
// All of a job's, the first one first.
std::vector<TouchTest> touchTests(const JobAt& job);

// What the maker is asked about once more: of each wait found far from what was expected its last look, as it is said
// again to be so.
std::vector<intents::LookAt> doubtedLooks(const JobAt& job);

// In the order of their keys. What is open from its start on cannot be "not yet"; what does not close never past it.
std::vector<intents::Verdict> verdictsOf(const workflow::WorkflowWait& wait);
// The verdict that finds a wait of this kind as it should be.
intents::Verdict foundOf(const workflow::WorkflowWait& wait);
const std::string& answerOf(const workflow::WorkflowWait& wait, intents::Verdict verdict);

}  // namespace core::jobs
