// The cutter's card on the glass: one number in ink, the rest in pencil, and no line through a number.
#include <QImage>

#include "app/painting/card_painter.h"
#include "tests/support/catch.h"
#include "tests/support/shaped_example.h"

namespace {

using core::sheets::Card;

constexpr int kWide = 590;
constexpr int kHigh = 480;
const QColor kOpening("#FFFFFF");

app::painting::Inks colours() {
  return {QColor("#102030"), QColor("#8A8D90"), QColor("#7A3410"), QColor("#F7F5EF"), 1.2};
}

Card cardOf(const core::design::Design& design) {
  return core::sheets::drawCard(design,
                                {"board.top.axis", "board.top.springing", "board.top.mark.left", "board.top.mark.right",
                                 "board.top.mark.bottom", "board.top.arc.1.radius"},
                                {kWide, kHigh, 24, 80, [](const std::string& text) { return 20.0 * text.size(); }});
}

QImage paintedCard(const Card& card, std::optional<std::size_t> current) {
  QImage image(QSize(kWide, kHigh), QImage::Format_RGB32);
  image.fill(colours().ground);
  QPainter painter(&image);
  app::painting::paintCard(painter, card, current, colours(), kOpening);
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

TEST_CASE("the number in hand alone is inked, with the line it gives; without one the card is all pencil") {
  const auto design = tests::designOf(tests::shapedExample(R"("shape": "arch", "head": "round")"));
  const Card card = cardOf(design);
  REQUIRE(card.fits);
  REQUIRE(card.numbers.size() == 6);
  const QImage pencil = paintedCard(card, std::nullopt);
  CHECK(pixelsOf(pencil, colours().worked) == 0);
  // The marked corner's triangle is always in ink.
  const int corner = pixelsOf(pencil, colours().ink);
  CHECK(corner > 200);
  CHECK(pixelsOf(pencil, colours().pencil) > 500);
  CHECK(pixelsOf(pencil, kOpening) > 1000);
  for (std::size_t i = 0; i < card.numbers.size(); ++i) {
    INFO(card.numbers[i].figure);
    const QImage inked = paintedCard(card, i);
    CHECK(pixelsOf(inked, colours().worked) > 100);
    CHECK(pixelsOf(inked, colours().ink) > corner + 50);
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
    for (const std::optional<std::size_t> current : {std::optional<std::size_t>(), std::optional<std::size_t>(0)}) {
      const QImage under = paintedCard(card, current).copy(letters);
      const int plain = pixelsOf(under, kOpening) + pixelsOf(under, colours().ground);
      CHECK(plain == letters.width() * letters.height());
    }
  }
  CHECK(inside == 1);
}

TEST_CASE("a card without room paints nothing") {
  const QImage image = paintedCard(Card(), 0);
  CHECK(pixelsOf(image, colours().ground) == kWide * kHigh);
}
