// What is taken into stock at the desk, put right and taken back, and what a design is told to lack.
#include "app/viewmodels/desk/stock_view_model.h"

#include <QCoreApplication>
#include <QElapsedTimer>

#include "tests/app/gallery/states.h"
#include "tests/app/viewmodels/rows.h"
#include "tests/support/catch.h"

using app::viewmodels::FormViewModel;
using app::viewmodels::RowsModel;
using app::viewmodels::StockViewModel;

using tests::cell;

namespace {

// Opens the field of that label in the form.
bool openField(FormViewModel& form, const QString& label) {
  RowsModel& fields = *form.fields();
  for (int row = 0; row < fields.count(); ++row) {
    if (cell(fields, row, RowsModel::Title) != label) continue;
    form.chooseField(row);
    return true;
  }
  return false;
}

bool write(FormViewModel& form, const QString& label, const QString& text) {
  return openField(form, label) && form.keepText(text);
}

bool key(FormViewModel& form, const QString& label, std::initializer_list<int> digits) {
  if (!openField(form, label)) return false;
  for (const int digit : digits) form.digit(digit);
  return form.keep();
}

bool answer(FormViewModel& form, const QString& label, const QString& option) {
  if (!openField(form, label)) return false;
  RowsModel& options = *form.options();
  for (int row = 0; row < options.count(); ++row) {
    if (cell(options, row, RowsModel::Title) != option) continue;
    form.chooseOption(row);
    return true;
  }
  return false;
}

}  // namespace

TEST_CASE("a sheet is taken into stock, counted down, put right and taken back") {
  tests::Stage stage({});
  StockViewModel& stock = stage.desk().stock();
  stock.enterStock();
  CHECK_FALSE(stock.keepForm());
  CHECK_FALSE(stock.refusal().isEmpty());
  REQUIRE(write(stock, "name, as jobs call it", "museum board"));
  // A sheet without a size is refused with the reason, and the form stays.
  CHECK_FALSE(stock.keepForm());
  CHECK(stock.formOpen());
  REQUIRE(key(stock, "width", {8, 1, 0}));
  REQUIRE(key(stock, "height", {9, 9, 9}));
  REQUIRE(key(stock, "how many sheets", {3}));
  REQUIRE(write(stock, "price of one", "12.40"));
  REQUIRE(stock.keepForm());
  CHECK_FALSE(stock.formOpen());
  REQUIRE(stock.rows()->count() == 1);
  CHECK(cell(*stock.rows(), 0, RowsModel::Title) == "museum board");
  CHECK(cell(*stock.rows(), 0, RowsModel::Value) == "3");
  stock.choose(0);
  stock.oneLess();
  CHECK(cell(*stock.rows(), 0, RowsModel::Value) == "2");
  stock.takeBack();
  CHECK(cell(*stock.rows(), 0, RowsModel::Value) == "3");
  stock.correct();
  REQUIRE(key(stock, "height", {1, 0, 2, 0}));
  REQUIRE(stock.keepForm());
  CHECK(stage.workbench().shop().stock.items.at(0).entry.height == core::units::Length::wholeMillimetres(1020));
  CHECK(stage.workbench().shop().stock.items.at(0).entry.price == core::units::parseMoney("12.40"));
  stock.gone();
  CHECK(stock.rows()->count() == 0);
  CHECK(stock.chosenTitle().isEmpty());
}

TEST_CASE("what is put right keeps what is there by now, and a number alone that is another was counted") {
  tests::Stage stage({});
  StockViewModel& stock = stage.desk().stock();
  stock.enterStock();
  REQUIRE(write(stock, "name, as jobs call it", "museum board"));
  REQUIRE(key(stock, "width", {8, 1, 0}));
  REQUIRE(key(stock, "height", {9, 9, 9}));
  REQUIRE(key(stock, "how many sheets", {9}));
  REQUIRE(stock.keepForm());
  stock.choose(0);
  stock.oneLess();
  stock.oneLess();
  stock.correct();
  REQUIRE(write(stock, "price of one", "12.40"));
  REQUIRE(stock.keepForm());
  CHECK(cell(*stock.rows(), 0, RowsModel::Value) == "7");
  const auto newest = [&] { return core::record::happeningOf(stage.store().all().back()); };
  CHECK(std::holds_alternative<core::record::StockCorrected>(newest()));
  stock.correct();
  REQUIRE(key(stock, "how many sheets", {5}));
  REQUIRE(stock.keepForm());
  CHECK(cell(*stock.rows(), 0, RowsModel::Value) == "5");
  CHECK(std::holds_alternative<core::record::StockCounted>(newest()));
}

