#pragma once
// Why a smaller kerf never needs more worth, though rules of thumb alone do not keep that promise: they are asked at
// fixed kerfs, the rungs, and the best answer from the rung at or above the true kerf upwards is laid out with the true
// kerf. A cutting that has room for a wider kerf has room for a narrower one; and a smaller kerf asks every rung that
// a larger one asks, and more.
#include <cstdint>
#include <vector>

namespace core::materials {

struct Rung {
  std::int64_t kerf = 0;  // nm
  bool isThorough = false;
};

// From the rung at or above `kerf` to beyond ten metres, ascending. Rungs are every tenth of a millimetre and every
// 1/64 in while blades are so narrow, then fewer. A coarse ladder has one rung in ten.
std::vector<Rung> rungsFrom(std::int64_t kerf, bool isCoarse);

}  // namespace core::materials
