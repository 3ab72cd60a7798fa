#pragma once
// What of a job is still to be cut, from what is on hand: the stock its file lists, less what is cut up already; the
// shop's sheets for the pieces it lists nothing for; and the offcuts the shop kept. Pure: the same job and shop give
// the same sheets. Every screen that counts sheets plans by this.
#include <string>
#include <vector>

#include "core/design/design.h"
#include "core/intents/intent.h"
#include "core/materials/sheet_plan.h"
#include "core/shop/shop.h"

namespace core::supply {

struct Cutting {
  std::string job;
  std::vector<materials::CutPiece> pieces;  // still to be cut
  materials::SheetsThere there;
  std::vector<shop::KeptOffcut> kept;  // the shop's offcuts, in the order they are there
  materials::SheetPlan plan;

  // The offcut a sheet is; null for stock of the job's list or of the shop. Valid as long as this.
  const shop::KeptOffcut* offcutOf(const materials::PlanSheet& sheet) const;
};

// Uses the figures as made. `job`: its id, so that what is cut already is not asked for again; "" for a design that is
// on no bench yet.
Cutting cuttingOf(const std::string& job, const design::Design& design, const shop::Shop& shop);

// The act of having cut that sheet. `keep`: its offcuts worth keeping go into the shop's stock.
intents::CutSheet cutOf(const Cutting& cutting, const materials::PlanSheet& sheet, bool keep);

}  // namespace core::supply
