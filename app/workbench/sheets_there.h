#pragma once
// The sheets a job is cut from, as planning takes them. Pure.
#include "core/design/job.h"
#include "core/materials/stock_match.h"
#include "core/shop/shop.h"

namespace app::workbench {

bool isSheet(const core::shop::StockItem& item);  // board or paper

// What the job lists, less what of it is cut up, and the shop's sheets and offcuts with their ids in the record.
core::materials::SheetsThere sheetsThere(const std::string& job, std::vector<core::design::Stock> listed,
                                         const core::shop::Shop& shop);

}  // namespace app::workbench
