#include <algorithm>

#include "core/base/text.h"
#include "core/design/design.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;

namespace {

using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("unknown keys, keys given twice and missing keys each stand at their place", "[job]") {
  CHECK(problemLines(demoJobWith(R"("client")", R"("customer")")) == Lines{"/customer read.unknown-key key=customer"});
  CHECK(problemLines(demoJobWith(R"("trim": "6 mm")", R"("trim": "6 mm", "trim": "7 mm")")) ==
        Lines{"/bands/0/trim json.key-twice key=trim"});
  CHECK(problemLines(demoJobWith(R"("thickness": "2.0 mm", )", "")) ==
        Lines{"/mount/boards/1 read.missing-key key=thickness"});
}

TEST_CASE("lengths are read to the letter", "[job]") {
  for (const char* bad :
       {"6",        "6mm",           "6  mm", "+6 mm", ".5 mm", "5. mm", "1e1 mm", "6,5 mm",     "1/2 mm",   "1/3 in",
        "1/128 in", "0.00000015 mm", "6 m",   "",      " 6 mm", "6 mm ", "-6 mm",  "10000.1 mm", "1 9/8 in", "٣ mm"}) {
    INFO(bad);
    const auto lines = problemLines(demoJobWith(R"("trim": "6 mm")", R"("trim": ")" + std::string(bad) + "\""));
    REQUIRE(lines.size() >= 1);
    CHECK(base::startsWith(lines.front(), "/bands/0/trim length."));
  }
  for (const char* good : {"6 mm", "0 mm", "0.6 cm", "1/4 in", "0 1/4 in", "0-1/4 in", "0.25 in", "6.000001 mm"}) {
    INFO(good);
    CHECK(problemLines(demoJobWith(R"("trim": "6 mm")", R"("trim": ")" + std::string(good) + "\"")).empty());
  }
}

TEST_CASE("a length as a bare number is refused in words", "[job]") {
  CHECK(problemLines(demoJobWith(R"("trim": "6 mm")", R"("trim": 6)")) == Lines{"/bands/0/trim length.not-text"});
}

TEST_CASE("sizes of nothing are refused, distances of nothing are not", "[job]") {
  CHECK(problemLines(demoJobWith(R"("thickness": "2.0 mm")", R"("thickness": "0 mm")")) ==
        Lines{"/mount/boards/1/thickness length.not-positive text=0 mm"});
  CHECK(problemLines(demoJobWith(R"("offset": "10 mm")", R"("offset": "-0.0 mm")")).size() ==
        1);  // the line inside hangs over
  CHECK(problemLines(demoJobWith(R"("overlap": "3 mm")", R"("overlap": "0 mm")")).empty());
}

TEST_CASE("ids are checked and may not be shared or reserved", "[job]") {
  for (const char* bad : {"Top", "1st", "under_mount", "", "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"}) {
    const auto lines = problemLines(demoJobWith(R"("id": "under")", R"("id": ")" + std::string(bad) + "\""));
    INFO(bad);
    REQUIRE_FALSE(lines.empty());
    CHECK(lines.front() == "/mount/boards/1/id job.bad-id id=" + std::string(bad));
  }
  CHECK(problemLines(demoJobWith(R"("id": "under")", R"("id": "leaf")")).front() ==
        "/mount/boards/1/id job.reserved-id id=leaf");
  CHECK(problemLines(demoJobWith(R"("id": "under")", R"("id": "inside")")).front() ==
        "/lines/1/id job.id-twice id=inside");
}

TEST_CASE("a window's form is read strictly", "[job]") {
  const auto shape = [](const std::string& form) { return problemLines(demoJobWith(R"("shape": "rectangle")", form)); };
  CHECK(shape(R"("shape": "oval")") == Lines{});
  CHECK(shape(R"("shape": "blob")") ==
        Lines{"/mount/window/shape read.unknown-word word=blob words=rectangle, rounded, scalloped, chamfered, oval, "
              "round, arch"});
  CHECK(shape(R"("shape": "arch", "head": "pointed")") == Lines{"/mount/window read.missing-key key=rise"});
  CHECK(shape(R"("shape": "arch", "head": "round", "rise": "10 mm")") ==
        Lines{"/mount/window/rise read.unknown-key key=rise"});
  CHECK(shape(R"("shape": "arch", "head": "multifoil", "lobes": 4)") ==
        Lines{"/mount/window/lobes job.even-lobes lobes=4"});
  CHECK(shape(R"("shape": "rounded", "corner": "0 mm")") ==
        Lines{"/mount/window/corner length.not-positive text=0 mm"});
}

