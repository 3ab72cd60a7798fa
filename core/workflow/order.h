#pragma once
// The order of work, derived from facts.
#include <vector>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/workflow/expand.h"

namespace core::workflow {

// Puts steps in list order: a step that makes a fact precedes the steps that need or end it, and a step that needs it
// precedes the steps that end it; of the steps free to start, the lowest (rank, thing, technique, place in its file) is
// first. A total order: the same steps in any order give the same list. Refuses a cycle and names the path of steps
// that closes it. Requires settled needs.
base::Result<Workflow, base::Message> inOrder(std::vector<DraftStep> drafts);

}  // namespace core::workflow
