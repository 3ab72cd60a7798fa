// Dimension chains: that they close, show the measure in hand and no other, and turn over with the board.
#include "core/sheets/chain.h"

#include <cmath>
#include <set>

#include "core/sheets/section.h"
#include "tests/support/catch.h"
#include "tests/support/design_of.h"
#include "tests/support/recipes.h"

using core::design::Design;
using core::sheets::Chain;
using core::sheets::ChainEdge;
using core::sheets::Side;

namespace {

Design demo(const char* name) { return tests::designOf(tests::fileText(std::string(PROJECT_ROOT "/recipes/jobs/") + name + ".job.json")); }

const Chain& at(const std::vector<Chain>& chains, ChainEdge edge) {
  for (const Chain& chain : chains) {
    if (chain.edge == edge) return chain;
  }
  FAIL("no chain at that edge");
  return chains.front();
}

std::vector<std::string> inHand(const std::vector<Chain>& chains) {
  std::vector<std::string> shown;
  for (const Chain& chain : chains) {
    for (const auto& measure : chain.measures) {
      if (measure.inHand) shown.push_back(measure.shown);
    }
  }
  return shown;
}

std::vector<std::string> shown(const Chain& chain) {
  std::vector<std::string> all;
  for (const auto& measure : chain.measures) all.push_back(measure.shown);
  return all;
}

// Every place a maker can be at in these jobs.
std::vector<std::string> places(const Design& design) {
  std::vector<std::string> all = {"",
                                  "/artwork/width",
                                  "/artwork/sheet/left",
                                  "/mount/window/overlap",
                                  "/mount/window/rise",
                                  "/mount/borders/sides",
                                  "/mount/borders/outer/width",
                                  "/mount/rebate/cover",
                                  "/nowhere/1"};
  const auto each = [&](const char* list, std::size_t count, std::initializer_list<const char*> keys) {
    for (std::size_t i = 0; i <= count; ++i) {
      for (const char* key : keys) all.push_back(std::string(list) + '/' + std::to_string(i) + '/' + key);
    }
  };
  each("/mount/boards", design.layout.boards.size(), {"reveal", "bevel/angle", "thickness"});
  each("/bands", design.layout.bands.size(), {"offset", "offset/sides", "width", "paper"});
  each("/lines", design.layout.lines.size(), {"gap", "width"});
  each("/washes", design.layout.washes.size(), {"gap", "width"});
  each("/spandrels", design.layout.spandrels.size(), {"frame/offset"});
  return all;
}

}  // namespace

TEST_CASE("every chain runs from edge to edge of the mount without a gap, wherever the maker is") {
  for (const char* name : {"pilots-chart", "heron", "tide-table"}) {
    const Design design = demo(name);
    for (const std::string& place : places(design)) {
      for (const Side side : {Side::Face, Side::Back}) {
        const auto chains = core::sheets::chainsOf(design, side, place);
        REQUIRE(chains.size() == 4);
        for (const Chain& chain : chains) {
          INFO(name << ' ' << place << ' ' << static_cast<int>(chain.edge));
          const bool flat = chain.edge == ChainEdge::Top || chain.edge == ChainEdge::Bottom;
          REQUIRE(chain.stops.size() == chain.measures.size() + 1);
          CHECK(std::abs(chain.stops.front().along) < 1e-6);
          CHECK(std::abs(chain.stops.back().along - (flat ? design.layout.outerWidth : design.layout.outerHeight)) <
                1e-6);
          for (std::size_t i = 1; i < chain.stops.size(); ++i) {
            CHECK(chain.stops[i].along > chain.stops[i - 1].along);
          }
        }
      }
    }
  }
}

TEST_CASE("the measure in hand is the one that was entered there") {
  const Design design = demo("pilots-chart");
  const auto& job = design.job;
  const auto shows = [&](const std::string& place, const core::units::Length& length) {
    const std::string text = core::units::lengthText(length.inMillimetres(), job.units, core::units::Rounding::Nearest);
    const auto found = inHand(core::sheets::chainsOf(design, Side::Face, place));
    INFO(place);
    REQUIRE_FALSE(found.empty());
    for (const std::string& one : found) CHECK(one + " mm" == text);
  };
  shows("/artwork/width", job.artwork.width);
  shows("/artwork/height", job.artwork.height);
  shows("/mount/window/overlap", job.window.distance);
  shows("/mount/boards/1/reveal", job.boards[1].reveal);
  shows("/bands/0/width", job.bands[0].width);
  shows("/mount/rebate/cover", job.rebate.cover);
  CHECK(inHand(core::sheets::chainsOf(design, Side::Face, "")).empty());
  CHECK(inHand(core::sheets::chainsOf(design, Side::Face, "/bands/0/paper")).empty());
}

TEST_CASE("a shaped window's head is a measure of its own, and in hand where its rise is") {
  const Design design = demo("tide-table");
  REQUIRE(design.layout.shaped);
  const auto chain = at(core::sheets::chainsOf(design, Side::Face, "/mount/window/rise"), ChainEdge::Right);
  REQUIRE(chain.measures.size() == 4);
  CHECK(chain.measures[1].inHand);
  CHECK(std::abs(chain.stops[2].along - design.layout.springing) < 1e-9);
}

TEST_CASE("on the back the chain is the board's marks, turned over") {
  const Design design = demo("pilots-chart");
  const auto& top = design.layout.boards.front();
  const auto face = at(core::sheets::chainsOf(design, Side::Face, "/mount/borders/sides"), ChainEdge::Bottom);
  const auto back = at(core::sheets::chainsOf(design, Side::Back, ""), ChainEdge::Bottom);
  CHECK(std::abs(face.stops[1].along - top.sightAt.left) < 1e-9);
  CHECK(std::abs(back.stops[1].along - (design.layout.outerWidth - top.sightAt.right)) < 1e-9);
  CHECK(back.measures.size() == 3);
  const auto under = at(core::sheets::chainsOf(design, Side::Back, "/mount/boards/1/thickness"), ChainEdge::Bottom);
  CHECK(shown(under) != shown(back));
}

TEST_CASE("a section shows reveals, bevels and thicknesses within its drawing") {
  const Design design = demo("pilots-chart");
  const auto drawing = core::sheets::drawSection(design);
  const auto chains = core::sheets::sectionChainsOf(design, "/mount/boards/1/reveal");
  const auto& boards = design.layout.boards;
  REQUIRE(boards.size() > 1);
  CHECK(at(chains, ChainEdge::Top).measures.size() == 2 * boards.size() - 1);
  CHECK(at(chains, ChainEdge::Left).measures.size() == boards.size());
  const auto& reveals = at(chains, ChainEdge::Bottom);
  CHECK(reveals.measures.size() == boards.size() - 1);
  CHECK(reveals.measures.front().inHand);
  CHECK(std::abs(reveals.stops[1].along - reveals.stops[0].along - boards[1].reveal) < 1e-9);
  for (const Chain& chain : chains) {
    const bool flat = chain.edge != ChainEdge::Left;
    CHECK(chain.stops.front().along >= 0);
    CHECK(chain.stops.back().along <= (flat ? drawing.width : drawing.height));
  }
}
