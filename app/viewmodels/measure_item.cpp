#include "app/viewmodels/measure_item.h"

#include "app/painting/measure_painter.h"
#include "core/sheets/measure.h"

namespace app::viewmodels {

MeasureItem::MeasureItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &MeasureItem::changed, this, [this] { update(); });
}

void MeasureItem::paint(QPainter* painter) {
  // As it is while a screen is laid out.
  if (m_from == m_to || !(m_cap > 0)) return;
  const auto at = [](const QPointF& point) { return core::sheets::Point{point.x(), point.y()}; };
  core::sheets::Measure measure{at(m_from), at(m_to), m_fromEdge,
                                m_givesLine ? core::sheets::Gives::Line : core::sheets::Gives::Distance};
  // Two places of the drawing that were put on the glass may lie a rounding error apart.
  (m_level ? measure.to.y : measure.to.x) = m_level ? measure.from.y : measure.from.x;
  const core::geometry::Rectangle edges{m_edges.left(), m_edges.top(), m_edges.right(), m_edges.bottom()};
  painting::paintMeasure(*painter, core::sheets::measureLines(measure, edges, m_beside, m_cap),
                         {m_ink, m_ink, m_worked, m_ground, m_hairline, m_ground});
}

}  // namespace app::viewmodels
