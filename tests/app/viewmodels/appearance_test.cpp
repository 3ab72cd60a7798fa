// How a material looks is told at the desk, and the drawings follow; what cannot be told or shown is said.
#include "app/viewmodels/desk/appearance_view_model.h"

#include <QFile>
#include <QTemporaryDir>

#include "app/painting/tints.h"
#include "app/photographs/photographs.h"
#include "tests/app/gallery/sheet_print.h"
#include "tests/app/gallery/states.h"
#include "tests/app/photographs/pictures.h"
#include "tests/app/viewmodels/rows.h"
#include "tests/support/catch.h"
#include "tests/support/event_loop.h"

using app::viewmodels::AppearanceViewModel;
using app::viewmodels::RowsModel;
using app::viewmodels::ShopAppearances;
using core::units::Length;
using tests::becomesSo;
using tests::cell;

namespace {

const std::string kPaper = "wave-block print";

struct Stocked {
  Stocked() : photographs(folder.filePath("photographs")) {
    stage.workbench().keepPhotographsIn(photographs);
    core::intents::StockEntry paper;
    paper.kind = core::intents::StockKind::Paper;
    paper.name = kPaper;
    paper.quantity = 3;
    paper.width = Length::wholeMillimetres(700);
    paper.height = Length::wholeMillimetres(500);
    core::intents::StockEntry paste;
    paste.kind = core::intents::StockKind::Paste;
    paste.name = "starch paste";
    paste.measure = core::intents::Measure::Microlitres;
    for (const auto& entry : {paper, paste})
      REQUIRE(stage.workbench().submit(core::intents::OfShop{core::intents::EnterStock{entry}}).id.empty());
    stage.desk().stock().choose(0);
    REQUIRE(stage.desk().stock().chosenLooks());
    stage.desk().stock().openAppearance();
    REQUIRE(page().title() == "wave-block print");
  }
  ~Stocked() {
    becomesSo([&] { return !page().busy() && !looks().busy(); });
  }

  AppearanceViewModel& page() { return stage.desk().appearance(); }
  ShopAppearances& looks() { return stage.desk().appearances(); }
  const auto& told() { return stage.workbench().shop().stock.appearances; }
  const app::painting::Appearance& shown() { return looks().all().all->of(kPaper); }

  QString file(const QString& name, const QByteArray& bytes) {
    QFile made(folder.filePath(name));
    REQUIRE(made.open(QIODevice::WriteOnly));
    REQUIRE(made.write(bytes) == bytes.size());
    return made.fileName();
  }
  // Returns whether the picture was kept.
  bool keep(const QString& path) {
    page().keepPhotograph(path);
    REQUIRE(becomesSo([&] { return !page().busy(); }));
    return page().refusal().isEmpty();
  }
  QString sheet() {
    const QString path = folder.filePath("sheet.png");
    REQUIRE(tests::writeSheetPrint(path));
    return path;
  }

  QTemporaryDir folder;
  app::photographs::Photographs photographs;
  tests::Stage stage{{"pilots-chart"}};
};

}  // namespace

TEST_CASE("a colour is chosen or written, and the material has it until it is taken back") {
  Stocked shop;
  AppearanceViewModel& page = shop.page();
  CHECK(page.plain());
  CHECK(page.colours()->count() == 18);
  REQUIRE(page.chooseColour(4));
  CHECK(page.colour() == app::painting::colourIn("ochre").name());
  CHECK(page.colours()->data(page.colours()->index(4), RowsModel::Chosen).toBool());
  CHECK(shop.shown().colour == app::painting::colourIn("ochre"));

  REQUIRE(page.enterColour(" #A1B2C3 "));
  CHECK(page.colour() == "#a1b2c3");
  CHECK_FALSE(page.enterColour("reddish"));
  CHECK(page.refusal().contains("reddish"));
  CHECK(page.colour() == "#a1b2c3");
  page.takeBack();
  CHECK(page.refusal().isEmpty());
  CHECK(page.colour() == app::painting::colourIn("ochre").name());
  CHECK_FALSE(page.canTakeBack());
  page.makePlain();
  CHECK(page.plain());
  CHECK_FALSE(shop.shown().colour.isValid());
}

TEST_CASE("a picture counts once it is entered how much of the sheet it shows, and every drawing has it") {
  Stocked shop;
  AppearanceViewModel& page = shop.page();
  REQUIRE(shop.keep(shop.sheet()));
  CHECK(page.lacksAcross());
  CHECK_FALSE(page.picture().isEmpty());
  CHECK(shop.told().empty());

  for (const char* wrong : {"", "wide", "0", "-3", "20000", "1e3", "3 kg"}) {
    INFO(wrong);
    CHECK_FALSE(page.enterAcross(wrong));
    CHECK_FALSE(page.refusal().isEmpty());
    CHECK(shop.told().empty());
  }
  REQUIRE(page.enterAcross("72"));
  CHECK_FALSE(page.lacksAcross());
  CHECK(page.across().startsWith("72"));
  REQUIRE(becomesSo([&] { return !shop.looks().busy(); }));
  REQUIRE(shop.shown().picture);
  CHECK(shop.shown().picture->across() == Approx(72));
  CHECK(page.trouble().isEmpty());
  CHECK(page.sample().appearances == shop.looks().all().all);

  // What was entered is put right without another picture, in either unit, or by the size of the sheet.
  REQUIRE(page.enterAcross("7.3 cm"));
  CHECK(shop.told().at(kPaper).picture->across == Length::wholeMillimetres(73));
  CHECK(page.sheetAcross().startsWith("700"));
  REQUIRE(page.enterWholeSheet());
  CHECK(shop.shown().picture->across() == Approx(700));

  page.removePicture();
  CHECK(page.picture().isEmpty());
  CHECK_FALSE(shop.shown().picture);
  page.takeBack();
  REQUIRE(becomesSo([&] { return !shop.looks().busy(); }));
  CHECK(shop.shown().picture);
}

