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

TEST_CASE("the demo jobs have no conflicts", "[conflicts]") {
  CHECK(problemLines(demoJobText()).empty());
  CHECK(problemLines(fileText(std::string(PROJECT_ROOT) + "/recipes/jobs/heron.job.json")).empty());
}

TEST_CASE("a reveal narrower than the bevel says by how much", "[conflicts]") {
  CHECK(problemLines(demoJobWith(R"("reveal": "6 mm")", R"("reveal": "1.5 mm")")) ==
        Lines{"/mount/boards/1/reveal job.reveal-within-bevel board=under reveal=1.5mm bevel=2mm by=0.5mm"});
}

TEST_CASE("a reveal that leaves no flat at all is refused too", "[conflicts]") {
  CHECK(problemLines(demoJobWith(R"("reveal": "6 mm")", R"("reveal": "2 mm")")).size() == 1);
}

TEST_CASE("a band wider than the board says where and by how much", "[conflicts]") {
  const auto lines = problemLines(demoJobWith(R"("width": "14 mm")", R"("width": "60 mm")"));
  REQUIRE_FALSE(lines.empty());
  CHECK(lines.front() == "/bands/0/width job.beyond-mount id=inner side=top by=1.5mm");
  CHECK(lines.size() == 2);  // and the line outside it
}

TEST_CASE("an overlap that closes the window, a sheet that does not reach", "[conflicts]") {
  CHECK(problemLines(demoJobWith(R"("overlap": "3 mm")", R"("overlap": "121 mm")")) ==
        Lines{"/mount/window/overlap job.overlap-closes-window overlap=121mm shown=240mm by=2mm"});
  CHECK(problemLines(demoJobWith(R"("left": "10 mm")", R"("left": "20.5 mm")")) ==
        Lines{"/artwork/sheet/width job.shown-beyond-sheet sheet=330mm needed=330.5mm by=0.5mm"});
}

TEST_CASE("every conflict is told at once, in the order of the document", "[conflicts]") {
  std::string text = demoJobWith(R"("reveal": "6 mm")", R"("reveal": "1 mm")");
  text = base::replaceAll(text, R"("width": "14 mm")", R"("width": "80 mm")");
  text = base::replaceAll(text, R"("keepOff")", R"("keepof")");
  const auto lines = problemLines(text);
  REQUIRE(lines.size() == 4);
  CHECK(base::startsWith(lines[0], "/mount/boards/1/reveal "));
  CHECK(base::startsWith(lines[1], "/bands/0/width "));
  CHECK(base::startsWith(lines[2], "/lines/0"));
  CHECK(lines[3] == "/leaf/0/keepof read.unknown-key-near key=keepof near=keepOff");
}

TEST_CASE("a line may cover the edge it follows, but nothing else", "[conflicts]") {
  const std::string inside = R"("along": "band:inner.inner", "gap": "0 mm", "width": "1 mm")";
  CHECK(problemLines(demoJobWith(inside, R"("along": "band:inner.inner", "gap": "-1 mm", "width": "1 mm")")).empty());
  CHECK(problemLines(demoJobWith(inside, R"("along": "band:inner.inner", "gap": "-1.1 mm", "width": "1 mm")")) ==
        Lines{"/lines/1/gap job.gap-beyond-width gap=-1.1mm width=1mm"});
  CHECK(problemLines(demoJobWith(inside, R"("along": "window", "gap": "9.5 mm", "width": "1 mm")")) ==
        Lines{"/lines/1 job.overlap first=inside second=inner by=0.5mm"});
  CHECK(problemLines(demoJobWith(inside, R"("along": "band:inner.outer", "gap": "0.4 mm", "width": "1 mm")")) ==
        Lines{"/lines/1 job.overlap first=inside second=outside by=0.6mm"});
  CHECK(problemLines(demoJobWith(inside, R"("along": "band:inner.inner", "gap": "9.5 mm", "width": "1 mm")")) ==
        Lines{"/lines/1/gap job.line-over-window line=inside by=0.5mm"});
}

TEST_CASE("two fields on one ground overlap, by an area", "[conflicts]") {
  const std::string leaf = R"("leaf": [)";
  const auto lines =
      problemLines(demoJobWith(leaf, leaf + R"({"id": "all", "region": "face", "method": "laid", "size": "water"}, )"));
  REQUIRE(lines.size() == 1);
  CHECK(base::startsWith(lines.front(), "/leaf/1/region job.leaf-overlap first=field second=all area=66085"));
}

