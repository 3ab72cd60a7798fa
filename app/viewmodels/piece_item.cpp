#include "app/viewmodels/piece_item.h"

#include "app/painting/drawing_painter.h"

namespace app::viewmodels {

PieceItem::PieceItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &PieceItem::changed, this, [this] { update(); });
  connect(this, &PieceItem::changed, this, &PieceItem::placed);
}

void PieceItem::paint(QPainter* painter) {
  painting::paintDrawing(*painter, m_drawing, size(), {m_ink, m_pencil, m_worked, m_ground, m_hairline, m_cloth});
}

void PieceItem::geometryChange(const QRectF& now, const QRectF& before) {
  QQuickPaintedItem::geometryChange(now, before);
  if (now.size() != before.size()) emit placed();
}

QVariantList PieceItem::numerals() const {
  QVariantList list;
  if (!m_drawing.piece || width() <= 0 || height() <= 0) return list;
  const QTransform fit = painting::fitted(m_drawing, size(), m_hairline);
  for (const auto& one : m_drawing.numerals) {
    const QPointF at = fit.map(QPointF(one.at.x, one.at.y));
    list << QVariantMap{
        {QStringLiteral("number"), one.number}, {QStringLiteral("x"), at.x()}, {QStringLiteral("y"), at.y()}};
  }
  return list;
}

QPointF PieceItem::onPiece(double x, double y) const {
  if (!m_drawing.piece) return {};
  return painting::fitted(m_drawing, size(), m_hairline).inverted().map(QPointF(x, y));
}

double PieceItem::mmPerPixel() const {
  return m_drawing.piece ? 1 / painting::fitted(m_drawing, size(), m_hairline).m11() : 0;
}

}  // namespace app::viewmodels
