#include "tests/app/gallery/sheet_print.h"

#include <QImage>
#include <QPainter>
#include <QPainterPath>

namespace tests {

bool writeSheetPrint(const QString& path) {
  constexpr int kRepeat = 240;
  constexpr int kHeight = 420;
  QImage image(3 * kRepeat, kHeight, QImage::Format_RGB32);
  image.fill(QColor("#9C3F2E"));
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  // The sheet is not of one tone: broad bands, as paste is brushed on.
  for (int y = 0; y < kHeight; y += 14) painter.fillRect(0, y, image.width(), 5, QColor(0, 0, 0, 22));
  for (int row = 0; row < 3; ++row) {
    for (int column = 0; column < 3; ++column) {
      painter.save();
      painter.translate(kRepeat / 2 + column * kRepeat, 70 + row * 140);
      painter.setPen(QPen(QColor("#F3E3B9"), 9));
      painter.setBrush(QColor("#D9A441"));
      painter.drawEllipse(QPointF(0, 0), 30, 30);
      painter.setBrush(QColor("#F3E3B9"));
      painter.setPen(Qt::NoPen);
      for (int leaf = 0; leaf < 8; ++leaf) {
        painter.rotate(45);
        painter.drawEllipse(QPointF(48, 0), 16, 6);
      }
      painter.drawEllipse(QPointF(kRepeat / 2, 0), 9, 9);
      painter.drawEllipse(QPointF(-kRepeat / 2, 0), 9, 9);
      painter.restore();
    }
  }
  painter.end();
  return image.save(path);
}

}  // namespace tests
