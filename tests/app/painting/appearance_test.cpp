// Materials look as their maker told: colours of their own, and papers as the picture of their sheet, at its scale.
#include "app/painting/appearance.h"

#include <QImage>
#include <algorithm>
#include <cmath>
#include <functional>

#include "app/painting/drawing_painter.h"
#include "app/painting/materials.h"
#include "app/painting/tints.h"
#include "core/sheets/piece.h"
#include "tests/support/catch.h"
#include "tests/support/files.h"
#include "tests/support/worked_example.h"

namespace {

using app::painting::Appearance;
using app::painting::Appearances;
using app::painting::Breadth;
using app::painting::Inks;
using app::painting::Light;
using app::painting::PaperPlace;
using app::painting::SheetPicture;
using core::sheets::Drawing;
using core::sheets::Role;
using core::sheets::Standing;

const Inks kBright{QColor("#181C20"), QColor("#7C7B73"), QColor("#712808"), QColor("#F4F1E9"), 1, QColor("#E7E3D8")};
const Inks kLamplit{QColor("#F6F2EA"), QColor("#868D94"), QColor("#FFC798"), QColor("#121518"), 1, QColor("#1B1F23")};

double differ(const QColor& a, const QColor& b) {
  return std::max({std::abs(a.redF() - b.redF()), std::abs(a.greenF() - b.greenF()), std::abs(a.blueF() - b.blueF())});
}

std::shared_ptr<const Appearances> looking(const std::string& material, Appearance look) {
  return std::make_shared<const Appearances>(std::map<std::string, Appearance>{{material, std::move(look)}});
}

Appearance pictured(const QImage& image, double across) {
  return {QColor(), std::make_shared<const SheetPicture>(image, across)};
}

// Cream paper with a black column of so many pixels in its middle, and its upper half a little darker.
QImage marked(int width, int height, int thick) {
  QImage image(width, height, QImage::Format_RGB32);
  image.fill(QColor("#F0E0C0"));
  for (int y = 0; y < height; ++y) {
    for (int x = 0; x < width && y < height / 2; ++x) image.setPixelColor(x, y, QColor("#D0B080"));
    for (int x = (width - thick) / 2; x < (width + thick) / 2; ++x) image.setPixelColor(x, y, Qt::black);
  }
  return image;
}

Drawing keeping(Drawing drawing, const std::function<bool(const core::sheets::Primitive&)>& keeps) {
  std::erase_if(drawing.primitives, [&](const auto& primitive) { return !keeps(primitive); });
  return drawing;
}

Drawing keeping(Drawing drawing, Role role) {
  return keeping(std::move(drawing), [&](const auto& primitive) { return primitive.role == role; });
}

struct Seen {
  QImage image;
  QTransform fit;

  QColor at(double x, double y) const {
    const QPointF place = fit.map(QPointF(x, y));
    return image.pixelColor(static_cast<int>(std::floor(place.x())), static_cast<int>(std::floor(place.y())));
  }
};

Seen seenAs(const Drawing& drawing, const std::shared_ptr<const Appearances>& looks, const QSize& size,
            const Inks& inks = kBright, const QRectF& seen = {}) {
  app::painting::Painted shown;
  shown.piece = std::make_shared<const Drawing>(drawing);
  shown.appearances = looks;
  shown.seen = seen;
  Seen picture{QImage(size, QImage::Format_RGB32), app::painting::fitted(shown, size, inks.hairline)};
  picture.image.fill(inks.cloth);
  QPainter painter(&picture.image);
  app::painting::paintDrawing(painter, shown, size, inks);
  return picture;
}

const std::string kPaper = "wave-block print";

// The dark columns along a line of the piece, in mm from its beginning: the middle of each.
std::vector<double> marksAlong(const Seen& picture, const QPointF& from, const QPointF& to) {
  const double length = std::hypot(to.x() - from.x(), to.y() - from.y());
  std::vector<double> marks;
  double begun = -1;
  for (double along = 0; along <= length; along += 0.02) {
    const QPointF at = from + (to - from) * (along / length);
    const bool dark = picture.at(at.x(), at.y()).lightnessF() < 0.45F;
    if (dark && begun < 0) begun = along;
    if (!dark && begun >= 0) marks.push_back((begun + along) / 2), begun = -1;
  }
  return marks;
}

}  // namespace

