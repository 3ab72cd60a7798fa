#include "core/design/figures.h"

#include <map>

#include "core/base/text.h"
#include "tests/core/design/figure_of.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;

namespace {

std::string display(const design::Design& design, const std::string& id) {
  const auto* figure = design.figures.find(id);
  INFO(id);
  REQUIRE(figure != nullptr);
  return figure->display;
}

std::string job(const std::string& artwork, const std::string& mount, const std::string& rest = "") {
  return R"({"format": "mountwright-job/1", "artwork": )" + artwork +
         R"(, "mount": {"window": {"shape": "rectangle", )" + mount + "}" + rest + "}";
}

}  // namespace

TEST_CASE("every figure of the pilot's chart is as worked by hand", "[figures]") {
  const auto chart = designOf(demoJobText());
  const std::map<std::string, double> worked = {
      {"visible.width", 304},
      {"visible.height", 234},
      {"outer.width", 456},
      {"outer.height", 409 + 1.0 / 3},
      {"board.top.sight.width", 316},
      {"board.top.sight.height", 246},
      {"board.top.face.width", 319},
      {"board.top.face.height", 249},
      {"board.under.reveal", 6},
      {"board.under.reveal.flat", 4},
      {"board.under.sight.width", 304},
      {"board.top.border.bottom", 93 + 1.0 / 3},
      {"board.under.border.left", 76},
      {"board.top.back.left", 70},
      {"board.top.mark.right", 386},
      {"board.top.mark.bottom", 316},
      {"band.inner.inner.width", 339},
      {"band.inner.inner.height", 269},
      {"band.inner.outer.width", 367},
      {"band.inner.outer.height", 297},
      {"band.inner.strip.horizontal", 379},
      {"band.inner.strip.vertical", 309},
      {"band.inner.glueFrom", 26},
      {"band.inner.dryEnd", 20},
      {"band.inner.mitre", 19.79898987322333},
      {"band.inner.area", 17808},
      {"band.inner.corner.phase", 11},
      {"band.inner.firstMotif.horizontal", 21.5},
      {"band.inner.firstMotif.vertical", 10.5},
      {"line.outside.total", 1332},
      {"line.inside.total", 1212},
      {"line.outside.offset", 0.5},
      {"line.outside.cornerMark", 0.7071067811865476},
      {"line.outside.fromFace.sides", 24.5},
      {"board.top.bevel.area", 2397.0919882223966},
      {"board.under.bevel.area", 3066.0150032248703},
      // 444 x 397 1/3 inside the kept-off edge, less 369 x 299 out to the far edge of the line.
      {"leaf.field.area", 66085},
      {"leaf.field.sheets", 4},
      {"leaf.field.size", 9.91275},
      {"art.left", 63},
      {"art.top", 65},
      {"package.depth", 11.2},
      {"rebate.depth", 14.2},
      {"rebate.width", 459},
      {"rebate.height", 412 + 1.0 / 3},
      {"border.seen.left", 68.5},
      {"border.framed.left", 64},
      {"border.framed.top", 65.5},
      {"border.framed.bottom", 85 + 5.0 / 6}};
  for (const auto& [id, expected] : worked) {
    INFO(id);
    CHECK(figureOf(chart, id) == Approx(expected).epsilon(1e-9));
  }
}

TEST_CASE("whole lengths come out whole, to the last bit", "[figures]") {
  const auto chart = designOf(demoJobText());
  CHECK(figureOf(chart, "board.top.face.width") == 319.0);
  CHECK(figureOf(chart, "band.inner.strip.horizontal") == 379.0);
  CHECK(base::shortestNumber(figureOf(chart, "package.depth")) == "11.2");
  CHECK(base::shortestNumber(figureOf(chart, "outer.height")) == "409.3333333333333");
}

