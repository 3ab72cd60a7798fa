#include "app/workbench/shortage.h"

#include <algorithm>

#include "app/workbench/cutting.h"

namespace app::workbench {
namespace {

using core::design::SheetSide;
using core::design::Stock;
using core::intents::Measure;
using core::intents::Offcut;
using core::intents::Runs;
using core::materials::AmountKind;
using core::materials::Having;

constexpr double kMicrolitres = 1000;  // in a millilitre

std::optional<SheetSide> sideOf(Runs runs) {
  switch (runs) {
    case Runs::Unknown: break;
    case Runs::AlongWidth: return SheetSide::Width;
    case Runs::AlongHeight: return SheetSide::Height;
  }
  return std::nullopt;
}

bool isSheet(core::intents::StockKind kind) {
  return kind == core::intents::StockKind::Board || kind == core::intents::StockKind::Paper;
}

AmountKind amountKind(core::intents::StockKind kind) {
  using Kind = core::intents::StockKind;
  if (kind == Kind::Leaf) return AmountKind::Leaf;
  if (kind == Kind::Size) return AmountKind::Size;
  return kind == Kind::Paste ? AmountKind::Paste : AmountKind::Paint;
}

Stock sheetOf(const core::record::StockItem& item) {
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

Having::Other otherOf(const core::record::StockItem& item) {
  Having::Other other{item.id, amountKind(item.entry.kind), item.entry.name, std::nullopt};
  if (item.entry.measure == Measure::Pieces) other.amount = static_cast<double>(item.there());
  if (item.entry.measure == Measure::Microlitres) other.amount = static_cast<double>(item.there()) / kMicrolitres;
  return other;
}

std::string currencyOfSheets(const core::record::Shop& shop) {
  for (const auto& item : shop.stock.items) {
    if (isSheet(item.entry.kind)) return item.entry.currency;
  }
  return "";
}

}  // namespace

// An offcut has no margin: its edges were trimmed or cut when it came to be.
Stock stockOf(const core::record::KeptOffcut& offcut, const std::string& id) {
  Stock stock;
  stock.id = id;
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

Having havingOf(const core::record::Shop& shop) {
  Having having;
  for (const auto& item : shop.stock.items) {
    if (isSheet(item.entry.kind)) {
      having.sheets.push_back(sheetOf(item));
    } else {
      having.others.push_back(otherOf(item));
    }
  }
  // Prices weigh sheets against each other, which they can only in one money.
  const auto alike = [&](const auto& item) {
    return !isSheet(item.entry.kind) || item.entry.currency == currencyOfSheets(shop);
  };
  if (!std::all_of(shop.stock.items.begin(), shop.stock.items.end(), alike)) {
    for (Stock& sheet : having.sheets) sheet.price.reset();
  }
  for (const auto& offcut : shop.onHand.offcuts) having.offcuts.push_back(stockOf(offcut, offcut.id));
  return having;
}

core::materials::Shortage shortageOf(const std::string& job, const core::design::Design& design,
                                     const core::record::Shop& shop) {
  const auto found = shop.onHand.cut.find(job);
  const auto soFar = found == shop.onHand.cut.end() ? core::record::CutSoFar() : found->second;
  return core::materials::shortageOf(
      core::materials::stillToCut(core::materials::cuttingList(design.job, design.layout), soFar.pieces),
      stillListed(design.job.stock, soFar.sheets), core::materials::amountsOf(design.job, design.layout), design.job,
      havingOf(shop));
}

}  // namespace app::workbench
