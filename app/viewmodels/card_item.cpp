#include "app/viewmodels/card_item.h"

#include <QFontMetricsF>
#include <cmath>

#include "app/convert/text.h"
#include "app/painting/card_painter.h"

namespace app::viewmodels {

CardItem::CardItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &CardItem::changed, this, [this] { update(); });
}

void CardItem::paint(QPainter* painter) {
  if (!m_card.fits) return;
  painting::paintCard(*painter, m_card, m_current, {m_ink, m_pencil, m_worked, m_ground, m_hairline}, m_opening);
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
  if (m_subject.design && m_textSize > 0 && width() > 0 && height() > 0) {
    QFont font(m_family);
    font.setPixelSize(m_textSize);
    font.setBold(true);
    const QFontMetricsF metrics(font);
    m_card = core::sheets::drawCard(*m_subject.design, m_subject.figures,
                                    {width(), height(), metrics.capHeight(), m_shortest, [&](const std::string& text) {
                                       return std::ceil(metrics.horizontalAdvance(convert::toQt(text))) + 1;
                                     }});
  }
  showNumbers();
}

// The bench is refreshed every second, and hardly ever is there anything new on the card.
void CardItem::follow() {
  if (m_figure != nullptr && m_subject == m_figure->cardSubject()) {
    showNumbers();
  } else {
    layOut();
  }
}

void CardItem::showNumbers() {
  QVariantList numbers;
  std::optional<std::size_t> inHand;
  const std::string current = m_figure == nullptr ? std::string() : m_figure->currentId();
  for (std::size_t i = 0; i < m_card.numbers.size(); ++i) {
    const core::sheets::CardNumber& number = m_card.numbers[i];
    const bool inked = number.figure == current;
    if (inked) inHand = i;
    numbers << QVariantMap{{QStringLiteral("text"), convert::toQt(number.text)},
                           {QStringLiteral("current"), inked},
                           {QStringLiteral("x"), number.box.left},
                           {QStringLiteral("y"), number.box.top},
                           {QStringLiteral("width"), number.box.right - number.box.left},
                           {QStringLiteral("height"), number.box.bottom - number.box.top}};
  }
  if (numbers == m_numbers && inHand == m_current) return;
  m_numbers = numbers;
  m_current = inHand;
  update();
  emit laidOut();
}

}  // namespace app::viewmodels
