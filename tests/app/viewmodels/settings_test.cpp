// Who works here, as it is written on the tablet's page and stands on the sheets that go with a piece.
#include "app/viewmodels/desk/settings_view_model.h"

#include "tests/app/gallery/states.h"
#include "tests/support/catch.h"

using app::viewmodels::RecordViewModel;
using app::viewmodels::RowsModel;

TEST_CASE("the maker's name and contact stand on the client's sheet") {
  tests::Stage stage({"pilots-chart"});
  auto& settings = stage.desk().settings();
  CHECK(settings.maker().isEmpty());
  settings.nameMaker("  Workshop at the outer quay ", "by letter to the harbour office");
  CHECK(settings.refusal().isEmpty());
  CHECK(settings.maker() == "Workshop at the outer quay");
  stage.desk().pieces().choose(0);
  auto& record = stage.desk().record();
  record.look(RecordViewModel::Page::ForClient);
  QString sheet;
  for (int row = 0; row < record.rows()->count(); ++row) {
    sheet += record.rows()->data(record.rows()->index(row), RowsModel::Note).toString() + '\n';
  }
  CHECK(sheet.contains("Workshop at the outer quay"));
  CHECK(sheet.contains("by letter to the harbour office"));

  // As it was, nothing is written.
  const std::string act = stage.workbench().lastIntentId();
  settings.nameMaker("Workshop at the outer quay", "by letter to the harbour office");
  CHECK(stage.workbench().lastIntentId() == act);
}

TEST_CASE("the bench shows the numbers of the way in which its maker marks windows, and the record holds the choice") {
  tests::Stage stage({"pilots-chart"});
  auto& desk = stage.desk();
  const auto* figure = desk.bench().figure();
  REQUIRE(stage.workUntil([&] { return desk.bench().stepId() == "cut-windows/mark-window@top"; }));
  CHECK_FALSE(desk.settings().byBorders());
  CHECK(figure->total() == 4);
  CHECK(figure->currentId() == "board.top.mark.left");
  CHECK(figure->datum().contains("from the right edge"));
  REQUIRE(desk.bench().figure()->forward());
  desk.settings().turnMarking();
  CHECK(desk.settings().refusal().isEmpty());
  CHECK(desk.settings().byBorders());
  // It begins anew: the second mark is no second border.
  CHECK(figure->index() == 0);
  CHECK(figure->total() == 4);
  CHECK(figure->currentId() == "board.top.back.right");
  REQUIRE(desk.bench().figure()->forward());
  CHECK(figure->currentId() == "board.top.back.left");
  CHECK(figure->datum().contains("from the left edge"));
  REQUIRE(stage.reopen());
  CHECK(stage.desk().settings().byBorders());
}

TEST_CASE("a contact without a name is refused, and what stood stands") {
  tests::Stage stage({});
  auto& settings = stage.desk().settings();
  settings.nameMaker("", "somewhere");
  CHECK_FALSE(settings.refusal().isEmpty());
  CHECK(settings.contact().isEmpty());
  settings.nameMaker("A maker", "somewhere");
  CHECK(settings.refusal().isEmpty());
  settings.nameMaker(QString(5000, 'x'), "somewhere");
  CHECK_FALSE(settings.refusal().isEmpty());
  CHECK(settings.maker() == "A maker");
}
