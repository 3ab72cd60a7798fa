#pragma once
// The cutter's card of an act, laid out for its own size. The item paints the lines; number and words are texts which
// the screen puts at the places listed, so that they are read and measured like all others.
#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QQuickPaintedItem>
#include <QVariantList>

#include "app/painting/card_painter.h"
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
  // Width of a pencil line and height of the numbers' font, in pixels.
  Q_PROPERTY(double hairline MEMBER m_hairline NOTIFY changed FINAL)
  Q_PROPERTY(int textSize READ textSize WRITE setTextSize NOTIFY changed FINAL)
  Q_PROPERTY(double shortest READ shortest WRITE setShortest NOTIFY changed FINAL)  // edge of the board, pixels
  Q_PROPERTY(QString family READ family WRITE setFamily NOTIFY changed FINAL)
  Q_PROPERTY(QColor cloth MEMBER m_cloth NOTIFY changed FINAL)
  // What words on the board are written in: its material is light by lamp too.
  Q_PROPERTY(QColor inkOnBoard READ inkOnBoard NOTIFY laidOut FINAL)
  Q_PROPERTY(QColor workedOnBoard READ workedOnBoard NOTIFY laidOut FINAL)
  // Whether every number has its place; otherwise nothing is shown.
  Q_PROPERTY(bool shown READ shown NOTIFY laidOut FINAL)
  // { "text", "worked", "onBoard", "x", "y", "width", "height" }: the number in hand, the sides of the board and what
  // falls out of it.
  Q_PROPERTY(QVariantList texts READ texts NOTIFY laidOut FINAL)
  Q_PROPERTY(int wordSize READ wordSize WRITE setWordSize NOTIFY changed FINAL)  // height of the words' font, in pixels

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
  QVariantList texts() const { return m_texts; }
  int wordSize() const { return m_wordSize; }
  void setWordSize(int pixels);
  QColor inkOnBoard() const { return colours().ink; }
  QColor workedOnBoard() const { return colours().worked; }

 signals:
  void changed();
  void laidOut();

 protected:
  void geometryChange(const QRectF& now, const QRectF& before) override;

 private:
  // Lays the card out where what it shows or its room has changed, then says which number is in hand.
  void follow();
  void layOut();
  void showTexts();
  painting::Inks inks() const { return {m_ink, m_pencil, m_worked, m_ground, m_hairline, m_cloth}; }
  painting::CardColours colours() const { return painting::coloursOf(m_card, inks()); }

  FigureViewModel* m_figure = nullptr;
  QColor m_ink;
  QColor m_pencil;
  QColor m_worked;
  QColor m_ground;
  QColor m_cloth;
  double m_hairline = 1;
  int m_textSize = 0;
  int m_wordSize = 0;
  double m_shortest = 0;
  QString m_family;
  FigureViewModel::CardSubject m_subject;
  core::sheets::Card m_card;
  painting::CardTurn m_turn;
  QVariantList m_texts;
};

}  // namespace app::viewmodels
