#pragma once
// The best cutting of a small task by counting everything out: every assignment of pieces to sheets, and on each sheet
// every guillotine cut at every whole millimetre with every share of the pieces on its two sides. Where all sizes,
// margins and kerfs are whole millimetres no other cuts are needed: parts pushed to the left and to the top end there.
#include <functional>

#include "tests/core/cutting/random_cutting.h"

namespace tests {

struct BestCutting {
  int unplaced = 0;
  double worth = 0;
  int sheets = 0;
};

BestCutting countedOut(const CuttingTask& task);

// In which ways a piece may lie on a sheet of that stock, by index: its width and height there, whole millimetres.
using WaysOn = std::function<std::vector<std::pair<int, int>>(std::size_t piece, std::size_t stock)>;

// The same with ways of the caller's own in place of those the pieces and sheets state.
BestCutting countedOut(const CuttingTask& task, const WaysOn& waysOn);

}  // namespace tests
