#include "core/supply/sheets_there.h"

#include <algorithm>

namespace core::supply {
namespace {

using design::SheetSide;
using design::Stock;
using intents::Runs;

std::optional<SheetSide> sideOf(Runs runs) {
  switch (runs) {
    case Runs::Unknown: break;
    case Runs::AlongWidth: return SheetSide::Width;
    case Runs::AlongHeight: return SheetSide::Height;
  }
  return std::nullopt;
}

Stock sheetOf(const shop::StockItem& item) {
  const intents::StockEntry& entry = item.entry;
  Stock stock;
  stock.id = item.id;
  stock.kind = entry.kind == intents::StockKind::Paper ? design::StockKind::Paper : design::StockKind::Board;
  stock.width = entry.width.value_or(units::Length());
  stock.height = entry.height.value_or(units::Length());
  stock.thickness = entry.thickness;
  stock.material = entry.name;
  stock.grain = sideOf(entry.fibres);
  stock.pattern = sideOf(entry.pattern);
  stock.quantity = static_cast<int>(item.there());
  stock.price = entry.price;
  return stock;
}

// An offcut has no margin: its edges were trimmed or cut when it came to be.
Stock sheetOf(const shop::KeptOffcut& offcut) {
  Stock stock;
  stock.id = offcut.id;
  stock.kind = offcut.piece.paper ? design::StockKind::Paper : design::StockKind::Board;
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
bool areInOneMoney(const std::vector<shop::StockItem>& items) {
  const auto first = std::find_if(items.begin(), items.end(), isSheet);
  return std::all_of(first, items.end(),
                     [&](const auto& item) { return !isSheet(item) || item.entry.currency == first->entry.currency; });
}

}  // namespace

bool isSheet(const shop::StockItem& item) {
  return item.entry.kind == intents::StockKind::Board || item.entry.kind == intents::StockKind::Paper;
}

materials::SheetsThere sheetsThere(const std::string& job, std::vector<Stock> listed, const shop::Shop& shop) {
  materials::SheetsThere there;
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

}  // namespace core::supply
