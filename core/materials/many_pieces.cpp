#include "core/materials/many_pieces.h"

#include <algorithm>

#include "core/materials/fill_sheets.h"
#include "core/materials/improving.h"
#include "core/materials/kerf_ladder.h"

namespace core::materials {
namespace {

struct Effort {
  int ways = 0, rounds = 0;
};

// By how much there is to try, so that the whole stays within seconds whatever is asked. Never by the kerf.
struct Efforts {
  Effort thorough, passing;
  bool isCoarse = false;
};

Efforts effortsFor(const CuttingProblem& problem) {
  const double kinds = static_cast<double>(problem.pieces.size());
  const double sheets = static_cast<double>(std::min<std::size_t>(problem.sheets.size(), 12));
  const double size = problem.pieceCount() + kinds * sheets;
  Efforts efforts{{60, 300}, {4, 12}, false};
  if (size > 500) efforts = {{20, 150}, {2, 4}, true};
  if (size > 4000) efforts = {{6, 40}, {1, 0}, true};
  return efforts;
}

SlicedPlan cutAt(const CuttingProblem& problem, const std::int64_t* kerf, const Bounds& least, Effort effort) {
  const Filler filler(problem, kerf);
  Improving improving(filler, least);
  improving.start(effort.ways);
  improving.improve(effort.rounds);
  return improving.plan();
}

}  // namespace

SlicedPlan cutManyPieces(const CuttingProblem& problem, const Bounds& least) {
  const Efforts efforts = effortsFor(problem);
  const auto isOther = [&](const SheetKind& sheet) { return sheet.kerf != problem.sheets.front().kerf; };
  if (std::any_of(problem.sheets.begin(), problem.sheets.end(), isOther)) {
    return cutAt(problem, nullptr, least, efforts.thorough);
  }
  std::vector<int> counts;
  for (const PieceKind& kind : problem.pieces) counts.push_back(kind.count());
  SlicedPlan best;
  bool isFirst = true;
  for (const Rung& rung : rungsFrom(problem.sheets.front().kerf, efforts.isCoarse)) {
    // A rung that cannot be better need not be asked.
    if (!isFirst && best.leftCount == 0 && boundsOf(problem, counts, &rung.kerf, true).worth >= best.worth) continue;
    SlicedPlan plan = cutAt(problem, &rung.kerf, least, rung.isThorough ? efforts.thorough : efforts.passing);
    if (isFirst || plan.isBetterThan(best)) best = std::move(plan);
    isFirst = false;
  }
  return best;
}

}  // namespace core::materials
