#pragma once
// The cutter's card of an act, laid out for its own size. The item paints the lines; the numbers are texts which the
// screen puts at the places listed, so that they are read and measured like all others.
#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QQuickPaintedItem>
#include <QVariantList>

#include "app/viewmodels/bench/figure_view_model.h"

namespace app::viewmodels {

class CardItem : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(app::viewmodels::FigureViewModel* figure READ figure WRITE setFigure NOTIFY changed FINAL)
  Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY changed FINAL)
  Q_PROPERTY(QColor pencil MEMBER m_pencil NOTIFY changed FINAL)
  Q_PROPERTY(QColor worked MEMBER m_worked NOTIFY changed FINAL)
  Q_PROPERTY(QColor ground MEMBER m_ground NOTIFY changed FINAL)
  Q_PROPERTY(QColor opening MEMBER m_opening NOTIFY changed FINAL)  // what is seen through the window
  // Width of a pencil line and height of the numbers' font, in pixels.
  Q_PROPERTY(double hairline MEMBER m_hairline NOTIFY changed FINAL)
  Q_PROPERTY(int textSize READ textSize WRITE setTextSize NOTIFY changed FINAL)
  Q_PROPERTY(double shortest READ shortest WRITE setShortest NOTIFY changed FINAL)  // edge of the board, pixels
  Q_PROPERTY(QString family READ family WRITE setFamily NOTIFY changed FINAL)
  // Whether every number has its place; otherwise nothing is shown.
  Q_PROPERTY(bool shown READ shown NOTIFY laidOut FINAL)
  // { "text", "current", "x", "y", "width", "height" } for each number with a place on the board.
  Q_PROPERTY(QVariantList numbers READ numbers NOTIFY laidOut FINAL)

 public:
  explicit CardItem(QQuickItem* parent = nullptr);
  void paint(QPainter* painter) override;

  FigureViewModel* figure() const { return m_figure; }
  void setFigure(FigureViewModel* figure);
  int textSize() const { return m_textSize; }
  void setTextSize(int pixels);
  double shortest() const { return m_shortest; }
  void setShortest(double pixels);
  QString family() const { return m_family; }
  void setFamily(const QString& family);
  bool shown() const { return m_card.fits; }
  QVariantList numbers() const { return m_numbers; }

 signals:
  void changed();
  void laidOut();

 protected:
  void geometryChange(const QRectF& now, const QRectF& before) override;

 private:
  // Lays the card out where what it shows or its room has changed, then says which number is in hand.
  void follow();
  void layOut();
  void showNumbers();

  FigureViewModel* m_figure = nullptr;
  QColor m_ink;
  QColor m_pencil;
  QColor m_worked;
  QColor m_ground;
  QColor m_opening;
  double m_hairline = 1;
  int m_textSize = 0;
  double m_shortest = 0;
  QString m_family;
  FigureViewModel::CardSubject m_subject;
  core::sheets::Card m_card;
  std::optional<std::size_t> m_current;
  QVariantList m_numbers;
};

}  // namespace app::viewmodels
