#pragma once
// The motifs of patterned papers, each drawn once in its cell.
#include <QPainterPath>
#include <QSizeF>

#include "app/painting/materials.h"

namespace app::painting {

// Returns the motif in a cell of that size as one shape to be filled: x along the strip from 0, y from its inner edge
// outwards, in mm. What runs on at one end of the cell comes in at the other at the same height, so that cells and
// their mirror images join. Plain papers have none.
QPainterPath motif(Pattern pattern, const QSizeF& cell);

// The length of a cell where the paper tells no repeat, for a strip of width 1.
double usualLength(Pattern pattern);

}  // namespace app::painting
