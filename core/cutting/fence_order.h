#pragma once
// The order of a sheet's cuts.
#include <vector>

#include "core/cutting/sheet_cutting.h"

namespace core::cutting {

// A cut and the cut that makes its part.
struct DependentCut {
  SheetCut cut;
  int after = -1;  // none: the whole sheet
};

// Cuts whose part is in hand and whose setting is the fence's are next, whatever part they divide; else the fence is
// moved to a setting that it can be done with, so that it need not come back, and failing that to the next in order.
std::vector<SheetCut> inFenceOrder(const std::vector<DependentCut>& cuts);

}  // namespace core::cutting
