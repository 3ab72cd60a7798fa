#pragma once
// Flakes of leaf strewn over a field: torn quadrilaterals that together cover the share of it that was entered.
#include <string_view>

#include "core/sheets/matter.h"

namespace core::sheets {

// Returns flakes whose area inside the field is `coverage` of its `area` (mm2) within a hundredth of that. The same
// seed strews the same flakes on every machine. Requires 0 <= coverage <= 1 and the field's true area.
Scatter strewn(std::vector<geometry::Patch> within, std::vector<geometry::Patch> without, double area, double coverage,
               std::string_view seed);

}  // namespace core::sheets
