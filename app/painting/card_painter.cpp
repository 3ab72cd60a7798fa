#include "app/painting/card_painter.h"

#include "app/painting/paths.h"

namespace app::painting {
namespace {

using core::sheets::Primitive;
using core::sheets::Role;

// Widths in hairlines.
constexpr double kThin = 1;
constexpr double kPencilled = 1.4;
constexpr double kInked = 3.6;
constexpr double kEdge = 5;
constexpr double kHalo = 12;

bool isHead(const Primitive& primitive) {
  const auto* stroke = std::get_if<core::sheets::Stroke>(&primitive.shape);
  return stroke != nullptr && stroke->closed;
}

void draw(QPainter& painter, const Primitive& primitive, const QPen& pen, const QBrush& fill = Qt::NoBrush) {
  painter.setPen(pen);
  painter.setBrush(fill);
  painter.drawPath(pathOf(primitive, 1));
}

QPen flat(const QColor& colour, double width) { return {colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin}; }

void paintBoard(QPainter& painter, const Primitive& primitive, const Inks& inks, const QColor& opening) {
  const double hair = inks.hairline;
  if (primitive.role == Role::Mark) {
    draw(painter, primitive, Qt::NoPen, inks.ink);
  } else if (primitive.role == Role::BoardSight) {
    draw(painter, primitive, flat(inks.pencil, kPencilled * hair), opening);
  } else if (primitive.role == Role::Guide) {
    QPen pen = flat(inks.pencil, kPencilled * hair);
    // A centre line: long, gap, short, gap.
    pen.setDashPattern({12, 4, 3, 4});
    draw(painter, primitive, pen);
  } else {
    draw(painter, primitive, flat(inks.pencil, kPencilled * hair));
  }
}

void paintPencil(QPainter& painter, const Primitive& primitive, const Inks& inks) {
  if (primitive.role == Role::Setting) {
    draw(painter, primitive, flat(inks.pencil, kThin * inks.hairline));
  } else {
    draw(painter, primitive, flat(inks.pencil, kPencilled * inks.hairline),
         isHead(primitive) ? QBrush(inks.pencil) : QBrush(Qt::NoBrush));
  }
}

void paintInk(QPainter& painter, const Primitive& primitive, const Inks& inks) {
  const double hair = inks.hairline;
  switch (primitive.role) {
    case Role::Setting: draw(painter, primitive, flat(inks.ink, kPencilled * hair)); return;
    case Role::Waste: draw(painter, primitive, flat(inks.ink, kPencilled * hair)); return;
    case Role::BoardEdge: draw(painter, primitive, flat(inks.ink, kEdge * hair)); return;
    case Role::Line:
      draw(painter, primitive, flat(inks.ground, kHalo * hair));
      draw(painter, primitive, flat(inks.worked, kEdge * hair));
      return;
    default: break;
  }
  // A ring shows the ground, an arrow's head is solid.
  const bool ring = std::holds_alternative<core::sheets::Path>(primitive.shape);
  if (isHead(primitive)) {
    draw(painter, primitive, Qt::NoPen, inks.ink);
  } else {
    draw(painter, primitive, flat(inks.ink, (ring ? 2.5 : kInked) * hair),
         ring ? QBrush(inks.ground) : QBrush(Qt::NoBrush));
  }
}

// A line ends where a number stands on it.
void breakLines(QPainter& painter, const core::sheets::Card& card, const Inks& inks, const QColor& opening) {
  QPainterPath window;
  for (const Primitive& primitive : card.board) {
    if (primitive.role == Role::BoardSight) window = pathOf(primitive, 1);
  }
  for (const core::sheets::CardNumber& number : card.numbers) {
    if (!number.inside) continue;
    const QRectF box(QPointF(number.box.left, number.box.top), QPointF(number.box.right, number.box.bottom));
    const QRectF letters = box.adjusted(0, box.height() * 0.12, 0, -box.height() * 0.12);
    painter.fillRect(letters, window.contains(letters.center()) ? opening : inks.ground);
  }
}

}  // namespace

void paintCard(QPainter& painter, const core::sheets::Card& card, std::optional<std::size_t> current, const Inks& inks,
               const QColor& opening) {
  painter.setRenderHint(QPainter::Antialiasing);
  for (const Primitive& primitive : card.board) paintBoard(painter, primitive, inks, opening);
  for (std::size_t i = 0; i < card.numbers.size(); ++i) {
    if (current == i) continue;
    for (const Primitive& primitive : card.numbers[i].pencil) paintPencil(painter, primitive, inks);
  }
  if (current && *current < card.numbers.size()) {
    for (const Primitive& primitive : card.numbers[*current].ink) paintInk(painter, primitive, inks);
  }
  breakLines(painter, card, inks, opening);
}

void paintMeasure(QPainter& painter, const std::vector<Primitive>& lines, const Inks& inks) {
  painter.setRenderHint(QPainter::Antialiasing);
  for (const Primitive& primitive : lines) {
    if (primitive.role != Role::Setting) continue;
    draw(painter, primitive, flat(inks.cloth, kHalo / 2 * inks.hairline));
  }
  for (const Primitive& primitive : lines) paintInk(painter, primitive, inks);
}

}  // namespace app::painting
