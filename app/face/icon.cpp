#include "app/face/icon.h"

#include <QFile>
#include <QPainter>
#include <QPainterPath>
#include <QXmlStreamReader>

namespace app::face {
namespace {

constexpr int kSmallest = 16;
constexpr int kLargest = 256;
// Up to here the drawing that leaves things out is used.
constexpr int kSimplified = 32;

// Whole numbers and decimals apart by spaces.
bool readPoints(const QStringList& words, qsizetype from, qsizetype count, std::vector<QPointF>& points) {
  points.clear();
  for (qsizetype i = from; i < from + 2 * count; i += 2) {
    bool across = false;
    bool down = false;
    points.emplace_back(words.value(i).toDouble(&across), words.value(i + 1).toDouble(&down));
    if (!across || !down) return false;
  }
  return true;
}

std::optional<QPainterPath> pathOf(const QString& data) {
  QString apart = data;
  for (const char command : {'M', 'L', 'C', 'Z'}) {
    apart.replace(QLatin1Char(command), QStringLiteral(" %1 ").arg(QLatin1Char(command)));
  }
  const QStringList words = apart.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  QPainterPath path;
  std::vector<QPointF> points;
  for (qsizetype i = 0; i < words.size();) {
    const QString& command = words[i++];
    if (command == QLatin1String("Z")) {
      path.closeSubpath();
      continue;
    }
    const bool curve = command == QLatin1String("C");
    const qsizetype count = curve ? 3 : 1;
    if (!readPoints(words, i, count, points)) return std::nullopt;
    i += 2 * count;
    if (command == QLatin1String("M")) {
      path.moveTo(points[0]);
    } else if (command == QLatin1String("L")) {
      path.lineTo(points[0]);
    } else if (curve) {
      path.cubicTo(points[0], points[1], points[2]);
    } else {
      return std::nullopt;
    }
  }
  return path.isEmpty() ? std::nullopt : std::optional(path);
}

bool paint(QPainter& painter, const QXmlStreamAttributes& of) {
  const auto path = pathOf(of.value(QLatin1String("d")).toString());
  if (!path) return false;
  const auto colour = [&of](const char* name) {
    const QString said = of.value(QLatin1String(name)).toString();
    return said.isEmpty() || said == QLatin1String("none") ? QColor(Qt::transparent) : QColor(said);
  };
  const QColor fill = colour("fill");
  const QColor stroke = colour("stroke");
  if (!fill.isValid() || !stroke.isValid()) return false;
  painter.fillPath(*path, fill);
  if (stroke.alpha() == 0) return true;
  bool known = false;
  const double width = of.value(QLatin1String("stroke-width")).toDouble(&known);
  if (!known) return false;
  painter.strokePath(*path, QPen(stroke, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  return true;
}

}  // namespace

std::optional<QImage> drawnIcon(const QString& file, int side) {
  QFile drawing(file);
  if (!drawing.open(QIODevice::ReadOnly)) return std::nullopt;
  QImage image(side, side, QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::transparent);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  QXmlStreamReader reader(&drawing);
  while (reader.readNextStartElement()) {
    if (reader.name() == QLatin1String("svg")) {
      const QStringList box = reader.attributes().value(QLatin1String("viewBox")).toString().split(QLatin1Char(' '));
      const double wide = box.value(2).toDouble();
      if (!(wide > 0)) return std::nullopt;
      painter.scale(side / wide, side / wide);
      continue;
    }
    if (reader.name() != QLatin1String("path") || !paint(painter, reader.attributes())) return std::nullopt;
    reader.skipCurrentElement();
  }
  return reader.hasError() ? std::nullopt : std::optional(image);
}

QIcon icon() {
  QIcon all;
  for (const int side : {kSmallest, 24, kSimplified, 48, 64, 128, kLargest}) {
    const QString file = side <= kSimplified ? QStringLiteral(":/mountwright/icon/mountwright-small.svg")
                                             : QStringLiteral(":/mountwright/icon/mountwright.svg");
    if (const auto image = drawnIcon(file, side)) all.addPixmap(QPixmap::fromImage(*image));
  }
  return all;
}

}  // namespace app::face
