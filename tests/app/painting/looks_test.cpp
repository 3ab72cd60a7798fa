// How materials look: told apart by day and by lamp, sunk into the cloth while to come, inked where worked.
#include <QImage>
#include <algorithm>
#include <set>

#include "app/painting/drawing_painter.h"
#include "app/painting/light.h"
#include "app/painting/materials.h"
#include "app/painting/motif.h"
#include "app/painting/tints.h"
#include "core/sheets/piece.h"
#include "tests/support/catch.h"
#include "tests/support/richest_example.h"
#include "tests/support/worked_example.h"

namespace {

using app::painting::Breadth;
using app::painting::Inks;
using app::painting::Light;
using app::painting::Pattern;
using core::sheets::Drawing;
using core::sheets::Standing;

const Inks kByDay{QColor("#181C20"), QColor("#7C7B73"), QColor("#712808"), QColor("#F4F1E9"), 1, QColor("#E7E3D8")};
const Inks kByLamp{QColor("#F6F2EA"), QColor("#868D94"), QColor("#FFC798"), QColor("#121518"), 1, QColor("#1B1F23")};

double between(const QColor& a, const QColor& b) {
  return std::max({std::abs(a.redF() - b.redF()), std::abs(a.greenF() - b.greenF()), std::abs(a.blueF() - b.blueF())});
}

// How far a colour has gone from one to the other.
double shareOf(const QColor& colour, const QColor& from, const QColor& to) {
  return (colour.redF() - from.redF()) / (to.redF() - from.redF());
}

QImage pictureOf(const Drawing& drawing, const std::string& worked, const Inks& inks) {
  app::painting::Painted painted;
  painted.piece = std::make_shared<const Drawing>(drawing);
  painted.worked = worked;
  QImage image(900, 700, QImage::Format_RGB32);
  image.fill(inks.cloth);
  QPainter painter(&image);
  app::painting::paintDrawing(painter, painted, image.size(), inks);
  return image;
}

int pixels(const QImage& image, const QColor& colour) {
  int count = 0;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) count += image.pixel(x, y) == colour.rgb() ? 1 : 0;
  }
  return count;
}

}  // namespace

TEST_CASE("by lamp a material keeps its hue and loses twenty-two hundredths of its light") {
  const Light lamp(kByLamp, Standing::Made);
  for (const char* name : {"copper", "reed green", "indigo", "cream"}) {
    const QColor day = app::painting::colourIn(name);
    const QColor seen = lamp.on(day);
    CHECK(seen.hsvHueF() == Approx(day.hsvHueF()).margin(0.01));
    CHECK(seen.valueF() == Approx(day.valueF() * 0.78).margin(0.005));
    CHECK(Light(kByDay, Standing::Made).on(day) == day);
  }
}

TEST_CASE("what is to come sinks into the cloth, by day four to six tenths, by lamp deeper") {
  const QColor paper = app::painting::colourIn("indigo");
  const auto sunk = [&](const Inks& inks, Breadth breadth) {
    const QColor made = Light(inks, Standing::Made).on(paper, breadth);
    return shareOf(Light(inks, Standing::ToCome).on(paper, breadth), made, inks.cloth);
  };
  CHECK(sunk(kByDay, Breadth::Fine) == Approx(0.4).margin(0.01));
  CHECK(sunk(kByDay, Breadth::Broad) == Approx(0.6).margin(0.01));
  CHECK(sunk(kByLamp, Breadth::Fine) == Approx(0.64).margin(0.01));
  CHECK(sunk(kByLamp, Breadth::Broad) == Approx(0.86).margin(0.01));
}

TEST_CASE("a slope is dark above and left of the opening and light right of and below it, in four tones") {
  for (const char* name : {"copper", "black", "white"}) {
    const QColor colour = app::painting::colourIn(name);
    const double top = app::painting::sloped(colour, {0, -1}).lightnessF();
    const double left = app::painting::sloped(colour, {-1, 0}).lightnessF();
    const double right = app::painting::sloped(colour, {1, 0}).lightnessF();
    const double below = app::painting::sloped(colour, {0, 1}).lightnessF();
    INFO(name);
    CHECK(top <= left);
    CHECK(left < right);
    CHECK(right <= below);
  }
}

