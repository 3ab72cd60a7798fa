#pragma once
// A job of several identical pieces: its steps once for each of them.
#include <vector>

#include "core/workflow/expand.h"

namespace core::workflow {

// Repeats the steps of one piece for `count` pieces. What belongs to the shop, and what a technique does once for all
// pieces, stays single: its facts are those of every piece, and it needs those of all. The steps of a further piece
// bear its number: "cut-windows/cut-window@top#2". Steps of all pieces may be worked in one act where no window would
// run out meanwhile, the parts of a field only within their piece. Requires settled needs and count > 0.
std::vector<DraftStep> repeatedForPieces(std::vector<DraftStep> drafts, int count, const ThingWords& words);

}  // namespace core::workflow
