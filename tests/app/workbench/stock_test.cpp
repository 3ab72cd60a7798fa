// Stock entered at the bench, on the real store and through a restart.
#include <QTemporaryDir>

#include <map>

#include "app/stores/sqlite_event_store.h"
#include "core/supply/cutting.h"
#include "core/supply/shortage.h"
#include "tests/app/workbench/bench.h"
#include "tests/app/workbench/own_store.h"

using namespace tests;

TEST_CASE("stock entered at the bench is what a design is told it lacks of, through a restart") {
  QTemporaryDir folder;
  std::string job;
  {
    const auto store = openIn(folder);
    StoredBench bench(*store, "this-tablet");
    job = bench.takeIn(demoJob("heron"));
    core::intents::StockEntry paper;
    paper.kind = core::intents::StockKind::Paper;
    paper.name = "reed-green paste paper";
    paper.quantity = 1'000'000;
    paper.width = core::units::Length::wholeMillimetres(700);
    paper.height = core::units::Length::wholeMillimetres(500);
    REQUIRE(bench.work.submit(core::intents::OfShop{core::intents::EnterStock{paper}}).id.empty());
  }
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  const auto shortage = core::supply::shortageOf(job, *bench.work.job(job)->design, bench.work.shop());
  CHECK(shortage.isShort());
  for (const auto& line : shortage.lines) {
    if (!line.piece) continue;
    INFO(line.id);
    // The other paper is not in stock; of boards nobody has entered any.
    if (line.id.rfind("band.reed", 0) == 0) CHECK(line.lack == 0.0);
    if (line.id.rfind("band.scale", 0) == 0) CHECK(line.lack == 2.0);
    if (line.id.rfind("board", 0) == 0) CHECK(line.from == core::materials::ShortFrom::Unlisted);
  }
}

TEST_CASE("a sheet of the shop is cut up for a job that lists none, and is one less until that is taken back") {
  QTemporaryDir folder;
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  const std::string job = bench.takeIn(demoJob("heron"));
  core::intents::StockEntry paper;
  paper.kind = core::intents::StockKind::Paper;
  paper.name = "reed-green paste paper";
  paper.quantity = 3;
  paper.width = core::units::Length::wholeMillimetres(700);
  paper.height = core::units::Length::wholeMillimetres(500);
  REQUIRE(bench.work.submit(core::intents::OfShop{core::intents::EnterStock{paper}}).id.empty());
  const auto there = [&] { return bench.work.shop().stock.items.at(0).there(); };
  const auto cutting = [&] { return core::supply::cuttingOf(job, *bench.work.job(job)->design, bench.work.shop()); };
  const auto before = cutting();
  const core::materials::PlanSheet* sheet = nullptr;
  for (const auto& group : before.plan.groups) {
    if (!group.sheets.empty()) sheet = &group.sheets.front();
  }
  REQUIRE(sheet != nullptr);
  REQUIRE(bench.work.submit(core::intents::OfShop{core::supply::cutOf(before, *sheet, true)}).id.empty());
  const std::string act = bench.work.lastIntentId();
  CHECK(there() == 2);
  CHECK(bench.work.shop().onHand.offcuts.size() > 0);
  CHECK(cutting().pieces.size() < before.pieces.size());
  const auto record = bench.work.timeline(job, core::jobs::Order::NewestFirst);
  CHECK(core::base::dump(record.front().what) == "timeline.cut-sheet stock=reed-green paste paper count=4");
  REQUIRE(bench.work.submit(core::intents::OfShop{core::intents::UndoInShop{act}}).id.empty());
  CHECK(there() == 3);
  CHECK(cutting().pieces.size() == before.pieces.size());
}

TEST_CASE("what the job lists is cut from what it lists, whatever the shop has") {
  QTemporaryDir folder;
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  const std::string job = bench.takeIn(demoJob());
  const auto& design = *bench.work.job(job)->design;
  core::intents::StockEntry board;
  board.name = "cotton";
  board.quantity = 3;
  board.width = core::units::Length::wholeMillimetres(815);
  board.height = core::units::Length::wholeMillimetres(1120);
  board.thickness = core::units::Length::nanometres(1'500'000);
  REQUIRE(bench.work.submit(core::intents::OfShop{core::intents::EnterStock{board}}).id.empty());
  const auto cutting = core::supply::cuttingOf(job, design, bench.work.shop());
  for (const auto& match : cutting.plan.matches) {
    for (const std::size_t i : match.stock) CHECK(cutting.there.isListed(i));
  }
}

TEST_CASE("whatever is entered in the shop, the cutting and what a design is told it lacks agree") {
  QTemporaryDir folder;
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  // The heron's boards are 1/16, 3/32 and 1/16 in.
  const std::string job = bench.takeIn(demoJob("heron"));
  const auto& design = *bench.work.job(job)->design;
  const auto enter = [&](std::int64_t thickness, std::int64_t sheets, int width, int height) {
    core::intents::StockEntry board;
    board.name = "cotton";
    board.quantity = sheets;
    board.width = core::units::Length::wholeMillimetres(width);
    board.height = core::units::Length::wholeMillimetres(height);
    board.thickness = core::units::Length::nanometres(thickness);
    REQUIRE(bench.work.submit(core::intents::OfShop{core::intents::EnterStock{board}}).id.empty());
  };
  const auto check = [&] {
    const auto cutting = core::supply::cuttingOf(job, design, bench.work.shop());
    std::map<std::string, int> given;
    for (const auto& group : cutting.plan.groups) {
      for (const auto& sheet : group.sheets) {
        for (const auto& placed : sheet.pieces) ++given[cutting.pieces[placed.piece].id];
      }
    }
    int boards = 0;
    for (const auto& line : core::supply::shortageOf(job, design, bench.work.shop()).lines) {
      if (!line.piece) continue;
      INFO(line.id);
      if (line.have) CHECK(*line.have == given[line.id]);
      if (line.id.rfind("board", 0) == 0) boards += given[line.id];
    }
    return boards;
  };
  CHECK(check() == 0);
  enter(1'587'500, 1, 815, 560);
  CHECK(check() == 1);
  enter(2'381'250, 1, 60, 60);  // too small for the middle board
  CHECK(check() == 1);
  enter(1'587'500, 1, 815, 1120);
  CHECK(check() == 2);
  enter(2'381'250, 2, 815, 1120);
  CHECK(check() == 3);
}
