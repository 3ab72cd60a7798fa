#include "app/painting/lined_painter.h"

#include <QPainterPath>

#include "app/painting/paths.h"

namespace app::painting {
namespace {

using core::sheets::Primitive;
using core::sheets::Role;

// On each side of a dimension's line, in hairlines.
constexpr double kHaloBeside = 4;
constexpr double kDimension = 3;
constexpr double kActOutline = 1.5;

struct Style {
  QPen pen;
  QBrush fill = Qt::NoBrush;
};

// Returns whether a shape is filled when it is worked: thin lines would vanish under an outline alone.
bool isFilledWhenWorked(Role role) {
  return role == Role::Band || role == Role::Line || role == Role::Spandrel || role == Role::Wash ||
         role == Role::Leaf || role == Role::Bevel;
}

QPen rounded(const QColor& colour, double width) { return {colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin}; }

// Of an act: the piece in quiet greys, tools outlined in ink, colour only where the hand lays something or moves.
Style styleOfAct(Role role, bool closed, const Inks& inks) {
  QColor film = inks.worked;
  film.setAlphaF(0.38F);
  const auto filled = [closed](const QColor& colour) { return closed ? QBrush(colour) : QBrush(Qt::NoBrush); };
  switch (role) {
    case Role::Section: return {rounded(inks.ink, 1.5 * inks.hairline), filled(mixed(inks.ground, inks.pencil, 0.32))};
    case Role::Sheet:
      return {rounded(inks.ink, kActOutline * inks.hairline), filled(mixed(inks.ground, inks.pencil, 0.05))};
    case Role::Tool: return {rounded(inks.ink, 2 * inks.hairline), filled(inks.ground)};
    case Role::Blade: return {rounded(inks.ink, 1.5 * inks.hairline), filled(inks.ink)};
    case Role::Film: return {rounded(inks.worked, 1.5 * inks.hairline), filled(film)};
    case Role::Motion: return {rounded(inks.worked, 4 * inks.hairline), filled(inks.worked)};
    case Role::Waste: return {rounded(inks.pencil, inks.hairline)};
    default: return {rounded(inks.pencil, inks.hairline)};
  }
}

bool isDimension(Role role) { return role == Role::Dimension || role == Role::DimensionText; }

Style styleOf(const Primitive& primitive, Emphasis emphasis, bool closed, const Inks& inks) {
  if (isOfAct(primitive.role)) return styleOfAct(primitive.role, closed, inks);
  if (emphasis == Emphasis::Wrong) return {QPen(inks.worked, 3 * inks.hairline, Qt::DashLine)};
  // A dimension is in ink: what is to be made is the one line in the colour of work.
  const bool dimension = isDimension(primitive.role);
  const bool worked = emphasis == Emphasis::Worked && !dimension;
  const bool mark = primitive.role == Role::Mark;
  const QColor colour = worked ? inks.worked : mark || dimension ? inks.ink : inks.pencil;
  Style style{QPen(colour, worked || dimension ? kDimension * inks.hairline : inks.hairline)};
  if (mark || (emphasis == Emphasis::Worked && closed && isFilledWhenWorked(primitive.role))) style.fill = colour;
  return style;
}

bool isClosed(const Primitive& primitive) {
  if (const auto* line = std::get_if<core::sheets::Path>(&primitive.shape)) return line->closed;
  if (const auto* stroke = std::get_if<core::sheets::Stroke>(&primitive.shape)) return stroke->closed;
  return true;
}

}  // namespace

void paintLined(QPainter& painter, const Primitive& primitive, Emphasis emphasis, double scale, const Inks& inks) {
  if (std::holds_alternative<core::sheets::Text>(primitive.shape)) return;
  const Style style = styleOf(primitive, emphasis, isClosed(primitive), inks);
  painter.setPen(style.pen);
  painter.setBrush(style.fill);
  painter.drawPath(pathOf(primitive, scale));
}

void paintActOutline(QPainter& painter, const QPainterPath& path, const Inks& inks) {
  painter.strokePath(path, rounded(inks.ink, kActOutline * inks.hairline));
}

void paintHalo(QPainter& painter, const Primitive& primitive, double scale, const Inks& inks) {
  if (primitive.role != Role::Dimension) return;
  painter.strokePath(pathOf(primitive, scale),
                     QPen(inks.ground, (kDimension + 2 * kHaloBeside) * inks.hairline, Qt::SolidLine, Qt::FlatCap));
}

}  // namespace app::painting
