#include "core/cutting/many_pieces.h"

#include <algorithm>

#include "core/cutting/fill_sheets.h"
#include "core/cutting/improving.h"
#include "core/cutting/kerf_ladder.h"

namespace core::cutting {
namespace {

struct Effort {
  int ways = 0, rounds = 0;
};

// By how much there is to try, so that the whole stays within seconds whatever is asked. Never by the kerf.
struct Efforts {
  Effort common, other;  // rungs
  bool isCoarse = false;
};

Efforts effortsFor(const CuttingProblem& problem) {
  const double kinds = static_cast<double>(problem.pieces.size());
  const double sheets = static_cast<double>(std::min<std::size_t>(problem.sheets.size(), 12));
  const double size = problem.pieceCount() + kinds * sheets;
  if (size < 500) return {{10, 30}, {1, 3}, false};
  if (size < 4000) return {{4, 20}, {1, 0}, true};
  return {{1, 5}, {1, 0}, true};
}

}  // namespace

SlicedPlan cutManyPieces(const CuttingProblem& problem, const Bounds& least) {
  const Efforts efforts = effortsFor(problem);
  Improving improving(problem, least);
  const std::int64_t kerf = problem.sheets.front().kerf;
  const bool isOne =
      std::all_of(problem.sheets.begin(), problem.sheets.end(), [&](const SheetKind& s) { return s.kerf == kerf; });
  for (const Rung& rung : rungsDownTo(isOne ? kerf : 0, efforts.isCoarse)) {
    const Filler filler(problem, isOne ? &rung.kerf : nullptr);
    const Effort& effort = rung.isCommon ? efforts.common : efforts.other;
    improving.anew(filler, effort.ways);
    improving.improve(filler, effort.rounds);
    if (improving.isLeast()) break;
  }
  return improving.plan();
}

}  // namespace core::cutting
