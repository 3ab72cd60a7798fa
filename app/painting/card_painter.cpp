#include "app/painting/card_painter.h"

#include <algorithm>

#include "app/painting/light.h"
#include "app/painting/materials.h"
#include "app/painting/measure_painter.h"
#include "app/painting/paths.h"

namespace app::painting {
namespace {

using core::sheets::Card;
using core::sheets::CardNumber;
using core::sheets::Primitive;
using core::sheets::Role;

// Widths in hairlines.
constexpr double kThin = 1;
constexpr double kMade = 2.5;
constexpr double kHalo = 13;
constexpr double kTick = 3.4;
// Between the hatching lines of what falls out, and how far they stand out from it.
constexpr double kHatch = 11;
constexpr double kHatchShare = 0.2;
// What falls out is a little lighter than the board it is still a part of.
constexpr double kWasteShare = 0.45;
constexpr double kFar = 10'000;

QPen dashed(const QColor& colour, double width, const QList<qreal>& pattern) {
  QPen pen = flat(colour, width);
  pen.setDashPattern(pattern);
  return pen;
}

class CardPainter {
 public:
  CardPainter(QPainter& painter, const Card& card, const Inks& inks)
      : m_painter(painter), m_card(card), m_inks(inks), m_colours(coloursOf(card, inks)), m_hair(inks.hairline) {
    m_waste = mixed(m_colours.board, Qt::white, inks.byLamp() ? kWasteShare / 3 : kWasteShare);
    for (const Primitive& primitive : card.board) {
      if (primitive.role == Role::BoardSight) m_window = pathOf(primitive, 1);
      if (primitive.role == Role::BoardFace) m_board = pathOf(primitive, 1);
    }
  }

  void paint(const CardTurn& turn) {
    for (const Primitive& primitive : m_card.board) paintBoard(primitive);
    for (std::size_t i = 0; i < m_card.numbers.size(); ++i) {
      if (turn.current == i) continue;
      for (const Primitive& primitive : m_card.numbers[i].made) paintMade(primitive, i < turn.made);
      if (i < turn.made && m_card.numbers[i].tick) paintTick(*m_card.numbers[i].tick);
    }
    breakLines(m_card.window);
    if (!turn.current || *turn.current >= m_card.numbers.size()) return;
    const CardNumber& number = m_card.numbers[*turn.current];
    if (number.inside) breakLines(number.box);
    // What crosses the board's edge is in the ink of the ground outside it and in the board's within.
    QPainterPath everywhere;
    everywhere.addRect(m_board.boundingRect().adjusted(-kFar, -kFar, kFar, kFar));
    for (const bool onBoard : {false, true}) {
      m_painter.save();
      m_painter.setClipPath(onBoard ? m_board : everywhere.subtracted(m_board), Qt::IntersectClip);
      for (const Primitive& primitive : number.ink) paintHalo(primitive);
      for (const Primitive& primitive : number.ink) paintInk(primitive, onBoard);
      m_painter.restore();
    }
    paintEdge(number);
  }

 private:
  void draw(const Primitive& primitive, const QPen& pen, const QBrush& fill = Qt::NoBrush) {
    m_painter.setPen(pen);
    m_painter.setBrush(fill);
    m_painter.drawPath(pathOf(primitive, 1));
  }

  void paintBoard(const Primitive& primitive) {
    switch (primitive.role) {
      case Role::BoardFace: draw(primitive, Qt::NoPen, m_colours.board); return;
      case Role::Waste: paintWaste(); return;
      case Role::Mark: draw(primitive, Qt::NoPen, m_colours.ink); return;
      case Role::BoardSight: draw(primitive, dashed(m_colours.ink, 1.5 * m_hair, {1.4, 3.2})); return;
      default: draw(primitive, flat(m_inks.pencil, 1.4 * m_hair)); return;
    }
  }

