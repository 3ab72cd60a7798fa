// Stock and prices of a job.
#include "core/base/text.h"
#include "core/design/design.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;

namespace {

using Lines = std::vector<std::string>;
using design::SheetSide;
using design::Stock;
using units::Length;
using units::Money;

// A job that has no stock of its own.
std::string plainJob() { return fileText(PROJECT_ROOT "/recipes/jobs/tide-table.job.json"); }

std::string jobWith(const std::string& members) {
  return base::replaceAll(plainJob(), "\"package\":", members + ", \"package\":");
}

// One stock of paper with these members besides.
std::string paperWith(const std::string& members) {
  return jobWith(R"("stock": [{"id": "sheet", "kind": "paper", "width": "700 mm", "height": "500 mm")" + members +
                 "}]");
}

Stock paper(const std::string& members) {
  const design::Design design = designOf(paperWith(members));
  REQUIRE(design.job.stock.size() == 1);
  return design.job.stock[0];
}

std::string pricesWith(const std::string& members) { return jobWith("\"prices\": {" + members + '}'); }

}  // namespace

TEST_CASE("stock has its own ids, and what is left out of it has its default", "[job]") {
  const Stock stock = designOf(jobWith(R"("stock": [{"id": "top", "kind": "board", "width": "815 mm",)"
                                       R"( "height": "1120 mm"}])"))
                          .job.stock.at(0);
  CHECK(stock.id == "top");  // a board's id as well
  CHECK(stock.kind == design::StockKind::Board);
  CHECK(stock.width == Length::wholeMillimetres(815));
  CHECK(stock.height == Length::wholeMillimetres(1120));
  CHECK(stock.usableMargin == Length::wholeMillimetres(5));
  CHECK(stock.kerf == Length());
  CHECK_FALSE(stock.thickness);
  CHECK_FALSE(stock.grain);
  CHECK_FALSE(stock.pattern);
  CHECK_FALSE(stock.quantity);
  CHECK_FALSE(stock.price);
  CHECK_FALSE(stock.offcut);
  CHECK(stock.material.empty());
}

