#include "core/workflow/sense.h"

#include "tests/support/catch.h"

using core::workflow::DraftStep;
using core::workflow::Sense;

namespace {

DraftStep stepOf(const std::string& kind, const std::string& thing, int piece) {
  DraftStep draft;
  const std::string number = piece > 1 ? '#' + std::to_string(piece) : "";
  draft.step.id = "own/" + kind + (thing.empty() ? "" : '@' + thing) + number;
  draft.step.thing = thing + number;
  draft.piece = piece;
  return draft;
}

}  // namespace

TEST_CASE("the end of one piece's work and the beginning of the next one's read in no one sense") {
  const Sense sense({stepOf("size", "", 1), stepOf("rags", "", 1), stepOf("size", "", 2), stepOf("rags", "", 2),
                     stepOf("clear", "", 0)});
  CHECK(sense.isOne({0, 1}));
  CHECK(sense.isOne({0, 2}));
  CHECK(sense.isOne({0, 1, 2, 3}));
  CHECK(sense.isOne({0, 1, 4}));
  CHECK(sense.isOne({4, 3}));
  CHECK_FALSE(sense.isOne({1, 2}));
  CHECK_FALSE(sense.isOne({0, 1, 2}));
  CHECK_FALSE(sense.isOne({4, 1, 2}));
}

TEST_CASE(
    "of like things one is not finished while the next is begun; unlike things have nothing to do with each other") {
  const Sense sense({stepOf("mark", "top", 0), stepOf("cut", "top", 0), stepOf("mark", "under", 0),
                     stepOf("cut", "under", 0), stepOf("rule", "line", 0), stepOf("wipe", "line", 0)});
  CHECK(sense.isOne({0, 2, 1}));
  CHECK(sense.isOne({0, 1, 2}));
  CHECK(sense.isOne({1, 4}));
  CHECK(sense.isOne({0, 2, 1, 3}));
  CHECK_FALSE(sense.isOne({1, 2}));
  CHECK_FALSE(sense.isOne({1, 5, 2}));
}
