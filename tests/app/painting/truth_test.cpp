// A piece is painted and measured on the picture: edges, repeats and the share of flake are where the figures say.
#include <QImage>
#include <cmath>
#include <functional>

#include "app/painting/drawing_painter.h"
#include "app/painting/materials.h"
#include "core/sheets/piece.h"
#include "tests/support/catch.h"
#include "tests/support/richest_example.h"
#include "tests/support/shaped_example.h"

namespace {

using core::sheets::Drawing;
using core::sheets::Role;
using core::sheets::Substance;

const app::painting::Inks kDay{QColor("#181C20"), QColor("#7C7B73"), QColor("#712808"), QColor("#F4F1E9"), 1,
                               QColor("#E7E3D8")};

// A picture of a part of the piece at a whole number of pixels to the mm, with the margin that fitting leaves.
struct Picture {
  QImage image;
  QRectF seen;
  double scale = 0;

  double toX(double pixel) const { return seen.left() + (pixel - 3) / scale; }
  double toY(double pixel) const { return seen.top() + (pixel - 3) / scale; }
  QColor at(double x, double y) const {
    return image.pixelColor(static_cast<int>(std::floor((x - seen.left()) * scale)) + 3,
                            static_cast<int>(std::floor((y - seen.top()) * scale)) + 3);
  }
};

Picture paintedPart(const Drawing& drawing, const QRectF& seen, double scale) {
  app::painting::Painted painted;
  painted.piece = std::make_shared<const Drawing>(drawing);
  painted.seen = seen;
  const QSize size(static_cast<int>(std::lround(seen.width() * scale)) + 6,
                   static_cast<int>(std::lround(seen.height() * scale)) + 6);
  Picture picture{QImage(size, QImage::Format_RGB32), seen, scale};
  picture.image.fill(kDay.cloth);
  QPainter painter(&picture.image);
  app::painting::paintDrawing(painter, painted, size, kDay);
  return picture;
}

Drawing only(const Drawing& drawing, Role role) {
  Drawing part = drawing;
  std::erase_if(part.primitives, [&](const auto& primitive) { return primitive.role != role; });
  return part;
}

double apart(const QColor& a, const QColor& b) {
  return std::abs(a.redF() - b.redF()) + std::abs(a.greenF() - b.greenF()) + std::abs(a.blueF() - b.blueF());
}

// Returns the places along one row of the picture where a shape painted alone begins and ends, in mm, to a part of a
// pixel: what is covered of the pixel at an edge counts.
std::vector<double> edgesAlong(const Picture& picture, double y) {
  const int row = static_cast<int>(std::lround((y - picture.seen.top()) * picture.scale)) + 3;
  std::vector<double> edges;
  double before = 0;
  double most = 0;
  std::vector<double> covered;
  for (int x = 0; x < picture.image.width(); ++x) {
    covered.push_back(apart(picture.image.pixelColor(x, row), kDay.cloth));
    most = std::max(most, covered.back());
  }
  for (std::size_t x = 0; x < covered.size(); ++x) {
    const double share = covered[x] > most / 8 ? 1 : 0;
    if (share != before) {
      const double part = std::min(1.0, covered[x] / most);
      edges.push_back(picture.toX(share > before ? static_cast<double>(x) + 1 - part : static_cast<double>(x)));
    }
    before = share;
  }
  return edges;
}

constexpr double kTrue = 0.1;

}  // namespace

