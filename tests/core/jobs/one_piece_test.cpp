#include "core/jobs/one_piece.h"

#include "tests/support/catch.h"

using namespace core;
using jobs::OnePiece;
using jobs::stepOfPiece;

namespace {

workflow::WorkflowStep stepOf(const std::string& id) {
  workflow::WorkflowStep step;
  step.id = id;
  return step;
}

}  // namespace

TEST_CASE("a piece's id is known as one of its whole, and of no other") {
  CHECK(jobs::isPieceOf(jobs::idOfPiece("one", 12), "one"));
  CHECK_FALSE(jobs::isPieceOf("one.2", "one.3"));
  CHECK_FALSE(jobs::isPieceOf("one", "one"));
  CHECK_FALSE(jobs::isPieceOf("one.", "one"));
  CHECK_FALSE(jobs::isPieceOf("one.x", "one"));
  CHECK_FALSE(jobs::isPieceOf("once.2", "one"));
}

TEST_CASE("what was done once for all pieces is a step of each, a setting that is equal for all among it") {
  workflow::Workflow one;
  one.steps = {stepOf("own/cut@top"), stepOf("own/set@top"), stepOf("own/try@top"), stepOf("own/clear")};
  one.steps[1].setup = workflow::WorkflowSetup{"cutter", "1.5 mm", {}, false};
  one.steps[2].setup = workflow::WorkflowSetup{"pen", "1.5 mm", {}, true};
  one.steps[3].once = true;
  one.index();
  OnePiece second;
  second.number = 2;
  second.of = &one;
  CHECK(stepOfPiece("own/set@top", second) == "own/set@top");
  CHECK(stepOfPiece("own/clear", second) == "own/clear");
  CHECK(stepOfPiece("own/cut@top#2", second) == "own/cut@top");
  CHECK(stepOfPiece("own/try@top#2", second) == "own/try@top");
  CHECK_FALSE(stepOfPiece("own/try@top", second).has_value());
  CHECK_FALSE(stepOfPiece("own/cut@top", second).has_value());
  CHECK_FALSE(stepOfPiece("own/cut@top#3", second).has_value());
}
