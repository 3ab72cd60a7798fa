#include "app/viewmodels/piece_item.h"

#include <algorithm>

#include "app/painting/drawing_painter.h"

namespace app::viewmodels {

PieceItem::PieceItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &PieceItem::changed, this, [this] {
    update();
    emit placed();
  });
}

// The drawing is fitted between the margins; what is drawn beyond its own size still shows in them.
void PieceItem::paint(QPainter* painter) {
  painter->translate(m_leftRoom, m_topRoom);
  const QSizeF room(width() - m_leftRoom - m_rightRoom, height() - m_topRoom - m_bottomRoom);
  painting::paintDrawing(*painter, m_drawing, room, {m_ink, m_pencil, m_worked, m_ground, m_hairline, m_cloth});
}

QTransform PieceItem::fit() const {
  const QSizeF room(width() - m_leftRoom - m_rightRoom, height() - m_topRoom - m_bottomRoom);
  return painting::fitted(m_drawing, room, m_hairline) * QTransform::fromTranslate(m_leftRoom, m_topRoom);
}

QPointF PieceItem::onPiece(double x, double y) const {
  return m_drawing.piece ? fit().inverted().map(QPointF(x, y)) : QPointF();
}

double PieceItem::mmPerPixel() const { return m_drawing.piece ? 1 / fit().m11() : 0; }

QPointF PieceItem::origin() const { return m_drawing.piece ? fit().map(QPointF(0, 0)) : QPointF(); }

double PieceItem::pixelsPerMm() const { return m_drawing.piece ? std::max(0.0, fit().m11()) : 0; }

void PieceItem::geometryChange(const QRectF& now, const QRectF& before) {
  QQuickPaintedItem::geometryChange(now, before);
  if (now.size() != before.size()) emit placed();
}

}  // namespace app::viewmodels
