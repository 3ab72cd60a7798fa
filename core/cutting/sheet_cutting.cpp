#include "core/cutting/sheet_cutting.h"

#include <algorithm>

#include "core/base/check.h"
#include "core/cutting/cuts.h"
#include "core/cutting/cutting_problem.h"
#include "core/cutting/few_pieces.h"
#include "core/cutting/many_pieces.h"
#include "core/cutting/worth_bound.h"

namespace core::cutting {
namespace {

// Hands out the members of each kind, in the order of the input.
class Handing {
 public:
  Handing(const std::vector<WantedPiece>& pieces, const CuttingProblem& problem)
      : m_pieces(pieces),
        m_problem(problem),
        m_nextPiece(problem.pieces.size(), 0),
        m_nextSheet(problem.sheets.size()) {}

  CutSheet sheet(const SlicedSheet& sliced) {
    LaidSheet laid = layOut(m_problem, sliced);
    CutSheet sheet;
    sheet.stock = nextSheet(sliced.sheet);
    for (const LaidPiece& piece : laid.pieces) {
      const std::size_t index = nextPiece(piece.kind);
      // The kind lies with its longer side along the width; the piece as wanted may stand upright.
      const bool kindIsTurned = m_pieces[index].width.inNanometres() != m_problem.pieces[piece.kind].width;
      sheet.pieces.push_back({index, piece.x, piece.y, piece.turned != kindIsTurned});
    }
    sheet.cuts = std::move(laid.cuts);
    sheet.rest = std::move(laid.rest);
    return sheet;
  }

  std::size_t nextPiece(int kind) { return m_problem.pieces[kind].members.at(m_nextPiece[kind]++); }

 private:
  std::size_t nextSheet(int kind) {
    auto& [member, used] = m_nextSheet[kind];
    const auto& members = m_problem.sheets[kind].members;
    while (used == members.at(member).second) {
      ++member;
      used = 0;
    }
    ++used;
    return members[member].first;
  }

  const std::vector<WantedPiece>& m_pieces;
  const CuttingProblem& m_problem;
  std::vector<std::size_t> m_nextPiece;
  std::vector<std::pair<std::size_t, int>> m_nextSheet;
};

std::vector<int> placedOf(const CuttingProblem& problem, const SlicedPlan& sliced) {
  std::vector<int> counts;
  for (std::size_t i = 0; i < problem.pieces.size(); ++i) counts.push_back(problem.pieces[i].count() - sliced.left[i]);
  return counts;
}

// The plan, and what is known about how good it is.
struct Judged {
  SlicedPlan plan;
  std::int64_t bound = 0;
  bool exact = false;
};

Judged judged(const CuttingProblem& problem) {
  Judged judged;
  if (areFew(problem)) {
    judged.plan = cutFewPieces(problem);
    judged.bound = judged.plan.worth;
    judged.exact = true;
    return judged;
  }
  std::vector<int> all;
  for (const PieceKind& kind : problem.pieces) all.push_back(kind.count());
  Bounds least = boundsOf(problem, all);
  judged.plan = cutManyPieces(problem, least);
  if (judged.plan.leftCount > 0) least = boundsOf(problem, placedOf(problem, judged.plan));
  judged.bound = least.worth;
  judged.exact = judged.plan.leftCount == 0 && judged.plan.worth == least.worth &&
                 static_cast<int>(judged.plan.sheets.size()) == least.sheets;
  return judged;
}

}  // namespace

bool fits(const WantedPiece& piece, const StockSheet& stock) {
  StockSheet one = stock;
  one.quantity = 1;
  return problemOf({piece}, {one}).tooLarge.empty();
}

CuttingPlan cutSheets(const std::vector<WantedPiece>& pieces, const std::vector<StockSheet>& stock) {
  const CuttingProblem problem = problemOf(pieces, stock);
  Judged best = judged(problem);
  ENSURE(best.bound <= best.plan.worth);
  CuttingPlan plan;
  plan.exact = best.exact;
  plan.byPrice = problem.byPrice;
  plan.worth = static_cast<double>(best.plan.worth) / problem.unitsInOne;
  plan.bound = static_cast<double>(best.bound) / problem.unitsInOne;
  plan.unplaced = problem.tooLarge;
  // Offcuts are the first kinds.
  std::stable_sort(best.plan.sheets.begin(), best.plan.sheets.end(),
                   [](const SlicedSheet& a, const SlicedSheet& b) { return a.sheet < b.sheet; });
  Handing handing(pieces, problem);
  for (const SlicedSheet& sliced : best.plan.sheets) plan.sheets.push_back(handing.sheet(sliced));
  for (std::size_t kind = 0; kind < problem.pieces.size(); ++kind) {
    for (int i = 0; i < best.plan.left[kind]; ++i) plan.unplaced.push_back(handing.nextPiece(static_cast<int>(kind)));
  }
  std::sort(plan.unplaced.begin(), plan.unplaced.end());
  return plan;
}

CutParts partsOf(const SheetCut& cut, Length kerf) {
  CutParts parts{cut.part, std::nullopt};
  (cut.upright ? parts.before.width : parts.before.height) = cut.fence;
  const Length from = cut.fence + kerf;
  if (from >= (cut.upright ? cut.part.width : cut.part.height)) return parts;
  Area& beyond = parts.beyond.emplace(cut.part);
  if (cut.upright) {
    beyond.x = beyond.x + from;
    beyond.width = beyond.width - from;
  } else {
    beyond.y = beyond.y + from;
    beyond.height = beyond.height - from;
  }
  return parts;
}

}  // namespace core::cutting
