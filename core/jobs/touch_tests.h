#pragma once
// The touch tests of a job: which waits ask for one and in what order, which answers are possible, and how the
// technique calls them. Every screen that shows a test uses these.
#include <string>
#include <vector>

#include "core/jobs/job_state.h"

namespace core::jobs {

struct TouchTest {
  std::string wait;
  bool found = false;       // found by touch already; it only remains to find it past that
  bool windowOpen = false;  // a tack window or an open time runs: the test is needed before it closes
  units::Duration left;     // until it is due; below zero it is overdue. Of an open window, until it likely closes
  friend bool operator==(const TouchTest&, const TouchTest&) = default;
};

// Orders tests by urgency: a window that runs, then the test that has been due for longest.
bool comesFirst(const TouchTest& a, const TouchTest& b);

// Returns nothing where a wait asks for no test: no step needs its fact any more, or it is over for good.
std::optional<TouchTest> touchTestOf(const JobAt& job, const RunningWait& run);
// Returns all tests of a job, the most urgent first; waits begun together have one (wait_groups.h).
std::vector<TouchTest> touchTests(const JobAt& job);

// Returns the looks the maker is asked to confirm: for each wait found far from what was expected, its last look.
std::vector<intents::LookAt> doubtedLooks(const JobAt& job);

// In the order of their keys. A wait that is open from its start cannot be "not yet"; one that does not close, never
// past it.
std::vector<intents::Verdict> verdictsOf(const workflow::WorkflowWait& wait);
// Returns the verdict that finds a wait of this kind as it should be.
intents::Verdict foundOf(const workflow::WorkflowWait& wait);
const std::string& answerOf(const workflow::WorkflowWait& wait, intents::Verdict verdict);

}  // namespace core::jobs
