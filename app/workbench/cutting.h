#pragma once
// What of a job is still to be cut, from what is on hand: the stock its file lists, less what is cut up already, and
// the offcuts the shop kept, which are used first. Pure: the same job and shop give the same sheets.
#include <map>
#include <string>
#include <vector>

#include "core/design/design.h"
#include "core/intents/intent.h"
#include "core/materials/sheet_plan.h"
#include "core/record/on_hand.h"
#include "core/record/shop.h"

namespace app::workbench {

struct Cutting {
  std::string job;
  std::vector<core::materials::CutPiece> pieces;      // still to be cut
  std::vector<core::design::Stock> stock;             // the job's, and after it the shop's offcuts
  std::vector<const core::record::KeptOffcut*> kept;  // those offcuts; of the state that was given
  core::materials::SheetPlan plan;

  // The offcut a sheet is; null for stock of the job's list.
  const core::record::KeptOffcut* offcutOf(const core::materials::PlanSheet& sheet) const;
};

// Uses the figures as made. `onHand` must outlive what is returned.
Cutting cuttingOf(const std::string& job, const core::design::Design& design, const core::record::OnHand& onHand);

// The same, with the shop's sheets for the pieces that the job's file lists nothing for; cutting one of those takes it
// from the shop's stock. `shop` must outlive what is returned.
Cutting cuttingOf(const std::string& job, const core::design::Design& design, const core::record::Shop& shop);

// What the job lists, less what of it is cut up; `cut` counts sheets by stock id.
std::vector<core::design::Stock> stillListed(std::vector<core::design::Stock> stock,
                                             const std::map<std::string, int>& cut);

// The act of having cut that sheet. `keep`: its offcuts worth keeping go into the shop's stock.
core::intents::CutSheet cutOf(const Cutting& cutting, const core::materials::PlanSheet& sheet, bool keep);

}  // namespace app::workbench
