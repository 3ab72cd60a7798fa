// The program's icon at the sizes a desktop shows it in: every part of it is there and stands out from what it lies on.
#include "app/face/icon.h"

#include <QColor>
#include <QFile>
#include <QTemporaryDir>
#include <cmath>

#include "tests/support/catch.h"

namespace {

const QString kLarge = QStringLiteral(":/mountwright/icon/mountwright.svg");
const QString kSmall = QStringLiteral(":/mountwright/icon/mountwright-small.svg");

double channel(double value) { return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4); }
double luminance(const QColor& of) {
  return 0.2126 * channel(of.redF()) + 0.7152 * channel(of.greenF()) + 0.0722 * channel(of.blueF());
}
double contrast(const QColor& one, const QColor& other) {
  const double a = luminance(one);
  const double b = luminance(other);
  return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

// In shares of the side.
struct Place {
  double x, y;
};
struct Pair {
  const char* what;
  Place one, other;
  double least;
};

QColor at(const QImage& image, const Place& place) {
  return image.pixelColor(static_cast<int>(place.x * image.width()), static_cast<int>(place.y * image.height()));
}

void checkAll(const QString& file, int side, const std::vector<Pair>& pairs) {
  const auto image = app::face::drawnIcon(file, side);
  REQUIRE(image);
  CHECK(image->size() == QSize(side, side));
  for (const Pair& pair : pairs) {
    INFO(side << ": " << pair.what << ' ' << at(*image, pair.one).name().toStdString() << ' '
              << at(*image, pair.other).name().toStdString());
    CHECK(at(*image, pair.one).alpha() == 255);
    CHECK(at(*image, pair.other).alpha() == 255);
    CHECK(contrast(at(*image, pair.one), at(*image, pair.other)) >= pair.least);
  }
  // Its edge stands out from a light desktop, and its board from a dark one.
  CHECK(contrast(at(*image, {0.5, 0.035}), Qt::white) >= 3);
  CHECK(contrast(at(*image, {0.12, 0.5}), Qt::black) >= 7);
}

bool reads(const QString& paths) {
  QTemporaryDir folder;
  QFile file(folder.filePath(QStringLiteral("own.svg")));
  if (!file.open(QIODevice::WriteOnly)) return false;
  file.write(QStringLiteral("<svg viewBox=\"0 0 8 8\">%1</svg>").arg(paths).toUtf8());
  file.close();
  return app::face::drawnIcon(file.fileName(), 8).has_value();
}

}  // namespace

TEST_CASE("at small sizes the icon has its board, marked corner, bevel and work", "[icon]") {
  for (const int side : {16, 24, 32}) {
    checkAll(kSmall, side,
             {{"corner on board", {0.1, 0.1}, {0.12, 0.5}, 7},
              {"bevel on board", {0.25, 0.7}, {0.12, 0.7}, 3},
              {"work in bevel", {0.5, 0.4}, {0.5, 0.25}, 3},
              {"sea and sky", {0.5, 0.7}, {0.5, 0.4}, 4.5}});
  }
}

TEST_CASE("at large sizes the icon has band and bevel, each lit from the top left", "[icon]") {
  for (const int side : {48, 64, 128, 256}) {
    checkAll(kLarge, side,
             {{"corner on board", {0.07, 0.07}, {0.1, 0.5}, 7},
              {"band on board", {0.5, 0.18}, {0.5, 0.08}, 3},
              {"band dark above and light below", {0.5, 0.18}, {0.5, 0.79}, 3},
              {"band darker left than right", {0.17, 0.5}, {0.79, 0.5}, 1.5},
              {"sea and sky", {0.5, 0.62}, {0.5, 0.38}, 4.5},
              {"bevel dark at the left and light at the right", {0.32, 0.55}, {0.645, 0.55}, 1.5}});
  }
}

TEST_CASE("a drawing that the program does not read whole is not read at all", "[icon]") {
  CHECK(reads(QStringLiteral("<path d=\"M0 0 L8 0 L8 8 Z\" fill=\"#000000\"/>")));
  CHECK_FALSE(reads(QStringLiteral("<path d=\"M0 0 H8 L8 8 Z\" fill=\"#000000\"/>")));
  CHECK_FALSE(reads(QStringLiteral("<path d=\"M0 0 L8\" fill=\"#000000\"/>")));
  CHECK_FALSE(reads(QStringLiteral("<path d=\"\" fill=\"#000000\"/>")));
  CHECK_FALSE(reads(QStringLiteral("<path d=\"M0 0 L8 8\" fill=\"none\" stroke=\"#000000\"/>")));
  CHECK_FALSE(reads(QStringLiteral("<path d=\"M0 0 L8 8\" fill=\"no colour\"/>")));
  CHECK_FALSE(reads(QStringLiteral("<circle cx=\"4\" cy=\"4\" r=\"2\"/>")));
  CHECK_FALSE(reads(QStringLiteral("<path d=\"M0 0 L8 0 L8 8 Z\" fill=\"#000000\"")));
  CHECK_FALSE(app::face::drawnIcon(QStringLiteral(":/mountwright/icon/none.svg"), 16));
}