TEST_CASE("a repeat of a pictured paper falls at its place along every strip, to half a millimetre") {
  const auto design = tests::designOf(tests::workedExample());
  const Drawing bands = keeping(drawPiece(design, core::sheets::Side::Face), Role::Band);
  // More than a repeat, exactly one, and one read a little short off the rule; at scales that are no whole pixels.
  for (const double across : {60.0, 24.0, 23.7}) {
    const auto looks = looking(kPaper, pictured(marked(600, 400, 2 * static_cast<int>(300 / across)), across));
    for (const QSize& size : {QSize(1500, 1500), QSize(1207, 1100)}) {
      const Seen picture = seenAs(bands, looks, size);
      int strips = 0;
      for (const auto& primitive : bands.primitives) {
        REQUIRE(primitive.matter->run.has_value());
        const auto& run = *primitive.matter->run;
        const QPointF outwards(run.outwards.x, run.outwards.y), along(run.along.x, run.along.y);
        // Along the middle of the strip, well inside the mitres.
        const QPointF middle = QPointF(run.from.x, run.from.y) + outwards * run.width * 0.35;
        constexpr double kReach = 90;
        const auto marks = marksAlong(picture, middle - along * kReach, middle + along * kReach);
        INFO(across << " " << size.width() << " strip " << strips);
        REQUIRE(marks.size() >= 7);
        for (const double mark : marks) CHECK(std::abs(std::remainder(mark - kReach, run.repeat)) < 0.5);
        ++strips;
      }
      CHECK(strips == 4);
    }
  }
}

TEST_CASE("the top of a picture lies outwards on every strip, and the mitre cuts it as it cuts the paper") {
  const auto design = tests::designOf(tests::workedExample());
  const Drawing bands = keeping(drawPiece(design, core::sheets::Side::Face), Role::Band);
  const auto looks = looking(kPaper, pictured(marked(600, 350, 20), 24));
  const Seen picture = seenAs(bands, looks, QSize(1500, 1500));
  for (const auto& primitive : bands.primitives) {
    const auto& run = *primitive.matter->run;
    const auto at = [&](double out) {
      const double aside = run.repeat / 4;
      return picture.at(run.from.x + aside * run.along.x + out * run.width * run.outwards.x,
                        run.from.y + aside * run.along.y + out * run.width * run.outwards.y);
    };
    CHECK(differ(at(0.8), QColor("#D0B080")) < 0.03);
    CHECK(differ(at(0.2), QColor("#F0E0C0")) < 0.03);
  }
  // What is covered is the very same as by a paper that looks as its name says.
  const Seen named = seenAs(bands, nullptr, QSize(1500, 1500));
  int unlike = 0;
  for (int y = 0; y < 1500; ++y) {
    for (int x = 0; x < 1500; ++x) {
      const bool bare = picture.image.pixelColor(x, y) == kBright.cloth;
      unlike += bare != (named.image.pixelColor(x, y) == kBright.cloth) ? 1 : 0;
    }
  }
  CHECK(unlike < 20);
}

TEST_CASE("of a repeat that its picture does not show whole the rest is the picture's mean colour") {
  const auto design = tests::designOf(tests::workedExample());
  const Drawing bands = keeping(drawPiece(design, core::sheets::Side::Face), Role::Band);
  QImage image(100, 200, QImage::Format_RGB32);
  image.fill(QColor("#204060"));
  for (int y = 0; y < 200; ++y) image.setPixelColor(50, y, Qt::white);
  const Appearance look = pictured(image, 10);
  const Seen picture = seenAs(bands, looking(kPaper, look), QSize(1500, 1500));
  const auto& run = *bands.primitives.front().matter->run;
  const auto at = [&](double along) {
    return picture.at(run.from.x + along * run.along.x + run.width / 2 * run.outwards.x,
                      run.from.y + along * run.along.y + run.width / 2 * run.outwards.y);
  };
  CHECK(differ(at(3), QColor("#204060")) < 0.02);
  CHECK(differ(at(12), look.picture->mean()) < 0.01);
  CHECK(differ(at(27), QColor("#204060")) < 0.02);
}

