#pragma once
// Lists the sheets a job is cut from, in the form that planning needs. Pure.
#include "core/design/job.h"
#include "core/materials/stock_match.h"
#include "core/shop/shop.h"

namespace core::supply {

bool isSheet(const shop::StockItem& item);  // board or paper

// Returns the job's listed stock, less the sheets of it cut up, and the shop's sheets and offcuts with their ids in the
// record.
materials::SheetsThere sheetsThere(const std::string& job, std::vector<design::Stock> listed, const shop::Shop& shop);

}  // namespace core::supply
