#pragma once
// Composition: what the design switches on, which alternatives the job chose, every step filled in, every need
// met, and one deterministic order. The same design and techniques give the same workflow whatever the order
// the techniques were read in.
#include <vector>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/craft/catalogue.h"
#include "core/design/design.h"
#include "core/workflow/things.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

// Far beyond a mount anybody works, and few enough to be composed, rehearsed and shown at once.
inline constexpr std::size_t kMostSteps = 5000;

// Every reason why the job cannot be worked with these techniques: a needed fact nobody makes (and who needs
// it), a cycle (as the path of steps that closes it), a role or technique the job names but that does not exist, more
// steps than kMostSteps or more to put in order than this program takes upon itself. No more than
// base::kMostProblems, and problems.more for the rest.
using ComposeProblems = std::vector<base::Message>;

base::Result<Workflow, ComposeProblems> compose(const design::Design& design, const craft::Catalogue& catalogue,
                                                const ThingWords& words = {});

}  // namespace core::workflow
