#include "core/materials/amounts.h"

#include "tests/core/materials/stocked.h"

using namespace core::materials;
using core::units::Duration;
using core::units::Money;
using tests::jobWithStock;
using tests::stockOf;
using tests::Worked;

namespace {

using Ids = std::vector<std::string>;

Ids idsOf(const Quote& quote) {
  Ids ids;
  for (const CostLine& line : quote.lines) ids.push_back(line.id);
  return ids;
}

Money money(const char* text) { return *core::units::parseMoney(text); }

}  // namespace

TEST_CASE("paste covers 100 cm2 a millilitre, and half as much again stays in the pot") {
  // A band round 339 x 269 of width w has 2w(339 + 269 + 2w): at 18.75 mm that is 24 206.25 mm2.
  const Worked worked(tests::changed(tests::workedExample(), "\"width\": \"14 mm\"", "\"width\": \"18.75 mm\""));
  CHECK(worked.amount("paste").area == Approx(24'206.25));
  CHECK(worked.amount("paste").value == Approx(2.420625 * 1.5));
  CHECK(worked.amount("paste").figures == Ids{"band.inner.area"});
  CHECK(Worked(tests::workedExample()).amount("paste").value == Approx(1.7808 * 1.5));
}

TEST_CASE("paint is counted by colour: bevels by their slope, lines by length and width") {
  const Worked worked(tests::workedExample());
  const Amount& copper = worked.amount("paint.copper");
  // Bevels 2 397.1 and 3 066.0, lines 1 332 and 1 212 of a millimetre.
  CHECK(copper.area == Approx(2'397.1 + 3'066.0 + 1'332 + 1'212).epsilon(1e-5));
  CHECK(copper.value == Approx(copper.area / 1e6 * 200 * 1.5));
  CHECK(copper.figures ==
        Ids{"board.top.bevel.area", "board.under.bevel.area", "line.outside.total", "line.inside.total"});
}

TEST_CASE("leaf and its size are the figures' own") {
  const Worked worked(tests::workedExample());
  CHECK(worked.amount("leaf.field").value == worked.design.figures.find("leaf.field.sheets")->value);
  CHECK(worked.amount("size.field").value == worked.design.figures.find("leaf.field.size")->value);
  CHECK(worked.amount("size.field").spread == 100);
}

TEST_CASE("a job of bare boards takes none of it") {
  std::string text =
      core::base::replaceAll(tests::workedExample(), ", \"bevel\": { \"angle\": 45, \"colour\": \"copper\" }", "");
  text = text.substr(0, text.find("\"bands\"")) + text.substr(text.find("\"package\""));
  CHECK(Worked(text).amounts.empty());
}

TEST_CASE("a quote adds up to the penny what the maker's prices say") {
  const Worked worked(
      jobWithStock(stockOf("board-15", "board", 815, 1120, R"(, "thickness": "1.5 mm", "price": "18.50 GBP")") + ',' +
                       stockOf("board-20", "board", 815, 1120, R"(, "thickness": "2 mm", "price": "21.35 GBP")"),
                   R"({"labour": "24 GBP/h", "leaf": "0.45 GBP", "paste": "12 GBP/l", "size": "38 GBP/l"})"));
  const Quote quote = worked.quote(Duration::milliseconds(12'330'000));
  CHECK(idsOf(quote) == Ids{"sheets.board-15", "sheets.board-20", "leaf", "size", "paste", "labour"});
  CHECK(quote.lines[0].cost == money("18.5"));
  CHECK(quote.lines[0].quantity == 1);
  CHECK(quote.lines[1].cost == money("21.35"));
  // 66 085 x 0.15 / (0.4 x 80 x 80) = 3.87: four leaves.
  CHECK(quote.lines[2].quantity == 4);
  CHECK(quote.lines[2].cost == money("1.8"));
  // 66 085 mm2 x 100 ml/m2 x 1.5 = 9.9128 ml.
  CHECK(quote.lines[3].quantity == 9'913);
  CHECK(quote.lines[3].cost == money("0.3767"));
  // 2.6712 ml, to the microlitre 2 671: 0.032052.
  CHECK(quote.lines[4].quantity == 2'671);
  CHECK(quote.lines[4].cost == money("0.0321"));
  CHECK(quote.lines[5].cost == money("82.2"));  // 3 h 25 min 30 s
  CHECK(quote.total == money("124.2588"));
  CHECK(core::units::shownText(quote.total) == "124.26");
  CHECK(quote.notPriced == Ids{"backing", "glazing", "band.inner.horizontal", "band.inner.vertical", "paint"});
}

TEST_CASE("the share of a sheet is what its pieces take of the whole of it") {
  const Worked worked(jobWithStock(stockOf("board-20", "board", 815, 1120, R"(, "thickness": "2 mm", "price": "20")")));
  const Quote quote = worked.quote();
  REQUIRE(quote.lines.size() == 1);
  // 456 x 409.333 of 815 x 1120: 0.2044873.
  CHECK(quote.lines[0].share == 204'487);
  CHECK(quote.lines[0].byShare == money("4.0897"));
  CHECK(quote.total == money("20"));
  CHECK(quote.totalByShare == money("4.0897"));
}

TEST_CASE("an offcut is used first and costs nothing") {
  const Worked worked(
      jobWithStock(stockOf("new", "board", 815, 1120, R"(, "thickness": "2 mm", "price": "20")") + ',' +
                   stockOf("kept", "board", 500, 500, R"(, "thickness": "2 mm", "price": "9", "offcut": true)")));
  const Quote quote = worked.quote();
  CHECK(quote.lines.empty());
  CHECK(quote.total == Money());
  REQUIRE(worked.plan.groups.size() == 1);
  REQUIRE(worked.plan.groups[0].sheets.size() == 1);
  CHECK(worked.plan.groups[0].sheets[0].stock == 1);
}

TEST_CASE("what has no price is named and never counted as nothing") {
  const Worked worked(jobWithStock(stockOf("board-20", "board", 815, 1120, R"(, "thickness": "2 mm")")));
  CHECK(worked.quote().notPriced == Ids{"board.top", "back-mount", "backing", "glazing", "band.inner.horizontal",
                                        "band.inner.vertical", "sheets.board-20", "leaf", "size", "paste", "paint",
                                        "labour"});
  CHECK(worked.quote(Duration::minutes(60)).notPriced.back() == "labour");
}

TEST_CASE("the dearest of everything neither wraps nor crashes") {
  const std::string dear = "\"100000000\"";
  const Worked worked(jobWithStock(stockOf("b", "board", 480, 440, ", \"thickness\": \"1.5 mm\", \"price\": " + dear),
                                   R"({"labour": 100000000, "leaf": 100000000, "size": 100000000})"));
  const Quote quote = worked.quote(Duration::milliseconds(9'000'000'000'000'000));
  CHECK(quote.total > money("100000000"));
  CHECK(quote.total >= quote.totalByShare);
}
