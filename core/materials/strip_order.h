#pragma once
// The four strips of a band cut one after the other from one run of paper, numbered as they lie on it, so that the
// pattern each carries is the one its place in the band asks for.
//
// The run starts with the first strip. Each further strip begins at the earliest place behind the one before at which
// the pattern fits; a knife has no kerf. Between two strips less than a repeat is lost.
//   Mirror motifs: top, right, bottom, left; each strip's motif lies at its own figure from the cut end.
//   Directional motifs: clockwise from the bottom right corner (bottom, left, top, right), so that the pattern runs on
//   from one corner point to the next along the outer, the mean or the inner edge: the one that closes best.
//   Without a repeat: end to end.
// Figures are mm in double, exact but for rounding.
#include <string>
#include <vector>

#include "core/materials/repeat_match.h"

namespace core::materials {

enum class StripSide { Top, Right, Bottom, Left };

struct StripCut {
  int number = 1;  // along the run
  StripSide side = StripSide::Top;
  double begin = 0;  // of its first cut end, from the start of the run
  double length = 0;
  double lost = 0;        // paper between it and the strip before
  double firstMotif = 0;  // from its first cut end, 0 up to the repeat; 0 without one. Of a directional paper: where
                          // the pattern that began at the run's start begins anew
};

struct StripOrder {
  std::vector<StripCut> strips;  // four
  double run = 0;                // from the first cut end to the last
  double lost = 0;               // in all
};

StripOrder stripOrder(const design::Band& band, const design::BandLayout& placed);

}  // namespace core::materials
