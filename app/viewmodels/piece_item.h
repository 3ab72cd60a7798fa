#pragma once
// Paints the piece from the core's drawing: what is worked in ink, the rest in pencil.
#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QQuickPaintedItem>

#include "app/viewmodels/piece_drawing.h"

namespace app::viewmodels {

class PieceItem : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing MEMBER m_drawing NOTIFY changed FINAL)
  Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY changed FINAL)
  Q_PROPERTY(QColor pencil MEMBER m_pencil NOTIFY changed FINAL)
  Q_PROPERTY(QColor worked MEMBER m_worked NOTIFY changed FINAL)
  Q_PROPERTY(QColor ground MEMBER m_ground NOTIFY changed FINAL)
  // Width of a pencil line, in pixels; ink is three times that.
  Q_PROPERTY(double hairline MEMBER m_hairline NOTIFY changed FINAL)

 public:
  explicit PieceItem(QQuickItem* parent = nullptr);
  void paint(QPainter* painter) override;

 signals:
  void changed();

 private:
  void paintOne(QPainter* painter, const core::sheets::Primitive& primitive, double scale) const;

  PieceDrawing m_drawing;
  QColor m_ink;
  QColor m_pencil;
  QColor m_worked;
  QColor m_ground;
  double m_hairline = 1;
};

}  // namespace app::viewmodels
