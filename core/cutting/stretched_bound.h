#pragma once
// A bound from stretched sizes: a piece that leaves less beside it along a side than any other needs counts as wide as
// the sheet; one of which no more than two go side by side counts as half of it; and so on.
#include <cstdint>
#include <vector>

#include "core/cutting/cutting_problem.h"

namespace core::cutting {

// Returns a lower bound for cutting `counts` of each kind of piece where a sheet of each kind costs its entry in
// `costs`, in units of it. Requires costs of zero or more, one a kind of sheet, with at least one kind that each piece
// fits; `kerfs` has the same length. Proven for any way of laying rectangles out, not for cuts from edge to edge alone.
//
// A stretching sends each length of zero up to the sheet's to a share of zero up to one, so that lengths that fit side
// by side within the sheet have shares that fit within one. Then shares of width times shares of height add up to one
// at most on a sheet, as areas do.
double stretchedBound(const CuttingProblem& problem, const std::vector<int>& counts,
                      const std::vector<std::int64_t>& kerfs, const std::vector<double>& costs);

}  // namespace core::cutting
