// A job file of any bytes: it is read or every problem has a message and a place, and what is read has figures that
// are all finite and shown, and a cutting list that its stock either holds or does not.
#include <cmath>
#include <cstdint>
#include <string_view>

#include "core/base/check.h"
#include "core/design/design.h"
#include "core/materials/cost.h"

namespace {

// Sheets are packed for jobs of a common size alone: the packing has its own proofs, and a thousand bands take it long.
constexpr std::size_t kMostPieces = 30;

void checkMaterials(const core::design::Design& design) {
  using namespace core::materials;
  const auto pieces = cuttingList(design.job, design.layout);
  int wanted = 0;
  for (const CutPiece& piece : pieces) {
    ENSURE(piece.width > Length() && piece.height > Length() && piece.count > 0);
    for (const auto& id : piece.figures) ENSURE(design.figures.find(id) != nullptr);
  }
  const auto amounts = amountsOf(design.job, design.layout);
  for (const Amount& amount : amounts) {
    ENSURE(std::isfinite(amount.value) && amount.value > 0);
    for (const auto& id : amount.figures) ENSURE(design.figures.find(id) != nullptr);
  }
  if (pieces.size() > kMostPieces) return;
  const SheetPlan plan = planSheets(pieces, {design.job.stock});
  int found = 0;
  for (std::size_t i = 0; i < pieces.size(); ++i) wanted += plan.matches[i].stock.empty() ? 0 : pieces[i].count;
  for (const StockGroup& group : plan.groups) {
    for (const PlanSheet& sheet : group.sheets) found += static_cast<int>(sheet.pieces.size());
    for (const LeftOver& left : group.unplaced) found += left.count;
  }
  ENSURE(found == wanted);
  const Quote quote = quoteOf(design.job, pieces, plan, amounts, core::units::Duration::minutes(90));
  ENSURE(quote.total >= quote.totalByShare);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto read = core::design::readDesign({reinterpret_cast<const char*>(data), size});
  for (const auto& problem : read.problems.sorted()) {
    ENSURE(!problem.message.id.empty());
    ENSURE(problem.line == 0 || problem.column > 0);
    ENSURE(problem.pointer.empty() || problem.pointer.front() == '/');
  }
  if (!read.design) {
    ENSURE(read.problems.hasErrors());
    return 0;
  }
  ENSURE(!read.problems.hasErrors());
  ENSURE(!read.design->figures.all().empty());
  for (const auto& figure : read.design->figures.all()) {
    ENSURE(std::isfinite(figure.value));
    ENSURE(!figure.display.empty());
    ENSURE(read.design->figures.find(figure.id)->value == figure.value);
  }
  checkMaterials(*read.design);
  return 0;
}
