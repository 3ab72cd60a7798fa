// What a design lacks of what there is.
#include "core/materials/shortage.h"

#include "tests/support/catch.h"
#include "tests/support/worked_example.h"

using namespace core::materials;
using core::design::Design;
using core::design::Stock;
using core::design::StockKind;
using core::units::Length;

namespace {

Design pricedDesign() {
  auto read = core::design::readDesign(tests::workedExample());
  REQUIRE(read.design);
  return *read.design;
}

struct Having {
  std::vector<Stock> sheets, offcuts;
  std::vector<OtherStock> others;
};

Shortage shortageWith(const Design& design, const Having& having) {
  const auto pieces = cuttingList(design.job, design.layout);
  const SheetsThere there{design.job.stock, having.sheets, having.offcuts};
  return shortageOf(pieces, there, planSheets(pieces, there), amountsOf(design.job, design.layout), design.job,
                    having.others);
}

const ShortLine& line(const Shortage& shortage, std::string_view id) {
  for (const ShortLine& one : shortage.lines) {
    if (one.id == id) return one;
  }
  FAIL("no line " << id);
  return shortage.lines.front();
}

Stock sheets(const char* id, StockKind kind, int width, int height, double thickness, const char* material, int count) {
  Stock stock;
  stock.id = id;
  stock.kind = kind;
  stock.width = Length::wholeMillimetres(width);
  stock.height = Length::wholeMillimetres(height);
  if (thickness > 0) stock.thickness = Length::nanometres(static_cast<std::int64_t>(thickness * 1e6));
  stock.material = material;
  stock.quantity = count;
  return stock;
}

Having plenty() {
  Having having;
  having.sheets = {sheets("thin", StockKind::Board, 815, 1120, 1.5, "cotton", 4),
                   sheets("thick", StockKind::Board, 815, 1120, 2, "cotton", 4),
                   sheets("fluted", StockKind::Board, 815, 1120, 3, "fluted", 2),
                   sheets("wave", StockKind::Paper, 700, 500, 0, "wave-block print", 4)};
  having.others = {{"leaves", AmountKind::Leaf, "copper leaf", 500.0},
                   {"mc", AmountKind::Size, "methylCellulose", 400.0},
                   {"jar", AmountKind::Paste, "starch paste", 300.0},
                   {"copper", AmountKind::Paint, "copper", 60.0}};
  return having;
}

}  // namespace

TEST_CASE("where nobody has listed any stock nothing is said to lack") {
  const Shortage shortage = shortageWith(pricedDesign(), {});
  CHECK_FALSE(shortage.isShort());
  for (const ShortLine& one : shortage.lines) {
    CHECK(one.from == ShortFrom::Unlisted);
    CHECK_FALSE(one.have.has_value());
    CHECK_FALSE(one.lack.has_value());
    CHECK(one.need > 0);
    CHECK(one.needKnown == Known::Computed);
  }
}

TEST_CASE("the shop's stock serves what the job's file lists nothing for") {
  const Shortage shortage = shortageWith(pricedDesign(), plenty());
  CHECK_FALSE(shortage.isShort());
  CHECK(line(shortage, "board.top").from == ShortFrom::Shop);
  CHECK(line(shortage, "board.top").stock == std::vector<std::string>{"thin"});
  CHECK(line(shortage, "band.inner.horizontal").need == 2);
  CHECK(line(shortage, "band.inner.horizontal").have == 2.0);
  CHECK(line(shortage, "leaf.field").haveKnown == Known::Entered);
  CHECK(line(shortage, "leaf.field").have == 500.0);
  REQUIRE_FALSE(shortage.taken.empty());
  for (const SheetsTaken& taken : shortage.taken) CHECK(taken.from == ShortFrom::Shop);
}

