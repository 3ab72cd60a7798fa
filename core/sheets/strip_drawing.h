#pragma once
// A strip of paper as it lies in the hand: cut to its length, its ends square, its pattern where the piece will have
// it.
#include <optional>
#include <string>
#include <vector>

#include "core/design/design.h"
#include "core/sheets/drawing.h"

namespace core::sheets {

struct StripInHand {
  Drawing strip;                     // from its left end, what lies outwards on the piece up
  std::vector<Primitive> dimension;  // of the figure it was asked for
};

// Draws the strip that a figure is measured on ("band.inner.strip.horizontal", "band.inner.firstMotif.vertical");
// nothing for figures of anything else.
std::optional<StripInHand> drawStrip(const design::Design& design, const std::string& figureId);

}  // namespace core::sheets
