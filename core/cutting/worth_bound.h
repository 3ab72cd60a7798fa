#pragma once
// Lower bounds for any cutting of the pieces: the worth of new sheets, and how many sheets.
#include <cstdint>
#include <vector>

#include "core/cutting/cutting_problem.h"

namespace core::cutting {

struct Bounds {
  std::int64_t worth = 0;  // units
  int sheets = 0;          // of any worth, offcuts too
};

// Proven for cutting `counts` of each kind of piece, all of them. `kerf` is one for all sheets in place of their own.
// `isQuick` leaves out the parts that take milliseconds; its bound is never above the full one.
Bounds boundsOf(const CuttingProblem& problem, const std::vector<int>& counts, const std::int64_t* kerf = nullptr,
                bool isQuick = false);

}  // namespace core::cutting
