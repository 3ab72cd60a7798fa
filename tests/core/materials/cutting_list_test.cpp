#include "core/materials/cutting_list.h"

#include "tests/core/materials/stocked.h"
#include "tests/support/shaped_example.h"

using namespace core::materials;
using tests::Worked;

namespace {

using Ids = std::vector<std::string>;

Ids idsOf(const std::vector<CutPiece>& pieces) {
  Ids ids;
  for (const CutPiece& piece : pieces) ids.push_back(piece.id);
  return ids;
}

}  // namespace

TEST_CASE("the worked example is cut into two boards, what lies behind and before them, and four strips") {
  const Worked worked(tests::workedExample());
  CHECK(idsOf(worked.pieces) == Ids{"board.top", "board.under", "back-mount", "backing", "glazing",
                                    "band.inner.horizontal", "band.inner.vertical"});
  for (const char* id : {"board.top", "board.under", "back-mount", "backing", "glazing"}) {
    INFO(id);
    const CutPiece& piece = worked.piece(id);
    CHECK(piece.count == 1);
    CHECK(piece.width == Length::wholeMillimetres(456));
    CHECK(piece.height == Length::nanometres(409'333'334));  // 409 1/3, up to the nanometre
    CHECK(piece.figures == Ids{"outer.width", "outer.height"});
    CHECK(piece.grain == (std::string(id) == "glazing" ? PieceGrain::Any : PieceGrain::Width));
  }
  CHECK(worked.piece("board.top").thickness == Length::nanometres(1'500'000));
  CHECK(worked.piece("board.under").thickness == Length::wholeMillimetres(2));
  CHECK(worked.piece("back-mount").thickness == Length::nanometres(1'500'000));
  CHECK(worked.piece("backing").thickness == Length::wholeMillimetres(3));
  CHECK(worked.piece("glazing").thickness == Length::wholeMillimetres(2));
}

TEST_CASE("a spacer is two strips as long as the mount is wide and two between them, bought and not cut from sheets") {
  const Worked worked(tests::changed(tests::workedExample(), R"("glazing": "2 mm")",
                                     R"("glazing": "2 mm", "spacer": "5 mm", "spacerWidth": "3 mm")"));
  CHECK(idsOf(worked.pieces) == Ids{"board.top", "board.under", "back-mount", "backing", "glazing", "spacer.horizontal",
                                    "spacer.vertical", "band.inner.horizontal", "band.inner.vertical"});
  const CutPiece& horizontal = worked.piece("spacer.horizontal");
  const CutPiece& vertical = worked.piece("spacer.vertical");
  for (const CutPiece* strip : {&horizontal, &vertical}) {
    CHECK(strip->count == 2);
    CHECK(strip->height == Length::wholeMillimetres(3));
    CHECK(strip->thickness == Length::wholeMillimetres(5));
    CHECK(isBought(strip->use));
    CHECK_FALSE(strip->ofPaper());
  }
  CHECK(horizontal.width == Length::wholeMillimetres(456));
  CHECK(vertical.width == Length::nanometres(403'333'334));
  CHECK(horizontal.figures == Ids{"package.spacer.horizontal", "package.spacer.width"});
  for (const auto& match : matchStock(worked.pieces, {})) CHECK(match.stock.empty());

  const Worked attached(tests::changed(tests::workedExample(), R"("package": {)",
                                       R"("deliver": "attached", "package": { "spacer": "5 mm", )"));
  for (const CutPiece& piece : attached.pieces) CHECK(piece.id.rfind("spacer", 0) != 0);
}

