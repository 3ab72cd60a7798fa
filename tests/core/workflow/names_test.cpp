// How things are called: a word that an id says itself is not said twice.
#include "core/workflow/fill.h"
#include "core/workflow/things.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using workflow::sayingOnce;

TEST_CASE("a word beside the id that the id says itself stands once", "[names]") {
  CHECK(sayingOnce("{id} line", "line") == "line");
  CHECK(sayingOnce("{id} line", "hairline") == "{id}");
  CHECK(sayingOnce("{id} line", "rim-line") == "{id}");
  CHECK(sayingOnce("{id} wash panel", "panel") == "wash panel");
  CHECK(sayingOnce("{id} wash panel", "wash") == "wash panel");
  CHECK(sayingOnce("leaf field {id}", "field") == "leaf field");
  CHECK(sayingOnce("leaf field {id}", "leaf") == "leaf field");
  CHECK(sayingOnce("leaf field {id}", "sky") == "leaf field {id}");
  CHECK(sayingOnce("leaf field {id}", "upper-field") == "leaf {id}");
}

TEST_CASE("what comes after the first comma speaks of something else", "[names]") {
  CHECK(sayingOnce("leaf field {id}, area", "field") == "leaf field, area");
  CHECK(sayingOnce("{id} board, left border", "left") == "{id} board, left border");
  CHECK(sayingOnce("{id} board, left border", "board") == "board, left border");
  CHECK(sayingOnce("{id} board, left border", "under-board") == "{id}, left border");
  CHECK(sayingOnce("{side} strip of {band}", "strip") == "{side} strip of {band}");
}

TEST_CASE("two things are never called the same for the sake of brevity", "[names]") {
  const auto design = tests::designOf(tests::demoJobWith(R"("id": "outside")", R"("id": "line")"));
  workflow::ThingWords words;
  words.line = "{id} line";
  CHECK(workflow::Things(design, words).find("line")->words.at("name") == "line");
  // As if another thing had that name already.
  words.board = "line";
  CHECK(workflow::Things(design, words).find("line")->words.at("name") == "line line");
}
