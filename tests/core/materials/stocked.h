#pragma once
// The worked example with stock and prices beside it.
#include <algorithm>
#include <string_view>

#include "core/materials/cost.h"
#include "tests/support/worked_example.h"

namespace tests {

inline std::string jobWithStock(const std::string& stock, const std::string& prices = "{}",
                                const std::string& job = workedExample()) {
  return changed(job, "\"package\":", "\"stock\": [" + stock + "], \"prices\": " + prices + ", \"package\":");
}

// Stock of paper or board with other members after its size.
inline std::string stockOf(const std::string& id, const std::string& kind, int width, int height,
                           const std::string& members = "") {
  return "{\"id\": \"" + id + "\", \"kind\": \"" + kind + "\", \"width\": \"" + std::to_string(width) +
         " mm\", \"height\": \"" + std::to_string(height) + " mm\"" + members + '}';
}

struct Worked {
  core::design::Design design;
  std::vector<core::materials::CutPiece> pieces;
  core::materials::SheetPlan plan;
  std::vector<core::materials::Amount> amounts;

  explicit Worked(const std::string& text)
      : design(designOf(text)),
        pieces(core::materials::cuttingList(design.job, design.layout)),
        plan(core::materials::planSheets(pieces, {design.job.stock})),
        amounts(core::materials::amountsOf(design.job, design.layout)) {}

  const core::materials::CutPiece& piece(std::string_view id) const { return pieces[indexOf(id)]; }
  const core::materials::StockMatch& match(std::string_view id) const { return plan.matches[indexOf(id)]; }
  std::size_t indexOf(std::string_view id) const {
    INFO(id);
    const auto found = std::find_if(pieces.begin(), pieces.end(), [&](const auto& piece) { return piece.id == id; });
    REQUIRE(found != pieces.end());
    return static_cast<std::size_t>(found - pieces.begin());
  }
  const core::materials::Amount& amount(std::string_view id) const {
    INFO(id);
    const auto found = std::find_if(amounts.begin(), amounts.end(), [&](const auto& one) { return one.id == id; });
    REQUIRE(found != amounts.end());
    return *found;
  }
  core::materials::Quote quote(std::optional<core::units::Duration> handsOn = std::nullopt) const {
    return core::materials::quoteOf(design.job, pieces, plan, amounts, handsOn);
  }
};

// Ids of messages, in order.
inline std::vector<std::string> idsOf(const std::vector<core::base::Message>& messages) {
  std::vector<std::string> ids;
  for (const auto& message : messages) ids.push_back(message.id);
  return ids;
}

}  // namespace tests
