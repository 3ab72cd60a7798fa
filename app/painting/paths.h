#pragma once
// Outlines and shapes of the core as paths of the painter.
#include <QPainterPath>
#include <functional>
#include <vector>

#include "core/sheets/drawing.h"

namespace app::painting {

inline QPointF scaledPoint(const core::sheets::Point& point, double scale) {
  return {point.x * scale, point.y * scale};
}

void addSegments(QPainterPath& path, const std::vector<core::geometry::Segment>& segments, bool closed, double scale);

// Returns the shape as a path; a text has none.
QPainterPath pathOf(const core::sheets::Primitive& primitive, double scale);

// Returns what the chosen shapes of a drawing cover together, in its millimetres; null where none is chosen.
QRectF extentOf(const core::sheets::Drawing& drawing,
                const std::function<bool(const core::sheets::Primitive&)>& chosen);

}  // namespace app::painting
