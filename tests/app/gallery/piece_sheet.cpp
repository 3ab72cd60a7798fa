#include "tests/app/gallery/piece_sheet.h"

#include <QImage>
#include <optional>
#include <vector>

#include "app/painting/drawing_painter.h"
#include "core/sheets/piece.h"
#include "core/sheets/strip_drawing.h"
#include "tests/support/golden.h"
#include "tests/support/richest_example.h"

namespace tests {
namespace {

using app::painting::Inks;
using core::sheets::Drawing;

constexpr int kPieceWidth = 720;
constexpr int kPieceHeight = 700;
constexpr int kPieceEdge = 16;

constexpr int kStripHeight = 90;

// A piece, and a strip of its innermost band.
struct Shown {
  Drawing piece;
  std::optional<core::sheets::StripInHand> strip;
};

std::vector<Shown> pieces() {
  std::vector<std::string> texts = {richestExample()};
  for (const char* name : {"pilots-chart", "heron", "tide-table"})
    texts.push_back(readWholeFile(std::string(PROJECT_ROOT) + "/recipes/jobs/" + name + ".job.json").value_or(""));
  std::vector<Shown> drawings;
  for (const std::string& text : texts) {
    const auto read = core::design::readDesign(text);
    if (!read.design) continue;
    drawings.push_back(
        {drawPiece(*read.design, core::sheets::Side::Face),
         core::sheets::drawStrip(*read.design, "band." + read.design->job.bands.front().id + ".strip.horizontal")});
  }
  return drawings;
}

QImage pieceSheet(const Inks& inks) {
  const std::vector<Shown> drawings = pieces();
  QImage image(static_cast<int>(drawings.size()) * kPieceWidth, 2 * kPieceHeight + kStripHeight, QImage::Format_RGB32);
  image.fill(inks.cloth);
  QPainter painter(&image);
  for (std::size_t i = 0; i < drawings.size(); ++i) {
    for (const bool toCome : {false, true}) {
      Drawing drawing = drawings[i].piece;
      // Half of what is to come, so that both can be compared.
      for (std::size_t k = drawing.primitives.size() / 3; toCome && k < drawing.primitives.size(); ++k)
        drawing.primitives[k].standing = core::sheets::Standing::ToCome;
      app::painting::Painted painted;
      painted.piece = std::make_shared<const Drawing>(std::move(drawing));
      if (toCome) painted.worked = painted.piece->primitives[painted.piece->primitives.size() / 2].element;
      painter.save();
      painter.translate(static_cast<int>(i) * kPieceWidth + kPieceEdge, (toCome ? kPieceHeight : 0) + kPieceEdge);
      app::painting::paintDrawing(painter, painted, QSizeF(kPieceWidth - 2 * kPieceEdge, kPieceHeight - 2 * kPieceEdge),
                                  inks);
      painter.restore();
    }
    if (!drawings[i].strip) continue;
    app::painting::Painted strip;
    strip.piece = std::make_shared<const Drawing>(drawings[i].strip->strip);
    strip.dimension = std::make_shared<const std::vector<core::sheets::Primitive>>(drawings[i].strip->dimension);
    strip.worked = strip.piece->primitives.front().element;
    painter.save();
    painter.translate(static_cast<int>(i) * kPieceWidth + kPieceEdge, 2 * kPieceHeight);
    app::painting::paintDrawing(painter, strip, QSizeF(kPieceWidth - 2 * kPieceEdge, kStripHeight - kPieceEdge), inks);
    painter.restore();
  }
  return image;
}

}  // namespace

bool paintPieces(const QDir& folder) {
  // The theme's colours.
  const Inks day{QColor("#181C20"), QColor("#7C7B73"), QColor("#712808"), QColor("#F4F1E9"), 1, QColor("#E7E3D8")};
  const Inks lamp{QColor("#F6F2EA"), QColor("#868D94"), QColor("#FFC798"), QColor("#121518"), 1, QColor("#1B1F23")};
  return pieceSheet(day).save(folder.filePath(QStringLiteral("materials-day.png"))) &&
         pieceSheet(lamp).save(folder.filePath(QStringLiteral("materials-lamp.png")));
}

}  // namespace tests
