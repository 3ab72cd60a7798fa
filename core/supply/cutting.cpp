#include "core/supply/cutting.h"

#include "core/supply/sheets_there.h"

namespace core::supply {

using design::SheetSide;
using design::Stock;
using design::StockKind;
using intents::Offcut;
using materials::CutPiece;
using materials::PlanSheet;
using shop::KeptOffcut;

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

Cutting cuttingOf(const std::string& job, const design::Design& design, const shop::Shop& shop) {
  Cutting cutting;
  cutting.job = job;
  const auto found = shop.onHand.cut.find(job);
  const shop::CutSoFar soFar = found == shop.onHand.cut.end() ? shop::CutSoFar() : found->second;
  cutting.pieces = materials::stillToCut(materials::cuttingList(design.job, design.layout), soFar.pieces);
  cutting.there = sheetsThere(job, design.job.stock, shop);
  cutting.kept = shop.onHand.offcuts;
  cutting.plan = materials::planSheets(cutting.pieces, cutting.there);
  return cutting;
}

intents::CutSheet cutOf(const Cutting& cutting, const PlanSheet& sheet, bool keep) {
  intents::CutSheet cut;
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
    // Where the stock's entry leaves these open, they are those of the piece cut from it.
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

}  // namespace core::supply
