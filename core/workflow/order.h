#pragma once
// The order of work, derived from facts.
#include <vector>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/workflow/expand.h"

namespace core::workflow {

// Puts steps in list order and gathers them into acts: a step that makes a fact precedes the steps that need or end it,
// a step that needs it precedes the steps that end it, and a step that opens a window comes after whatever else the
// gated step waits for. Among the orders left the best plan is taken (schedule.h); of steps that nothing else parts,
// the lowest (rank, thing, technique, place in its file) is first. The same steps in any order give the same list.
// Equal settings of a tool are made once (shared_settings.h). Refuses a cycle and names the path of steps that closes
// it, and settings of one tool that stand in each other's way. Requires settled needs.
base::Result<Workflow, base::Message> inOrder(std::vector<DraftStep> drafts);

}  // namespace core::workflow
