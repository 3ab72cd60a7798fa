#pragma once
// What a screen really shows: every visible text and key with its place, taken from the scene, and the picture.
#include <QColor>
#include <QImage>
#include <QPointer>
#include <QQuickItem>
#include <QRectF>
#include <QString>

#include <vector>

namespace tests {

// One that the screen offers.
struct OfferedAction {
  QString name;
  QString called;
  int place = 0;  // ScreenAction.Place
  bool enabled = false;
};

struct ShownText {
  QString text;
  QRectF place;          // of the letters, in px of the window
  double capPixels = 0;  // height of a capital in its font
  double awayMm = 800;   // from where it must be read
  bool inKey = false;
  bool active = true;  // not of a key that cannot be used now
  bool fits = true;    // the letters lie within the item's own room, none left out
  QColor ink;
  int pixelSize = 0;
  QStringList families;  // of the fonts its letters are really drawn from, in the order they come
  QPointer<QQuickItem> item;
};

struct ShownKey {
  QString legend;
  QString name;
  QRectF place;
  bool enabled = true;
};

struct Shown {
  std::vector<ShownText> texts;
  std::vector<ShownKey> keys;
  bool panesFit = true;  // no pane still overflows at its tightest
  QImage picture;
};

Shown look(QQuickItem* root, const QImage& picture);

// What can be done on the screen that answers in this window, in its order.
std::vector<OfferedAction> offeredBy(const QObject& window);

// NUREG-0700: h = 6.283 D a / 21600, turned round: minutes of arc of a height seen from a distance.
double minutesOfArc(double heightMm, double awayMm);
// WCAG 2 contrast of two colours.
double contrast(const QColor& a, const QColor& b);
// The colour most of a rectangle of the picture has.
QColor groundOf(const QImage& picture, const QRectF& place);
// Height in px of the ink of a text as it was really drawn: rows that hold something nearer to the ink than the ground.
double inkHeight(const QImage& picture, const ShownText& text);

}  // namespace tests
