#pragma once
// The numbers of one act, one at a time, in the order of use.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QVariantList>
#include <vector>

#include "app/viewmodels/bench/drawn_once.h"
#include "app/viewmodels/piece_drawing.h"
#include "core/design/design.h"
#include "core/sheets/card.h"
#include "core/sheets/measure.h"
#include "core/workflow/workflow.h"

namespace app::viewmodels {

class FigureViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(int total READ total NOTIFY changed FINAL)
  Q_PROPERTY(int index READ index NOTIFY changed FINAL)
  Q_PROPERTY(bool present READ present NOTIFY changed FINAL)
  Q_PROPERTY(QString sign READ sign NOTIFY changed FINAL)    // "≈", "−" or ""
  Q_PROPERTY(QString whole READ whole NOTIFY changed FINAL)  // "" for a bare fraction
  Q_PROPERTY(QString numerator READ numerator NOTIFY changed FINAL)
  Q_PROPERTY(QString denominator READ denominator NOTIFY changed FINAL)
  Q_PROPERTY(QString unit READ unit NOTIFY changed FINAL)
  Q_PROPERTY(QString twin READ twin NOTIFY changed FINAL)    // an inch figure in millimetres; otherwise ""
  Q_PROPERTY(QString plain READ plain NOTIFY changed FINAL)  // in one line, for a key
  Q_PROPERTY(QString count READ count NOTIFY changed FINAL)  // "2 off"; "" for one
  Q_PROPERTY(QString datum READ datum NOTIFY changed FINAL)
  Q_PROPERTY(QString label READ label NOTIFY changed FINAL)
  Q_PROPERTY(QString origin READ origin NOTIFY changed FINAL)        // entered, computed or as made
  Q_PROPERTY(QString following READ following NOTIFY changed FINAL)  // the next number in one line; "" after the last
  Q_PROPERTY(QString place READ place NOTIFY changed FINAL)          // "1 of 5"
  // The act sets out or measures on a board's back: its numbers stand on one drawing, the card, and in one list beside
  // it, in the order of use: { "heading", "name", "value", "now", "done", "ofCutter" }. Those with the same heading
  // stand together, and all of what a cutter is set to is in hand at once.
  Q_PROPERTY(bool hasCard READ hasCard NOTIFY changed FINAL)
  Q_PROPERTY(QVariantList settings READ settings NOTIFY listed FINAL)
  // The act cuts one or more things to a width and a height: a row for each, both numbers in it: { "name", "count",
  // "colour", "across", "down", "now" } with "whole", "numerator", "denominator", "unit" of either number.
  Q_PROPERTY(bool hasSizes READ hasSizes NOTIFY changed FINAL)
  Q_PROPERTY(QVariantList sizes READ sizes NOTIFY listed FINAL)
  // Next has somewhere to go; the last one was reached, perhaps to come back from it.
  Q_PROPERTY(int stops READ stops NOTIFY changed FINAL)
  Q_PROPERTY(int stop READ stop NOTIFY changed FINAL)
  Q_PROPERTY(bool lastReached READ lastReached NOTIFY changed FINAL)
  Q_PROPERTY(bool byMarking READ byMarking NOTIFY changed FINAL)  // another way of marking has other numbers
  Q_PROPERTY(QString what READ what NOTIFY changed FINAL)         // what the list calls the number in hand
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing READ drawing NOTIFY changed FINAL)
  Q_PROPERTY(bool drawn READ drawn NOTIFY changed FINAL)  // it has a place on the piece
  // What the number is measured on where that is a strip in the hand; otherwise nothing is painted.
  Q_PROPERTY(bool hasStrip READ hasStrip NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::PieceDrawing strip READ strip NOTIFY changed FINAL)
  // What the number stands beside: the strip in the hand, or else the piece. Where it is a straight distance, the
  // screen draws its dimension outside; what lies aslant or round is dimensioned in the drawing.
  Q_PROPERTY(app::viewmodels::PieceDrawing measured READ measured NOTIFY changed FINAL)
  Q_PROPERTY(bool hasMeasure READ hasMeasure NOTIFY changed FINAL)
  Q_PROPERTY(bool level READ level NOTIFY changed FINAL)
  Q_PROPERTY(bool fromEdge READ fromEdge NOTIFY changed FINAL)
  Q_PROPERTY(bool givesLine READ givesLine NOTIFY changed FINAL)         // at its end: what the hand draws or cuts
  Q_PROPERTY(QPointF measureFrom READ measureFrom NOTIFY changed FINAL)  // mm of the drawing
  Q_PROPERTY(QPointF measureTo READ measureTo NOTIFY changed FINAL)
  Q_PROPERTY(QSizeF measuredSize READ measuredSize NOTIFY changed FINAL)  // of the drawing, mm

 public:
  using QObject::QObject;

  // One thing that is cut to a width and a height.
  struct Size {
    QString name;
    int count = 1;
    std::string across, down;  // ids of its numbers
    std::string board;         // whose colour it has; another thing has none of its own
    friend bool operator==(const Size&, const Size&) = default;
  };

  // Begins with the first number where the act has changed; `act` tells it from others, "" shows none. `design` and
  // how far the piece has grown may be null together. With the back of the board up, what is taken there is put in the
  // order of the hand and has a card. `sizes` are all that the act cuts, none where it does anything else.
  void show(const std::string& act, std::shared_ptr<const core::design::Design> design, DrawnOnce::Growth growth,
            std::vector<core::workflow::WorkflowFigure> figures, bool backUp, std::vector<Size> sizes = {});

  int total() const;
  int index() const { return m_index; }
  bool present() const { return current() != nullptr; }
  QString sign() const;
  QString whole() const;
  QString numerator() const;
  QString denominator() const;
  QString unit() const;
  QString twin() const;
  QString plain() const { return plainOf(current()); }
  QString count() const;
  QString datum() const;
  QString label() const;
  QString origin() const;
  QString following() const;
  QString place() const;
  PieceDrawing drawing() const;
  bool drawn() const { return drawing().piece != nullptr; }
  bool hasStrip() const { return strip().piece != nullptr; }
  PieceDrawing strip() const;
  PieceDrawing measured() const { return hasStrip() ? strip() : drawing(); }
  bool hasMeasure() const { return measure().has_value(); }
  bool level() const { return measure() && measure()->isLevel(); }
  bool fromEdge() const { return measure() && measure()->fromEdge; }
  bool givesLine() const { return measure() && measure()->gives == core::sheets::Gives::Line; }
  QPointF measureFrom() const;
  QPointF measureTo() const;
  QSizeF measuredSize() const;
  bool hasCard() const { return !m_cardBoard.empty(); }
  QVariantList settings() const { return m_settingsTold; }
  bool hasSizes() const { return !m_sizes.empty(); }
  QVariantList sizes() const { return m_sizesTold; }
  int stops() const { return static_cast<int>(m_stops.size()); }
  int stop() const;
  bool lastReached() const { return m_furthest + 1 >= stops(); }
  bool byMarking() const;
  QString what() const;

  // What the card shows: the design, the numbers in their order and how many of them the hand has passed; no design
  // where there is no card.
  struct CardSubject {
    std::shared_ptr<const core::design::Design> design;
    std::vector<std::string> figures;
    std::size_t passed = 0;
    friend bool operator==(const CardSubject&, const CardSubject&) = default;
  };
  CardSubject cardSubject() const;
  // Returns the id of the number shown; "" for none.
  std::string currentId() const { return current() == nullptr ? std::string() : current()->id; }

  // Goes back to the act's first number, which belongs beside its title.
  Q_INVOKABLE void begin();
  // Return whether there was another number to go to.
  Q_INVOKABLE bool forward();
  Q_INVOKABLE bool back();
  // The same by stops: a number of the card or all that the cutter is set to, a thing that is cut to two sizes, or
  // otherwise each number.
  Q_INVOKABLE bool onward();
  Q_INVOKABLE bool earlier();

 signals:
  void changed();
  void listed();  // only with something new: the rows of a list are made anew

 private:
  const core::design::Figure* figureAt(int index) const;
  std::optional<core::sheets::CardMeasure> measureAt(int index) const;
  void layStops();
  void goTo(int index);
  void tell();
  QVariantList settingsNow() const;
  QVariantList sizesNow() const;
  const core::design::Figure* current() const { return figureAt(m_index); }
  const std::optional<core::sheets::Measure>& measure() const { return hasStrip() ? m_onStrip : m_onPiece; }
  static QString plainOf(const core::design::Figure* figure);
  QString countAt(int index) const;

  std::shared_ptr<const core::design::Design> m_design;
  DrawnOnce::Growth m_growth;
  std::vector<core::workflow::WorkflowFigure> m_listed;   // as the act lists them
  std::vector<core::workflow::WorkflowFigure> m_figures;  // as they are shown
  std::string m_shown;                                    // which act
  std::string m_cardBoard;                                // whose back the card shows; "" for none
  std::vector<Size> m_sizes;
  std::vector<int> m_stops;  // of each, its first number
  int m_size = 0;            // of those that are cut, which is in hand
  int m_index = 0;
  int m_furthest = 0;  // stop
  QVariantList m_settingsTold, m_sizesTold;
  mutable const core::design::Figure* m_drawnOf = nullptr;
  mutable PieceDrawing m_drawn;
  mutable const core::design::Figure* m_stripOf = nullptr;
  mutable PieceDrawing m_strip;
  mutable std::optional<core::sheets::Measure> m_onPiece, m_onStrip;
  mutable DrawnOnce m_drawnOnce;
};

}  // namespace app::viewmodels
