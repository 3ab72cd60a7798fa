#include "core/craft/figure_names.h"

#include <string>
#include <vector>

#include "tests/support/catch.h"

namespace craft_tests {

using core::craft::isFigureId;
using core::craft::isFigurePattern;
using core::craft::ThingKind;

TEST_CASE("Every figure of a design is known by its id") {
  const std::vector<std::pair<std::string, std::vector<std::string>>> families = {
      {"visible.", {"width", "height"}},
      {"outer.", {"width", "height"}},
      {"border.seen.", {"top", "bottom", "left", "right"}},
      {"border.framed.", {"top", "bottom", "left", "right"}},
      {"art.", {"left", "top"}},
      {"rebate.", {"width", "height", "depth"}},
      {"package.", {"depth"}},
      {"board.top.",
       {"thickness",
        "sight.width",
        "sight.height",
        "face.width",
        "face.height",
        "sight.perimeter",
        "sight.area",
        "face.perimeter",
        "bevel.plan",
        "bevel.slope",
        "bevel.area",
        "reveal",
        "reveal.flat",
        "border.top",
        "border.bottom",
        "border.left",
        "border.right",
        "back.left",
        "back.right",
        "mark.left",
        "mark.right",
        "mark.top",
        "mark.bottom",
        "axis",
        "springing",
        "arc.1.radius",
        "arc.12.centre.fromAxis",
        "arc.2.end.fromSpringing",
        "arc.2.start.left",
        "point.3.fromAxis",
        "oval.semiMajor",
        "oval.string",
        "oval.7.fromAxis"}},
      {"band.inner.",
       {"inner.width", "inner.height", "outer.width", "outer.height", "strip.horizontal", "strip.vertical",
        "strip.width", "mitre", "dryEnd", "glueFrom", "area", "repeats.horizontal", "repeats.vertical",
        "firstMotif.horizontal", "firstMotif.vertical", "corner.phase"}},
      {"line.outside.",
       {"horizontal", "vertical", "total", "offset", "cornerMark", "fromFace.sides", "fromFace.topBottom",
        "fromFaceCorner"}},
      {"spandrel.crown.", {"width", "height", "area"}},
      {"wash.sky.", {"width", "area"}},
      {"leaf.field.", {"area", "sheets", "size"}},
  };
  for (const auto& [family, names] : families) {
    for (const std::string& name : names) {
      INFO(family + name);
      CHECK(isFigureId(family + name));
      CHECK_FALSE(isFigureId(family + name + "s"));
    }
  }
}

TEST_CASE("What is no figure is not taken for one") {
  for (const char* id :
       {"", "board", "board.top", "board..reveal", "board.top.", "band.inner.strip.axis", "frame.top.width"}) {
    INFO(id);
    CHECK_FALSE(isFigureId(id));
  }
}

TEST_CASE("Figures of the piece are at hand for every step") {
  CHECK(isFigurePattern("outer.width", ThingKind::Once, ThingKind::Once));
  CHECK(isFigurePattern("border.framed.left", ThingKind::Strip, ThingKind::Band));
}

TEST_CASE("Figures of a thing are at hand for steps done for that thing") {
  CHECK(isFigurePattern("board.this.mark.left", ThingKind::Board, ThingKind::Board));
  CHECK(isFigurePattern("board.this.bevel.area", ThingKind::Bevel, ThingKind::Bevel));
  CHECK(isFigurePattern("board.previous.sight.width", ThingKind::Board, ThingKind::Board));
  CHECK(isFigurePattern("line.this.offset", ThingKind::Line, ThingKind::Line));
  CHECK_FALSE(isFigurePattern("line.this.offset", ThingKind::Board, ThingKind::Board));
  CHECK_FALSE(isFigurePattern("board.this.mark.left", ThingKind::Once, ThingKind::Once));
  CHECK_FALSE(isFigurePattern("board.top.mark.left", ThingKind::Board, ThingKind::Board));
}

TEST_CASE("Strips, corners and parts have the figures of their owner") {
  CHECK(isFigurePattern("band.owner.strip.width", ThingKind::Strip, ThingKind::Band));
  CHECK(isFigurePattern("band.owner.mitre", ThingKind::Corner, ThingKind::Band));
  CHECK(isFigurePattern("leaf.owner.area", ThingKind::Part, ThingKind::Leaf));
  CHECK_FALSE(isFigurePattern("leaf.this.area", ThingKind::Part, ThingKind::Leaf));
  CHECK_FALSE(isFigurePattern("band.this.mitre", ThingKind::Corner, ThingKind::Band));
  CHECK_FALSE(isFigurePattern("board.owner.reveal", ThingKind::Board, ThingKind::Board));
}

TEST_CASE("A family is known where some figure's id begins so") {
  CHECK(core::craft::isFamily("board.this.arc.*"));
  CHECK_FALSE(core::craft::isFamily("board.this.arc"));
  CHECK(isFigurePattern("board.this.arc.*", ThingKind::Board, ThingKind::Board));
  CHECK(isFigurePattern("board.this.arc.1.centre.*", ThingKind::Board, ThingKind::Board));
  CHECK(isFigurePattern("border.framed.*", ThingKind::Once, ThingKind::Once));
  CHECK_FALSE(isFigurePattern("board.this.curve.*", ThingKind::Board, ThingKind::Board));
  CHECK_FALSE(isFigurePattern("board.this.axis.*", ThingKind::Board, ThingKind::Board));
  CHECK_FALSE(isFigurePattern("board.this.arc.*", ThingKind::Line, ThingKind::Line));
}

TEST_CASE("A board's axis is a figure of its own") {
  CHECK(isFigurePattern("board.this.axis", ThingKind::Board, ThingKind::Board));
  CHECK_FALSE(isFigurePattern("line.this.axis", ThingKind::Line, ThingKind::Line));
}

TEST_CASE("Only a strip knows its axis") {
  CHECK(isFigurePattern("band.owner.strip.axis", ThingKind::Strip, ThingKind::Band));
  CHECK(isFigurePattern("band.owner.firstMotif.axis", ThingKind::Strip, ThingKind::Band));
  CHECK_FALSE(isFigurePattern("band.owner.strip.axis", ThingKind::Corner, ThingKind::Band));
  CHECK_FALSE(isFigurePattern("band.this.strip.axis", ThingKind::Band, ThingKind::Band));
  CHECK_FALSE(isFigurePattern("band.owner.outer.axis", ThingKind::Strip, ThingKind::Band));
}

}  // namespace craft_tests
