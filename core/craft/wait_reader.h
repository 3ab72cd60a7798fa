#pragma once
// Reading of a step's waits.
#include <vector>

#include "core/craft/reading.h"

namespace core::craft {

std::vector<Wait> readWaits(const base::Node& node, const Scope& scope, base::Problems& problems);

}  // namespace core::craft
