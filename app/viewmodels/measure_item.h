#pragma once
// The dimension of the number in hand, beside the drawing it belongs to: from its datum, which has a ring and, where it
// is an edge, is hatched, to the arrow's head.
#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QQuickPaintedItem>
#include <QRectF>

namespace app::viewmodels {

class MeasureItem : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  // Ends of the measure, what they lie on, and where beside it the dimension stands (the y of a level one, the x of an
  // upright one), all in pixels of the item.
  Q_PROPERTY(QPointF from MEMBER m_from NOTIFY changed FINAL)
  Q_PROPERTY(QPointF to MEMBER m_to NOTIFY changed FINAL)
  Q_PROPERTY(QRectF edges MEMBER m_edges NOTIFY changed FINAL)
  Q_PROPERTY(double beside MEMBER m_beside NOTIFY changed FINAL)
  Q_PROPERTY(bool level MEMBER m_level NOTIFY changed FINAL)
  Q_PROPERTY(bool fromEdge MEMBER m_fromEdge NOTIFY changed FINAL)
  Q_PROPERTY(bool givesLine MEMBER m_givesLine NOTIFY changed FINAL)
  Q_PROPERTY(double cap MEMBER m_cap NOTIFY changed FINAL)  // cap height of the figures that arrows are drawn for
  Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY changed FINAL)
  Q_PROPERTY(QColor worked MEMBER m_worked NOTIFY changed FINAL)
  Q_PROPERTY(QColor ground MEMBER m_ground NOTIFY changed FINAL)  // what it stands on
  Q_PROPERTY(double hairline MEMBER m_hairline NOTIFY changed FINAL)

 public:
  explicit MeasureItem(QQuickItem* parent = nullptr);
  void paint(QPainter* painter) override;

 signals:
  void changed();

 private:
  QPointF m_from, m_to;
  QRectF m_edges;
  double m_beside = 0;
  bool m_level = true;
  bool m_fromEdge = false;
  bool m_givesLine = false;
  double m_cap = 0;
  QColor m_ink, m_worked, m_ground;
  double m_hairline = 1;
};

}  // namespace app::viewmodels
