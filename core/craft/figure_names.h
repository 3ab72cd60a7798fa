#pragma once
// The figure ids that exist, as patterns, so that a technique that asks for a figure no design could ever have is
// refused when it is read.
#include <string_view>

#include "core/craft/technique.h"

namespace core::craft {

// True where `pattern` ("band.owner.strip.axis", "leaf.this.area", "outer.width") names a figure that some design has,
// for a step of `kind` in a technique done for each `outer`. The words this, owner, previous and axis stand for ids and
// directions. A family is valid where some figure's id begins as it does.
bool isFigurePattern(std::string_view pattern, ThingKind kind, ThingKind outer);

// True where the pattern stands for every figure whose id begins as it does: "board.this.arc.*".
bool isFamily(std::string_view pattern);

// True where `id` is a figure id as a design gives it, with ids of its own things: "board.top.mark.left".
bool isFigureId(std::string_view id);

}  // namespace core::craft
