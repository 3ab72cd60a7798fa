#pragma once
// Ensures that a smaller kerf never needs more worth, though rules of thumb alone do not keep that promise: the search
// begins at a fixed, widest kerf and goes down fixed rungs to the last that is not below the true kerf, at each making
// the plan better or leaving it as it is. A plan that has room for a wider kerf has room for a narrower one, and on its
// way down a smaller kerf passes every plan that a larger one ends with.
#include <cstdint>
#include <vector>

namespace core::cutting {

struct Rung {
  std::int64_t kerf = 0;  // nm
  bool isCommon = false;  // of many blades
};

// Falling, from beyond ten metres to the last that is not below `kerf`: few as long as blades are not so
// wide, then every tenth of a millimetre and every 1/64 in. A coarse ladder has the common
// ones and the wide ones alone.
std::vector<Rung> rungsDownTo(std::int64_t kerf, bool isCoarse);

}  // namespace core::cutting
