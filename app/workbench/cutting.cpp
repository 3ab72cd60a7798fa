#include "app/workbench/cutting.h"

#include <algorithm>

#include "app/workbench/shortage.h"

namespace app::workbench {

using core::design::SheetSide;
using core::design::Stock;
using core::design::StockKind;
using core::intents::Offcut;
using core::materials::CutPiece;
using core::materials::PlanSheet;
using core::record::KeptOffcut;

namespace {

Offcut::Runs runsOf(const std::optional<SheetSide>& side) {
  if (!side) return Offcut::Runs::Unknown;
  return *side == SheetSide::Width ? Offcut::Runs::AlongWidth : Offcut::Runs::AlongHeight;
}

}  // namespace

std::vector<Stock> stillListed(std::vector<Stock> stock, const std::map<std::string, int>& cut) {
  for (Stock& one : stock) {
    const auto used = cut.find(one.id);
    if (one.quantity && used != cut.end()) one.quantity = std::max(0, *one.quantity - used->second);
  }
  return stock;
}

const KeptOffcut* Cutting::offcutOf(const PlanSheet& sheet) const {
  const std::size_t listed = stock.size() - kept.size();
  return sheet.stock < listed ? nullptr : kept[sheet.stock - listed];
}

namespace {

// The shop's sheets that serve a piece for which the job lists nothing. One that would serve a listed piece as well is
// left out: what the job lists is what such a piece is cut from.
std::vector<Stock> sheetsOfShop(const std::vector<CutPiece>& pieces, const std::vector<Stock>& listed,
                                const std::vector<Stock>& sheets) {
  const auto byList = core::materials::matchStock(pieces, listed);
  const auto byShop = core::materials::matchStock(pieces, sheets);
  std::vector<bool> serves(sheets.size(), false), taken(sheets.size(), false);
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    for (const std::size_t sheet : byShop[i].stock) (byList[i].stock.empty() ? serves : taken)[sheet] = true;
  }
  std::vector<Stock> used;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    if (serves[i] && !taken[i]) used.push_back(sheets[i]);
  }
  return used;
}

Cutting cut(const std::string& job, const core::design::Design& design, const core::record::OnHand& onHand,
            const std::vector<Stock>& sheets) {
  Cutting cutting;
  cutting.job = job;
  const auto found = onHand.cut.find(job);
  const core::record::CutSoFar soFar = found == onHand.cut.end() ? core::record::CutSoFar() : found->second;
  cutting.pieces = core::materials::stillToCut(core::materials::cuttingList(design.job, design.layout), soFar.pieces);
  cutting.stock = stillListed(design.job.stock, soFar.sheets);
  for (Stock& sheet : sheetsOfShop(cutting.pieces, cutting.stock, sheets)) cutting.stock.push_back(std::move(sheet));
  std::vector<Stock> kept;
  for (const KeptOffcut& offcut : onHand.offcuts) {
    cutting.kept.push_back(&offcut);
    kept.push_back(stockOf(offcut, "offcut " + std::to_string(offcut.mark)));
  }
  cutting.plan = core::materials::planSheets(cutting.pieces, cutting.stock, kept);
  cutting.stock.insert(cutting.stock.end(), kept.begin(), kept.end());
  return cutting;
}

}  // namespace

Cutting cuttingOf(const std::string& job, const core::design::Design& design, const core::record::OnHand& onHand) {
  return cut(job, design, onHand, {});
}

Cutting cuttingOf(const std::string& job, const core::design::Design& design, const core::record::Shop& shop) {
  return cut(job, design, shop.onHand, havingOf(shop).sheets);
}

core::intents::CutSheet cutOf(const Cutting& cutting, const PlanSheet& sheet, bool keep) {
  core::intents::CutSheet cut;
  cut.job = cutting.job;
  const Stock& stock = cutting.stock[sheet.stock];
  if (const KeptOffcut* offcut = cutting.offcutOf(sheet)) {
    cut.offcut = offcut->id;
  } else {
    cut.stock = stock.id;
  }
  Offcut like;
  like.paper = stock.kind == StockKind::Paper;
  like.thickness = stock.thickness;
  like.material = stock.material;
  like.fibres = runsOf(stock.grain);
  like.pattern = runsOf(stock.pattern);
  like.kerf = stock.kerf;
  for (const auto& placed : sheet.pieces) {
    const CutPiece& piece = cutting.pieces[placed.piece];
    ++cut.pieces[piece.id];
    // What the stock leaves unsaid, what is cut from it says.
    if (like.material.empty()) like.material = piece.material;
    if (!like.thickness) like.thickness = piece.thickness;
  }
  if (!keep) return cut;
  for (const auto& area : sheet.offcuts) {
    Offcut kept = like;
    kept.width = area.width;
    kept.height = area.height;
    cut.kept.push_back(std::move(kept));
  }
  return cut;
}

}  // namespace app::workbench
