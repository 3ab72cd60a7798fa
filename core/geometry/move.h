#pragma once
// Moving an outline by a distance along its normal: reveals, face edges, lines that follow a window.
//
// Straights shift; arcs keep their centre, and one that bulges out of the opening grows while one that cuts into it
// shrinks. At a corner that opens, the moved pieces are extended along themselves until they meet; where they do not
// meet within four times the distance of the corner, an arc of the distance about the corner joins them. Where moved
// pieces cross they are trimmed. An ellipse moves to its true parallel curve. An outline is never scaled.
#include <string_view>

#include "core/base/result.h"
#include "core/geometry/outline.h"

namespace core::geometry {

struct MoveProblem {
  enum class Kind {
    ArcVanishes,  // an arc's radius would reach zero; `room` is its radius
    Nothing,      // nothing is left of the opening
    Parts,        // the opening would fall into parts, or close round what lies outside it
  };
  Kind kind = Kind::Nothing;
  double room = 0;  // mm, for ArcVanishes: how far it could be moved, exclusive
};

std::string_view name(MoveProblem::Kind kind);  // "arc-vanishes", "nothing", "parts"

// Returns the outline moved outwards by d mm (inwards where d < 0). Points within 1e-9 mm of where the rules put them.
// (1) Moving by 0 returns the outline. (2) Moving outwards and back by the same d returns the outline (within 1e-9 mm)
// where no corner was closed by an arc and nothing was trimmed away whole. An oval is moved where it is the whole
// outline; with other pieces beside it the answer is Parts.
base::Result<Outline, MoveProblem> moved(const Outline& outline, double d);

}  // namespace core::geometry
