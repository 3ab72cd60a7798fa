#pragma once
// The pieces of one group laid out on the stock of that group. Only sheet_plan.cpp calls this.
#include "core/materials/sheet_plan.h"

namespace core::materials::detail {

// Fills in everything of the group but its stock and pieces. Requires one match a piece.
void planGroup(const std::vector<CutPiece>& pieces, const std::vector<StockMatch>& matches, const SheetsThere& there,
               StockGroup& group);

}  // namespace core::materials::detail
