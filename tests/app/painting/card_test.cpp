// The cutter's card on the glass: what is made in ink, the number in hand with the line it gives, no line through a
// number.
#include <QImage>

#include "app/painting/card_painter.h"
#include "tests/support/catch.h"
#include "tests/support/shaped_example.h"

namespace {

using core::sheets::Card;

constexpr int kWide = 590;
constexpr int kHigh = 480;

app::painting::Inks colours() {
  return {QColor("#102030"), QColor("#8A8D90"), QColor("#7A3410"), QColor("#F7F5EF"), 1.2};
}

Card cardOf(const core::design::Design& design) {
  return core::sheets::drawCard(
      design,
      {"board.top.axis", "board.top.springing", "board.top.mark.left", "board.top.mark.right", "board.top.mark.bottom",
       "board.top.arc.1.radius"},
      {kWide, kHigh, 24, 80, [](const std::string& text) { return 20.0 * text.size(); }, 70, 90});
}

QImage paintedCard(const Card& card, std::optional<std::size_t> current) {
  QImage image(QSize(kWide, kHigh), QImage::Format_RGB32);
  image.fill(colours().ground);
  QPainter painter(&image);
  app::painting::paintCard(painter, card, {current, current.value_or(0)}, colours());
  return image;
}

int pixelsOf(const QImage& image, const QColor& colour) {
  int pixels = 0;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) pixels += image.pixelColor(x, y) == colour ? 1 : 0;
  }
  return pixels;
}

}  // namespace

TEST_CASE("the number in hand gives the one line to be made; without one there is none") {
  const auto design = tests::designOf(tests::shapedExample(R"("shape": "arch", "head": "round")"));
  const Card card = cardOf(design);
  REQUIRE(card.fits);
  REQUIRE(card.numbers.size() == 6);
  const QColor worked = app::painting::coloursOf(card, colours()).worked;
  const QColor ink = app::painting::coloursOf(card, colours()).ink;
  const QImage none = paintedCard(card, std::nullopt);
  CHECK(pixelsOf(none, worked) == 0);
  // The marked corner's triangle is always in ink.
  const int corner = pixelsOf(none, ink);
  CHECK(corner > 200);
  for (std::size_t i = 0; i < card.numbers.size(); ++i) {
    INFO(card.numbers[i].figure);
    const QImage inked = paintedCard(card, i);
    CHECK(pixelsOf(inked, worked) > 100);
    CHECK(inked != none);
  }
}

TEST_CASE("lines are broken where a number stands among them") {
  const auto design = tests::designOf(tests::shapedExample(R"("shape": "arch", "head": "round")"));
  const Card card = cardOf(design);
  int inside = 0;
  for (std::size_t i = 0; i < card.numbers.size(); ++i) {
    const auto& number = card.numbers[i];
    if (!number.inside) continue;
    ++inside;
    // Of the height of its capitals, clear of what its own line reaches.
    const QRect letters(static_cast<int>(number.box.left) + 2, static_cast<int>(number.box.top) + 6,
                        static_cast<int>(number.box.right - number.box.left) - 4,
                        static_cast<int>(number.box.bottom - number.box.top) - 12);
    const QImage under = paintedCard(card, i).copy(letters);
    CHECK(pixelsOf(under, under.pixelColor(0, 0)) == letters.width() * letters.height());
  }
  CHECK(inside >= 1);
}

TEST_CASE("a card without room paints nothing") {
  const QImage image = paintedCard(Card(), 0);
  CHECK(pixelsOf(image, colours().ground) == kWide * kHigh);
}
