#include "core/materials/sheet_plan.h"

#include <random>

#include "tests/core/materials/stocked.h"

using namespace core::cutting;
using namespace core::materials;
using tests::idsOf;
using tests::jobWithStock;
using tests::stockOf;
using tests::Worked;

namespace {

using Ids = std::vector<std::string>;

const std::string kBoards = stockOf("board-15", "board", 815, 1120, R"(, "thickness": "1.5 mm", "grain": "height")") +
                            ',' + stockOf("board-20", "board", 815, 1120, R"(, "thickness": "2 mm")");

bool overlap(const Area& a, const Area& b) {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

// What holds of every plan: each piece once or left over, inside its sheet, over no other, as large as it must be.
void checkSound(const Worked& worked) {
  std::vector<int> placed(worked.pieces.size(), 0);
  std::vector<int> used(worked.design.job.stock.size(), 0);
  for (const StockGroup& group : worked.plan.groups) {
    for (const LeftOver& left : group.unplaced) placed[left.piece] += left.count;
    for (const PlanSheet& sheet : group.sheets) {
      const auto& stock = worked.design.job.stock[sheet.stock];
      CHECK(sheet.number == ++used[sheet.stock]);
      CHECK(std::find(group.stock.begin(), group.stock.end(), sheet.stock) != group.stock.end());
      const Length width = stock.width - 2 * stock.usableMargin;
      const Length height = stock.height - 2 * stock.usableMargin;
      for (const PieceOnSheet& one : sheet.pieces) {
        const CutPiece& piece = worked.pieces[one.piece];
        ++placed[one.piece];
        CHECK(one.at.x >= Length());
        CHECK(one.at.y >= Length());
        CHECK(one.at.x + one.at.width <= width);
        CHECK(one.at.y + one.at.height <= height);
        CHECK((one.turned ? one.at.height : one.at.width) == piece.neededWidth());
        CHECK((one.turned ? one.at.width : one.at.height) == piece.height);
        for (const PieceOnSheet& other : sheet.pieces) CHECK((&other == &one || !overlap(one.at, other.at)));
        for (const Area& kept : sheet.offcuts) CHECK_FALSE(overlap(one.at, kept));
      }
      for (const SheetCut& cut : sheet.cuts) {
        CHECK(cut.fence > Length());
        CHECK(cut.fence < (cut.upright ? cut.part.width : cut.part.height));
        CHECK(cut.part.x + cut.part.width <= width);
        CHECK(cut.part.y + cut.part.height <= height);
      }
    }
  }
  for (std::size_t i = 0; i < worked.pieces.size(); ++i) {
    INFO(worked.pieces[i].id);
    CHECK(placed[i] == (worked.plan.matches[i].stock.empty() ? 0 : worked.pieces[i].count));
  }
  for (std::size_t i = 0; i < used.size(); ++i) {
    if (worked.design.job.stock[i].quantity) CHECK(used[i] <= *worked.design.job.stock[i].quantity);
  }
}

const StockGroup& groupOf(const Worked& worked, std::string_view piece) {
  const std::size_t index = worked.indexOf(piece);
  for (const StockGroup& group : worked.plan.groups) {
    if (std::find(group.pieces.begin(), group.pieces.end(), index) != group.pieces.end()) return group;
  }
  FAIL("in no group");
  return worked.plan.groups.front();
}

// Whether every strip lies along the sheet's height (true), or every one along its width (false).
bool upright(const Worked& worked) {
  const StockGroup& group = groupOf(worked, "band.inner.vertical");
  REQUIRE(group.unplaced.empty());
  const bool first = group.sheets.at(0).pieces.at(0).turned;
  for (const PlanSheet& sheet : group.sheets) {
    for (const PieceOnSheet& one : sheet.pieces) CHECK(one.turned == first);
  }
  return first;
}

std::string plainBand(const std::string& text, const std::string& grain) {
  return tests::changed(text, R"("repeat": "24 mm", "motif": "mirror", "grain": "along")",
                        "\"grain\": \"" + grain + '"');
}

}  // namespace

TEST_CASE("boards of one thickness are cut together, with the fibres along their long side") {
  const Worked worked(jobWithStock(kBoards));
  checkSound(worked);
  REQUIRE(worked.plan.groups.size() == 2);
  const StockGroup& thin = groupOf(worked, "board.top");
  CHECK(&thin == &groupOf(worked, "back-mount"));
  // Two of 456 x 409.3 with the long side along the height of 1110: one sheet holds both.
  REQUIRE(thin.sheets.size() == 1);
  for (const PieceOnSheet& one : thin.sheets[0].pieces) CHECK(one.turned);
  CHECK(thin.notes.empty());
  const StockGroup& thick = groupOf(worked, "board.under");
  CHECK(idsOf(thick.notes) == Ids{"materials.grain-unknown"});
  CHECK_FALSE(worked.plan.isShort());
}

TEST_CASE("patterned strips all lie along the pattern, whatever the fibres do, and that is said") {
  const auto paper = [](const std::string& members) {
    return Worked(jobWithStock(stockOf("p", "paper", 700, 500, members)));
  };
  const Worked along = paper(R"(, "pattern": "width", "grain": "width")");
  checkSound(along);
  CHECK_FALSE(upright(along));
  CHECK(groupOf(along, "band.inner.vertical").notes.empty());
  const Worked high = paper(R"(, "pattern": "height", "grain": "height")");
  checkSound(high);
  CHECK(upright(high));
  const Worked against = paper(R"(, "pattern": "height", "grain": "width")");
  checkSound(against);
  CHECK(upright(against));
  CHECK(idsOf(groupOf(against, "band.inner.vertical").notes) == Ids{"materials.grain-against-pattern"});
  const Worked unsaid = paper("");
  checkSound(unsaid);
  CHECK(idsOf(groupOf(unsaid, "band.inner.vertical").notes) ==
        Ids{"materials.pattern-unknown", "materials.grain-unknown"});
}

TEST_CASE("plain strips lie with the fibres or across them as their band asks") {
  const auto lie = [](const std::string& grain, const std::string& sheet) {
    const Worked worked(
        plainBand(jobWithStock(stockOf("p", "paper", 500, 500, ", \"grain\": \"" + sheet + '"')), grain));
    checkSound(worked);
    return upright(worked);
  };
  CHECK_FALSE(lie("along", "width"));
  CHECK(lie("along", "height"));
  CHECK(lie("across", "width"));
  CHECK_FALSE(lie("across", "height"));
}

TEST_CASE("strips whose fibres do not matter are turned where that finds room") {
  const Worked worked(
      plainBand(jobWithStock(stockOf("p", "paper", 40, 400, R"(, "quantity": 2, "grain": "width")")), "any"));
  checkSound(worked);
  CHECK_FALSE(worked.plan.isShort());
}

TEST_CASE("what finds no sheet is told apart: too large for any, or too few of them") {
  // 379 + 24 of length do not go on 390, 309 + 24 do; two of those take a sheet each of 24 less 10 of margins.
  const Worked worked(jobWithStock(stockOf("p", "paper", 400, 24, R"(, "pattern": "width", "quantity": 1)")));
  checkSound(worked);
  CHECK(worked.plan.isShort());
  const StockGroup& group = groupOf(worked, "band.inner.vertical");
  REQUIRE(group.unplaced.size() == 2);
  CHECK(group.unplaced[0].piece == worked.indexOf("band.inner.horizontal"));
  CHECK(group.unplaced[0].count == 2);
  CHECK(group.unplaced[0].tooLarge);
  CHECK(group.unplaced[1].piece == worked.indexOf("band.inner.vertical"));
  CHECK(group.unplaced[1].count == 1);
  CHECK_FALSE(group.unplaced[1].tooLarge);
}

TEST_CASE("what is kept of a sheet is large enough to be of use") {
  const Worked worked(jobWithStock(kBoards + ',' + stockOf("p", "paper", 700, 500, R"(, "pattern": "width")")));
  checkSound(worked);
  int kept = 0;
  for (const StockGroup& group : worked.plan.groups) {
    for (const PlanSheet& sheet : group.sheets) {
      const bool board = worked.design.job.stock[sheet.stock].kind == core::design::StockKind::Board;
      for (const Area& area : sheet.offcuts) {
        ++kept;
        CHECK(std::min(area.width, area.height) >= (board ? kKeptBoard : kKeptPaper));
        CHECK(std::max(area.width, area.height) >= (board ? kKeptBoard : kKeptPaperLong));
      }
    }
  }
  CHECK(kept >= 3);
}

TEST_CASE("a sheet that two pieces may come from is not given out twice") {
  // The top board names its material; the back mount takes either, but there is one sheet for one piece of each.
  const std::string stock =
      stockOf("white", "board", 480, 440, R"(, "thickness": "1.5 mm", "material": "white", "quantity": 1)") + ',' +
      stockOf("grey", "board", 480, 440, R"(, "thickness": "1.5 mm", "material": "grey", "quantity": 0)");
  const Worked worked(tests::changed(jobWithStock(stock), R"("thickness": "1.5 mm", "bevel")",
                                     R"("thickness": "1.5 mm", "material": "white", "bevel")"));
  checkSound(worked);
  const StockGroup& group = groupOf(worked, "board.top");
  CHECK(&group == &groupOf(worked, "back-mount"));
  CHECK(group.sheets.size() == 1);
  REQUIRE(group.unplaced.size() == 1);
  CHECK(group.unplaced[0].count == 1);
  CHECK_FALSE(group.unplaced[0].tooLarge);
}

TEST_CASE("whatever the stock, each piece is placed once within it or left over") {
  std::mt19937 random(26'041);
  const auto one = [&](int least, int most) { return std::uniform_int_distribution<int>(least, most)(random); };
  const auto pick = [&](std::vector<std::string> words) {
    return words[static_cast<std::size_t>(one(0, static_cast<int>(words.size()) - 1))];
  };
  int sheets = 0;
  int left = 0;
  for (int round = 0; round < 200; ++round) {
    std::string stock;
    const int kinds = one(1, 5);
    for (int i = 0; i < kinds; ++i) {
      const bool board = one(0, 1) == 0;
      std::string members = pick({"", R"(, "grain": "width")", R"(, "grain": "height")"}) +
                            pick({"", R"(, "quantity": 1)", R"(, "quantity": 0)", R"(, "offcut": true)"}) +
                            pick({"", R"(, "kerf": "3 mm")"}) + pick({"", R"(, "usableMargin": "0 mm")"}) +
                            pick({"", R"(, "price": 4.25)"});
      members += board ? pick({"", R"(, "thickness": "1.5 mm")", R"(, "thickness": "2 mm")"})
                       : pick({"", R"(, "pattern": "width")", R"(, "pattern": "height")"}) +
                             R"(, "material": "wave-block print")";
      stock += (i == 0 ? "" : ",") + stockOf("s" + std::to_string(i), board ? "board" : "paper",
                                             board ? one(300, 1200) : one(20, 700),
                                             board ? one(300, 1200) : one(20, 700), members);
    }
    INFO(stock);
    std::string text = jobWithStock(stock);
    if (one(0, 1) == 0) text = plainBand(text, pick({"along", "across", "any"}));
    const Worked worked(text);
    checkSound(worked);
    for (const StockGroup& group : worked.plan.groups) {
      sheets += static_cast<int>(group.sheets.size());
      left += static_cast<int>(group.unplaced.size());
    }
  }
  CHECK(sheets > 100);
  CHECK(left > 20);
}

TEST_CASE("ten thousand sheets of two hundred kinds are planned as one would be") {
  std::string stock;
  for (int i = 0; i < 200; ++i) {
    stock += (i == 0 ? "" : ",") + stockOf("s" + std::to_string(i), "board", 500 + i, 430 + i,
                                           R"(, "thickness": "1.5 mm", "quantity": 10000, "price": 3)");
  }
  const Worked worked(jobWithStock(stock));
  checkSound(worked);
  CHECK_FALSE(worked.plan.isShort());
}