TEST_CASE("what is no picture, is cut short or has too many pixels is refused, and the look stays") {
  Stocked shop;
  REQUIRE(shop.page().chooseColour(4));
  QByteArray cut = tests::pngBytes(200, 100);
  cut.truncate(cut.size() / 2);
  CHECK_FALSE(shop.keep(shop.file("cut.png", cut)));
  CHECK_FALSE(shop.keep(shop.file("words.png", "words")));
  CHECK_FALSE(shop.keep(shop.file("empty.png", "")));
  CHECK_FALSE(shop.keep(shop.folder.filePath("none.png")));
  QImage huge(20'000, 20'000, QImage::Format_Mono);
  huge.fill(0);
  CHECK_FALSE(shop.keep(shop.file("huge.png", tests::encoded(huge, "png"))));
  CHECK_FALSE(shop.page().lacksAcross());
  CHECK(shop.told().at(kPaper).picture == std::nullopt);
  // The smallest there is can be shown.
  REQUIRE(shop.keep(shop.file("dot.png", tests::pngBytes(1, 1))));
  REQUIRE(shop.page().enterAcross("10"));
  REQUIRE(becomesSo([&] { return !shop.looks().busy(); }));
  CHECK(shop.shown().picture);
}

TEST_CASE("a picture that is gone or damaged is said at its material, which looks as its colour says meanwhile") {
  for (const bool gone : {true, false}) {
    Stocked shop;
    REQUIRE(shop.page().chooseColour(4));
    REQUIRE(shop.keep(shop.sheet()));
    REQUIRE(shop.page().enterAcross("72"));
    REQUIRE(becomesSo([&] { return !shop.looks().busy(); }));
    const QString file = shop.photographs.file(shop.told().at(kPaper).picture->hash);
    REQUIRE_FALSE(file.isEmpty());
    REQUIRE(QFile::setPermissions(file, QFile::ReadOwner | QFile::WriteOwner));
    if (gone) {
      REQUIRE(QFile::remove(file));
    } else {
      QFile damaged(file);
      REQUIRE(damaged.open(QIODevice::ReadWrite));
      damaged.seek(damaged.size() / 2);
      damaged.write("damage");
    }
    // As it is found when the program is opened again.
    ShopAppearances again(shop.stage.workbench());
    again.refresh();
    REQUIRE(becomesSo([&] { return !again.busy(); }));
    CHECK_FALSE(again.all().all->of(kPaper).picture);
    CHECK(again.all().all->of(kPaper).colour == app::painting::colourIn("ochre"));
    CHECK(again.trouble(kPaper).id == (gone ? "photograph.gone" : "photograph.altered"));
    CHECK(again.trouble("another").id.empty());
    shop.stage.desk().stock().setAppearances(again);
    shop.stage.desk().stock().refresh();
    CHECK_FALSE(cell(*shop.stage.desk().stock().rows(), 0, RowsModel::Problem).isEmpty());
    CHECK_FALSE(shop.stage.desk().stock().chosenWarning().isEmpty());
  }
}

TEST_CASE("a look may name only a picture that is kept here, and none without a folder for photographs") {
  Stocked shop;
  core::intents::SheetPicture unknown;
  unknown.hash = std::string(64, 'a');
  unknown.bytes = 9;
  unknown.type = "png";
  unknown.width = unknown.height = 3;
  unknown.across = Length::wholeMillimetres(24);
  const core::intents::OfShop look{core::intents::GiveAppearance{{kPaper, "", unknown}}};
  CHECK(shop.stage.workbench().submit(look).id == "photograph.gone");
  tests::Stage bare({});
  CHECK(bare.workbench().submit(look).id == "photograph.no-folder");
  CHECK(shop.told().empty());
}

TEST_CASE("the pictures of looks are in use as long as any look ever named them") {
  Stocked shop;
  REQUIRE(shop.keep(shop.sheet()));
  CHECK(shop.photographs.unused(shop.stage.workbench().photographsNamed()).hashes.size() == 1);
  REQUIRE(shop.page().enterAcross("72"));
  CHECK(shop.photographs.unused(shop.stage.workbench().photographsNamed()).hashes.empty());
  shop.page().makePlain();
  CHECK(shop.photographs.unused(shop.stage.workbench().photographsNamed()).hashes.empty());
}

TEST_CASE("looks stand in the whole record and are there again when the program is opened again") {
  Stocked shop;
  REQUIRE(shop.page().enterColour("#a1b2c3"));
  const std::string job = shop.stage.workbench().jobs().front().id;
  CHECK(shop.stage.workbench().exportRecord(job).find("AppearanceGiven") != std::string::npos);
  // They are the shop's: a piece that is handed on goes without them.
  const auto handed = shop.stage.workbench().handOn(job);
  REQUIRE(handed.ok());
  CHECK(handed.value().find("AppearanceGiven") == std::string::npos);
  REQUIRE(shop.stage.reopen());
  CHECK(shop.told().at(kPaper).colour == "#a1b2c3");
  CHECK(shop.shown().colour == QColor("#a1b2c3"));
}

TEST_CASE("of what is never seen on a piece no look is asked") {
  Stocked shop;
  shop.stage.desk().stock().choose(1);
  CHECK_FALSE(shop.stage.desk().stock().chosenLooks());
  shop.stage.desk().stock().openAppearance();
  CHECK(shop.page().title() == "wave-block print");
}