TEST_CASE("what a float is raised on is board, 10 mm behind each edge of its sheet") {
  const auto floating = [](const std::string& package) {
    std::string text = tests::changed(tests::workedExample(), R"("overlap": "3 mm")", R"("margin": "8 mm")");
    return Worked(tests::changed(text, R"("glazing": "2 mm")", R"("glazing": "2 mm")" + package));
  };
  const Worked raised = floating(R"(, "spacer": "5 mm")");
  const CutPiece& support = raised.piece("support");
  CHECK(support.count == 1);
  CHECK(support.width == Length::wholeMillimetres(310));
  CHECK(support.height == Length::wholeMillimetres(240));
  CHECK(support.thickness == Length::wholeMillimetres(2));
  CHECK_FALSE(isBought(support.use));
  CHECK(support.figures == Ids{"package.support.width", "package.support.height"});
  const Worked thicker = floating(R"(, "spacer": "5 mm", "support": "3 mm")");
  CHECK(thicker.piece("support").thickness == Length::wholeMillimetres(3));
  for (const char* package : {"", R"(, "spacer": "5 mm", "support": "0 mm")"}) {
    const Worked flat = floating(package);
    for (const CutPiece& piece : flat.pieces) CHECK(piece.id != "support");
  }
}

TEST_CASE("strips are two of each length, a repeat longer where a motif has to be set") {
  const Worked worked(tests::workedExample());
  const CutPiece& horizontal = worked.piece("band.inner.horizontal");
  const CutPiece& vertical = worked.piece("band.inner.vertical");
  CHECK(horizontal.count == 2);
  CHECK(vertical.count == 2);
  CHECK(horizontal.width == Length::wholeMillimetres(379));
  CHECK(vertical.width == Length::wholeMillimetres(309));
  CHECK(horizontal.height == Length::wholeMillimetres(14));
  CHECK(vertical.height == Length::wholeMillimetres(14));
  CHECK(horizontal.neededWidth() == Length::wholeMillimetres(379 + 24));
  CHECK(horizontal.patterned);
  CHECK(horizontal.grain == PieceGrain::Width);
  CHECK(horizontal.material == "wave-block print");
  CHECK(horizontal.figures == Ids{"band.inner.strip.horizontal", "band.inner.strip.width"});

  const Worked plain(tests::changed(tests::workedExample(), R"("repeat": "24 mm", "motif": "mirror", "grain": "along")",
                                    R"("grain": "across")"));
  CHECK(plain.piece("band.inner.horizontal").neededWidth() == Length::wholeMillimetres(379));
  CHECK_FALSE(plain.piece("band.inner.horizontal").patterned);
  CHECK(plain.piece("band.inner.horizontal").grain == PieceGrain::Height);
}

TEST_CASE("a part of the package of no thickness is not cut") {
  const Worked worked(tests::changed(tests::workedExample(), R"("backing": "3 mm")", R"("backing": "0 mm")"));
  CHECK(idsOf(worked.pieces) ==
        Ids{"board.top", "board.under", "back-mount", "glazing", "band.inner.horizontal", "band.inner.vertical"});
}

TEST_CASE("a spandrel is cut from its box with trim all round") {
  const auto text = core::base::replaceAll(tests::workedExample(), "\"shape\": \"rectangle\"",
                                           "\"shape\": \"arch\", \"head\": \"round\"");
  const Worked worked(tests::changed(
      text, "\"leaf\":",
      R"("spandrels": [{"id": "crown", "paper": "ripple", "frame": {"offset": "6 mm"}, "under": "2 mm", "trim": "5 mm"}],
         "leaf":)"));
  // The face box of 319, 6 to the frame and 2 tucked under on each side, 5 of trim beyond.
  const CutPiece& piece = worked.piece("spandrel.crown");
  CHECK(piece.width == Length::wholeMillimetres(319 + 12 + 4 + 10));
  const auto* height = worked.design.figures.find("spandrel.crown.height");
  REQUIRE(height != nullptr);
  CHECK(piece.height == wholeNanometre(height->value) + Length::wholeMillimetres(10));
  CHECK(piece.count == 1);
  CHECK(piece.grain == PieceGrain::Any);
}

TEST_CASE("a sum's last bit costs no nanometre, a true part of one does") {
  CHECK(wholeNanometre(0.1 + 0.2) == Length::nanometres(300'000));
  CHECK(wholeNanometre(1234.5) == Length::nanometres(1'234'500'000));
  CHECK(wholeNanometre(1.0 / 3) == Length::nanometres(333'334));
}
