#pragma once
// Trimming moved pieces where they cross. Only move.cpp calls this.
#include <vector>

#include "core/geometry/move.h"

namespace core::geometry::detail {

// Returns the one loop among `pieces` (in order; each may or may not meet the next) whose every point is at least |d|
// from the outline they were moved from. Pieces are cut where they cross and parts that are too near are dropped.
base::Result<Outline, MoveProblem> trimmed(const Outline& from, const std::vector<Segment>& pieces, double d);

}  // namespace core::geometry::detail
