#pragma once
// Exact cutting of few pieces: every tree of cuts is counted, by the sizes it can bring each bundle of pieces together
// in, and then every way to share the pieces out among the sheets on hand.
#include "core/cutting/cutting_problem.h"
#include "core/cutting/slicing.h"

namespace core::cutting {

// Returns true for up to six pieces, and for more where the bundles they make are few enough for a fraction of a
// second. Where all stock has one kerf the kerf does not matter for this.
bool areFew(const CuttingProblem& problem);

// Returns the best plan: fewest pieces left over, then least worth, then fewest sheets. Requires that they are few.
SlicedPlan cutFewPieces(const CuttingProblem& problem);

}  // namespace core::cutting
