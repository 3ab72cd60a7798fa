#pragma once
// A cutting plan checked by cutting it: on its own, sharing nothing with what made it.
#include <string>

#include "tests/core/cutting/random_cutting.h"

namespace tests {

// What is wrong with the plan, or nothing. Every cut divides a part in hand from edge to edge; what is in hand at the
// end is the pieces, in their sizes, and the rest; no two overlap; areas with what the kerf took make the usable
// sheet, to the square nanometre; grain and quantities are kept; each piece is placed once or left over; worth is that
// of the new sheets, bound and exactness agree with it.
std::string faultOf(const CuttingTask& task, const core::cutting::CuttingPlan& plan);

// By the true sizes, whatever the indices: equal for two plans that cut alike.
std::string layoutOf(const CuttingTask& task, const core::cutting::CuttingPlan& plan);

}  // namespace tests
