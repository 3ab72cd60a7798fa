#pragma once
// A technique whose own steps wait for each other can never be worked.
#include "core/base/problem.h"
#include "core/craft/technique.h"

namespace core::craft {

// Reports each cycle as the path of steps that closes it ("lay -> press -> lay"), at the first of them in the file.
// Only cycles that exist in every job are reported: an alternative that a job may choose otherwise is no cycle, and
// neither is a chain that runs from each thing to the one before it.
void checkCycles(const Technique& technique, base::Problems& problems);

}  // namespace core::craft
