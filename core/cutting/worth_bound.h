#pragma once
// What no cutting of the pieces can stay below: worth of new sheets, and how many sheets.
#include <cstdint>
#include <vector>

#include "core/cutting/cutting_problem.h"

namespace core::cutting {

struct Bounds {
  std::int64_t worth = 0;  // units
  int sheets = 0;          // of any worth, offcuts too
};

// Proven for cutting `counts` of each kind of piece, all of them. `kerf`: one for all sheets in place of their own.
// `isQuick` leaves out what takes milliseconds and is never above what the whole gives.
Bounds boundsOf(const CuttingProblem& problem, const std::vector<int>& counts, const std::int64_t* kerf = nullptr,
                bool isQuick = false);

}  // namespace core::cutting
