#pragma once
// Bevels cut into facets, each in the light that falls on it.
#include <QPainter>

#include "app/painting/light.h"
#include "core/sheets/drawing.h"

namespace app::painting {

// Requires a closed ring between the face edge of an opening and its sight edge.
void paintBevel(QPainter& painter, const core::sheets::Primitive& bevel, const QColor& material, double scale,
                const Light& light);

}  // namespace app::painting
