// Sheets cut up at the bench, as the screen tells of them.
#include "app/viewmodels/bench/cutting_view_model.h"

#include "tests/app/gallery/states.h"
#include "tests/support/catch.h"

using app::viewmodels::CuttingViewModel;

namespace {

core::intents::StockEntry board(const char* name, std::int64_t thickness) {
  core::intents::StockEntry entry;
  entry.name = name;
  entry.quantity = 4;
  entry.width = core::units::Length::wholeMillimetres(815);
  entry.height = core::units::Length::wholeMillimetres(1120);
  entry.thickness = core::units::Length::nanometres(thickness);
  return entry;
}

bool enter(tests::Stage& stage, const core::intents::StockEntry& entry) {
  return stage.workbench().submit(core::intents::OfShop{core::intents::EnterStock{entry}}).id.empty();
}

}  // namespace

TEST_CASE("boards that are in stock and serve are cut from; those that do not are named with what they are") {
  tests::Stage stage({"heron"});
  stage.desk().jobs().choose(0);
  CuttingViewModel& cutting = stage.desk().cutting();
  CHECK(cutting.page() == CuttingViewModel::Page::Over);
  CHECK(cutting.said().contains("No sheet is entered for these"));
  // A board of another thickness than any of the piece's.
  REQUIRE(enter(stage, board("thick board", 4'000'000)));
  CHECK(cutting.page() == CuttingViewModel::Page::Over);
  CHECK(cutting.said().contains("In stock is thick board, "));
  CHECK(cutting.said().contains(", of another material or thickness than these:\n1 × top board"));
  // Of paper there is none.
  CHECK(cutting.said().contains("No sheet is entered for these"));
  // The heron's boards are 1/16 in: what a rule says is 1.6 mm.
  REQUIRE(enter(stage, board("cotton board", 1'600'000)));
  REQUIRE(cutting.page() == CuttingViewModel::Page::Fetch);
  CHECK(cutting.heading() == "Cotton board");
  CHECK(cutting.parts().size() == 3);
}

TEST_CASE("each cut has its dimension from the edge of the part it divides") {
  tests::Stage stage({"pilots-chart"});
  stage.desk().jobs().choose(0);
  CuttingViewModel& cutting = stage.desk().cutting();
  CHECK(cutting.piece() == "Pilot's chart of the outer bar");
  CHECK_FALSE(cutting.drawing().dimension);
  REQUIRE_FALSE(cutting.parts().isEmpty());
  int cuts = 0;
  while (cutting.forward() && cutting.page() == CuttingViewModel::Page::Cut) {
    ++cuts;
    INFO(cutting.heading().toStdString());
    const auto lines = cutting.drawing().dimension;
    REQUIRE(lines);
    const auto& along = std::get<core::sheets::Stroke>(lines->front().shape).points;
    REQUIRE(along.size() == 2);
    const double length = std::hypot(along[1].x - along[0].x, along[1].y - along[0].y);
    CHECK(QString::number(length, 'f', 1) == cutting.whole());
    CHECK(std::abs(cutting.fenceAt().x() - (along[0].x + along[1].x) / 2) < 1e-9);
    CHECK(std::abs(cutting.fenceAt().y() - (along[0].y + along[1].y) / 2) < 1e-9);
    // The line to be made begins or ends where the dimension does.
    const auto& shapes = cutting.drawing().piece->primitives;
    const auto cut = std::find_if(shapes.begin(), shapes.end(), [&](const auto& one) {
      return one.element == cutting.drawing().worked && one.role == core::sheets::Role::Line;
    });
    REQUIRE(cut != shapes.end());
    const auto& line = std::get<core::sheets::Stroke>(cut->shape).points;
    CHECK((std::abs(line[0].x - along[1].x) < 1e-9 || std::abs(line[0].y - along[1].y) < 1e-9));
  }
  CHECK(cuts > 1);
}