TEST_CASE("colours are found in the words of a name") {
  using app::painting::colourIn;
  CHECK(colourIn("ochre laid paper") == colourIn("ochre"));
  CHECK(colourIn("Reed-green paste paper") == colourIn("reed green"));
  CHECK(colourIn("shell gold") == colourIn("gold"));
  CHECK(colourIn("pale sea green").lightnessF() > colourIn("sea green").lightnessF());
  CHECK(colourIn("dark red").lightnessF() < colourIn("red").lightnessF());
  CHECK(colourIn("#336699") == QColor("#336699"));
  CHECK_FALSE(colourIn("wave-block print").isValid());
  CHECK_FALSE(colourIn("").isValid());
  CHECK(app::painting::isMetal("shell gold"));
  CHECK_FALSE(app::painting::isMetal("golden syrup"));
}

TEST_CASE("a metal line glints in seven stops, another is of one colour") {
  const Light light(kByDay, Standing::Made);
  const QBrush metal = app::painting::pigment("copper", QRectF(0, 0, 100, 100), light);
  REQUIRE(metal.gradient() != nullptr);
  CHECK(metal.gradient()->stops().size() == 7);
  CHECK(app::painting::pigment("indigo", QRectF(0, 0, 100, 100), light).gradient() == nullptr);
}

TEST_CASE("papers differ by their names, and every motif keeps to its cell and joins its neighbour") {
  using app::painting::paperNamed;
  CHECK(paperNamed("wave-block print", true).pattern == Pattern::Wave);
  CHECK(paperNamed("fish-scale block print", true).pattern == Pattern::Scale);
  CHECK(paperNamed("something else", true).pattern == Pattern::Lozenge);
  CHECK(paperNamed("something else", false).pattern == Pattern::Plain);
  CHECK(paperNamed("indigo wave", true).ground == app::painting::colourIn("indigo"));
  for (const Pattern pattern : {Pattern::Wave, Pattern::Reed, Pattern::Scale, Pattern::Rope, Pattern::Key,
                                Pattern::Ripple, Pattern::Comb, Pattern::Laid, Pattern::Lozenge}) {
    INFO(static_cast<int>(pattern));
    const QRectF box = app::painting::motif(pattern, {20, 10}).boundingRect();
    CHECK(box.top() >= -0.5);
    CHECK(box.bottom() <= 10.5);
    CHECK(box.width() > 10);
    CHECK(box.height() > 4);
  }
  CHECK(app::painting::motif(Pattern::Plain, {20, 10}).isEmpty());
}

TEST_CASE("what is worked is outlined in ink in its own material, and nothing else is") {
  for (const Inks& inks : {kByDay, kByLamp}) {
    Drawing drawing = drawPiece(tests::designOf(tests::workedExample()), core::sheets::Side::Face);
    std::erase_if(drawing.primitives, [](const auto& one) { return one.role == core::sheets::Role::Mark; });
    for (auto& primitive : drawing.primitives) primitive.standing = Standing::ToCome;
    const QColor paper = Light(inks, Standing::Made).on(app::painting::paperNamed("wave-block print", true).ground);
    const QImage plain = pictureOf(drawing, "", inks);
    CHECK(pixels(plain, inks.ink) == 0);
    CHECK(pixels(plain, paper) == 0);
    for (const char* worked : {"inner.top", "outside", "field", "top"}) {
      INFO(worked);
      CHECK(pixels(pictureOf(drawing, worked, inks), inks.ink) > 400);
    }
    const int strip = pixels(pictureOf(drawing, "inner.top", inks), paper);
    CHECK(strip > 1000);
    CHECK(pixels(pictureOf(drawing, "inner", inks), paper) > 3 * strip);
  }
}

