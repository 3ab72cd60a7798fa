#include "app/workbench/shortage.h"

#include "app/workbench/cutting.h"
#include "app/workbench/sheets_there.h"

namespace app::workbench {
namespace {

using core::intents::Measure;
using core::materials::AmountKind;
using core::materials::OtherStock;

constexpr double kMicrolitres = 1000;  // in a millilitre

AmountKind amountKind(core::intents::StockKind kind) {
  using Kind = core::intents::StockKind;
  if (kind == Kind::Leaf) return AmountKind::Leaf;
  if (kind == Kind::Size) return AmountKind::Size;
  return kind == Kind::Paste ? AmountKind::Paste : AmountKind::Paint;
}

OtherStock otherOf(const core::shop::StockItem& item) {
  OtherStock other{item.id, amountKind(item.entry.kind), item.entry.name, std::nullopt};
  if (item.entry.measure == Measure::Pieces) other.amount = static_cast<double>(item.there());
  if (item.entry.measure == Measure::Microlitres) other.amount = static_cast<double>(item.there()) / kMicrolitres;
  return other;
}

}  // namespace

core::materials::Shortage shortageOf(const std::string& job, const core::design::Design& design,
                                     const core::shop::Shop& shop) {
  std::vector<OtherStock> others;
  for (const auto& item : shop.stock.items) {
    if (!isSheet(item)) others.push_back(otherOf(item));
  }
  const Cutting cutting = cuttingOf(job, design, shop);
  return core::materials::shortageOf(cutting.pieces, cutting.there, cutting.plan,
                                     core::materials::amountsOf(design.job, design.layout), design.job, others);
}

}  // namespace app::workbench