TEST_CASE("edges are painted where the figures say, to a tenth of a millimetre") {
  const auto design = tests::designOf(tests::workedExample());
  const auto& layout = design.layout;
  const Drawing face = drawPiece(design, core::sheets::Side::Face);
  const double middle = layout.outerHeight / 2;
  const QRectF left(-2, middle - 1, 90, 2);
  const auto edgesOf = [&](Role role) { return edgesAlong(paintedPart(only(face, role), left, 20), middle); };

  const double axis = layout.outerWidth / 2;
  const auto& band = layout.bands.front();
  const auto strip = edgesOf(Role::Band);
  REQUIRE(strip.size() >= 2);
  CHECK(strip.front() == Approx(axis - band.outer.width / 2).margin(kTrue));
  CHECK(strip.back() == Approx(axis - band.inner.width / 2).margin(kTrue));

  const auto lines = edgesOf(Role::Line);
  REQUIRE(lines.size() == 4);
  for (std::size_t i = 0; i < 2; ++i) {
    const auto& line = layout.lines[i];
    const double centre = axis - line.path.width / 2;
    CHECK(lines[2 * i] == Approx(centre - line.width / 2).margin(kTrue));
    CHECK(lines[2 * i + 1] == Approx(centre + line.width / 2).margin(kTrue));
  }

  const auto bevels = edgesOf(Role::Bevel);
  REQUIRE(bevels.size() == 4);
  for (std::size_t i = 0; i < 2; ++i) {
    CHECK(bevels[2 * i] == Approx(layout.boards[i].faceAt.left).margin(kTrue));
    CHECK(bevels[2 * i + 1] == Approx(layout.boards[i].sightAt.left).margin(kTrue));
  }

  const auto boards = edgesOf(Role::BoardFace);
  REQUIRE(boards.size() == 4);
  CHECK(boards[0] == Approx(0).margin(kTrue));
  CHECK(boards[1] == Approx(layout.boards[0].faceAt.left).margin(kTrue));
}

TEST_CASE(
    "a bevel follows its curve to a tenth of a millimetre, and each of its facets has the light that falls on it") {
  const auto design = tests::designOf(tests::richestExample());
  const Drawing bevels = only(drawPiece(design, core::sheets::Side::Face), Role::Bevel);
  const auto& board = design.layout.boards.front();
  const auto box = board.faceOutline.bounds();
  const QRectF seen(box.left - 2, box.top - 2, box.right - box.left + 4, box.bottom - box.top + 4);
  Drawing top = bevels;
  std::erase_if(top.primitives, [&](const auto& primitive) { return primitive.element != board.id; });
  const Picture picture = paintedPart(top, seen, 8);
  int inside = 0;
  for (int y = 4; y < picture.image.height() - 4; y += 3) {
    for (int x = 4; x < picture.image.width() - 4; x += 3) {
      const core::geometry::Point point{picture.toX(x + 0.5), picture.toY(y + 0.5)};
      if (board.faceOutline.distanceTo(point) < kTrue || board.sightOutline.distanceTo(point) < kTrue) continue;
      const bool bevel = board.faceOutline.contains(point) && !board.sightOutline.contains(point);
      const bool painted = apart(picture.image.pixelColor(x, y), kDay.cloth) > 0.1;
      if (bevel != painted) FAIL("at " << point.x << ' ' << point.y);
      inside += bevel ? 1 : 0;
    }
  }
  CHECK(inside > 1000);
  const double middle = (box.top + box.bottom) / 2 + 40;
  const double half = board.bevelPlan / 2;
  const double dark = picture.at(box.left + half, middle).lightnessF();
  const double light = picture.at(box.right - half, middle).lightnessF();
  const double lightest = picture.at((box.left + box.right) / 2, box.bottom - half).lightnessF();
  const double darkest = picture.at((box.left + box.right) / 2, box.top + half).lightnessF();
  CHECK(darkest < dark);
  CHECK(dark < light);
  CHECK(light < lightest);
}

