#pragma once
// Leaf, scattered and laid.
#include <QPainter>

#include "app/painting/light.h"
#include "core/sheets/matter.h"

namespace app::painting {

void paintFlakes(QPainter& painter, const core::sheets::Scatter& scatter, double scale, const Light& light);

// Leaves side by side from the field's top left corner, each over the one before by its lap.
void paintLaidLeaf(QPainter& painter, const QPainterPath& shape, const core::sheets::Matter& matter, double scale,
                   const Light& light);

}  // namespace app::painting
