#include "core/cutting/fence_order.h"
#include "tests/core/cutting/checked_plan.h"
#include "tests/support/catch.h"

using namespace core::cutting;
using tests::mm;

namespace {

int movesOf(const std::vector<SheetCut>& cuts) {
  int moves = 0;
  for (std::size_t i = 0; i < cuts.size(); ++i) moves += i == 0 || cuts[i].fence != cuts[i - 1].fence;
  return moves;
}

StockSheet sheetOf(double width, double height, double kerf) {
  StockSheet sheet;
  sheet.width = mm(width);
  sheet.height = mm(height);
  sheet.kerf = mm(kerf);
  return sheet;
}

}  // namespace

TEST_CASE("equal strips are cut with one setting of the fence and leave one rest") {
  const std::vector<WantedPiece> pieces(5, {"strip", mm(60), mm(400), false});
  const CuttingPlan plan = cutSheets(pieces, {sheetOf(500, 400, 0)});
  REQUIRE(plan.sheets.size() == 1);
  CHECK(plan.sheets[0].cuts.size() == 5);
  CHECK(movesOf(plan.sheets[0].cuts) == 1);
  REQUIRE(plan.sheets[0].rest.size() == 1);
  CHECK(plan.sheets[0].rest[0].width == mm(200));
  CHECK(plan.sheets[0].rest[0].height == mm(400));
}

TEST_CASE("what is not needed is cut off first and stays whole") {
  // Two rows of three: the rest below goes first, then the rest at the side.
  const std::vector<WantedPiece> pieces(6, {"card", mm(100), mm(80), false});
  const CuttingPlan plan = cutSheets(pieces, {sheetOf(400, 400, 2)});
  REQUIRE(plan.sheets.size() == 1);
  const CutSheet& sheet = plan.sheets[0];
  REQUIRE(!sheet.rest.empty());
  CHECK(sheet.rest[0].width == mm(400));
  CHECK(sheet.rest[0].height == mm(400 - 80 - 2 - 80 - 2));
  CHECK_FALSE(sheet.cuts[0].upright);
  CHECK(sheet.cuts[0].fence == mm(162));
  CHECK(sheet.rest.size() == 2);
  CHECK(movesOf(sheet.cuts) <= 4);
}

TEST_CASE("pieces of one row that are lower than others leave their rest in one") {
  const std::vector<WantedPiece> pieces{{"high", mm(100), mm(300), false},
                                        {"low", mm(100), mm(200), false},
                                        {"low", mm(100), mm(200), false},
                                        {"low", mm(100), mm(200), false}};
  const CuttingPlan plan = cutSheets(pieces, {sheetOf(400, 300, 0)});
  REQUIRE(plan.sheets.size() == 1);
  REQUIRE(plan.sheets[0].rest.size() == 1);
  CHECK(plan.sheets[0].rest[0].width == mm(300));
  CHECK(plan.sheets[0].rest[0].height == mm(100));
}

TEST_CASE("cuts of one setting follow one another across parts once each part is in hand") {
  const auto cut = [](double fence, int after) {
    SheetCut made;
    made.fence = mm(fence);
    return DependentCut{made, after};
  };
  // Two halves, each to be cut at 30 and then at 20.
  const auto ordered = inFenceOrder({cut(50, -1), cut(30, 0), cut(20, 1), cut(30, 0), cut(20, 3)});
  std::vector<double> fences;
  for (const SheetCut& made : ordered) fences.push_back(made.fence.inMillimetres());
  CHECK(fences == std::vector<double>{50, 30, 30, 20, 20});
  // At 20 first would mean to come back to it: 30 waits for nothing else.
  const auto later = inFenceOrder({cut(50, -1), cut(20, 0), cut(30, 0), cut(20, 2)});
  CHECK(movesOf(later) == 3);
}
