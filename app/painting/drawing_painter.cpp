#include "app/painting/drawing_painter.h"

#include <algorithm>

#include "app/painting/lined_painter.h"
#include "app/painting/paths.h"
#include "app/painting/piece_painter.h"
#include "core/sheets/piece.h"

namespace app::painting {
namespace {

using core::sheets::Primitive;
using core::sheets::Role;

// Returns the part of a dimension that has to be seen: its lines.
QRectF reachOf(const Primitive& primitive) {
  const auto* stroke = std::get_if<core::sheets::Stroke>(&primitive.shape);
  if (primitive.role != Role::Dimension || stroke == nullptr) return {};
  QRectF reach;
  for (const core::sheets::Point& point : stroke->points) {
    reach = reach.united(QRectF(scaledPoint(point, 1) - QPointF(0.5, 0.5), QSizeF(1, 1)));
  }
  return reach;
}

// A piece is drawn in its materials as soon as anything of it has one.
bool hasMaterials(const core::sheets::Drawing& drawing) {
  return std::any_of(drawing.primitives.begin(), drawing.primitives.end(),
                     [](const Primitive& primitive) { return primitive.matter.has_value(); });
}

// Returns the board that is seen whole from the back; "" where the face is drawn.
std::string rearOf(const core::sheets::Drawing& drawing) {
  if (drawing.side == core::sheets::Side::Face) return {};
  const auto face = std::find_if(drawing.primitives.begin(), drawing.primitives.end(),
                                 [](const Primitive& primitive) { return primitive.role == Role::BoardFace; });
  return face == drawing.primitives.end() ? std::string() : face->element;
}

Emphasis emphasisOf(const Primitive& primitive, const Painted& drawing) {
  const auto stands = [&](const std::string& thing) { return core::sheets::belongsTo(primitive.element, thing); };
  if (std::any_of(drawing.wrong.begin(), drawing.wrong.end(), stands)) return Emphasis::Wrong;
  return !drawing.worked.empty() && stands(drawing.worked) ? Emphasis::Worked : Emphasis::None;
}

void paintPiece(QPainter& painter, const Painted& drawing, const PieceView& view) {
  for (const Primitive& primitive : drawing.piece->primitives) paintShape(painter, primitive, view);
  for (const Primitive& primitive : drawing.piece->primitives) {
    const Emphasis emphasis = emphasisOf(primitive, drawing);
    if (emphasis == Emphasis::Worked) paintWorked(painter, primitive, view);
    if (emphasis == Emphasis::Wrong) paintLined(painter, primitive, emphasis, view.scale, view.inks);
  }
}

// Ink goes over pencil, so that no neighbour's edge runs across what is worked.
void paintLines(QPainter& painter, const Painted& drawing, const PieceView& view) {
  for (const bool inked : {false, true}) {
    for (const Primitive& primitive : drawing.piece->primitives) {
      const Emphasis emphasis = emphasisOf(primitive, drawing);
      if ((emphasis != Emphasis::None) == inked) paintLined(painter, primitive, emphasis, view.scale, view.inks);
    }
  }
}

}  // namespace

QTransform fitted(const Painted& drawing, const QSizeF& room, double hairline) {
  // A centre of an arc may lie off the piece: then the whole of the dimension is brought in with it.
  QRectF seen = drawing.seen.isNull() ? QRectF(0, 0, drawing.piece->width, drawing.piece->height) : drawing.seen;
  if (drawing.dimension) {
    for (const Primitive& primitive : *drawing.dimension) seen = seen.united(reachOf(primitive));
  }
  const double margin = 3 * hairline;
  const double scale =
      std::min((room.width() - 2 * margin) / seen.width(), (room.height() - 2 * margin) / seen.height());
  QTransform transform;
  transform.translate((room.width() - seen.width() * scale) / 2 - seen.left() * scale,
                      (room.height() - seen.height() * scale) / 2 - seen.top() * scale);
  transform.scale(scale, scale);
  return transform;
}

void paintDrawing(QPainter& painter, const Painted& drawing, const QSizeF& room, const Inks& inks) {
  if (!drawing.piece || drawing.piece->width <= 0 || drawing.piece->height <= 0) return;
  painter.setRenderHint(QPainter::Antialiasing);
  const QTransform fit = fitted(drawing, room, inks.hairline);
  // Pens are in pixels: only the place is the painter's, the scale goes into the points.
  const double scale = fit.m11();
  // A room narrower than its margins, as an item may have while a screen is laid out.
  if (!(scale > 0)) return;
  painter.translate(fit.dx(), fit.dy());
  static const Appearances kByName;
  const PieceView view{inks, drawing.appearances ? *drawing.appearances : kByName, scale, rearOf(*drawing.piece)};
  if (hasMaterials(*drawing.piece)) {
    paintPiece(painter, drawing, view);
  } else {
    paintLines(painter, drawing, view);
  }
  if (!drawing.dimension) return;
  for (const Primitive& primitive : *drawing.dimension) paintHalo(painter, primitive, scale, inks);
  for (const Primitive& primitive : *drawing.dimension) paintLined(painter, primitive, Emphasis::None, scale, inks);
}

}  // namespace app::painting
