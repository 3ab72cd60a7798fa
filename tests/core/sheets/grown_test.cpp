#include "core/sheets/grown.h"

#include <set>

#include "core/sheets/piece.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using namespace core::sheets;

namespace {

Drawing pieceOf(const Bench& bench) {
  Drawing drawing = drawPiece(*bench.state().design, Side::Face);
  stand(drawing, Grown(bench.state()));
  return drawing;
}

// "top bevel", "inner.left band".
std::set<std::string> made(const Drawing& drawing) {
  std::set<std::string> names;
  for (const Primitive& primitive : drawing.primitives) {
    if (primitive.standing == Standing::Made)
      names.insert(primitive.element + ' ' + std::to_string(static_cast<int>(primitive.role)));
  }
  return names;
}

const Primitive& find(const Drawing& drawing, const std::string& element, Role role) {
  for (const Primitive& primitive : drawing.primitives) {
    if (primitive.element == element && primitive.role == role) return primitive;
  }
  FAIL(element);
  return drawing.primitives.front();
}

bool isMade(const Drawing& drawing, const std::string& element, Role role) {
  return find(drawing, element, role).standing == Standing::Made;
}

}  // namespace

TEST_CASE("nothing of a piece is there before the work, everything after it, and in between it only grows") {
  Bench bench(demoJobText(), shippedTechniques());
  Drawing drawing = pieceOf(bench);
  CHECK(made(drawing).empty());
  std::set<std::string> before;
  std::set<std::size_t> stages;
  while (bench.place().kind != jobs::BenchPlace::Kind::Finished) {
    if (bench.place().kind == jobs::BenchPlace::Kind::Waiting) {
      bench.advance(1);
      continue;
    }
    REQUIRE_FALSE(bench.finishShown().empty());
    drawing = pieceOf(bench);
    const std::set<std::string> now = made(drawing);
    for (const std::string& one : before) {
      INFO(one);
      CHECK(now.contains(one));
    }
    before = now;
    stages.insert(now.size());
  }
  for (const Primitive& primitive : drawing.primitives) {
    INFO(primitive.element << ' ' << static_cast<int>(primitive.role));
    CHECK(primitive.standing == Standing::Made);
  }
  CHECK(stages.size() > 10);
}

TEST_CASE("a strip is there once it is laid, alone") {
  Bench bench(demoJobText(), shippedTechniques());
  const std::string lay = "strips-adhesive/lay@inner.top";
  bench.workUntil(lay);
  CHECK_FALSE(isMade(pieceOf(bench), "inner.top", Role::Band));
  REQUIRE(bench.finish(lay) == "");
  const Drawing drawing = pieceOf(bench);
  CHECK(isMade(drawing, "inner.top", Role::Band));
  CHECK_FALSE(isMade(drawing, "inner.bottom", Role::Band));
  CHECK_FALSE(isMade(drawing, "inner.corner.tl", Role::Mitre));
}

TEST_CASE("a bevel that is cut is bare core until it has its colour") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil("cut-windows/measure-window@top");
  Drawing drawing = pieceOf(bench);
  CHECK(isMade(drawing, "top", Role::Bevel));
  CHECK(find(drawing, "top", Role::Bevel).matter->substance == Substance::Core);
  bench.workUntil("colour-bevel/look@top");
  drawing = pieceOf(bench);
  CHECK(find(drawing, "top", Role::Bevel).matter->substance == Substance::Paint);
}

TEST_CASE("what no step makes by its act is there when every step of it is done") {
  craft::Catalogue catalogue = shippedTechniques({"ruled-lines", "ruled-lines-watercolour"});
  addTechnique(catalogue, oneStepTechnique("own-lines", R"("this.ruled", "this.dry", "this.hard")",
                                           R"("role": "line-paint", "when": {"each": "line"})", ""));
  Bench bench(demoJobText(), catalogue);
  Drawing drawing = pieceOf(bench);
  CHECK_FALSE(isMade(drawing, "outside", Role::Line));
  bench.workUntil("own-lines/act@inside");
  REQUIRE(bench.finish("own-lines/act@inside") == "");
  drawing = pieceOf(bench);
  CHECK(isMade(drawing, "inside", Role::Line));
}

TEST_CASE("what a step works of a piece is of its thing and of what its act makes or colours") {
  const Bench bench(demoJobText(), shippedTechniques());
  const Drawing drawing = pieceOf(bench);
  const auto& steps = bench.plan()->workflow.steps;
  int bevels = 0;
  int strips = 0;
  int leaf = 0;
  for (const workflow::WorkflowStep& step : steps) {
    if (!step.act || step.thing.empty()) continue;
    std::set<Role> roles;
    for (const Primitive& primitive : drawing.primitives) {
      if (!isWorkedBy(primitive, step)) continue;
      INFO(step.id << ' ' << primitive.element);
      CHECK(belongsTo(primitive.element, step.thing));
      roles.insert(primitive.role);
    }
    INFO(step.id);
    if (*step.act == craft::Act::BrushBevel) {
      CHECK(roles == std::set<Role>{Role::Bevel});
      ++bevels;
    } else if (*step.act == craft::Act::LayStrip) {
      CHECK(roles == std::set<Role>{Role::Band});
      ++strips;
    } else if (*step.act == craft::Act::ScatterLeaf) {
      CHECK(roles == std::set<Role>{Role::Leaf});
      ++leaf;
    }
  }
  CHECK(bevels > 0);
  CHECK(strips == 4);
  CHECK(leaf > 0);
}
