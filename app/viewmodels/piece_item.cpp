#include "app/viewmodels/piece_item.h"

#include "app/painting/drawing_painter.h"

namespace app::viewmodels {

PieceItem::PieceItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &PieceItem::changed, this, [this] { update(); });
}

void PieceItem::paint(QPainter* painter) {
  painting::paintDrawing(*painter, m_drawing, size(), {m_ink, m_pencil, m_worked, m_ground, m_hairline, m_cloth});
}

QPointF PieceItem::onPiece(double x, double y) const {
  if (!m_drawing.piece) return {};
  return painting::fitted(m_drawing, size(), m_hairline).inverted().map(QPointF(x, y));
}

double PieceItem::mmPerPixel() const {
  return m_drawing.piece ? 1 / painting::fitted(m_drawing, size(), m_hairline).m11() : 0;
}

QRectF PieceItem::placed(const QRectF& part) const {
  if (!m_drawing.piece) return {};
  const QRectF whole(0, 0, m_drawing.piece->width, m_drawing.piece->height);
  return painting::fitted(m_drawing, size(), m_hairline).mapRect(part.isNull() ? whole : part);
}

}  // namespace app::viewmodels
