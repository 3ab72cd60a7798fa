#include "app/workbench/cutting.h"

#include "app/workbench/sheets_there.h"

namespace app::workbench {

using core::design::SheetSide;
using core::design::Stock;
using core::design::StockKind;
using core::intents::Offcut;
using core::materials::CutPiece;
using core::materials::PlanSheet;
using core::shop::KeptOffcut;

namespace {

Offcut::Runs runsOf(const std::optional<SheetSide>& side) {
  if (!side) return Offcut::Runs::Unknown;
  return *side == SheetSide::Width ? Offcut::Runs::AlongWidth : Offcut::Runs::AlongHeight;
}

}  // namespace

const KeptOffcut* Cutting::offcutOf(const PlanSheet& sheet) const {
  if (!there.isKept(sheet.stock)) return nullptr;
  return &kept[sheet.stock - there.listed.size() - there.shop.size()];
}

Cutting cuttingOf(const std::string& job, const core::design::Design& design, const core::shop::Shop& shop) {
  Cutting cutting;
  cutting.job = job;
  const auto found = shop.onHand.cut.find(job);
  const core::shop::CutSoFar soFar = found == shop.onHand.cut.end() ? core::shop::CutSoFar() : found->second;
  cutting.pieces = core::materials::stillToCut(core::materials::cuttingList(design.job, design.layout), soFar.pieces);
  cutting.there = sheetsThere(job, design.job.stock, shop);
  cutting.kept = shop.onHand.offcuts;
  cutting.plan = core::materials::planSheets(cutting.pieces, cutting.there);
  return cutting;
}

core::intents::CutSheet cutOf(const Cutting& cutting, const PlanSheet& sheet, bool keep) {
  core::intents::CutSheet cut;
  cut.job = cutting.job;
  const Stock& stock = cutting.there.at(sheet.stock);
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