TEST_CASE("flakes cover the entered share of their field as it is painted") {
  for (const std::string& text : {tests::workedExample(), tests::richestExample()}) {
    const auto design = tests::designOf(text);
    const auto& field = design.layout.leaf.front();
    const double coverage = design.job.leaf.front().coverage;
    const Drawing leaf = only(drawPiece(design, core::sheets::Side::Face), Role::Leaf);
    const QRectF seen(0, 0, leaf.width, leaf.height);
    const Picture picture = paintedPart(leaf, seen, 8);
    // How far a pixel has gone from the cloth towards the tone of the flake that covers it in part.
    const auto tones = app::painting::leafTones();
    double covered = 0;
    for (int y = 0; y < picture.image.height(); ++y) {
      for (int x = 0; x < picture.image.width(); ++x) {
        const QColor pixel = picture.image.pixelColor(x, y);
        const double off = apart(pixel, kDay.cloth);
        if (off == 0) continue;
        double best = 0, nearest = 10;
        for (const QColor& tone : tones) {
          const double share = std::min(1.0, off / apart(tone, kDay.cloth));
          const double miss = apart(app::painting::mixed(kDay.cloth, tone, share), pixel);
          if (miss < nearest) nearest = miss, best = share;
        }
        covered += best;
      }
    }
    CHECK(covered / (picture.scale * picture.scale) / field.area == Approx(coverage).epsilon(0.01));
  }
}

TEST_CASE("a pattern repeats at the paper's repeat and its motif stands where the strip is centred") {
  const auto design = tests::designOf(tests::workedExample());
  const Drawing bands = only(drawPiece(design, core::sheets::Side::Face), Role::Band);
  const auto& band = design.layout.bands.front();
  const double repeat = design.job.bands.front().repeat->inMillimetres();
  const double axis = design.layout.outerWidth / 2;
  const double faceMiddle = (design.layout.boards[0].faceAt.top + design.layout.boards[0].faceAt.bottom) / 2;
  const double top = faceMiddle - band.outer.height / 2;
  const Picture picture = paintedPart(bands, QRectF(axis - 100, top, 200, band.width), 20);
  // The most that the strip differs from itself, moved along or turned about a place, over all its width.
  const auto unlike = [&](const std::function<double(double)>& other) {
    double sum = 0;
    int count = 0;
    for (double y = 1; y < band.width - 1; y += 0.5) {
      for (double x = -60; x < 60; x += 0.25) {
        sum += apart(picture.at(axis + x + 0.02, top + y), picture.at(axis + other(x + 0.02), top + y));
        ++count;
      }
    }
    return sum / count;
  };
  const double same = 0.03;
  CHECK(unlike([&](double x) { return x + repeat; }) < same);
  CHECK(unlike([&](double x) { return x - repeat; }) < same);
  CHECK(unlike([&](double x) { return x + repeat / 2; }) > 0.2);
  CHECK(unlike([&](double x) { return x + repeat / 3; }) > 0.2);
  // About the middle of the strip, and about the ground half a repeat beside it.
  CHECK(unlike([&](double x) { return -x; }) < same);
  CHECK(unlike([&](double x) { return repeat - x; }) < same);
  CHECK(unlike([&](double x) { return repeat / 2 - x; }) > 0.2);
  // A tenth of a millimetre off is seen.
  CHECK(unlike([&](double x) { return 0.3 - x; }) > unlike([&](double x) { return -x; }) + 0.02);
}

TEST_CASE("where the corners meet, the pattern of two strips is each other's mirror image in the mitre") {
  // 24 mm into half the difference of the outer edges, with both pairs centred alike.
  const auto design =
      tests::designOf(tests::changed(tests::workedExample(), "\"repeat\": \"24 mm\"", "\"repeat\": \"35 mm\""));
  const auto& band = design.layout.bands.front();
  REQUIRE(std::abs(std::remainder((band.outer.width - band.outer.height) / 2, 35.0)) < 1e-9);
  const Drawing bands = only(drawPiece(design, core::sheets::Side::Face), Role::Band);
  const auto face = design.layout.boards[0].faceAt;
  const double left = (face.left + face.right) / 2 - band.outer.width / 2;
  const double top = (face.top + face.bottom) / 2 - band.outer.height / 2;
  const Picture picture = paintedPart(bands, QRectF(left, top, 80, 80), 12);
  double sum = 0;
  int count = 0;
  for (double along = 2; along < 70; along += 0.25) {
    for (double across = 0.5; across < band.width - 0.5; across += 0.5) {
      if (along < across + 1) continue;
      sum += apart(picture.at(left + along, top + across), picture.at(left + across, top + along));
      ++count;
    }
  }
  CHECK(sum / count < 0.03);
}
