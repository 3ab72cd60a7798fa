#include "core/materials/stock_match.h"

#include "tests/core/materials/stocked.h"

using namespace core::materials;
using tests::idsOf;
using tests::jobWithStock;
using tests::stockOf;
using tests::Worked;

namespace {

using Ids = std::vector<std::string>;
using Indices = std::vector<std::size_t>;

// The paper strips' match with this stock.
StockMatch stripMatch(const std::string& stock) { return Worked(jobWithStock(stock)).match("band.inner.vertical"); }

}  // namespace

TEST_CASE("without stock nothing is matched, and nothing is said against it") {
  const Worked worked(tests::workedExample());
  for (const StockMatch& match : worked.plan.matches) {
    CHECK(match.by == MatchedBy::Nothing);
    CHECK(match.notes.empty());
  }
  CHECK(worked.plan.groups.empty());
  CHECK_FALSE(worked.plan.isShort());
}

TEST_CASE("paper is found by what its stock says it is, by its id, or as the only one there is") {
  const std::string other = ',' + stockOf("other", "paper", 700, 500);
  const StockMatch named = stripMatch(stockOf("p", "paper", 700, 500, R"(, "material": "wave-block print")") + other);
  CHECK(named.by == MatchedBy::Material);
  CHECK(named.stock == Indices{0});
  CHECK(named.notes.empty());
  const StockMatch byId = stripMatch(stockOf("wave-block-print", "paper", 700, 500) + other);
  CHECK(byId.by == MatchedBy::Id);
  CHECK(byId.stock == Indices{0});
  const StockMatch only = stripMatch(stockOf("p", "paper", 700, 500));
  CHECK(only.by == MatchedBy::OnlyPaper);
  CHECK(idsOf(only.notes) == Ids{"materials.only-paper"});
}

TEST_CASE("paper that is another by its own word is not taken for want of a better one") {
  CHECK(stripMatch(stockOf("p", "paper", 700, 500, R"(, "material": "reed print")")).by == MatchedBy::Nothing);
  CHECK(stripMatch(stockOf("wave-block-print", "paper", 700, 500, R"(, "material": "reed print")")).by ==
        MatchedBy::Nothing);
  CHECK(stripMatch(stockOf("p", "paper", 700, 500) + ',' + stockOf("q", "paper", 700, 500)).by == MatchedBy::Nothing);
  CHECK(stripMatch(stockOf("p", "board", 700, 500)).by == MatchedBy::Nothing);
}

TEST_CASE("board is found by its thickness, the back mount with it, and glass never") {
  const Worked worked(jobWithStock(stockOf("one-five", "board", 815, 1120, R"(, "thickness": "1.5 mm")") + ',' +
                                   stockOf("two", "board", 815, 1120, R"(, "thickness": "2 mm")")));
  CHECK(worked.match("board.top").stock == Indices{0});
  CHECK(worked.match("back-mount").stock == Indices{0});
  CHECK(worked.match("board.under").stock == Indices{1});
  CHECK(worked.match("board.under").by == MatchedBy::Thickness);
  CHECK(worked.match("backing").stock.empty());
  CHECK(worked.match("glazing").stock.empty());  // 2 mm, as the board
}

TEST_CASE("board measured to the tenth is the board of the file, and a tenth more is another") {
  const auto served = [](const char* thickness) {
    const Worked worked(jobWithStock(
        stockOf("b", "board", 800, 1200, std::string(", \"thickness\": \"") + thickness + '"'), "{}",
        tests::changed(tests::workedExample(), "\"thickness\": \"1.5 mm\"", "\"thickness\": \"1/16 in\"")));
    return worked.match("board.top").by == MatchedBy::Thickness;
  };
  CHECK(served("1/16 in"));
  CHECK(served("1.6 mm"));
  CHECK(served("1.55 mm"));
  CHECK_FALSE(served("1.5 mm"));
  CHECK_FALSE(served("1.7 mm"));
}

TEST_CASE("board of no stated thickness serves one thickness alone, and never the backing") {
  const std::string text = jobWithStock(stockOf("plain", "board", 815, 1120));
  const Worked two(text);
  CHECK(two.match("board.top").by == MatchedBy::Nothing);
  CHECK(idsOf(two.match("board.top").notes) == Ids{"materials.thickness-unsaid"});
  CHECK(two.plan.groups.empty());
  const Worked one(tests::changed(text, "\"2.0 mm\"", "\"1.5 mm\""));
  CHECK(one.match("board.top").by == MatchedBy::NoThickness);
  CHECK(one.match("board.under").by == MatchedBy::NoThickness);
  CHECK(one.match("backing").by == MatchedBy::Nothing);
}

TEST_CASE("a board that names its material takes that alone; one that does not is told of the choice") {
  const std::string stock =
      stockOf("white", "board", 815, 1120, R"(, "thickness": "1.5 mm", "material": "white cotton")") + ',' +
      stockOf("black", "board", 815, 1120, R"(, "thickness": "1.5 mm", "material": "black cotton")");
  const Worked worked(tests::changed(jobWithStock(stock), R"("thickness": "1.5 mm", "bevel")",
                                     R"("thickness": "1.5 mm", "material": "black cotton", "bevel")"));
  CHECK(worked.match("board.top").stock == Indices{1});
  CHECK(worked.match("board.top").by == MatchedBy::Material);
  CHECK(worked.match("back-mount").stock == Indices{0, 1});
  CHECK(idsOf(worked.match("back-mount").notes) == Ids{"materials.several-materials"});
}
