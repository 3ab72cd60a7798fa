#include "core/craft/pattern.h"

#include "tests/support/catch.h"

namespace craft_tests {

using core::craft::FactPattern;
using core::craft::normalised;
using core::craft::ThingKind;

namespace {

FactPattern plain(const char* text) {
  FactPattern pattern;
  pattern.text = text;
  return pattern;
}

}  // namespace

TEST_CASE("Every word of kinds and relations reads back as itself, and once is not for files") {
  for (const char* word : {"board", "bevel", "band", "strip", "corner", "line", "leaf", "part"}) {
    REQUIRE(core::craft::thingKind(word).has_value());
    CHECK(core::craft::name(*core::craft::thingKind(word)) == word);
  }
  for (const char* word : {"job", "this", "owner", "reach", "adjoining", "outermost", "innermost"}) {
    REQUIRE(core::craft::relation(word).has_value());
    CHECK(core::craft::name(*core::craft::relation(word)) == word);
  }
  CHECK_FALSE(core::craft::thingKind("once").has_value());
  CHECK_FALSE(core::craft::relation("near").has_value());
}

TEST_CASE("Facts compare by the kind of thing they are said of") {
  CHECK(normalised(plain("this.window.cut"), ThingKind::Board, ThingKind::Board) == "board:window.cut");
  CHECK(normalised(plain("previous.window.cut"), ThingKind::Board, ThingKind::Board) == "board:window.cut");
  CHECK(normalised(plain("this.bevel.dry"), ThingKind::Bevel, ThingKind::Bevel) == "board:bevel.dry");
  CHECK(normalised(plain("owner.fitted"), ThingKind::Corner, ThingKind::Band) == "band:fitted");
  CHECK(normalised(plain("owner.sized"), ThingKind::Part, ThingKind::Leaf) == "leaf:sized");
  CHECK(normalised(plain("this.laid"), ThingKind::Part, ThingKind::Leaf) == "part:laid");
  CHECK(normalised(plain("art.away"), ThingKind::Strip, ThingKind::Band) == "job:art.away");
  FactPattern every;
  every.every = ThingKind::Bevel;
  every.is = "bevel.dry";
  CHECK(normalised(every, ThingKind::Once, ThingKind::Once) == "board:bevel.dry");
}

TEST_CASE("Facts of the job begin with a word no id may be") {
  CHECK(core::craft::isLiteralFact("size.methylCellulose.1pc.ready"));
  CHECK(core::craft::isLiteralFact("boards.joined"));
  CHECK_FALSE(core::craft::isLiteralFact("board.joined"));
  CHECK_FALSE(core::craft::isLiteralFact("this.cut"));
}

}  // namespace craft_tests
