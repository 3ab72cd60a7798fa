#pragma once
// Reads what a technique wants.
#include <vector>

#include "core/craft/reading.h"

namespace core::craft {

// `scope` is that of the technique's own thing.
std::vector<Want> readWants(const base::Node& node, const Scope& scope, base::Problems& problems);

}  // namespace core::craft
