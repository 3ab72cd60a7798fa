#pragma once
// Paints a drawing of the core: of the piece, with the worked part in ink and the rest in pencil; or of an act.
#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QQuickPaintedItem>
#include <QTransform>
#include <QVariantList>

#include "app/viewmodels/piece_appearances.h"
#include "app/viewmodels/piece_drawing.h"

namespace app::viewmodels {

class PieceItem : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing MEMBER m_drawing NOTIFY changed FINAL)
  // How materials look that have a look of their own, where the drawing itself does not say.
  Q_PROPERTY(app::viewmodels::PieceAppearances appearances MEMBER m_appearances NOTIFY changed FINAL)
  Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY changed FINAL)
  Q_PROPERTY(QColor pencil MEMBER m_pencil NOTIFY changed FINAL)
  Q_PROPERTY(QColor worked MEMBER m_worked NOTIFY changed FINAL)
  Q_PROPERTY(QColor ground MEMBER m_ground NOTIFY changed FINAL)
  // What is still to come sinks into it.
  Q_PROPERTY(QColor cloth MEMBER m_cloth NOTIFY changed FINAL)
  // What of the drawing is brought into view, in mm, before what the drawing itself asks for; null: that.
  Q_PROPERTY(QRectF seen MEMBER m_seen NOTIFY changed FINAL)
  // The numbers of the sentences that an act's drawing is told by, as { "number", "x", "y" } in the item's pixels.
  Q_PROPERTY(QVariantList numerals READ numerals NOTIFY laidOut FINAL)
  // Width of a pencil line, in pixels; ink is three times that.
  Q_PROPERTY(double hairline MEMBER m_hairline NOTIFY changed FINAL)
  // What is kept free round the drawing for its dimensions, in pixels.
  Q_PROPERTY(double leftRoom MEMBER m_leftRoom NOTIFY changed FINAL)
  Q_PROPERTY(double topRoom MEMBER m_topRoom NOTIFY changed FINAL)
  Q_PROPERTY(double rightRoom MEMBER m_rightRoom NOTIFY changed FINAL)
  Q_PROPERTY(double bottomRoom MEMBER m_bottomRoom NOTIFY changed FINAL)
  // Where the drawing's own origin lies in the item, and its scale; 0 while there is none.
  Q_PROPERTY(QPointF origin READ origin NOTIFY laidOut FINAL)
  Q_PROPERTY(double pixelsPerMm READ pixelsPerMm NOTIFY laidOut FINAL)

 public:
  explicit PieceItem(QQuickItem* parent = nullptr);
  void paint(QPainter* painter) override;

  QVariantList numerals() const;

  // These return the place on the piece under a place of the item, in mm; the other way round; and the size of a pixel
  // in mm.
  Q_INVOKABLE QPointF onPiece(double x, double y) const;
  Q_INVOKABLE QPointF onGlass(QPointF onPiece) const;
  Q_INVOKABLE double mmPerPixel() const;
  // Returns where a part of the piece, in mm, lies in the item; the whole of it for a null one.
  Q_INVOKABLE QRectF placed(const QRectF& part) const;

  QPointF origin() const;
  double pixelsPerMm() const;

 signals:
  void changed();
  void laidOut();

 protected:
  void geometryChange(const QRectF& now, const QRectF& before) override;

 private:
  PieceDrawing shown() const;
  QSizeF room() const;
  QTransform fit() const;

  PieceDrawing m_drawing;
  PieceAppearances m_appearances;
  QRectF m_seen;
  QColor m_ink;
  QColor m_pencil;
  QColor m_worked;
  QColor m_ground;
  QColor m_cloth;
  double m_hairline = 1;
  double m_leftRoom = 0;
  double m_topRoom = 0;
  double m_rightRoom = 0;
  double m_bottomRoom = 0;
};

}  // namespace app::viewmodels