TEST_CASE("every key of stock is read", "[job]") {
  const Stock stock = paper(R"(, "thickness": "0.2 mm", "material": "wave-block print", "grain": "height",)"
                            R"( "pattern": "width", "usableMargin": "0 mm", "kerf": "0.4 mm", "quantity": 3,)"
                            R"( "price": "18.50 GBP", "offcut": true)");
  CHECK(stock.thickness == Length::nanometres(200'000));
  CHECK(stock.material == "wave-block print");
  CHECK(stock.grain == SheetSide::Height);
  CHECK(stock.pattern == SheetSide::Width);
  CHECK(stock.usableMargin == Length());
  CHECK(stock.kerf == Length::nanometres(400'000));
  CHECK(stock.quantity == 3);
  CHECK(stock.price == Money::parts(185'000));
  CHECK(stock.offcut);
}

TEST_CASE("an offcut nobody counted is one", "[job]") {
  CHECK(paper(R"(, "offcut": true)").quantity == 1);
  CHECK(paper(R"(, "offcut": true, "quantity": 4)").quantity == 4);
  CHECK_FALSE(paper(R"(, "offcut": false)").quantity);
}

TEST_CASE("fibres run along a side of the sheet, along its long or short one, or nobody knows", "[job]") {
  CHECK(paper(R"(, "grain": "width")").grain == SheetSide::Width);
  CHECK(paper(R"(, "grain": "along")").grain == SheetSide::Width);  // 700 wide, 500 high
  CHECK(paper(R"(, "grain": "across")").grain == SheetSide::Height);
  CHECK(paper(R"(, "grain": "any")").grain == std::nullopt);
  CHECK(problemLines(paperWith(R"(, "grain": "long")")).size() == 1);
}

TEST_CASE("each key of stock that is wrong is told at its place", "[job]") {
  const auto one = [](const std::string& members) {
    const Lines lines = problemLines(paperWith(members));
    INFO(members);
    REQUIRE(lines.size() == 1);
    return lines.front();
  };
  CHECK(one(R"(, "colour": "blue")") == "/stock/0/colour read.unknown-key key=colour");
  CHECK(base::startsWith(one(R"(, "thickness": "0 mm")"), "/stock/0/thickness length.not-positive"));
  CHECK(base::startsWith(one(R"(, "thickness": 2)"), "/stock/0/thickness length.not-text"));
  CHECK(base::startsWith(one(R"(, "kerf": "-1 mm")"), "/stock/0/kerf length.negative"));
  CHECK(base::startsWith(one(R"(, "usableMargin": "-1 mm")"), "/stock/0/usableMargin length.negative"));
  CHECK(base::startsWith(one(R"(, "pattern": "along")"), "/stock/0/pattern read.unknown-word"));
  CHECK(base::startsWith(one(R"(, "material": "")"), "/stock/0/material read.empty-text"));
  CHECK(base::startsWith(one(R"(, "quantity": 1.5)"), "/stock/0/quantity read.expected-integer"));
  CHECK(base::startsWith(one(R"(, "quantity": -1)"), "/stock/0/quantity read.out-of-range"));
  CHECK(base::startsWith(one(R"(, "quantity": 10001)"), "/stock/0/quantity read.out-of-range"));
  CHECK(base::startsWith(one(R"(, "quantity": 1e300)"), "/stock/0/quantity read.expected-integer"));
  CHECK(base::startsWith(one(R"(, "offcut": "yes")"), "/stock/0/offcut read.expected-boolean"));
  CHECK(problemLines(paperWith(R"(, "quantity": 10000)")).empty());
  CHECK(problemLines(paperWith(R"(, "quantity": 0)")).empty());
  CHECK(problemLines(jobWith(R"("stock": {})")) == Lines{"/stock read.expected-list"});
  CHECK(problemLines(jobWith(R"("stock": [7])")) == Lines{"/stock/0 read.expected-object"});
  CHECK(problemLines(jobWith(R"("stock": [{}])")) ==
        Lines{"/stock/0 read.missing-key key=id", "/stock/0 read.missing-key key=kind",
              "/stock/0 read.missing-key key=width", "/stock/0 read.missing-key key=height"});
  CHECK(
      problemLines(jobWith(R"("stock": [{"id": "A", "kind": "card", "width": "1 m", "height": "11000 mm"}])")).size() ==
      4);
  CHECK(problemLines(jobWith(R"("stock": [{"id": "a", "kind": "paper", "width": "90 mm", "height": "90 mm"},)"
                             R"( {"id": "a", "kind": "paper", "width": "90 mm", "height": "90 mm"}])")) ==
        Lines{"/stock/1/id job.id-twice id=a"});
}

TEST_CASE("margins that leave nothing of a sheet say by how much", "[job]") {
  CHECK(problemLines(paperWith(R"(, "usableMargin": "250 mm")")) ==
        Lines{"/stock/0/usableMargin job.margins-meet margin=250mm side=500mm by=0mm"});
  CHECK(problemLines(paperWith(R"(, "usableMargin": "249.9 mm")")).empty());
  // The margin nobody wrote.
  CHECK(problemLines(jobWith(R"("stock": [{"id": "a", "kind": "paper", "width": "90 mm", "height": "9 mm"}])")) ==
        Lines{"/stock/0 job.margins-meet margin=5mm side=9mm by=1mm"});
}

TEST_CASE("a price is a number or a text, exactly", "[job]") {
  const auto price = [](const std::string& value) { return paper(", \"price\": " + value).price; };
  CHECK(price("18.5") == Money::parts(185'000));
  CHECK(price("0.1") == Money::parts(1'000));
  CHECK(price("0.0001") == Money::parts(1));
  CHECK(price("100000") == Money::parts(1'000'000'000));
  CHECK(price("1e5") == Money::parts(1'000'000'000));
  CHECK(price("0") == Money());
  CHECK(price("\"18.50\"") == Money::parts(185'000));
  CHECK(price("\"18.50 GBP\"") == Money::parts(185'000));
  CHECK(price("\"100000000\"") == units::kDearest);
  for (const char* bad : {"-1",
                          "0.00001",
                          "1e9",
                          "1e300",
                          "\"1e9\"",
                          "\"18,50\"",
                          "\"18.50 gbp\"",
                          "\"18.50 £\"",
                          "\"18.50GBP\"",
                          "\"18.50  GBP\"",
                          "\"GBP 18.50\"",
                          "\"-1\"",
                          "\"\"",
                          "\".5\"",
                          "\"5.\"",
                          "\"0.00001\"",
                          "\"100000000.0001\"",
                          "\"99999999999999999999\"",
                          "\"18.50 GBP/l\"",
                          "\"\\u0661\"",
                          "null",
                          "true",
                          "[1]"}) {
    INFO(bad);
    CHECK(problemLines(paperWith(std::string(", \"price\": ") + bad)) ==
          Lines{"/stock/0/price job.bad-price example=18.50 GBP"});
  }
}

TEST_CASE("prices beside stock are by the hour, the leaf and the litre", "[job]") {
  const design::Job job = designOf(pricesWith(R"("labour": "24 GBP/h", "leaf": "0.45 GBP", "size": "38 GBP/l",)"
                                              R"( "paste": "12.25 GBP/l", "paint": "0.0001 GBP/l")"))
                              .job;
  CHECK(job.currency == "GBP");
  CHECK(job.prices.labour == Money::parts(240'000));
  CHECK(job.prices.leaf == Money::parts(4'500));
  CHECK(job.prices.size == Money::parts(380'000));
  CHECK(job.prices.paste == Money::parts(122'500));
  CHECK(job.prices.paint == Money::parts(1));
  const design::Job plain = designOf(pricesWith(R"("labour": 24, "size": "38/l")")).job;
  CHECK(plain.currency.empty());
  CHECK(plain.prices.labour == Money::parts(240'000));
  CHECK(plain.prices.size == Money::parts(380'000));
  CHECK_FALSE(plain.prices.leaf);
  CHECK(problemLines(pricesWith(R"("labour": "24 GBP")")) == Lines{"/prices/labour job.bad-price example=18.50 GBP/h"});
  CHECK(problemLines(pricesWith(R"("labour": "24 GBP/l")")).size() == 1);
  CHECK(problemLines(pricesWith(R"("leaf": "24 GBP/h")")).size() == 1);
  CHECK(problemLines(pricesWith(R"("rent": 1)")) == Lines{"/prices/rent read.unknown-key key=rent"});
  CHECK(problemLines(jobWith(R"("prices": [])")) == Lines{"/prices read.expected-object"});
}

TEST_CASE("all prices of a job are in the currency of its first, in the order of the file", "[job]") {
  const std::string stock = R"("stock": [{"id": "a", "kind": "paper", "width": "90 mm", "height": "90 mm", "price": )";
  CHECK(problemLines(jobWith(stock + R"("2 GBP"}], "prices": {"leaf": "1 EUR", "paint": "1 GBP/l"})")) ==
        Lines{"/prices/leaf job.currency-twice first=GBP this=EUR"});
  CHECK(problemLines(jobWith(R"("prices": {"leaf": "1 EUR"}, )" + stock + R"("2 GBP"}])")) ==
        Lines{"/stock/0/price job.currency-twice first=EUR this=GBP"});
  CHECK(problemLines(jobWith(stock + R"("2 GBP"}], "prices": {"leaf": 1})")) ==
        Lines{"/prices/leaf job.currency-missing first=GBP"});
  CHECK(problemLines(jobWith(stock + R"(2}], "prices": {"leaf": "1 GBP"})")) ==
        Lines{"/prices/leaf job.currency-unlike-none this=GBP"});
}

TEST_CASE("stock and prices change no figure", "[job]") {
  const design::Design plain = designOf(plainJob());
  const design::Design stocked = designOf(paperWith(R"(, "price": 2)"));
  REQUIRE(plain.figures.all().size() == stocked.figures.all().size());
  for (std::size_t i = 0; i < plain.figures.all().size(); ++i) {
    CHECK(plain.figures.all()[i].id == stocked.figures.all()[i].id);
    CHECK(plain.figures.all()[i].value == stocked.figures.all()[i].value);
    CHECK(plain.figures.all()[i].display == stocked.figures.all()[i].display);
  }
}