TEST_CASE("where no repeat is told a picture has its true scale, and beside it lies its mirror image") {
  // 20 mm, its mark five from the left: the mirror image's is five from the right.
  QImage image(400, 200, QImage::Format_RGB32);
  image.fill(QColor("#F0E0C0"));
  for (int y = 0; y < 200; ++y) {
    for (int x = 98; x < 102; ++x) image.setPixelColor(x, y, Qt::black);
  }
  const SheetPicture sheet(image, 20);
  CHECK(sheet.down() == Approx(10));
  PaperPlace place;
  constexpr double kScale = 6.3;
  place.toPixels = QTransform(kScale, 0, 0, -kScale, 0, 100);
  const QImage stretch = sheet.stretch(place, QRectF(-400, 0, 800, 200), Light(kBright, Standing::Made));
  std::vector<double> marks;
  for (int x = 1; x < stretch.width(); ++x) {
    const bool dark = stretch.pixelColor(x, 100).lightnessF() < 0.45F;
    if (dark && stretch.pixelColor(x - 1, 100).lightnessF() >= 0.45F) marks.push_back((x - 400) / kScale);
  }
  // In the picture about the origin at -5, in its neighbours at ±20 mirrored: 25 and -15.
  for (const double expected : {-55.0, -45.0, -15.0, -5.0, 25.0, 35.0}) {
    const bool there =
        std::any_of(marks.begin(), marks.end(), [&](double mark) { return std::abs(mark - expected) < 0.5; });
    INFO(expected);
    CHECK(there);
  }
  CHECK(marks.size() >= 6);
}

TEST_CASE("the corners of a piece show their paper's picture at its true scale") {
  const auto text = tests::readWholeFile(PROJECT_ROOT "/recipes/jobs/tide-table.job.json");
  REQUIRE(text.has_value());
  const Drawing spandrels = keeping(drawPiece(tests::designOf(*text), core::sheets::Side::Face), Role::Spandrel);
  REQUIRE_FALSE(spandrels.primitives.empty());
  const std::string paper = spandrels.primitives.front().matter->name;
  QImage image(40, 40, QImage::Format_RGB32);
  for (int y = 0; y < 40; ++y) {
    for (int x = 0; x < 40; ++x) image.setPixelColor(x, y, x < 20 ? QColor("#204060") : QColor("#E0D0B0"));
  }
  const Seen picture = seenAs(spandrels, looking(paper, pictured(image, 4)), QSize(1500, 1500));
  int dark = 0, light = 0;
  for (int y = 0; y < 1500; ++y) {
    for (int x = 0; x < 1500; ++x) {
      const QColor pixel = picture.image.pixelColor(x, y);
      dark += differ(pixel, QColor("#204060")) < 0.05 ? 1 : 0;
      light += differ(pixel, QColor("#E0D0B0")) < 0.05 ? 1 : 0;
    }
  }
  CHECK(dark > 500);
  CHECK(light > 500);
  CHECK(static_cast<double>(dark) / light == Approx(1).epsilon(0.25));
}

TEST_CASE("by lamp and to come a picture is as bright as a colour would be") {
  QImage image(30, 20, QImage::Format_RGB32);
  image.fill(QColor("#6080A0"));
  const SheetPicture sheet(image, 30);
  PaperPlace place;
  place.toPixels = QTransform::fromScale(2, -2);
  for (const Inks& inks : {kBright, kLamplit}) {
    for (const Standing standing : {Standing::Made, Standing::ToCome}) {
      const Light light(inks, standing);
      const QImage stretch = sheet.stretch(place, QRectF(-20, -20, 40, 40), light);
      CHECK(differ(stretch.pixelColor(20, 20), light.on(QColor("#6080A0"), Breadth::Fine)) < 0.01);
    }
  }
}

