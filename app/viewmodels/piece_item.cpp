#include "app/viewmodels/piece_item.h"

#include "app/painting/drawing_painter.h"

namespace app::viewmodels {

PieceItem::PieceItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &PieceItem::changed, this, [this] { update(); });
}

PieceDrawing PieceItem::shown() const {
  PieceDrawing drawing = m_drawing;
  if (!m_seen.isNull()) drawing.seen = m_seen;
  if (!drawing.appearances) drawing.appearances = m_appearances.all;
  return drawing;
}

void PieceItem::paint(QPainter* painter) {
  painting::paintDrawing(*painter, shown(), size(), {m_ink, m_pencil, m_worked, m_ground, m_hairline, m_cloth});
}

QPointF PieceItem::onPiece(double x, double y) const {
  if (!m_drawing.piece) return {};
  return painting::fitted(shown(), size(), m_hairline).inverted().map(QPointF(x, y));
}

QPointF PieceItem::onGlass(QPointF onPiece) const {
  if (!m_drawing.piece) return {};
  return painting::fitted(shown(), size(), m_hairline).map(onPiece);
}

double PieceItem::mmPerPixel() const {
  return m_drawing.piece ? 1 / painting::fitted(shown(), size(), m_hairline).m11() : 0;
}

}  // namespace app::viewmodels
