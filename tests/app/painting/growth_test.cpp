// The piece on the bench: it grows with the record, and is drawn anew only when it has grown.
#include "core/sheets/drawing.h"
#include "tests/app/gallery/states.h"
#include "tests/support/catch.h"

using app::viewmodels::BenchViewModel;
using core::sheets::Drawing;
using core::sheets::Standing;

namespace {

int made(const Drawing& drawing) {
  int count = 0;
  for (const auto& primitive : drawing.primitives) count += primitive.standing == Standing::Made ? 1 : 0;
  return count;
}

bool isOfPiece(const BenchViewModel& bench) {
  return bench.drawing().piece != nullptr && bench.drawing() != bench.act();
}

}  // namespace

TEST_CASE("the bench shows the piece as far as it has grown, and what is undone is to come again") {
  tests::Stage stage({"pilots-chart"});
  BenchViewModel& bench = stage.desk().bench();
  REQUIRE(isOfPiece(bench));
  CHECK(made(*bench.drawing().piece) == 0);
  REQUIRE(stage.workUntil([&] { return bench.stepId().endsWith(QStringLiteral("/lay@inner.top")); }));
  const int before = made(*bench.drawing().piece);
  CHECK(before > 0);
  REQUIRE(bench.finish());
  REQUIRE(isOfPiece(bench));
  CHECK(made(*bench.drawing().piece) == before + 1);
  REQUIRE(bench.takeBack());
  CHECK(made(*bench.drawing().piece) == before);
  REQUIRE(stage.workUntil([&] { return bench.kind() == BenchViewModel::Kind::Finished; }));
  CHECK(made(*bench.drawing().piece) == static_cast<int>(bench.drawing().piece->primitives.size()));
}

TEST_CASE("a piece that has not grown is the same drawing, however often the bench is read again") {
  tests::Stage stage({"pilots-chart"});
  BenchViewModel& bench = stage.desk().bench();
  std::shared_ptr<const Drawing> last;
  int anew = 0, acts = 0;
  static_cast<void>(stage.workUntil([&] {
    if (isOfPiece(bench)) {
      const auto piece = bench.drawing().piece;
      bench.refresh();
      CHECK(bench.drawing().piece == piece);
      anew += piece == last ? 0 : 1;
      last = piece;
    }
    ++acts;
    return bench.kind() == BenchViewModel::Kind::Finished;
  }));
  CHECK(anew > 20);
  CHECK(anew <= acts);
}

TEST_CASE("a number on a strip has the strip in the hand, another none") {
  tests::Stage stage({"pilots-chart"});
  auto& bench = stage.desk().bench();
  REQUIRE(stage.workUntil([&] { return bench.stepId().contains(QStringLiteral("/mark-window@top")); }));
  CHECK_FALSE(bench.figure()->hasStrip());
  REQUIRE(stage.workUntil([&] { return bench.stepId().contains(QStringLiteral("/cut-strips@inner")); }));
  REQUIRE(bench.figure()->hasStrip());
  CHECK(bench.figure()->strip().piece->width == 379);
  CHECK(bench.figure()->strip().worked == "inner");
}
