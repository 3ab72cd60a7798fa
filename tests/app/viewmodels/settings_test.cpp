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
