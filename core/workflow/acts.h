#pragma once
// Acts: what the hand does in one go. The order of work is found in turns, each a stretch of steps worked one after
// another; here turns become the acts of the two ways of being led.
#include <map>
#include <string>
#include <vector>

#include "core/workflow/expand.h"

namespace core::workflow {

// One stretch of steps, by index in list order, and the minutes at which it starts and ends on the fast clock.
struct Turn {
  std::vector<std::size_t> steps;
  double from = 0;
  double to = 0;
  std::vector<std::size_t> anew;  // steps of batches grown old that were worked again before it
};

// The acts of the two ways: every step is in exactly one act of each.
struct Acts {
  std::vector<Act> every;
  std::vector<Act> brief;
};

// Returns the acts that turns come to; their steps are those of `workflow`, of which `drafts` are the same. Turns are
// never joined across a wait, a window, another stage or other hands, and only where they work the same things.
Acts actsOf(const Workflow& workflow, const std::vector<DraftStep>& drafts, const std::vector<Turn>& turns);

// Returns the hands that steps worked in one act need: those that are hardest to get clean of.
craft::Hands handsOf(const Workflow& workflow, const std::vector<std::size_t>& steps);

// Returns the title of an act, or of what is left of it.
std::string titleOf(const Workflow& workflow, const Act& act, const std::vector<std::size_t>& steps);

// Returns the figures of an act in the order of use, as far as windows marked in that way need them; one that several
// of its steps name comes once, with the greatest count, where they work the same piece.
std::vector<WorkflowFigure> figuresOf(const Workflow& workflow, const std::vector<std::size_t>& steps,
                                      units::Marking marking);
// Returns whether a window marked in that way needs the figure.
bool isNeeded(const WorkflowFigure& figure, units::Marking marking);

// The setting of each tool as work goes on.
class Settings {
 public:
  // Returns whether the step sets its tool to something else than it is set to.
  bool sets(const WorkflowStep& step);

 private:
  std::map<std::string, std::string> m_to;
};

}  // namespace core::workflow
