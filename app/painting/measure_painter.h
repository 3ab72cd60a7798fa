#pragma once
// A dimension in ink: of the number in hand, on the cutter's card and beside any other drawing.
#include <QPainter>
#include <vector>

#include "app/painting/inks.h"
#include "core/sheets/drawing.h"

namespace app::painting {

// A pen for lines that end where they are said to, in pixels.
QPen flat(const QColor& colour, double width);

// Width of a datum's line, in hairlines.
inline constexpr double kDatumWidth = 5;

struct MeasureColours {
  QColor ink;
  QColor worked;  // of the line to be made
  QColor inRing;  // seen through the ring at the datum
};

// Paints one line of a dimension laid out in pixels; roles are those of core::sheets::CardNumber's lines.
void paintMeasured(QPainter& painter, const core::sheets::Primitive& line, double hairline,
                   const MeasureColours& colours);

// Paints the lines of a measure (core::sheets::measureLines) laid out in pixels. Witness lines and the line to be made
// have a halo where they run over materials.
void paintMeasure(QPainter& painter, const std::vector<core::sheets::Primitive>& lines, const Inks& inks);

}  // namespace app::painting
