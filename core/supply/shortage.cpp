#include "core/supply/shortage.h"

#include "core/supply/cutting.h"
#include "core/supply/sheets_there.h"

namespace core::supply {
namespace {

using intents::Measure;
using materials::AmountKind;
using materials::OtherStock;

constexpr double kMicrolitres = 1000;  // in a millilitre

AmountKind amountKind(intents::StockKind kind) {
  using Kind = intents::StockKind;
  if (kind == Kind::Leaf) return AmountKind::Leaf;
  if (kind == Kind::Size) return AmountKind::Size;
  return kind == Kind::Paste ? AmountKind::Paste : AmountKind::Paint;
}

OtherStock otherOf(const shop::StockItem& item) {
  OtherStock other{item.id, amountKind(item.entry.kind), item.entry.name, std::nullopt};
  if (item.entry.measure == Measure::Pieces) other.amount = static_cast<double>(item.there());
  if (item.entry.measure == Measure::Microlitres) other.amount = static_cast<double>(item.there()) / kMicrolitres;
  return other;
}

}  // namespace

materials::Shortage shortageOf(const std::string& job, const design::Design& design, const shop::Shop& shop) {
  std::vector<OtherStock> others;
  for (const auto& item : shop.stock.items) {
    if (!isSheet(item)) others.push_back(otherOf(item));
  }
  const Cutting cutting = cuttingOf(job, design, shop);
  return materials::shortageOf(cutting.pieces, cutting.there, cutting.plan,
                               materials::amountsOf(design.job, design.layout), design.job, others);
}

}  // namespace core::supply