TEST_CASE("dry ends must pass the mitre and leave something to glue", "[conflicts]") {
  const std::string trim = R"("trim": "6 mm")";
  CHECK(problemLines(demoJobWith(trim, trim + R"(, "dryEnd": "15.9 mm")")) ==
        Lines{"/bands/0/dryEnd job.dry-end-too-short band=inner dryEnd=15.9mm least=16mm by=0.1mm"});
  CHECK(problemLines(demoJobWith(trim, trim + R"(, "dryEnd": "16 mm")")).empty());
  CHECK(problemLines(demoJobWith(trim, trim + R"(, "dryEnd": "150 mm")")) ==
        Lines{"/bands/0/dryEnd job.dry-ends-meet band=inner dryEnd=150mm side=297mm by=3mm"});
}

TEST_CASE("a directional paper is told that its corners cannot mirror, and the job stands", "[conflicts]") {
  const auto read = design::readDesign(demoJobWith(R"("motif": "mirror")", R"("motif": "directional")"));
  REQUIRE(read.design);
  const auto lines = read.problems.sorted();
  REQUIRE(lines.size() == 1);
  CHECK(base::dump(lines.front()) == "/bands/0/motif notice job.directional-corners band=inner");
  CHECK(read.design->figures.find("band.inner.corner.phase") == nullptr);
}

TEST_CASE("borders too small for the outer size asked for", "[conflicts]") {
  const auto lines =
      problemLines(demoJobWith(R"({ "sides": "70 mm", "weighting": "4:3" })",
                               R"({ "outer": { "width": "310 mm", "height": "400 mm" }, "weighting": "4:3" })"));
  REQUIRE_FALSE(lines.empty());
  CHECK(lines.front() == "/artwork/sheet/width job.sheet-beyond-mount sheet=330mm mount=310mm by=10mm");
  CHECK(std::count_if(lines.begin(), lines.end(), [](const std::string& line) {
          return base::startsWith(line, "/mount/borders/outer/width job.no-border");
        }) == 2);
}

TEST_CASE("strips of a spacer that meet in the mount are refused", "[conflicts]") {
  const auto told = [](const std::string& package) {
    return problemLines(demoJobWith(R"("package": {)", R"("package": { )" + package + ", "));
  };
  const auto strip = [](const std::string& width) {
    return R"("spacer": "3 mm", "spacerWidth": ")" + width + R"( mm")";
  };
  std::string text = base::replaceAll(demoJobText(), R"("package": {)", R"("package": { "spacer": "3 mm", )");
  const auto layout = designOf(text).layout;
  const double half = std::min(layout.outerWidth, layout.outerHeight) / 2;
  CHECK(told(strip(base::fixedNumber(half - 0.1, 1))).empty());
  const std::string wide = base::fixedNumber(half + 0.1, 1);
  CHECK(told(strip(wide)) == Lines{"/package/spacerWidth job.spacer-strips-meet spacer=" + wide + "mm mount=" +
                                   base::shortestNumber(2 * half) + "mm most=" + base::shortestNumber(half) + "mm"});
  // A width alone makes no spacer.
  CHECK(told(R"("spacerWidth": "400 mm")").empty());
}

TEST_CASE("a float that would stand in its glazing is refused, and not where there is none", "[conflicts]") {
  const auto told = [](const std::string& package, const std::string& more = "") {
    std::string text = demoJobWith(R"("overlap": "3 mm")", R"("margin": "8 mm")");
    const std::string sheet = R"(, "sheet": { "width": "330 mm", "height": "260 mm", "left": "10 mm", "top": "8 mm" })";
    text = base::replaceAll(text, sheet, "");
    return problemLines(base::replaceAll(text, R"("package": {)", more + R"("package": { )" + package + ", "));
  };
  // Boards of 1.5 and 2 mm and a sheet of 0.3 mm.
  CHECK(told(R"("spacer": "3 mm", "support": "6.2 mm")").empty());
  CHECK(told(R"("spacer": "3 mm", "support": "6.3 mm")") ==
        Lines{"/package/support job.float-beyond-glazing support=6.3mm artwork=0.3mm by=0.1mm"});
  CHECK(told(R"("support": "6.3 mm")", R"("deliver": "mount", )").empty());
}