TEST_CASE("inch jobs are exact to the fraction", "[figures]") {
  const auto design = designOf(job(R"({"width": "12 3/8 in", "height": "9 1/64 in"})",
                                   R"("overlap": "1/8 in"}, "boards": [{"id": "top", "thickness": "1/16 in"},
        {"id": "under", "thickness": "1/16 in", "reveal": "1/4 in"}], "borders": {"sides": "2 3/4 in", "weighting": "+1/2 in"})"));
  CHECK(design.job.units == units::UnitSystem::Inches);
  CHECK(figureOf(design, "visible.width") == 307.975);
  CHECK(display(design, "visible.width") == "12 1/8 in");
  CHECK(display(design, "board.top.sight.width") == "12 5/8 in");
  CHECK(display(design, "outer.width") == "18 1/8 in");
  CHECK(display(design, "board.top.border.bottom") == "3 1/4 in");
  // 9 1/64 - 1/4 is not on a 1/32: shown down, and said to be near.
  CHECK(display(design, "visible.height") == "\u2248 8 3/4 in");
}

TEST_CASE("a 64th that was entered or measured is shown as it was, one that was computed is near", "[figures]") {
  const auto design = designOf(job(R"({"width": "12 3/8 in", "height": "9 1/64 in"})",
                                   R"("overlap": "1/8 in"}, "boards": [{"id": "top", "thickness": "3/64 in"},
        {"id": "under", "thickness": "1.5 mm", "reveal": "17/64 in"}],
        "borders": {"top": "2 33/64 in", "bottom": "3 in", "left": "2 1/64 in", "right": "2 in"})",
                                   R"(, "lines": [{"id": "hair", "along": "window", "gap": "1/4 in", "width": "1/64 in",
        "colour": "copper"}])"));
  const std::map<std::string, std::string> shown = {{"art.height", "9 1/64 in"},
                                                    {"board.top.thickness", "3/64 in"},
                                                    {"board.under.thickness", "\u2248 1/16 in"},
                                                    {"board.under.reveal", "17/64 in"},
                                                    {"board.top.border.top", "2 33/64 in"},
                                                    {"board.top.back.right", "2 1/64 in"},
                                                    {"board.top.mark.left", "2 1/64 in"},
                                                    {"board.top.mark.top", "2 33/64 in"},
                                                    {"line.hair.width", "1/64 in"},
                                                    // These are on an odd 64th too, but computed.
                                                    {"visible.height", "\u2248 8 3/4 in"},
                                                    {"outer.width", "\u2248 16 21/32 in"}};
  for (const auto& [id, text] : shown) CHECK(id + ' ' + display(design, id) == id + ' ' + text);
  for (const auto* id : {"art.height", "board.top.thickness", "board.under.reveal", "board.top.border.top"}) {
    CHECK(design.figures.find(id)->entered);
  }
  CHECK_FALSE(design.figures.find("board.under.border.left")->entered);
  // The far mark agrees with what is read out: 2 1/64 and the opening as shown.
  CHECK(display(design, "board.top.sight.width") == "12 21/32 in");
  CHECK(display(design, "board.top.mark.right") == "14 43/64 in");
  design::AsMade made;
  made.pins["board.top.sight.width"] = units::Length::nanometres(12 * 25'400'000 + 43 * 396'875);
  const design::Figures measured(design.job, design.layout, units::UnitSystem::Inches, made);
  CHECK(measured.find("board.top.sight.width")->display == "12 43/64 in");
  CHECK(design::Figures(design.job, design.layout, units::UnitSystem::Millimetres).find("line.hair.width")->display ==
        "0.4 mm");
}

TEST_CASE("a border entered is said to be, and what the weighting makes of it is computed", "[figures]") {
  const auto design = designOf(demoJobText());
  for (const char* id : {"board.top.border.left", "board.top.border.right", "board.top.border.top"}) {
    CHECK(design.figures.find(id)->entered);
  }
  for (const char* id : {"board.top.border.bottom", "board.under.border.left", "outer.width", "visible.width"}) {
    CHECK_FALSE(design.figures.find(id)->entered);
  }
}

