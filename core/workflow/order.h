#pragma once
// The order of work, derived from facts.
#include <vector>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/workflow/expand.h"

namespace core::workflow {

// Puts steps in list order: whoever makes a fact comes before whoever needs or ends it, whoever needs it before
// whoever ends it; among those free to go the lowest (rank, thing, technique, place in its file) first. A total
// order: the same steps in any order give the same list. Refuses a cycle, telling the path of steps that closes
// it. Requires settled needs.
base::Result<Workflow, base::Message> inOrder(std::vector<DraftStep> drafts);

}  // namespace core::workflow
