#pragma once
// One sheet filled by rule of thumb: piece after piece goes into the corner of one of the parts still free, and that
// part is cut in two beside it.
#include <cstdint>
#include <vector>

#include "core/materials/slicing.h"

namespace core::materials {

// A piece's size with the kerf added.
struct PieceSize {
  std::int64_t width = 0, height = 0;
  bool mayTurn = false;
};

struct FillRule {
  enum class Choice { SmallestPart, NarrowestGap, ShortestLongGap, LargestPart };
  enum class Split { WholeAlongLonger, WholeAlongShorter, EvenParts, Upright, Level };
  Choice choice = Choice::SmallestPart;
  Split split = Split::WholeAlongLonger;
};

// Pieces are tried in the order of their kinds in `order`; what was placed is taken from `left`. Sizes with the kerf
// added. No slices where nothing fits.
std::vector<Slice> fillSheet(std::int64_t width, std::int64_t height, const std::vector<PieceSize>& sizes,
                             const std::vector<int>& order, FillRule rule, std::vector<int>& left);

}  // namespace core::materials
