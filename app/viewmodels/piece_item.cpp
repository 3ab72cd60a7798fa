#include "app/viewmodels/piece_item.h"

#include "app/viewmodels/drawing_painter.h"

namespace app::viewmodels {

PieceItem::PieceItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &PieceItem::changed, this, [this] { update(); });
}

void PieceItem::paint(QPainter* painter) {
  paintDrawing(*painter, m_drawing, size(), {m_ink, m_pencil, m_worked, m_ground, m_hairline});
}

}  // namespace app::viewmodels
