#include "app/painting/measure_painter.h"

#include "app/painting/paths.h"

namespace app::painting {
namespace {

using core::sheets::Primitive;
using core::sheets::Role;

// Widths in hairlines.
constexpr double kWitness = 2;
constexpr double kLine = 4;
constexpr double kGiven = 5;
constexpr double kRing = 3;
constexpr double kHatching = 1.7;
constexpr double kHaloOfWitness = 6;
constexpr double kHaloOfGiven = 13;

bool isHead(const Primitive& primitive) {
  const auto* stroke = std::get_if<core::sheets::Stroke>(&primitive.shape);
  return stroke != nullptr && stroke->closed;
}

void draw(QPainter& painter, const Primitive& primitive, const QPen& pen, const QBrush& fill = Qt::NoBrush) {
  painter.setPen(pen);
  painter.setBrush(fill);
  painter.drawPath(pathOf(primitive, 1));
}

}  // namespace

QPen flat(const QColor& colour, double width) { return {colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin}; }

void paintMeasured(QPainter& painter, const Primitive& line, double hairline, const MeasureColours& colours) {
  switch (line.role) {
    case Role::Setting: draw(painter, line, flat(colours.ink, kWitness * hairline)); return;
    case Role::Waste: draw(painter, line, flat(colours.ink, kHatching * hairline)); return;
    case Role::BoardEdge: draw(painter, line, flat(colours.ink, kDatumWidth * hairline)); return;
    case Role::Line: draw(painter, line, flat(colours.worked, kGiven * hairline)); return;
    default: break;
  }
  if (isHead(line)) {
    draw(painter, line, Qt::NoPen, colours.ink);
  } else if (std::holds_alternative<core::sheets::Path>(line.shape)) {
    draw(painter, line, flat(colours.ink, kRing * hairline), colours.inRing);
  } else {
    draw(painter, line, flat(colours.ink, kLine * hairline));
  }
}

void paintMeasure(QPainter& painter, const std::vector<Primitive>& lines, const Inks& inks) {
  painter.setRenderHint(QPainter::Antialiasing);
  for (const Primitive& line : lines) {
    if (line.role == Role::Setting) draw(painter, line, flat(inks.cloth, kHaloOfWitness * inks.hairline));
    if (line.role == Role::Line) draw(painter, line, flat(inks.cloth, kHaloOfGiven * inks.hairline));
  }
  for (const Primitive& line : lines) paintMeasured(painter, line, inks.hairline, {inks.ink, inks.worked, inks.cloth});
}

}  // namespace app::painting
