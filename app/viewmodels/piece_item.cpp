#include "app/viewmodels/piece_item.h"

#include "app/painting/drawing_painter.h"

namespace app::viewmodels {

PieceItem::PieceItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &PieceItem::changed, this, [this] { update(); });
  connect(this, &PieceItem::changed, this, &PieceItem::placed);
}

PieceDrawing PieceItem::shown() const {
  PieceDrawing drawing = m_drawing;
  if (!m_seen.isNull()) drawing.seen = m_seen;
  return drawing;
}

void PieceItem::paint(QPainter* painter) {
  painting::paintDrawing(*painter, shown(), size(), {m_ink, m_pencil, m_worked, m_ground, m_hairline, m_cloth});
}

void PieceItem::geometryChange(const QRectF& now, const QRectF& before) {
  QQuickPaintedItem::geometryChange(now, before);
  if (now.size() != before.size()) emit placed();
}

QVariantList PieceItem::numerals() const {
  QVariantList list;
  if (!m_drawing.piece || width() <= 0 || height() <= 0) return list;
  const QTransform fit = painting::fitted(shown(), size(), m_hairline);
  for (const auto& one : m_drawing.numerals) {
    const QPointF at = fit.map(QPointF(one.at.x, one.at.y));
    list << QVariantMap{
        {QStringLiteral("number"), one.number}, {QStringLiteral("x"), at.x()}, {QStringLiteral("y"), at.y()}};
  }
  return list;
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

QRectF PieceItem::placed(const QRectF& part) const {
  if (!m_drawing.piece) return {};
  const QRectF whole(0, 0, m_drawing.piece->width, m_drawing.piece->height);
  return painting::fitted(m_drawing, size(), m_hairline).mapRect(part.isNull() ? whole : part);
}

}  // namespace app::viewmodels
