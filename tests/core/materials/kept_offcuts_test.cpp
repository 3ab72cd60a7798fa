// Offcuts the shop kept from other jobs: used first, for what they are of, and never in a job's own stock's way.
#include "tests/core/materials/stocked.h"

using namespace core::materials;
using core::design::Stock;
using core::design::StockKind;
using tests::jobWithStock;
using tests::stockOf;
using tests::Worked;

namespace {

using Indices = std::vector<std::size_t>;

Stock offcut(StockKind kind, int width, int height, const std::string& material) {
  Stock stock;
  stock.id = "offcut";
  stock.kind = kind;
  stock.width = Length::wholeMillimetres(width);
  stock.height = Length::wholeMillimetres(height);
  stock.material = material;
  if (kind == StockKind::Board) stock.thickness = Length::nanometres(1'500'000);
  stock.usableMargin = {};
  stock.quantity = 1;
  stock.offcut = true;
  return stock;
}

const std::string& boards() {
  static const std::string kBoards =
      stockOf("thin", "board", 815, 1120, R"(, "thickness": "1.5 mm", "grain": "height", "price": "18 GBP")") + ',' +
      stockOf("p", "paper", 700, 500);
  return kBoards;
}

const StockMatch& matchIn(const SheetPlan& plan, const Worked& worked, const char* piece) {
  return plan.matches[worked.indexOf(piece)];
}

}  // namespace

TEST_CASE("a board comes from an offcut of its thickness first, and the new sheet is saved where all fit") {
  const Worked worked(jobWithStock(boards()));
  const std::size_t listed = worked.design.job.stock.size();
  const auto plan = planSheets(
      worked.pieces,
      {worked.design.job.stock, {}, {offcut(StockKind::Board, 500, 430, ""), offcut(StockKind::Board, 430, 500, "")}});
  const auto& match = matchIn(plan, worked, "board.top");
  CHECK(match.stock == Indices{0, listed, listed + 1});
  CHECK(match.by == MatchedBy::Thickness);
  for (const StockGroup& group : plan.groups) {
    if (group.pieces.front() != worked.indexOf("board.top")) continue;
    CHECK(group.unplaced.empty());
    CHECK(group.worth == 0);
    for (const PlanSheet& sheet : group.sheets) CHECK(sheet.stock >= listed);
  }
}

TEST_CASE("board of another material or thickness is no match, nor paper of another name") {
  const Worked worked(jobWithStock(boards()));
  Stock thick = offcut(StockKind::Board, 600, 600, "");
  thick.thickness = Length::wholeMillimetres(2);
  const auto plan =
      planSheets(worked.pieces,
                 {worked.design.job.stock,
                  {},
                  {offcut(StockKind::Board, 600, 600, "wood pulp"), offcut(StockKind::Paper, 600, 400, "reed print")}});
  CHECK(matchIn(plan, worked, "board.top").stock == Indices{0});
  CHECK(matchIn(plan, worked, "band.inner.vertical").stock == Indices{1});
  const auto other = planSheets(worked.pieces, {worked.design.job.stock, {}, {thick}});
  CHECK(matchIn(other, worked, "board.top").stock == Indices{0});
}

TEST_CASE("an offcut of the band's paper stands beside the one paper listed, and does not take its place") {
  const Worked worked(jobWithStock(boards()));
  const std::size_t listed = worked.design.job.stock.size();
  const auto plan =
      planSheets(worked.pieces, {worked.design.job.stock, {}, {offcut(StockKind::Paper, 450, 40, "wave-block print")}});
  const auto& match = matchIn(plan, worked, "band.inner.vertical");
  CHECK(match.by == MatchedBy::OnlyPaper);
  CHECK(match.stock == Indices{1, listed});
  CHECK_FALSE(plan.isShort());
}

TEST_CASE("without any stock listed a board takes the offcut that is there, and glass never does") {
  const Worked worked(tests::workedExample());
  const auto plan = planSheets(worked.pieces, {{}, {}, {offcut(StockKind::Board, 600, 600, "cotton")}});
  CHECK(matchIn(plan, worked, "board.top").by == MatchedBy::Thickness);
  CHECK(matchIn(plan, worked, "board.top").stock == Indices{0});
  CHECK(matchIn(plan, worked, "glazing").stock.empty());
}

TEST_CASE("what is cut already is taken off the list") {
  const Worked worked(tests::workedExample());
  const auto left = stillToCut(worked.pieces, {{"board.top", 1}, {"band.inner.vertical", 1}, {"unknown", 7}});
  CHECK(left.size() + 1 == worked.pieces.size());
  for (const CutPiece& piece : left) {
    CHECK(piece.id != "board.top");
    if (piece.id == "band.inner.vertical") CHECK(piece.count == 1);
    if (piece.id == "band.inner.horizontal") CHECK(piece.count == 2);
  }
  CHECK(stillToCut(worked.pieces, {{"band.inner.vertical", 9}}).size() + 1 == worked.pieces.size());
}
