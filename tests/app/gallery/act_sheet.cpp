#include "tests/app/gallery/act_sheet.h"

#include <QImage>

#include "app/painting/drawing_painter.h"
#include "core/sheets/act.h"

namespace tests {
namespace {

using app::painting::Inks;

constexpr int kColumns = 6;
constexpr int kWidth = 360;
constexpr int kHeight = 270;
constexpr int kEdge = 12;
constexpr int kWord = 30;
constexpr double kDisc = 14;

QImage sheet(const Inks& inks) {
  const auto& acts = core::craft::allActs();
  const int rows = (static_cast<int>(acts.size()) + kColumns - 1) / kColumns;
  QImage image(kColumns * kWidth, rows * kHeight, QImage::Format_RGB32);
  image.fill(inks.ground);
  QPainter painter(&image);
  QFont font = painter.font();
  font.setPixelSize(18);
  painter.setFont(font);
  for (std::size_t i = 0; i < acts.size(); ++i) {
    const int x = static_cast<int>(i) % kColumns * kWidth + kEdge;
    const int y = static_cast<int>(i) / kColumns * kHeight;
    app::painting::Painted drawing;
    drawing.piece =
        std::make_shared<const core::sheets::Drawing>(core::sheets::drawAct(acts[i], core::craft::WayUp::None));
    painter.save();
    painter.translate(x, y);
    app::painting::paintDrawing(painter, drawing, QSizeF(kWidth - 2 * kEdge, kHeight - kWord), inks);
    painter.restore();
    // The parts that sentences speak of, by their first letters.
    const QTransform fit = app::painting::fitted(drawing, QSizeF(kWidth - 2 * kEdge, kHeight - kWord), inks.hairline);
    for (const auto& place : drawing.piece->places) {
      const QPointF at = fit.map(QPointF(place.at.x, place.at.y)) + QPointF(x, y);
      painter.setBrush(inks.ink);
      painter.setPen(QPen(inks.ground, 3));
      painter.drawEllipse(at, kDisc, kDisc);
      painter.setPen(inks.ground);
      painter.drawText(QRectF(at - QPointF(kDisc, kDisc), QSizeF(2 * kDisc, 2 * kDisc)), Qt::AlignCenter,
                       QString::fromStdString(std::string(core::craft::name(place.place))).left(1));
    }
    painter.setPen(inks.pencil);
    painter.drawText(x, y + kHeight - kEdge, QString::fromStdString(std::string(name(acts[i]))));
  }
  return image;
}

}  // namespace

bool paintActs(const QDir& folder) {
  // The theme's colours.
  const Inks day{QColor("#1B1F23"), QColor("#8A8D90"), QColor("#7A3410"), QColor("#F7F5EF"), 1.2};
  const Inks lamp{QColor("#F2EFE8"), QColor("#7C838A"), QColor("#F2A872"), QColor("#14171A"), 1.2};
  return sheet(day).save(folder.filePath(QStringLiteral("acts-day.png"))) &&
         sheet(lamp).save(folder.filePath(QStringLiteral("acts-lamp.png")));
}

}  // namespace tests
