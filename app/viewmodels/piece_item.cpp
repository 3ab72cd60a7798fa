#include "app/viewmodels/piece_item.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "core/sheets/piece.h"

namespace app::viewmodels {
namespace {

using core::sheets::Role;

QPointF at(const core::sheets::Point& point, double scale) { return {point.x * scale, point.y * scale}; }

bool isDimension(Role role) { return role == Role::Dimension || role == Role::DimensionText; }

// What is filled when it is worked: thin lines would vanish under an outline alone.
bool isFilledWhenWorked(Role role) {
  return role == Role::Band || role == Role::Line || role == Role::Leaf || role == Role::Bevel;
}

}  // namespace

PieceItem::PieceItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &PieceItem::changed, this, [this] { update(); });
}

void PieceItem::paint(QPainter* painter) {
  if (!m_drawing.piece || m_drawing.piece->width <= 0 || m_drawing.piece->height <= 0) return;
  painter->setRenderHint(QPainter::Antialiasing);
  const double margin = 3 * m_hairline;
  const double scale =
      std::min((width() - 2 * margin) / m_drawing.piece->width, (height() - 2 * margin) / m_drawing.piece->height);
  painter->translate((width() - m_drawing.piece->width * scale) / 2, (height() - m_drawing.piece->height * scale) / 2);
  // Ink goes over pencil, so that no neighbour's edge runs across what is worked.
  for (const bool inked : {false, true}) {
    for (const core::sheets::Primitive& primitive : m_drawing.piece->primitives) {
      const bool worked = !m_drawing.worked.empty() && core::sheets::belongsTo(primitive.element, m_drawing.worked);
      if (worked == inked) paintOne(painter, primitive, scale);
    }
  }
  if (m_drawing.dimension) {
    for (const core::sheets::Primitive& primitive : *m_drawing.dimension) paintOne(painter, primitive, scale);
  }
}

void PieceItem::paintOne(QPainter* painter, const core::sheets::Primitive& primitive, double scale) const {
  const bool dimension = isDimension(primitive.role);
  const bool mark = primitive.role == Role::Mark;
  const bool worked = !m_drawing.worked.empty() && core::sheets::belongsTo(primitive.element, m_drawing.worked);
  QColor colour = m_pencil;
  if (mark) colour = m_ink;
  if (worked || dimension) colour = m_worked;
  painter->setPen(QPen(colour, worked || dimension ? 3 * m_hairline : m_hairline));
  painter->setBrush(Qt::NoBrush);
  if (mark) painter->setBrush(colour);

  if (const auto* frame = std::get_if<core::sheets::Frame>(&primitive.shape)) {
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    path.addRect(QRectF(at(frame->outerFrom, scale), at(frame->outerTo, scale)));
    if (frame->innerFrom != frame->innerTo) {
      path.addRect(QRectF(at(frame->innerFrom, scale), at(frame->innerTo, scale)));
    }
    if (worked && isFilledWhenWorked(primitive.role)) painter->fillPath(path, colour);
    painter->drawPath(path);
    return;
  }
  if (const auto* stroke = std::get_if<core::sheets::Stroke>(&primitive.shape)) {
    QPolygonF points;
    for (const core::sheets::Point& point : stroke->points) points << at(point, scale);
    if (worked && stroke->closed && isFilledWhenWorked(primitive.role)) painter->setBrush(colour);
    if (stroke->closed) {
      painter->drawPolygon(points);
    } else {
      painter->drawPolyline(points);
    }
  }
  // Texts of the drawing are too small for the bench; the figure stands beside it instead.
}

}  // namespace app::viewmodels