TEST_CASE("a batch past what it keeps asks to be looked at, and a day that is none is refused") {
  tests::Stage stage({});
  StockViewModel& stock = stage.desk().stock();
  stock.enterBatch();
  REQUIRE(write(stock, "what is on its label", "starch paste"));
  // At once, while the field is still open.
  CHECK_FALSE(write(stock, "on the day", "yesterday"));
  CHECK(stock.refusal().contains("yesterday"));
  REQUIRE(write(stock, "on the day", "2025-11-01"));
  REQUIRE(key(stock, "keeps, days", {3}));
  REQUIRE(stock.keepForm());
  stock.choose(0);
  CHECK(stock.chosenWarning().contains("look"));
  stock.gone();
  CHECK(stock.rows()->count() == 0);
}

TEST_CASE("of a sheet is told which pieces under way could be cut from it") {
  tests::Stage stage({"heron", "tide-table"});
  StockViewModel& stock = stage.desk().stock();
  const auto entered = [&](core::intents::StockKind kind, const char* name, std::int64_t thickness) {
    core::intents::StockEntry entry;
    entry.kind = kind;
    entry.name = name;
    entry.quantity = 2;
    if (thickness > 0) {
      entry.width = core::units::Length::wholeMillimetres(815);
      entry.height = core::units::Length::wholeMillimetres(1120);
      entry.thickness = core::units::Length::nanometres(thickness);
    }
    REQUIRE(stage.workbench().submit(core::intents::OfShop{core::intents::EnterStock{entry}}).id.empty());
    stock.choose(static_cast<int>(stage.workbench().shop().stock.items.size()) - 1);
    return stock.chosenServes();
  };
  CHECK(entered(core::intents::StockKind::Board, "cotton board", 1'600'000).contains("Heron at low water"));
  CHECK(entered(core::intents::StockKind::Board, "thick board", 9'000'000) == "No piece under way is cut from it.");
  CHECK(entered(core::intents::StockKind::Leaf, "copper leaf", 0).isEmpty());
}

TEST_CASE("size is measured, in millilitres or in grams") {
  tests::Stage stage({});
  StockViewModel& stock = stage.desk().stock();
  for (const char* measure : {"millilitres", "grams"}) {
    stock.enterStock();
    REQUIRE(answer(stock, "what it is", "size"));
    REQUIRE(answer(stock, "which size", "oil size"));
    REQUIRE(answer(stock, "measured in", measure));
    REQUIRE(key(stock, QStringLiteral("how many ") + QLatin1String(measure), {2, 5, 0}));
    REQUIRE(stock.keepForm());
  }
  CHECK(cell(*stock.rows(), 0, RowsModel::Value) == "250 ml");
  CHECK(cell(*stock.rows(), 1, RowsModel::Value) == "250 g");
}

TEST_CASE("a design is told what the shop lacks for it, and no longer once it is there") {
  tests::Stage stage({});
  core::intents::StockEntry leaf;
  leaf.kind = core::intents::StockKind::Leaf;
  leaf.name = "copper";
  leaf.quantity = 1;
  REQUIRE(stage.workbench().submit(core::intents::OfShop{core::intents::EnterStock{leaf}}).id.empty());
  REQUIRE(stage.beginDesign("pilots-chart"));
  auto& design = stage.desk().design();
  const auto until = [&](const std::function<bool()>& there) {
    QElapsedTimer clock;
    clock.start();
    while (!there() && clock.elapsed() < 5000) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    return there();
  };
  CHECK(until([&] { return design.lacks().contains("of "); }));
  INFO(design.lacks().toStdString());
  leaf.quantity = 500;
  REQUIRE(stage.workbench().submit(core::intents::OfShop{core::intents::EnterStock{leaf}}).id.empty());
  CHECK(until([&] { return design.lacks().isEmpty(); }));
}
