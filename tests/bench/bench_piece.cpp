// What painting the richest piece costs at the size of a tablet's screen: three boards round an ogee, two printed
// bands, lines, a wash and flake over 15 % of the ground. Beside it, in the same run, the same shapes filled flat,
// which is the least any painter does, so that a slow or busy machine is told from a slow painter. Also what strewing
// the flakes costs, which is done once for a design. Fails where painting takes longer than allowed.
#include <QGuiApplication>
#include <QImage>
#include <QPainterPath>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <limits>

#include "app/painting/drawing_painter.h"
#include "app/painting/paths.h"
#include "core/sheets/piece.h"
#include "tests/support/richest_example.h"

namespace {

using core::sheets::Drawing;

constexpr int kTimes = 100;
constexpr double kMostMilliseconds = 8;
// What the flat shapes take where those milliseconds are meant; on a slower or busier machine more is allowed alike.
constexpr double kFlatOfTablet = 0.9;

// The quickest of many: what else runs on the machine only ever adds.
double quickest(const std::function<void()>& work) {
  double least = std::numeric_limits<double>::infinity();
  for (int i = 0; i < kTimes; ++i) {
    const auto start = std::chrono::steady_clock::now();
    work();
    least =
        std::min(least, std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
  }
  return least;
}

void paint(QImage& image, const app::painting::Painted& painted, const app::painting::Inks& inks) {
  image.fill(inks.cloth);
  QPainter painter(&image);
  app::painting::paintDrawing(painter, painted, image.size(), inks);
}

// Every paper of the piece with a picture of 60 mm of its sheet, as large as any is held.
std::shared_ptr<const app::painting::Appearances> pictured(const Drawing& piece) {
  using app::painting::SheetPicture;
  constexpr double kAcross = 60;
  QImage sheet(SheetPicture::kLongestSide, SheetPicture::kLongestSide / 2, QImage::Format_RGB32);
  for (int y = 0; y < sheet.height(); ++y) {
    for (int x = 0; x < sheet.width(); ++x) sheet.setPixel(x, y, qRgb(x % 200, y % 150, 120));
  }
  std::map<std::string, app::painting::Appearance> byName;
  for (const auto& primitive : piece.primitives) {
    if (!primitive.matter || primitive.matter->substance != core::sheets::Substance::Paper) continue;
    byName[primitive.matter->name] = {QColor(), std::make_shared<const SheetPicture>(sheet, kAcross)};
  }
  return std::make_shared<const app::painting::Appearances>(std::move(byName));
}

}  // namespace

int main(int argc, char* argv[]) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(argc, argv);
  const auto read = core::design::readDesign(tests::richestExample());
  if (!read.design) return 2;
  const app::painting::Inks inks{QColor("#181C20"), QColor("#7C7B73"), QColor("#712808"), QColor("#F4F1E9"), 1.2,
                                 QColor("#E7E3D8")};
  app::painting::Painted painted;
  painted.piece = std::make_shared<const Drawing>(drawPiece(*read.design, core::sheets::Side::Face));
  QImage image(1280, 800, QImage::Format_ARGB32_Premultiplied);
  const double drawn = quickest([&] { drawPiece(*read.design, core::sheets::Side::Face); });
  const double scale = app::painting::fitted(painted, image.size(), inks.hairline).m11();
  const double flat = quickest([&] {
    image.fill(inks.cloth);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const auto& primitive : painted.piece->primitives)
      painter.fillPath(app::painting::pathOf(primitive, scale), inks.pencil);
  });
  bool good = true;
  const auto hold = [&](const char* what) {
    const double time = quickest([&] { paint(image, painted, inks); });
    const double allowed = kMostMilliseconds * std::max(1.0, flat / kFlatOfTablet);
    std::printf("%-8s %6.2f ms, %4.1f times the flat shapes' %5.2f ms; at most %4.1f ms\n", what, time, time / flat,
                flat, allowed);
    good = good && time <= allowed;
  };
  for (const bool toCome : {false, true}) {
    Drawing drawing = *painted.piece;
    for (auto& primitive : drawing.primitives)
      primitive.standing = toCome ? core::sheets::Standing::ToCome : core::sheets::Standing::Made;
    painted.piece = std::make_shared<const Drawing>(std::move(drawing));
    hold(toCome ? "to come" : "made");
  }
  // Both bands of papers that have a picture. What is laid out once for a size is told apart.
  painted.appearances = pictured(*painted.piece);
  const double first = quickest([&] {
    painted.appearances = pictured(*painted.piece);
    paint(image, painted, inks);
  });
  hold("pictured");
  std::printf("with pictures just read and laid out:  %6.2f ms\n", first);
  std::printf("drawing it as data, with its flakes: %6.2f ms\n", drawn);
  return good ? 0 : 1;
}
