#pragma once
// From a tree of parts to what a maker does: pieces in their places, cuts in their order, and what is left over.
#include "core/cutting/cutting_problem.h"
#include "core/cutting/slicing.h"

namespace core::cutting {

struct LaidPiece {
  int kind = 0;
  bool turned = false;  // against the kind
  Length x, y;
};

struct LaidSheet {
  std::vector<LaidPiece> pieces;
  std::vector<SheetCut> cuts;
  std::vector<Area> rest;
};

// Lays the tree out with the sheet's own kerf. In each part what is not needed is cut off first, so that the largest
// rest stays whole; then parts of one width follow one another. Requires that the tree fits.
LaidSheet layOut(const CuttingProblem& problem, const SlicedSheet& sliced);

}  // namespace core::cutting
