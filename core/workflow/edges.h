#pragma once
// What of the order of steps the facts alone say. Only this folder uses it.
#include <cstddef>
#include <optional>
#include <vector>

#include "core/workflow/expand.h"

namespace core::workflow {

using Edges = std::vector<std::vector<std::size_t>>;  // for each step, those that come before it, in order

// Returns nothing where there are too many pairs. Requires settled needs.
std::optional<Edges> edgesOf(const std::vector<DraftStep>& drafts);

// Returns the steps in an order in which each follows those before it; fewer than all where there is a cycle.
std::vector<std::size_t> sortedBy(const Edges& before);

}  // namespace core::workflow
