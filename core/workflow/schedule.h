#pragma once
// Chooses among all orders that the facts allow. On the fast clock several ways of choosing are tried, and the best
// plan is taken, by what matters in this order: no window broken; finished soonest, to a hundredth, so that long waits
// are begun early; few changes of hands and of set-ups; few acts. Deterministic.
#include <vector>

#include "core/workflow/acts.h"

namespace core::workflow {

// Returns the turns in which the steps of a workflow are worked: each step once, after all that come before it. The
// steps may be in any order; `drafts` are the same steps. Of steps that nothing else parts, the one that comes first is
// worked first.
std::vector<Turn> turnsOf(const Workflow& workflow, const std::vector<DraftStep>& drafts);

}  // namespace core::workflow
