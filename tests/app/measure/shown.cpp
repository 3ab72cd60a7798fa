#include "tests/app/measure/shown.h"

#include <QFontMetricsF>
#include <QGlyphRun>
#include <QHash>
#include <QQmlListReference>
#include <QRawFont>
#include <QTextLayout>

#include <algorithm>
#include <cmath>

namespace tests {
namespace {

double channel(double value) { return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4); }

double luminance(const QColor& colour) {
  return 0.2126 * channel(colour.redF()) + 0.7152 * channel(colour.greenF()) + 0.0722 * channel(colour.blueF());
}

double apart(const QColor& a, const QColor& b) {
  return std::abs(a.red() - b.red()) + std::abs(a.green() - b.green()) + std::abs(a.blue() - b.blue());
}

// As QQuickText counts its line height modes.
constexpr int kFixedHeight = 1;

bool isKey(const QQuickItem* item) { return item->property("isKey").toBool(); }

// What lays the text out asks each character's font; a family that was only wished for is not among them.
QStringList familiesOf(const QString& text, const QFont& font) {
  QTextLayout layout(text, font);
  layout.beginLayout();
  layout.createLine();
  layout.endLayout();
  QStringList families;
  for (const QGlyphRun& run : layout.glyphRuns()) {
    const QString family = run.rawFont().familyName();
    if (!families.contains(family)) families << family;
  }
  return families;
}

ShownText textOf(QQuickItem* item, double away, bool inKey) {
  ShownText shown;
  shown.item = item;
  shown.text = item->property("text").toString();
  shown.inKey = inKey;
  shown.awayMm = inKey ? std::min(800.0, away) : away;
  shown.active = item->isEnabled();
  const QFont font = item->property("font").value<QFont>();
  shown.pixelSize = font.pixelSize();
  shown.families = familiesOf(shown.text, font);
  const QFontMetricsF metrics(font);
  shown.capPixels = metrics.capHeight();
  shown.ink = item->property("color").value<QColor>();
  const double width = item->property("contentWidth").toDouble();
  // Lines set closer than their letters are high reach from the first one's capitals to what hangs below the last.
  const int lines = item->property("lineCount").toInt();
  const bool isClose = item->property("lineHeightMode").toInt() == kFixedHeight;
  const double pitch = isClose ? item->property("lineHeight").toDouble() : 0;
  const double lift = isClose ? metrics.ascent() - metrics.capHeight() : 0;
  const double hangs = isClose ? std::max(0.0, metrics.tightBoundingRect(shown.text).bottom()) : 0;
  const double height =
      isClose ? (lines - 1) * pitch + metrics.capHeight() + hangs : item->property("contentHeight").toDouble();
  // Of a single line only the letters need the room: its leading may reach beyond. Sizes are rounded up to pixels.
  const double needed = lines == 1 ? shown.capPixels : isClose ? lines * pitch : height;
  shown.fits = width <= item->width() + 1.5 && needed <= item->height() + 1.5 && !item->property("truncated").toBool();
  const int alignment = item->property("effectiveHorizontalAlignment").toInt();
  double x = 0;
  if (alignment == Qt::AlignHCenter) x = (item->width() - width) / 2;
  if (alignment == Qt::AlignRight) x = item->width() - width;
  const bool middle = item->property("verticalAlignment").toInt() == Qt::AlignVCenter;
  const double y = middle    ? (item->height() - height) / 2
                   : isClose ? item->property("topPadding").toDouble() + lift
                             : 0;
  shown.place = item->mapRectToScene(QRectF(x, y, width, height));
  return shown;
}

// What a list has scrolled out of view, in part or whole, is looked at once it is scrolled in.
void collect(QQuickItem* item, double away, bool inKey, const QRectF& seen, Shown& shown) {
  if (!item->isVisible() || item->opacity() == 0) return;
  if (const QVariant distance = item->property("distance"); distance.isValid()) away = distance.toDouble();
  if (const QVariant fits = item->property("fits"); fits.isValid() && !fits.toBool()) shown.panesFit = false;
  const QRectF place = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
  if (isKey(item)) {
    if (!seen.contains(place)) return;
    shown.keys.push_back({item->property("legend").toString(), item->objectName(), place, item->isEnabled()});
    inKey = true;
  }
  if (item->inherits("QQuickText") && !item->property("text").toString().isEmpty()) {
    ShownText text = textOf(item, away, inKey);
    if (!seen.contains(text.place)) return;
    shown.texts.push_back(std::move(text));
  }
  const QRectF within = item->clip() ? seen.intersected(place.adjusted(-1, -1, 1, 1)) : seen;
  for (QQuickItem* child : item->childItems()) collect(child, away, inKey, within, shown);
}

}  // namespace

Shown look(QQuickItem* root, const QImage& picture) {
  Shown shown;
  shown.picture = picture;
  constexpr double kEndless = 1e6;
  collect(root, 800, false, QRectF(-kEndless, -kEndless, 2 * kEndless, 2 * kEndless), shown);
  return shown;
}

std::vector<OfferedAction> offeredBy(const QObject& window) {
  auto* area = window.property("answering").value<QObject*>();
  while (auto* inner = area->property("inner").value<QObject*>()) area = inner;
  std::vector<OfferedAction> offered;
  const QQmlListReference actions(area, "actions");
  for (qsizetype i = 0; i < actions.count(); ++i) {
    const QObject* action = actions.at(i);
    offered.push_back({action->property("name").toString(), action->property("called").toString(),
                       action->property("place").toInt(), action->property("enabled").toBool()});
  }
  return offered;
}

double minutesOfArc(double heightMm, double awayMm) { return heightMm * 21600 / (6.283 * awayMm); }

double contrast(const QColor& a, const QColor& b) {
  // By value: a pair of references to these would outlive them.
  const std::pair<double, double> sorted = std::minmax({luminance(a), luminance(b)});
  const auto [dark, light] = sorted;
  return (light + 0.05) / (dark + 0.05);
}

QColor groundOf(const QImage& picture, const QRectF& place) {
  const QRect area = place.toAlignedRect().adjusted(-2, -2, 2, 2).intersected(picture.rect());
  QHash<QRgb, int> counts;
  for (int y = area.top(); y <= area.bottom(); ++y) {
    for (int x = area.left(); x <= area.right(); ++x) ++counts[picture.pixel(x, y)];
  }
  const auto most = std::max_element(counts.begin(), counts.end());
  return most == counts.end() ? QColor() : QColor(most.key());
}

double inkHeight(const QImage& picture, const ShownText& text) {
  const QColor ground = groundOf(picture, text.place);
  const QRect area = text.place.toAlignedRect().intersected(picture.rect());
  int first = -1;
  int last = -1;
  for (int y = area.top(); y <= area.bottom(); ++y) {
    bool inked = false;
    for (int x = area.left(); x <= area.right() && !inked; ++x) {
      const QColor pixel(picture.pixel(x, y));
      inked = apart(pixel, text.ink) < apart(pixel, ground);
    }
    if (!inked) continue;
    if (first < 0) first = y;
    last = y;
  }
  return first < 0 ? 0 : last - first + 1;
}

}  // namespace tests
