#pragma once
// The act of a step as a small drawing: where the blade goes, which side is up, what the hand lays and which way it
// moves. The piece in it is an invented sample of 120 x 80 mm, drawn thicker than any board is.
#include "core/craft/technique.h"
#include "core/sheets/drawing.h"

namespace core::sheets {

// Deterministic. `up` turns the bevel's slope and puts the marked corner where it is then seen; a step that does not
// state it gets the side the act is usually done on. No text: shapes alone speak. Everything is within the drawing's
// frame.
Drawing drawAct(craft::Act act, craft::WayUp up);

}  // namespace core::sheets
