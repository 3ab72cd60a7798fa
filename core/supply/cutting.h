#pragma once
// Plans which pieces of a job are still to be cut, from the stock on hand: the stock its file lists, less the sheets
// cut up already; the shop's sheets for the pieces it lists nothing for; and the offcuts the shop kept. Pure: the same
// job and shop give the same sheets. Every screen that counts sheets uses this plan.
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
  std::vector<shop::KeptOffcut> kept;  // the shop's offcuts, in the shop's order
  materials::SheetPlan plan;

  // Returns the offcut that a sheet of the plan is; null for stock of the job's list or of the shop. The pointer is
  // valid as long as this object.
  const shop::KeptOffcut* offcutOf(const materials::PlanSheet& sheet) const;
};

// Uses the figures as made. `job`: its id, so that pieces cut already are not planned again; "" for a design that is on
// no bench yet.
Cutting cuttingOf(const std::string& job, const design::Design& design, const shop::Shop& shop);

// Returns the act of having cut that sheet. `keep`: its offcuts worth keeping are added to the shop's stock.
intents::CutSheet cutOf(const Cutting& cutting, const materials::PlanSheet& sheet, bool keep);

}  // namespace core::supply
