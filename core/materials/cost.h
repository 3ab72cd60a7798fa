#pragma once
// The cost of a job at the maker's own prices. Nothing is added that the maker did not name: no tax, no margin. Money
// is exact; amounts are rounded to the whole microlitre, times to the millisecond, shares of sheets to the millionth.
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/materials/amounts.h"
#include "core/materials/sheet_plan.h"
#include "core/units/duration.h"
#include "core/units/money.h"

namespace core::materials {

enum class CostKind { Sheets, Leaf, Size, Paste, Paint, Labour };

struct CostLine {
  CostKind kind = CostKind::Sheets;
  std::string id;  // "sheets.ID", "leaf", "size", "paste", "paint", "labour"
  std::string of;  // the stock; "" otherwise
  // quantity / per units of what the price is for: sheets, leaves, litres (in microlitres), hours (in milliseconds).
  std::int64_t quantity = 0;
  std::int64_t per = 1;
  units::Money price;  // of one unit
  units::Money cost;
  // For sheets, the share of their whole area that the pieces use, in millionths, and that share of the cost.
  std::int64_t share = 1'000'000;
  units::Money byShare;  // otherwise the cost
};

struct Quote {
  std::vector<CostLine> lines;
  units::Money total;                  // whole new sheets, and everything else
  units::Money totalByShare;           // the same with sheets by the share the pieces take
  std::vector<std::string> notPriced;  // pieces cut from no stock listed, and ids of lines that lack their price
};

// Offcuts are paid for and cost nothing. `handsOn` is the time the hands are at work; where it is not given, labour is
// not priced.
Quote quoteOf(const design::Job& job, const std::vector<CutPiece>& pieces, const SheetPlan& plan,
              const std::vector<Amount>& amounts, std::optional<units::Duration> handsOn);

std::string_view name(CostKind kind);  // "sheets", "leaf", "size", "paste", "paint", "labour"

}  // namespace core::materials
