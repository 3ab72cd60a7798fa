// What of the record of several identical pieces is in the record of one.
#include "core/jobs/one_piece.h"

#include "core/record/happening.h"
#include "tests/support/catch.h"
#include "tests/support/events.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using jobs::OnePiece;
using jobs::stepOfPiece;

namespace {

const workflow::Workflow& pieceOfOne() {
  static const workflow::Workflow kPiece = composed(designOf(demoJobText()), shippedTechniques());
  return kPiece;
}

jobs::OnePiece piece(int number) {
  jobs::OnePiece one;
  one.number = number;
  one.of = &pieceOfOne();
  return one;
}

template <typename What>
record::Event said(std::int64_t sequence, const What& what, const std::string& intent) {
  record::Event one = event("tablet", sequence, 1000 * sequence);
  const record::EventDraft draft = record::draftOf(what);
  one.type = draft.type;
  one.payload = draft.payload;
  one.intentId = intent;
  return one;
}

record::StepDone done(const std::string& step) {
  record::StepDone what;
  what.step = step;
  return what;
}

record::BatchesLinked linked(const std::string& step, const std::string& batch) {
  record::BatchesLinked what;
  what.step = step;
  what.batches = std::vector<std::string>{batch};
  return what;
}

// Of each step of the piece's own record the batch told last.
std::map<std::string, std::string> batchesOf(const std::vector<record::Event>& events, int number) {
  std::map<std::string, std::string> batches;
  for (const record::Event& one : jobs::eventsOfPiece(events, piece(number))) {
    const record::Happening happening = record::happeningOf(one);
    if (const auto* link = std::get_if<record::BatchesLinked>(&happening)) {
      REQUIRE(pieceOfOne().find(link->step) != nullptr);
      batches[link->step] = link->batches->at(0);
    }
  }
  return batches;
}

using Batches = std::map<std::string, std::string>;

workflow::WorkflowStep stepOf(const std::string& id) {
  workflow::WorkflowStep step;
  step.id = id;
  return step;
}

}  // namespace

TEST_CASE("a batch told of the shop's step, or of what is done once, is in the record of every piece") {
  const std::string shop = "band-adhesive/prepare";
  REQUIRE(pieceOfOne().find(shop) != nullptr);
  const std::vector<record::Event> events = {said(1, done(shop), "a"), said(2, linked(shop, "jar"), "b")};
  for (const int number : {1, 2, 3}) CHECK(batchesOf(events, number) == Batches{{shop, "jar"}});
}

TEST_CASE("a batch told of one piece's step counts for those that were worked with it in one go") {
  const std::string brush = "strips-adhesive/brush@inner.top";
  REQUIRE(pieceOfOne().find(brush) != nullptr);
  const std::vector<record::Event> events = {
      said(1, done(brush), "one press"),
      said(2, done(brush + "#2"), "one press"),
      said(3, done(brush + "#3"), "another"),
      said(4, linked(brush + "#2", "jar"), "told"),
  };
  CHECK(batchesOf(events, 1) == Batches{{brush, "jar"}});
  CHECK(batchesOf(events, 2) == Batches{{brush, "jar"}});
  CHECK(batchesOf(events, 3).empty());
}

TEST_CASE("what was told of a piece's own step is not replaced by what was told of another's") {
  const std::string brush = "strips-adhesive/brush@inner.top";
  const std::vector<record::Event> events = {
      said(1, done(brush), "one press"),
      said(2, done(brush + "#2"), "one press"),
      said(3, linked(brush, "first jar"), "told"),
      said(4, linked(brush + "#2", "second jar"), "told too"),
  };
  CHECK(batchesOf(events, 1) == Batches{{brush, "first jar"}});
  CHECK(batchesOf(events, 2) == Batches{{brush, "second jar"}});
}

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
