#pragma once
// A sheet of stock as it is cut up: its edges and trimmed margins, the pieces in their places, the rests that are kept,
// and each cut with the part it divides. Elements: sheet; piece.N and kept.N by their place in the plan's lists from 1;
// cut.N in the order they are made.
#include "core/design/job.h"
#include "core/materials/sheet_plan.h"
#include "core/sheets/drawing.h"

namespace core::sheets {

// Scale: millimetres of the sheet. Requires that `sheet` is a plan's for that stock.
Drawing drawCutSheet(const materials::PlanSheet& sheet, const design::Stock& stock);

}  // namespace core::sheets
