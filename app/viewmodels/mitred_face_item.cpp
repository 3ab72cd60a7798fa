#include "app/viewmodels/mitred_face_item.h"

#include <QPainter>
#include <algorithm>

namespace app::viewmodels {
namespace {

// A line of that width along the inside of the box.
void frame(QPainter& painter, const QRectF& box, const QColor& colour, double width) {
  painter.fillRect(QRectF(box.topLeft(), QSizeF(box.width(), width)), colour);
  painter.fillRect(QRectF(box.left(), box.bottom() - width, box.width(), width), colour);
  painter.fillRect(QRectF(box.topLeft(), QSizeF(width, box.height())), colour);
  painter.fillRect(QRectF(box.right() - width, box.top(), width, box.height()), colour);
}

}  // namespace

MitredFaceItem::MitredFaceItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  connect(this, &MitredFaceItem::changed, this, [this] { update(); });
}

void MitredFaceItem::paint(QPainter* painter) {
  const QRectF all(0, 0, width(), height());
  if (m_dotted) {
    QPen pen(m_line, std::max(1.0, m_hairline), Qt::CustomDashLine, Qt::FlatCap);
    pen.setDashPattern({1.5, 3});
    painter->setPen(pen);
    painter->drawRect(all.adjusted(1, 1, -1, -1));
    return;
  }
  painter->fillRect(all, m_face);
  const QRectF inner = all.adjusted(m_edge, m_edge, -m_edge, -m_edge);
  if (inner.width() > 0 && inner.height() > 0) {
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(Qt::NoPen);
    for (const bool upper : {true, false}) {
      const QPointF corner = upper ? all.topLeft() : all.bottomRight();
      const QPointF within = upper ? inner.topLeft() : inner.bottomRight();
      painter->setBrush(upper ? m_upper : m_lower);
      painter->drawPolygon(
          QPolygonF({corner, all.topRight(), inner.topRight(), within, inner.bottomLeft(), all.bottomLeft()}));
    }
    painter->setRenderHint(QPainter::Antialiasing, false);
    frame(*painter, inner, m_line, std::max(1.0, m_hairline / 1.5));
  }
  frame(*painter, all, m_line, m_hairline);
}

}  // namespace app::viewmodels
