#include "app/painting/drawing_painter.h"

#include <QPainterPath>
#include <algorithm>

#include "app/painting/paths.h"
#include "core/sheets/piece.h"

namespace app::painting {
namespace {

using core::sheets::Primitive;
using core::sheets::Role;

struct Style {
  QPen pen;
  QBrush fill = Qt::NoBrush;
};

// Returns whether a shape is filled when it is worked: thin lines would vanish under an outline alone.
bool isFilledWhenWorked(Role role) {
  return role == Role::Band || role == Role::Line || role == Role::Spandrel || role == Role::Wash ||
         role == Role::Leaf || role == Role::Bevel;
}

QColor mixed(const QColor& ground, const QColor& with, double share) {
  const auto channel = [share](double a, double b) { return static_cast<float>(a + (b - a) * share); };
  return QColor::fromRgbF(channel(ground.redF(), with.redF()), channel(ground.greenF(), with.greenF()),
                          channel(ground.blueF(), with.blueF()));
}

QPen rounded(const QColor& colour, double width) { return {colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin}; }

// Of an act: the piece in quiet greys, tools outlined in ink, colour only where the hand lays something or moves.
Style styleOfAct(Role role, bool closed, const Inks& inks) {
  QColor film = inks.worked;
  film.setAlphaF(0.38F);
  const auto filled = [closed](const QColor& colour) { return closed ? QBrush(colour) : QBrush(Qt::NoBrush); };
  switch (role) {
    case Role::Section: return {rounded(inks.ink, 1.5 * inks.hairline), filled(mixed(inks.ground, inks.pencil, 0.32))};
    case Role::Sheet: return {rounded(inks.ink, 1.5 * inks.hairline), filled(mixed(inks.ground, inks.pencil, 0.05))};
    case Role::Tool: return {rounded(inks.ink, 2 * inks.hairline), filled(inks.ground)};
    case Role::Blade: return {rounded(inks.ink, 1.5 * inks.hairline), filled(inks.ink)};
    case Role::Film: return {rounded(inks.worked, 1.5 * inks.hairline), filled(film)};
    case Role::Motion: return {rounded(inks.worked, 4 * inks.hairline), filled(inks.worked)};
    case Role::Waste: return {rounded(inks.pencil, inks.hairline)};
    default: return {rounded(inks.pencil, inks.hairline)};
  }
}

Style styleOf(const Primitive& primitive, bool worked, bool wrong, bool closed, const QColor& tint, const Inks& inks) {
  if (isOfAct(primitive.role)) return styleOfAct(primitive.role, closed, inks);
  const bool dimension = primitive.role == Role::Dimension || primitive.role == Role::DimensionText;
  const bool mark = primitive.role == Role::Mark;
  const QColor colour = worked || dimension ? inks.worked : mark ? inks.ink : inks.pencil;
  Style style{QPen(colour, worked || dimension ? 3 * inks.hairline : inks.hairline)};
  if (wrong) style.pen = QPen(inks.worked, 3 * inks.hairline, Qt::DashLine);
  if (tint.isValid() && closed) {
    // By lamp a board in full light would blind.
    constexpr double kByDay = 0.92;
    constexpr double kByLamp = 0.6;
    style.fill = mixed(inks.ground, tint, inks.ground.lightnessF() > 0.5F ? kByDay : kByLamp);
    return style;
  }
  if (mark || (worked && closed && isFilledWhenWorked(primitive.role))) style.fill = colour;
  return style;
}

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

void paintPath(QPainter& painter, const QPainterPath& path, const Style& style) {
  painter.setPen(style.pen);
  painter.setBrush(style.fill);
  painter.drawPath(path);
}

bool isClosed(const Primitive& primitive) {
  if (const auto* line = std::get_if<core::sheets::Path>(&primitive.shape)) return line->closed;
  if (const auto* stroke = std::get_if<core::sheets::Stroke>(&primitive.shape)) return stroke->closed;
  return true;
}

// Texts of the drawing are too small for the bench; the figure stands beside it instead.
void paintOne(QPainter& painter, const Primitive& primitive, bool worked, bool wrong, const QColor& tint, double scale,
              const Inks& inks) {
  if (std::holds_alternative<core::sheets::Text>(primitive.shape)) return;
  paintPath(painter, pathOf(primitive, scale), styleOf(primitive, worked, wrong, isClosed(primitive), tint, inks));
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
  painter.translate(fit.dx(), fit.dy());
  const auto stands = [](const Primitive& primitive) {
    return [&primitive](const std::string& thing) { return core::sheets::belongsTo(primitive.element, thing); };
  };
  const auto tintOf = [&](const Primitive& primitive) {
    const auto found = drawing.tints.find({primitive.element, primitive.role});
    return found == drawing.tints.end() ? QColor() : found->second;
  };
  // Ink goes over pencil, so that no neighbour's edge runs across what is worked.
  for (const bool inked : {false, true}) {
    for (const Primitive& primitive : drawing.piece->primitives) {
      const bool wrong = std::any_of(drawing.wrong.begin(), drawing.wrong.end(), stands(primitive));
      const bool worked = !wrong && !drawing.worked.empty() && stands(primitive)(drawing.worked);
      if ((worked || wrong) == inked) paintOne(painter, primitive, worked, wrong, tintOf(primitive), scale, inks);
    }
  }
  if (drawing.dimension) {
    for (const Primitive& primitive : *drawing.dimension) paintOne(painter, primitive, false, false, {}, scale, inks);
  }
}

}  // namespace app::painting
