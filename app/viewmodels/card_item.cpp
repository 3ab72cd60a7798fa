#include "app/viewmodels/card_item.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "app/convert/text.h"

namespace app::viewmodels {

CardItem::CardItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &CardItem::changed, this, [this] {
    update();
    // The words on the board follow its light.
    emit laidOut();
  });
}

void CardItem::paint(QPainter* painter) {
  if (!m_card.fits) return;
  painting::paintCard(*painter, m_card, m_turn, inks());
}

void CardItem::setFigure(FigureViewModel* figure) {
  if (m_figure == figure) return;
  if (m_figure != nullptr) m_figure->disconnect(this);
  m_figure = figure;
  if (m_figure != nullptr) connect(m_figure, &FigureViewModel::changed, this, &CardItem::follow);
  emit changed();
  layOut();
}

void CardItem::setTextSize(int pixels) {
  if (m_textSize == pixels) return;
  m_textSize = pixels;
  emit changed();
  layOut();
}

void CardItem::setWordSize(int pixels) {
  if (m_wordSize == pixels) return;
  m_wordSize = pixels;
  emit changed();
  layOut();
}

void CardItem::setShortest(double pixels) {
  if (m_shortest == pixels) return;
  m_shortest = pixels;
  emit changed();
  layOut();
}

void CardItem::setFamily(const QString& family) {
  if (m_family == family) return;
  m_family = family;
  emit changed();
  layOut();
}

void CardItem::geometryChange(const QRectF& now, const QRectF& before) {
  QQuickPaintedItem::geometryChange(now, before);
  if (now.size() != before.size()) layOut();
}

void CardItem::layOut() {
  m_card = {};
  m_subject = m_figure == nullptr ? FigureViewModel::CardSubject() : m_figure->cardSubject();
  if (m_subject.design && m_textSize > 0 && m_wordSize > 0 && width() > 0 && height() > 0) {
    const auto widthIn = [this](int pixels, bool bold, const QString& text) {
      QFont font(m_family);
      font.setPixelSize(pixels);
      font.setBold(bold);
      return std::ceil(QFontMetricsF(font).horizontalAdvance(text)) + 1;
    };
    QFont font(m_family);
    font.setPixelSize(m_textSize);
    font.setBold(true);
    core::sheets::CardRoom room;
    room.width = width();
    room.height = height();
    room.capHeight = QFontMetricsF(font).capHeight();
    room.shortest = m_shortest;
    room.widthOf = [&](const std::string& text) { return widthIn(m_textSize, true, convert::toQt(text)); };
    for (const QString& word : {tr("top"), tr("left"), tr("right")})
      room.side = std::max(room.side, widthIn(m_wordSize, false, word));
    room.window = widthIn(m_wordSize, false, tr("window"));
    m_card = core::sheets::drawCard(*m_subject.design, m_subject.figures, room);
  }
  showTexts();
}

// The bench is refreshed every second, and hardly ever is there anything new on the card.
void CardItem::follow() {
  const auto subject = m_figure == nullptr ? FigureViewModel::CardSubject() : m_figure->cardSubject();
  if (m_subject.design == subject.design && m_subject.figures == subject.figures) {
    m_subject.passed = subject.passed;
    showTexts();
  } else {
    layOut();
  }
}

void CardItem::showTexts() {
  QVariantList texts;
  const auto add = [&](const QString& text, const core::geometry::Rectangle& box, bool worked, bool onBoard) {
    if (box.empty()) return;
    texts << QVariantMap{{QStringLiteral("text"), text},
                         {QStringLiteral("worked"), worked},
                         {QStringLiteral("onBoard"), onBoard},
                         {QStringLiteral("x"), box.left},
                         {QStringLiteral("y"), box.top},
                         {QStringLiteral("width"), box.right - box.left},
                         {QStringLiteral("height"), box.bottom - box.top}};
  };
  painting::CardTurn turn;
  const std::string current = m_figure == nullptr ? std::string() : m_figure->currentId();
  const auto placeOf = [this](const std::string& id) {
    return static_cast<std::size_t>(std::find(m_subject.figures.begin(), m_subject.figures.end(), id) -
                                    m_subject.figures.begin());
  };
  if (m_card.fits) {
    add(tr("top"), m_card.top, false, false);
    add(tr("left"), m_card.left, false, false);
    add(tr("right"), m_card.right, false, false);
    add(tr("window"), m_card.window, false, true);
  }
  for (std::size_t i = 0; i < m_card.numbers.size(); ++i) {
    const core::sheets::CardNumber& number = m_card.numbers[i];
    if (placeOf(number.figure) < m_subject.passed) turn.made = i + 1;
    if (number.figure != current) continue;
    turn.current = i;
    add(convert::toQt(number.text), number.box, true, number.inside);
  }
  if (texts == m_texts && turn == m_turn) return;
  m_texts = texts;
  m_turn = turn;
  update();
  emit laidOut();
}

}  // namespace app::viewmodels
