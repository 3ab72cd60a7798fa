#include <random>

#include "core/geometry/move.h"
#include "tests/core/geometry/forms_here.h"

using namespace core::geometry;
using core::base::Message;

namespace {

std::string refusalOf(std::string_view text) {
  const auto parsed = parseOutline(text);
  return parsed ? "read" : core::base::dump(parsed.error());
}

}  // namespace

TEST_CASE("every window's outline, and the outline moved, reads back to the same bits", "[geometry]") {
  for (const auto& form : tests::everyForm()) {
    INFO(form.name);
    const Outline outline = tests::made(form).outline;
    for (const double d : {0.0, 6.0, -2.0}) {
      const auto other = moved(outline, d);
      REQUIRE(other.ok());
      const std::string text = outlineText(other.value());
      const auto back = parseOutline(text);
      INFO(text);
      REQUIRE(back.ok());
      CHECK(back.value() == other.value());
      CHECK(outlineText(back.value()) == text);
    }
  }
}

TEST_CASE("the text of an outline is as it is described", "[geometry]") {
  CHECK(outlineText(outlineOf(Rectangle{0, 0, 10, 5.5})) == "from 0 0 line 10 0 line 10 5.5 line 0 5.5 line 0 0");
  CHECK(outlineText(Outline()).empty());
  const auto none = parseOutline("");
  REQUIRE(none.ok());
  CHECK(none.value().empty());
  const auto read = parseOutline("from 0 0 line 10 0 arc 10 5 5 10 10 3.141592653589793 line 0 10 line 0 0");
  REQUIRE(read.ok());
  CHECK(read.value().segments().size() == 4);
  CHECK(read.value().area() == Approx(100 + 12.5 * 3.14159265358979).epsilon(1e-13));
}

TEST_CASE("what is no outline is refused with the number of the word", "[geometry]") {
  CHECK(refusalOf("line 0 0") == "outline.malformed word=1");
  CHECK(refusalOf("from 0") == "outline.malformed word=3");
  CHECK(refusalOf("from 0 zero") == "outline.malformed word=3");
  CHECK(refusalOf("from 0 0 curve 1 1") == "outline.malformed word=4");
  CHECK(refusalOf("from 0 0 line 1 nan") == "outline.malformed word=6");
  CHECK(refusalOf("from 0 0 line 1 inf") == "outline.malformed word=6");
  CHECK(refusalOf("from 0 0  line 1 1") == "outline.malformed word=4");
  CHECK(refusalOf("from 0 0 line 1 1,5") == "outline.malformed word=6");
  CHECK(refusalOf("from 0 0 line 100000.1 0 line 0 0") == "outline.malformed word=5");
  CHECK(refusalOf("from 0 0") == "outline.open word=4");
  CHECK(refusalOf("from 0 0 line 1 0 line 1 1") == "outline.open word=10");
  CHECK(refusalOf(std::string((1 << 20) + 1, ' ')) == "outline.too-long");
}

TEST_CASE("an arc must lie on its circle at both ends and turn by its sweep", "[geometry]") {
  CHECK(refusalOf("from 0 0 arc 0 5 5 0 10 3.141592653589793 line 0 0") == "read");
  CHECK(refusalOf("from 0 0 arc 0 5 5.001 0 10 3.141592653589793 line 0 0") == "outline.arc-off-circle word=11");
  CHECK(refusalOf("from 0 0 arc 0 5 5 0 10 3.1 line 0 0") == "outline.arc-off-circle word=11");
  CHECK(refusalOf("from 0 0 arc 0 5 5 0 10 0 line 0 0") == "outline.arc-off-circle word=11");
  CHECK(refusalOf("from 0 0 arc 0 5 -5 0 10 3.141592653589793 line 0 0") == "outline.arc-off-circle word=11");
  // Round and round again.
  CHECK(refusalOf("from 0 0 arc 0 5 5 0 0 12.566370614359172") == "outline.arc-off-circle word=11");
  // From a point to itself it is the whole circle or nothing.
  CHECK(refusalOf("from 0 0 arc 0 5 5 0 0 6.283185307179586") == "read");
  CHECK(refusalOf("from 0 0 arc 0 5 5 0 0 1e-9") == "outline.arc-off-circle word=11");
  // A circle too small to tell from a point.
  CHECK(refusalOf("from 0 0 arc 0 1e-9 1e-9 0 0 6.283185307179586") == "outline.arc-off-circle word=11");
}

TEST_CASE("an oval begins where the outline is and must be smooth", "[geometry]") {
  CHECK(refusalOf("from 150 0 oval 0 0 150 100 0 0 6.283185307179586") == "read");
  CHECK(refusalOf("from 151 0 oval 0 0 150 100 0 0 6.283185307179586") == "outline.bad-oval word=12");
  CHECK(refusalOf("from 83 0 oval 0 0 150 100 -67 0 6.283185307179586") == "outline.bad-oval word=12");
  CHECK(refusalOf("from 0 0 oval 0 0 0 100 0 0 6.283185307179586") == "outline.bad-oval word=12");
  CHECK(refusalOf("from 150 0 oval 0 0 150 100 0 0 0") == "outline.bad-oval word=12");
  CHECK(refusalOf("from 150 0 oval 0 0 150 100 0 0 3.141592653589793 line 150 0") == "read");
}

TEST_CASE("what is read closes to the bit, though it was written a hair open", "[geometry]") {
  for (const char* text :
       {"from 0 0 line 10 0 line 10 10 line 0 0.0000005", "from 0 0 line 10 0 line 10 10 line 1e-7 -1e-7",
        "from 0.0000002 0 line 0 10 arc 0 5 5 0 0 3.141592653589793"}) {
    INFO(text);
    const auto read = parseOutline(text);
    REQUIRE(read.ok());
    CHECK(tests::isClosed(read.value()));
    const auto again = parseOutline(outlineText(read.value()));
    REQUIRE(again.ok());
    CHECK(again.value() == read.value());
  }
}
