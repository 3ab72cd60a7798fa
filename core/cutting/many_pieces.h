#pragma once
// Many pieces: rules of thumb, and then over and over a few sheets emptied and filled anew while that makes the plan
// no worse. The same input always gives the same plan; the work is bounded by counting, never by a clock.
#include "core/cutting/cutting_problem.h"
#include "core/cutting/slicing.h"
#include "core/cutting/worth_bound.h"

namespace core::cutting {

// `least` is the bound for all pieces; a plan that reaches it ends the search. Where all stock has one kerf, a smaller
// kerf leaves no more pieces over and where it leaves as many never needs more worth.
SlicedPlan cutManyPieces(const CuttingProblem& problem, const Bounds& least);

}  // namespace core::cutting
