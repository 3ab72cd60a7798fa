#include "app/workbench/sheets_there.h"

#include <algorithm>

namespace app::workbench {
namespace {

using core::design::SheetSide;
using core::design::Stock;
using core::intents::Runs;

std::optional<SheetSide> sideOf(Runs runs) {
  switch (runs) {
    case Runs::Unknown: break;
    case Runs::AlongWidth: return SheetSide::Width;
    case Runs::AlongHeight: return SheetSide::Height;
  }
  return std::nullopt;
}

Stock sheetOf(const core::shop::StockItem& item) {
  const core::intents::StockEntry& entry = item.entry;
  Stock stock;
  stock.id = item.id;
  stock.kind =
      entry.kind == core::intents::StockKind::Paper ? core::design::StockKind::Paper : core::design::StockKind::Board;
  stock.width = entry.width.value_or(core::units::Length());
  stock.height = entry.height.value_or(core::units::Length());
  stock.thickness = entry.thickness;
  stock.material = entry.name;
  stock.grain = sideOf(entry.fibres);
  stock.pattern = sideOf(entry.pattern);
  stock.quantity = static_cast<int>(item.there());
  stock.price = entry.price;
  return stock;
}

// An offcut has no margin: its edges were trimmed or cut when it came to be.
Stock sheetOf(const core::shop::KeptOffcut& offcut) {
  Stock stock;
  stock.id = offcut.id;
  stock.kind = offcut.piece.paper ? core::design::StockKind::Paper : core::design::StockKind::Board;
  stock.width = offcut.piece.width;
  stock.height = offcut.piece.height;
  stock.thickness = offcut.piece.thickness;
  stock.material = offcut.piece.material;
  stock.grain = sideOf(offcut.piece.fibres);
  stock.pattern = sideOf(offcut.piece.pattern);
  stock.usableMargin = {};
  stock.kerf = offcut.piece.kerf;
  stock.quantity = 1;
  stock.offcut = true;
  return stock;
}

// Prices weigh sheets against each other, which they can only in one money.
bool areInOneMoney(const std::vector<core::shop::StockItem>& items) {
  const auto first = std::find_if(items.begin(), items.end(), isSheet);
  return std::all_of(first, items.end(),
                     [&](const auto& item) { return !isSheet(item) || item.entry.currency == first->entry.currency; });
}

}  // namespace

bool isSheet(const core::shop::StockItem& item) {
  return item.entry.kind == core::intents::StockKind::Board || item.entry.kind == core::intents::StockKind::Paper;
}

core::materials::SheetsThere sheetsThere(const std::string& job, std::vector<Stock> listed,
                                         const core::shop::Shop& shop) {
  core::materials::SheetsThere there;
  there.listed = std::move(listed);
  if (const auto found = shop.onHand.cut.find(job); found != shop.onHand.cut.end()) {
    for (Stock& one : there.listed) {
      const auto used = found->second.sheets.find(one.id);
      if (one.quantity && used != found->second.sheets.end()) {
        one.quantity = std::max(0, *one.quantity - used->second);
      }
    }
  }
  for (const auto& item : shop.stock.items) {
    if (isSheet(item)) there.shop.push_back(sheetOf(item));
  }
  if (!areInOneMoney(shop.stock.items)) {
    for (Stock& sheet : there.shop) sheet.price.reset();
  }
  for (const auto& offcut : shop.onHand.offcuts) there.kept.push_back(sheetOf(offcut));
  return there;
}

}  // namespace app::workbench
