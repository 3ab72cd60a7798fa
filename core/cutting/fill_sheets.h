#pragma once
// Sheet after sheet filled by rule of thumb: offcuts first, then each time the kind of sheet that promises the least
// worth for all that is left.
#include <cstdint>
#include <vector>

#include "core/cutting/cutting_problem.h"
#include "core/cutting/fill_sheet.h"
#include "core/cutting/slicing.h"

namespace core::cutting {

// The problem as the rules of thumb see it.
class Filler {
 public:
  // With the sheets' own kerfs, or with one of `kerf` for all.
  Filler(const CuttingProblem& problem, const std::int64_t* kerf);

  struct Way {
    std::vector<int> order;       // of the pieces' kinds
    std::vector<FillRule> rules;  // each sheet by the rule that fills it best
    double waste = 1.1;           // worth of what is left over the best that any sheet offers for its area
    bool smallOffcutsFirst = false;
  };

  // Requires `left`: what is wanted of each kind, and `onHand`: what there is of each kind of sheet. Takes from both.
  std::vector<SlicedSheet> fill(const Way& way, std::vector<int>& left, std::vector<int>& onHand) const;

  double fullness(const SlicedSheet& sheet) const;  // its pieces, kerf added, as a part of the sheet
  std::int64_t worthOf(const SlicedSheet& sheet) const { return m_problem.sheets[sheet.sheet].worth; }

 private:
  void fillBest(int kind, const Way& way, const std::vector<int>& left, SheetFilling& best, SheetFilling& tried) const;

  const CuttingProblem& m_problem;
  std::vector<std::int64_t> m_kerfs;            // of each kind of sheet
  std::vector<std::vector<PieceSize>> m_sizes;  // for each different manner, and its kerf
  std::vector<std::size_t> m_sizesOf;           // of each kind of sheet
  std::vector<int> m_offcuts;                   // largest first
  std::vector<int> m_new;                       // least worth for its area first
  double m_leastRatio = 0;
};

}  // namespace core::cutting