  // It falls out: hatched over the board's own colour.
  void paintWaste() {
    m_painter.fillPath(m_window, m_waste);
    m_painter.save();
    m_painter.setClipPath(m_window, Qt::IntersectClip);
    m_painter.setPen(flat(mixed(m_waste, m_colours.ink, kHatchShare), kThin * m_hair));
    const QRectF box = m_window.boundingRect();
    for (double x = box.left() - box.height(); x < box.right(); x += kHatch * m_hair)
      m_painter.drawLine(QPointF(x, box.bottom()), QPointF(x + box.height(), box.top()));
    m_painter.restore();
  }

  void paintMade(const Primitive& primitive, bool made) {
    if (!made) {
      draw(primitive, dashed(m_colours.ink, 1.3 * m_hair, {1.5, 4}));
    } else if (primitive.role == Role::Guide) {
      // A centre line: long, gap, short, gap.
      draw(primitive, dashed(m_colours.ink, kMade * m_hair * 0.8, {11, 3, 2, 3}));
    } else {
      draw(primitive, flat(m_colours.ink, kMade * m_hair));
    }
  }

  void paintTick(const core::sheets::Point& middle) {
    const double size = 7.5 * m_hair;
    QPainterPath tick(QPointF(middle.x - 1.5 * size, middle.y));
    tick.lineTo(QPointF(middle.x - 0.5 * size, middle.y + size));
    tick.lineTo(QPointF(middle.x + 1.5 * size, middle.y - size));
    m_painter.strokePath(tick, QPen(m_colours.board, (kTick + 4) * m_hair, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    m_painter.strokePath(tick, flat(m_colours.ink, kTick * m_hair));
  }

  // Before all else in ink: of a cross both lines are whole.
  void paintHalo(const Primitive& primitive) {
    if (primitive.role == Role::Line) draw(primitive, flat(m_colours.board, kHalo * m_hair));
  }

  // A datum that is the board's very edge lies half outside it; it is hatched there.
  void paintEdge(const CardNumber& number) {
    const auto& ink = number.ink;
    const bool hatched =
        std::any_of(ink.begin(), ink.end(), [](const Primitive& primitive) { return primitive.role == Role::Waste; });
    for (const Primitive& primitive : ink) {
      if (hatched && primitive.role == Role::BoardEdge) draw(primitive, flat(m_inks.ink, kDatumWidth * m_hair));
    }
  }

  void paintInk(const Primitive& primitive, bool onBoard) {
    const QColor ink = onBoard ? m_colours.ink : m_inks.ink;
    paintMeasured(m_painter, primitive, m_hair, {ink, m_colours.worked, onBoard ? m_colours.board : m_inks.ground});
  }

  // A line ends where a word stands on it.
  void breakLines(const core::geometry::Rectangle& box) {
    if (box.empty()) return;
    const QRectF place(QPointF(box.left, box.top), QPointF(box.right, box.bottom));
    const QRectF letters = place.adjusted(-3 * m_hair, place.height() * 0.08, 3 * m_hair, -place.height() * 0.08);
    m_painter.fillRect(letters, m_window.contains(letters.center()) ? m_waste : m_colours.board);
  }

  QPainter& m_painter;
  const Card& m_card;
  const Inks& m_inks;
  CardColours m_colours;
  double m_hair;
  QColor m_waste;
  QPainterPath m_window, m_board;
};

}  // namespace

CardColours coloursOf(const Card& card, const Inks& inks) {
  CardColours colours{inks.ground, inks.ink, inks.worked};
  for (const Primitive& primitive : card.board) {
    if (primitive.role != Role::BoardFace || !primitive.matter) continue;
    const QColor full = colourOf(*primitive.matter);
    colours = {Light(inks, core::sheets::Standing::Made).on(full), inkOn(full), workedOn(full)};
  }
  return colours;
}

void paintCard(QPainter& painter, const Card& card, const CardTurn& turn, const Inks& inks) {
  painter.setRenderHint(QPainter::Antialiasing);
  CardPainter(painter, card, inks).paint(turn);
}

}  // namespace app::painting
