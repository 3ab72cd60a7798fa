#pragma once
// Patterned paper at its true repeat and place.
#include <QPainter>

#include "app/painting/appearance.h"
#include "app/painting/light.h"
#include "core/sheets/matter.h"

namespace app::painting {

// Paints paper of the piece inside `shape`, which is in pixels with the piece's corner at the origin and `scale` pixels
// to the mm: a strip along its run, or a sheet where the matter has none. It looks as `own` says, the picture before
// the colour, and else as its name says.
void paintPaper(QPainter& painter, const QPainterPath& shape, const core::sheets::Matter& matter, const Appearance& own,
                double scale, const Light& light);

}  // namespace app::painting
