#pragma once
// The best cutting of a small task by counting everything out: every assignment of pieces to sheets, and on each sheet
// every guillotine cut at every whole millimetre with every share of the pieces on its two sides. Where all sizes,
// margins and kerfs are whole millimetres no other cuts are needed: parts pushed to the left and to the top end there.
#include "tests/core/materials/random_cutting.h"

namespace tests {

struct BestCutting {
  int unplaced = 0;
  double worth = 0;
  int sheets = 0;
};

BestCutting countedOut(const CuttingTask& task);

}  // namespace tests
