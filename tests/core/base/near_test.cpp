#include "core/base/near.h"

#include "tests/support/catch.h"

using core::base::nearest;

TEST_CASE("the word that was meant is found, and none where nothing is near") {
  const std::vector<std::string> known = {"title", "thickness", "needs", "makes", "ends", "this.bevel.dry"};
  CHECK(nearest("tittle", known) == "title");
  CHECK(nearest("tilte", known) == "title");
  CHECK(nearest("thicknes", known) == "thickness");
  CHECK(nearest("need", known) == "needs");
  CHECK(nearest("this.bevel.dyr", known) == "this.bevel.dry");
  CHECK(nearest("colour", known) == "");
  CHECK(nearest("x", known) == "");
  CHECK(nearest("", known) == "");
  CHECK(nearest(std::string(200, 't'), known) == "");
  CHECK(nearest("title", {}) == "");
}