TEST_CASE("spandrels and washes are read strictly", "[job]") {
  const auto with = [](const std::string& part) {
    return problemLines(demoJobWith(R"("package":)", part + R"(, "package":)"));
  };
  CHECK(with(R"("spandrels": [{"id": "head", "paper": "blue", "frame": {"band": "none"}}])") ==
        Lines{"/spandrels/0/frame/band job.no-such-band id=none"});
  CHECK(with(R"("spandrels": [{"id": "head", "paper": "blue", "frame": {"offset": "-1 mm"}}])") ==
        Lines{"/spandrels/0/frame/offset length.negative text=-1 mm"});
  CHECK(with(R"("spandrels": [{"id": "head", "paper": "blue", "frame": {"offset": "1 mm"}, "from": "apex"}])") ==
        Lines{"/spandrels/0/from read.unknown-word word=apex words=springing, sill"});
  CHECK(with(R"("washes": [{"id": "tint", "colour": "grey", "between": ["line:inside"]}])") ==
        Lines{"/washes/0/between job.wash-between-two"});
  CHECK(with(R"("washes": [{"id": "tint", "colour": "grey", "between": ["line:inside", "line:inside"]}])") ==
        Lines{"/washes/0/between job.wash-between-two"});
  CHECK(with(R"("washes": [{"id": "tint", "colour": "grey", "between": ["line:inside", "line:none"]}])") ==
        Lines{"/washes/0/between/1 job.no-such-line id=none"});
  CHECK(with(R"("washes": [{"id": "inside", "colour": "grey", "along": "window", "gap": "1 mm", "width": "2 mm"}])") ==
        Lines{"/washes/0/id job.id-twice id=inside"});
  CHECK(problemLines(demoJobWith(R"("region": "outside:inner")", R"("region": "spandrel:none")")) ==
        Lines{"/leaf/0/region job.no-such-spandrel id=none"});
}

TEST_CASE("another format is one problem, not a hundred", "[job]") {
  CHECK(problemLines(R"({"format": "mountwright-job/2", "anything": 1})") == Lines{"/format job.wrong-format"});
  CHECK(problemLines("[]") == Lines{" read.expected-object"});
  CHECK(problemLines("7") == Lines{" read.expected-object"});
}

TEST_CASE("a syntax error is one line with its place and ends the reading", "[job]") {
  const auto lines = problemLines("{\n  \"format\": \"mountwright-job/1\",\n  \"title\": }\n");
  CHECK(lines == Lines{"3:12 json.syntax"});
  CHECK(problemLines(demoJobText() + "x").size() == 1);
  CHECK(problemLines("").size() == 1);
}

TEST_CASE("every truncation of a job is a message and nothing worse", "[job]") {
  const std::string text = demoJobText();
  const auto last = text.find_last_of('}');
  for (std::size_t length = 0; length <= last; ++length) {
    const auto read = design::readDesign(std::string_view(text).substr(0, length));
    CHECK_FALSE(read.design);
    CHECK(read.problems.sorted().size() == 1);
  }
}

TEST_CASE("room, spread, weighting and dates are checked", "[job]") {
  CHECK(problemLines(demoJobWith(R"("19 C")", R"("19")")) == Lines{"/room/temperature temperature.malformed"});
  CHECK(problemLines(demoJobWith(R"("58 %")", R"("140 %")")) ==
        Lines{"/room/humidity humidity.out-of-range percent=140"});
  CHECK(problemLines(demoJobWith(R"("2026-12-11")", R"("2026-02-30")")) == Lines{"/due job.bad-date text=2026-02-30"});
  for (const char* bad : {"4;3", "0:3", "4:", "+3", "-4:3", "1e1:3", "heavy"}) {
    CHECK(base::startsWith(problemLines(demoJobWith(R"("4:3")", "\"" + std::string(bad) + "\"")).front(),
                           "/mount/borders/weighting job.bad-weighting"));
  }
  CHECK(problemLines(demoJobWith(R"("4:3")", R"("+6 mm")")).empty());
  CHECK(problemLines(demoJobWith(R"("4:3")", R"("equal")")).empty());
}

TEST_CASE("a band that cannot be read does not make its followers unknown", "[job]") {
  const auto lines = problemLines(demoJobWith(R"("width": "14 mm")", R"("width": "14")"));
  CHECK(lines == Lines{"/bands/0/width length.no-unit text=14"});
  CHECK(problemLines(demoJobWith("band:inner.outer", "band:other.outer")) ==
        Lines{"/lines/0/along job.no-such-band id=other"});
}
