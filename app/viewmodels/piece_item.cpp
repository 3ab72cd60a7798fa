#include "app/viewmodels/piece_item.h"

#include <algorithm>

#include "app/painting/drawing_painter.h"

namespace app::viewmodels {

PieceItem::PieceItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &PieceItem::changed, this, [this] {
    update();
    emit laidOut();
  });
}

PieceDrawing PieceItem::shown() const {
  PieceDrawing drawing = m_drawing;
  if (!m_seen.isNull()) drawing.seen = m_seen;
  if (!drawing.appearances) drawing.appearances = m_appearances.all;
  return drawing;
}

QSizeF PieceItem::room() const { return {width() - m_leftRoom - m_rightRoom, height() - m_topRoom - m_bottomRoom}; }

QTransform PieceItem::fit() const {
  return painting::fitted(shown(), room(), m_hairline) * QTransform::fromTranslate(m_leftRoom, m_topRoom);
}

// The drawing is fitted between the margins; what is drawn beyond its own size still shows in them.
void PieceItem::paint(QPainter* painter) {
  painter->translate(m_leftRoom, m_topRoom);
  painting::paintDrawing(*painter, shown(), room(), {m_ink, m_pencil, m_worked, m_ground, m_hairline, m_cloth});
}

void PieceItem::geometryChange(const QRectF& now, const QRectF& before) {
  QQuickPaintedItem::geometryChange(now, before);
  if (now.size() != before.size()) emit laidOut();
}

QVariantList PieceItem::numerals() const {
  QVariantList list;
  if (!m_drawing.piece || width() <= 0 || height() <= 0) return list;
  const QTransform onto = fit();
  for (const auto& one : m_drawing.numerals) {
    const QPointF at = onto.map(QPointF(one.at.x, one.at.y));
    list << QVariantMap{
        {QStringLiteral("number"), one.number}, {QStringLiteral("x"), at.x()}, {QStringLiteral("y"), at.y()}};
  }
  return list;
}

QPointF PieceItem::onPiece(double x, double y) const {
  return m_drawing.piece ? fit().inverted().map(QPointF(x, y)) : QPointF();
}

QPointF PieceItem::onGlass(QPointF onPiece) const { return m_drawing.piece ? fit().map(onPiece) : QPointF(); }

double PieceItem::mmPerPixel() const { return m_drawing.piece ? 1 / fit().m11() : 0; }

QRectF PieceItem::placed(const QRectF& part) const {
  if (!m_drawing.piece) return {};
  const QRectF whole(0, 0, m_drawing.piece->width, m_drawing.piece->height);
  return fit().mapRect(part.isNull() ? whole : part);
}

QPointF PieceItem::origin() const { return onGlass(QPointF(0, 0)); }

double PieceItem::pixelsPerMm() const { return m_drawing.piece ? std::max(0.0, fit().m11()) : 0; }

}  // namespace app::viewmodels
