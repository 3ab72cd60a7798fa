#pragma once
// Reading of when a technique is part of a job, and of how its thing is split into parts.
#include <optional>

#include "core/craft/reading.h"

namespace core::craft {

// Returns nothing where it cannot be determined what the technique is done for.
std::optional<When> readWhen(const base::Node& node, base::Problems& problems);

// `scope` is that of the technique's own thing.
std::optional<Repeat> readRepeat(const base::Node& node, const Scope& scope, base::Problems& problems);

}  // namespace core::craft