TEST_CASE("a line is seen however small the piece is drawn, and a slope shows its light") {
  const auto design = tests::designOf(tests::richestExample());
  const Drawing drawing = drawPiece(design, core::sheets::Side::Face);
  for (const auto role : {core::sheets::Role::Line, core::sheets::Role::Bevel}) {
    Drawing part = drawing;
    std::erase_if(part.primitives, [&](const auto& one) { return one.role != role; });
    app::painting::Painted painted;
    painted.piece = std::make_shared<const Drawing>(part);
    QImage image(60, 80, QImage::Format_RGB32);
    image.fill(kByDay.cloth);
    QPainter painter(&image);
    app::painting::paintDrawing(painter, painted, image.size(), kByDay);
    int seen = 0;
    const int row = 60;
    for (int x = 0; x < image.width(); ++x) seen += between(image.pixelColor(x, row), kByDay.cloth) > 0.1 ? 1 : 0;
    CHECK(seen >= (role == core::sheets::Role::Bevel ? 10 : 6));
  }
}

TEST_CASE("from the back the board that lies nearest is seen whole, and edges behind it are broken lines") {
  const auto design = tests::designOf(tests::workedExample());
  const Drawing back = drawPiece(design, core::sheets::Side::Back);
  // Along the left edge of an opening, a board's ground beside it.
  const auto broken = [&](const char* board) {
    const auto sight = design.layout.board(board)->sightAt;
    const QImage image = pictureOf(back, "", kByDay);
    app::painting::Painted painted;
    painted.piece = std::make_shared<const Drawing>(back);
    const QTransform fit = app::painting::fitted(painted, image.size(), kByDay.hairline);
    int pencilled = 0, all = 0;
    for (double y = sight.top + 40; y < sight.bottom - 40; y += 0.5, ++all) {
      const QPointF at = fit.map(QPointF(back.width - sight.right, y));
      double most = 0;
      for (const int off : {-1, 0, 1})
        most = std::max(most, between(image.pixelColor(qRound(at.x()) + off, qRound(at.y())), QColor("#F2E9D0")));
      pencilled += most > 0.2 ? 1 : 0;
    }
    return static_cast<double>(pencilled) / all;
  };
  CHECK(broken("top") > 0.3);
  CHECK(broken("top") < 0.7);
  CHECK(broken("under") == 1);
}

TEST_CASE("a piece of any size is painted in a room of any size, and nothing where there is no room") {
  const std::string vast = tests::changed(tests::workedExample(), "\"sides\": \"70 mm\"", "\"sides\": \"4000 mm\"");
  for (const std::string& text : {vast, tests::richestExample()}) {
    app::painting::Painted painted;
    painted.piece = std::make_shared<const Drawing>(drawPiece(tests::designOf(text), core::sheets::Side::Face));
    painted.worked = "inner";
    for (const QSize& size :
         {QSize(1, 1), QSize(5, 400), QSize(7, 7), QSize(40, 30), QSize(3000, 12), QSize(1500, 1500)}) {
      QImage image(size, QImage::Format_RGB32);
      image.fill(kByDay.cloth);
      QPainter painter(&image);
      app::painting::paintDrawing(painter, painted, size, kByDay);
      const int ground = pixels(image, kByDay.cloth);
      INFO(size.width() << " x " << size.height());
      CHECK((ground == size.width() * size.height()) == (std::min(size.width(), size.height()) <= 6));
    }
  }
}

TEST_CASE("the marked corner is dark on a light board by day and by lamp, and light on a dark one") {
  const auto corner = [](const std::string& text, const Inks& inks) {
    const Drawing drawing = drawPiece(tests::designOf(text), core::sheets::Side::Face);
    app::painting::Painted painted;
    painted.piece = std::make_shared<const Drawing>(drawing);
    const QImage image = pictureOf(drawing, "", inks);
    const QPointF at = app::painting::fitted(painted, image.size(), inks.hairline).map(QPointF(3, 3));
    return image.pixelColor(at.toPoint()).lightnessF();
  };
  const std::string black = tests::changed(tests::workedExample(), R"("id": "top",   "thickness")",
                                           R"("id": "top", "material": "black cotton board", "thickness")");
  for (const Inks& inks : {kByDay, kByLamp}) {
    CHECK(corner(tests::workedExample(), inks) < 0.2);
    CHECK(corner(black, inks) > 0.8);
  }
}
