#pragma once
// Reading of a technique's steps.
#include <vector>

#include "core/craft/reading.h"

namespace core::craft {

// `scope` is that of the technique itself: its own thing, or no kind where `when` could not be read.
std::vector<Step> readSteps(const base::Node& node, const Scope& scope, base::Problems& problems);

}  // namespace core::craft