TEST_CASE("sights are shown down, and a far mark is the near mark and the opening as shown", "[figures]") {
  const auto design = designOf(job(R"({"width": "200.19 mm", "height": "150.16 mm"})",
                                   R"("overlap": "0.01 mm"}, "boards": [{"id": "top", "thickness": "1.5 mm"}],
        "borders": {"top": "50.06 mm", "bottom": "60 mm", "sides": "50.04 mm"})"));
  CHECK(display(design, "board.top.sight.width") == "200.1 mm");
  CHECK(display(design, "board.top.mark.left") == "50.0 mm");
  CHECK(display(design, "board.top.mark.right") == "250.1 mm");
  CHECK(figureOf(design, "board.top.mark.right") == Approx(250.21));
  CHECK(display(design, "board.top.mark.top") == "50.1 mm");
  CHECK(display(design, "board.top.mark.bottom") == "200.2 mm");
}

TEST_CASE("from the back left and right change places", "[figures]") {
  const auto design = designOf(job(R"({"width": "200 mm", "height": "150 mm"})",
                                   R"("overlap": "2 mm"}, "boards": [{"id": "top", "thickness": "1.5 mm"}],
        "borders": {"top": "50 mm", "bottom": "60 mm", "left": "40 mm", "right": "55 mm"})"));
  CHECK(figureOf(design, "board.top.back.left") == 55);
  CHECK(figureOf(design, "board.top.back.right") == 40);
}

TEST_CASE("a float shows the whole sheet and air round it", "[figures]") {
  const auto design =
      designOf(job(R"({"width": "100 mm", "height": "80 mm",
      "sheet": {"width": "120 mm", "height": "90 mm", "left": "10 mm", "top": "5 mm"}})",
                   R"("margin": "8 mm"}, "boards": [{"id": "top", "thickness": "2 mm", "bevel": {"angle": 90}}],
        "borders": {"outer": {"width": "236 mm", "height": "226 mm"}, "weighting": "3:2"})"));
  CHECK(figureOf(design, "visible.width") == 136);
  CHECK(figureOf(design, "visible.height") == 106);
  CHECK(figureOf(design, "art.left") == 58);
  CHECK(figureOf(design, "board.top.border.top") == 48);
  CHECK(figureOf(design, "board.top.border.bottom") == Approx(72));
  CHECK(figureOf(design, "board.top.bevel.plan") == 0);
  CHECK(figureOf(design, "board.top.bevel.slope") == 2);
  CHECK(figureOf(design, "outer.height") == 226);
}

TEST_CASE("motif centring moves the first motif and the corner by half a repeat", "[figures]") {
  std::string text = demoJobText();
  const std::string motif = R"("motif": "mirror")";
  REQUIRE(text.find(motif) != std::string::npos);
  text = base::replaceAll(text, motif, motif + R"(, "centre": {"horizontal": "ground"})");
  const auto chart = designOf(text);
  CHECK(figureOf(chart, "band.inner.firstMotif.horizontal") == Approx(9.5));
  CHECK(figureOf(chart, "band.inner.firstMotif.vertical") == Approx(10.5));
  CHECK(figureOf(chart, "band.inner.corner.phase") == Approx(-1));
}

TEST_CASE("what must be there at the least is shown rounded up, an opening down, the rest to the nearest",
          "[figures]") {
  const auto shown = [](const char* width, const char* rest) {
    return designOf(job(R"({"width": )" + std::string(width) + R"(, "height": "80.06 mm"})",
                        R"("overlap": "0 mm"}, "boards": [{"id": "top", "thickness": "1.5 mm"}],
        "borders": {"sides": "60 mm", "weighting": "4:3"})",
                        rest));
  };
  const auto metric = shown(R"("100.07 mm")", R"(, "package": {"decoration": "0.22 mm"}, "bands":
        [{"id": "one", "paper": "plain", "offset": "10 mm", "width": "15.02 mm", "trim": "1 mm"}])");
  CHECK(display(metric, "visible.width") == "100.0 mm");
  CHECK(display(metric, "outer.height") == "220.0 mm");
  CHECK(display(metric, "board.top.sight.height") == "80.0 mm");
  CHECK(display(metric, "rebate.depth") == "12.3 mm");
  CHECK(display(metric, "package.depth") == "9.2 mm");
  CHECK(display(metric, "band.one.dryEnd") == "21.1 mm");
  CHECK(display(metric, "band.one.glueFrom") == "22.1 mm");
  const auto inches = shown(R"("4 in")", R"(, "bands":
        [{"id": "one", "paper": "plain", "offset": "10 mm", "width": "1/2 in"}])");
  // 20 mm are 25.2 steps of a 32nd.
  CHECK(display(inches, "band.one.dryEnd") == "\u2248 13/16 in");
  CHECK(display(inches, "board.top.sight.height") == "\u2248 3 1/8 in");
}