TEST_CASE("the needs are those of the amounts, and what lacks is the rest") {
  const Design job = pricedDesign();
  Having having = plenty();
  having.others[1].amount = 1.0;
  having.others[3].amount = 0.0;
  having.sheets[3].quantity = 0;
  const Shortage shortage = shortageWith(job, having);
  CHECK(shortage.isShort());
  for (const Amount& amount : amountsOf(job.job, job.layout)) CHECK(line(shortage, amount.id).need == amount.value);
  CHECK(*line(shortage, "size.field").lack == line(shortage, "size.field").need - 1.0);
  CHECK(*line(shortage, "paint.copper").lack == line(shortage, "paint.copper").need);
  CHECK(*line(shortage, "band.inner.vertical").lack == 2);
  CHECK(*line(shortage, "board.top").lack == 0);
}

TEST_CASE("a sheet too small is told, and of another thickness serves nothing") {
  Having having = plenty();
  having.sheets[0] = sheets("small", StockKind::Board, 200, 200, 1.5, "cotton", 50);
  having.sheets.erase(having.sheets.begin() + 1);
  const Shortage shortage = shortageWith(pricedDesign(), having);
  CHECK(*line(shortage, "board.top").lack == 1);
  REQUIRE_FALSE(line(shortage, "board.top").notes.empty());
  CHECK(line(shortage, "board.top").notes.back().id == "shortage.too-large");
  CHECK(line(shortage, "board.under").from == ShortFrom::Nothing);
  CHECK(*line(shortage, "board.under").lack == 1);
}

TEST_CASE("grams are never turned into millilitres") {
  Having having = plenty();
  having.others[2].amount.reset();
  const ShortLine paste = line(shortageWith(pricedDesign(), having), "paste");
  CHECK(paste.from == ShortFrom::Shop);
  CHECK_FALSE(paste.have.has_value());
  CHECK_FALSE(paste.lack.has_value());
  REQUIRE(paste.notes.size() == 1);
  CHECK(paste.notes[0].id == "shortage.in-grams");
}

TEST_CASE("what the file lists counts first, and that the shop has more of it is said") {
  Design job = pricedDesign();
  job.job.stock = {sheets("end", StockKind::Paper, 480, 30, 0, "wave-block print", 1)};
  job.job.stock[0].usableMargin = {};
  const Shortage shortage = shortageWith(job, plenty());
  const ShortLine& strip = line(shortage, "band.inner.horizontal");
  CHECK(strip.from == ShortFrom::Listed);
  CHECK(strip.stock == std::vector<std::string>{"end"});
  const double lacking = *strip.lack + *line(shortage, "band.inner.vertical").lack;
  CHECK(lacking > 0);
  const ShortLine& lacks = *strip.lack > 0 ? strip : line(shortage, "band.inner.vertical");
  REQUIRE_FALSE(lacks.notes.empty());
  CHECK(lacks.notes.back().id == "shortage.shop-has");
  CHECK(line(shortage, "board.top").from == ShortFrom::Shop);
}

TEST_CASE("an offcut of the shop serves once") {
  Having having = plenty();
  having.sheets[3].quantity = 0;
  Stock end = sheets("o1", StockKind::Paper, 480, 22, 0, "wave-block print", 1);
  end.usableMargin = {};
  end.offcut = true;
  having.offcuts = {end};
  const Shortage shortage = shortageWith(pricedDesign(), having);
  const double lacking = *line(shortage, "band.inner.horizontal").lack + *line(shortage, "band.inner.vertical").lack;
  CHECK(lacking == 3);
}

TEST_CASE("two fields on one stock of size share it") {
  std::string text = tests::workedExample();
  const std::string one = R"("leaf": [)";
  const auto at = text.find(one);
  REQUIRE(at != std::string::npos);
  text.insert(at + one.size(),
              R"({"id": "second", "region": "on:inner", "method": "laid", "size": "methylCellulose"}, )");
  const auto read = core::design::readDesign(text);
  REQUIRE(read.design);
  Having having = plenty();
  const auto amounts = amountsOf(read.design->job, read.design->layout);
  double need = 0;
  for (const Amount& amount : amounts) need += amount.kind == AmountKind::Size ? amount.value : 0;
  having.others[1].amount = need - 1;
  const Shortage shortage = shortageWith(*read.design, having);
  CHECK(*line(shortage, "size.second").lack == 0);
  CHECK(*line(shortage, "size.field").lack == Approx(1));
}