TEST_CASE("a picture of any shape is painted at any scale, and none is held larger than is of use") {
  const auto design = tests::designOf(tests::workedExample());
  const Drawing piece = drawPiece(design, core::sheets::Side::Face);
  QImage clear(50, 50, QImage::Format_ARGB32);
  clear.fill(Qt::transparent);
  QImage thin(1, 5000, QImage::Format_RGB32), flat(5000, 1, QImage::Format_RGB32), dot(1, 1, QImage::Format_RGB32),
      large(5000, 4000, QImage::Format_RGB32);
  for (QImage* image : {&thin, &flat, &dot, &large}) image->fill(QColor("#406080"));
  for (const QImage& image : {clear, thin, flat, dot, large}) {
    for (const double across : {1e-6, 0.5, 24.0, 10'000.0}) {
      const auto look = pictured(image, across);
      CHECK(look.picture->mean().isValid());
      CHECK(differ(look.picture->mean(), image.hasAlphaChannel() ? QColor(Qt::white) : QColor("#406080")) < 0.01);
      for (const QSize& size : {QSize(7, 7), QSize(40, 700), QSize(1280, 800)}) {
        const Seen picture = seenAs(piece, looking(kPaper, look), size);
        CHECK_FALSE(picture.image.isNull());
      }
      // A part of a large piece: what is beyond the glass is not laid out.
      CHECK_FALSE(seenAs(piece, looking(kPaper, look), QSize(300, 200), kBright, QRectF(10, 10, 3, 2)).image.isNull());
    }
  }
}

TEST_CASE("a material has the colour its maker gave it, and one without has its name's") {
  using namespace app::painting;
  core::sheets::Matter board;
  board.name = "cream board";
  CHECK(colourOf(board, QColor("#123456")) == QColor("#123456"));
  CHECK(colourOf(board) == colourIn("cream"));
  const Paper paper = paperNamed("indigo wave", true, QColor("#C0D0A0"));
  CHECK(paper.pattern == Pattern::Wave);
  CHECK(paper.ground == QColor("#C0D0A0"));
  CHECK(paper.figure.lightnessF() < paper.ground.lightnessF());
  const Light light(kBright, Standing::Made);
  CHECK(pigment("copper", QRectF(0, 0, 9, 9), light, QColor("#805030")).gradient() != nullptr);
  CHECK(pigment("my blue", QRectF(0, 0, 9, 9), light, QColor("#805030")).color() == QColor("#805030"));

  const auto design = tests::designOf(tests::workedExample());
  const Drawing bands = keeping(drawPiece(design, core::sheets::Side::Face), Role::Band);
  const auto pixels = [](const QImage& image, const QColor& colour) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
      for (int x = 0; x < image.width(); ++x) count += image.pixel(x, y) == colour.rgb() ? 1 : 0;
    }
    return count;
  };
  const Appearance look{QColor("#C0D0A0"), nullptr};
  CHECK(pixels(seenAs(bands, looking(kPaper, look), QSize(900, 900)).image, QColor("#C0D0A0")) > 2000);
  CHECK(pixels(seenAs(bands, looking("another paper", look), QSize(900, 900)).image, QColor("#C0D0A0")) == 0);
}

TEST_CASE("what was laid out once is painted again as it was") {
  const auto design = tests::designOf(tests::workedExample());
  const Drawing bands = keeping(drawPiece(design, core::sheets::Side::Face), Role::Band);
  const auto looks = looking(kPaper, pictured(marked(600, 400, 10), 60));
  const QImage first = seenAs(bands, looks, QSize(700, 700)).image;
  for (const int width : {900, 1000, 1100, 1200, 1300, 1400}) seenAs(bands, looks, QSize(width, 1200));
  CHECK(seenAs(bands, looks, QSize(700, 700), kLamplit).image != first);
  CHECK(seenAs(bands, looks, QSize(700, 700)).image == first);
}
