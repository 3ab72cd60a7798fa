// What the hand does in the step shown, offered to the screens and painted.
#include <QImage>
#include <algorithm>
#include <set>

#include "app/painting/drawing_painter.h"
#include "core/sheets/act.h"
#include "tests/app/gallery/states.h"
#include "tests/support/catch.h"

using app::painting::Inks;
using app::viewmodels::BenchViewModel;

using Kind = BenchViewModel::Kind;

namespace {

const core::workflow::WorkflowStep& stepOf(tests::Stage& stage) {
  const auto* state = stage.workbench().job(stage.desk().bench().jobId());
  return *state->plan->workflow.find(stage.desk().bench().stepId().toStdString());
}

Inks inks() { return {QColor("#102030"), QColor("#8A8D90"), QColor("#7A3410"), QColor("#F7F5EF"), 1}; }

QImage painted(const app::painting::Painted& drawing, const QSize& size) {
  QImage image(size, QImage::Format_RGB32);
  image.fill(inks().ground);
  QPainter painter(&image);
  app::painting::paintDrawing(painter, drawing, size, inks());
  return image;
}

app::painting::Painted drawingOf(core::craft::Act act) {
  app::painting::Painted drawing;
  drawing.piece = std::make_shared<const core::sheets::Drawing>(core::sheets::drawAct(act, core::craft::WayUp::None));
  return drawing;
}

int count(const QImage& image, const QColor& colour) {
  int pixels = 0;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) pixels += image.pixelColor(x, y) == colour ? 1 : 0;
  }
  return pixels;
}

}  // namespace

TEST_CASE("every step of both demo jobs offers the drawing of its act, the right way up") {
  for (const char* job : {"pilots-chart", "heron"}) {
    tests::Stage stage({job});
    BenchViewModel& bench = stage.desk().bench();
    std::set<std::string> seen;
    static_cast<void>(stage.workUntil([&] {
      if (bench.kind() == Kind::Step) {
        REQUIRE(bench.hasAct());
        // Of an act that holds several steps it is the drawing of the one worked longest.
        const auto& steps = bench.steps();
        const auto longest = std::max_element(
            steps.begin(), steps.end(), [](const auto* a, const auto* b) { return a->work.likely < b->work.likely; });
        const auto& step = **longest;
        INFO(step.id);
        REQUIRE(step.act.has_value());
        // In the papers of the piece itself.
        const auto& made = stage.workbench().job(bench.jobId())->plan->design.job;
        CHECK(dump(*bench.act().piece) ==
              dump(core::sheets::drawAct(*step.act, step.up, core::sheets::papersOf(made, step.thing))));
        for (const auto* one : steps) seen.insert(one->id);
      }
      return bench.kind() == Kind::Finished;
    }));
    CHECK(bench.kind() == Kind::Finished);
    CHECK_FALSE(bench.hasAct());
    CHECK(seen.size() > 40);
  }
}

TEST_CASE("the bench shows the act in place of a piece that has nothing to tell, and there alone") {
  tests::Stage stage({"pilots-chart"});
  BenchViewModel& bench = stage.desk().bench();
  int acts = 0;
  int pieces = 0;
  static_cast<void>(stage.workUntil([&] {
    if (bench.kind() != Kind::Step) return bench.kind() == Kind::Finished;
    const auto& step = stepOf(stage);
    INFO(step.id);
    const bool act = step.thing.empty() && step.up == core::craft::WayUp::None;
    CHECK((bench.drawing() == bench.act()) == act);
    ++(act ? acts : pieces);
    return false;
  }));
  CHECK(acts > 5);
  CHECK(pieces > 20);
}

TEST_CASE("a bench without a step offers no act") {
  tests::Stage stage({});
  CHECK_FALSE(stage.desk().bench().hasAct());
}

TEST_CASE("an act is painted in its room, coloured where the hand is") {
  for (const core::craft::Act act : core::craft::allActs()) {
    INFO(name(act));
    const QImage image = painted(drawingOf(act), {360, 240});
    CHECK(count(image, inks().ink) > 100);
    const QImage wide = painted(drawingOf(act), {720, 240});
    // As large as fits, in the middle: nothing reaches the edges of a room too wide for it.
    CHECK(count(wide.copy(0, 0, 170, 240), inks().ground) == 170 * 240);
    CHECK(count(wide.copy(550, 0, 170, 240), inks().ground) == 170 * 240);
  }
  // An arrow is solid, tape lets what lies under it show.
  CHECK(count(painted(drawingOf(core::craft::Act::TapeEdge), {360, 240}), inks().worked) > 200);
}
