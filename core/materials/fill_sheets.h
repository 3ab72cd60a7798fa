#pragma once
// Sheet after sheet filled by rule of thumb: offcuts first, then each time the kind of sheet that promises the least
// worth for all that is left.
#include <cstdint>
#include <vector>

#include "core/materials/cutting_problem.h"
#include "core/materials/fill_sheet.h"
#include "core/materials/slicing.h"

namespace core::materials {

// The problem as the rules of thumb see it.
class Filler {
 public:
  // With the sheets' own kerfs, or with one of `kerf` for all.
  Filler(const CuttingProblem& problem, const std::int64_t* kerf);

  struct Way {
    std::vector<int> order;  // of the pieces' kinds
    FillRule rule;
    double waste = 1.1;  // worth of what is left over the best that any sheet offers for its area
    bool smallOffcutsFirst = false;
  };

  // Requires `left`: what is wanted of each kind, and `onHand`: what there is of each kind of sheet. Takes from both.
  std::vector<SlicedSheet> fill(const Way& way, std::vector<int>& left, std::vector<int>& onHand) const;

  double areaOf(const SlicedSheet& sheet) const;  // of its pieces, kerf added, in part of the sheet
  std::int64_t worthOf(const SlicedSheet& sheet) const { return m_problem.sheets[sheet.sheet].worth; }
  const CuttingProblem& problem() const { return m_problem; }

 private:
  struct Tried {
    std::vector<Slice> slices;
    std::vector<int> left;
  };

  bool tryOn(int kind, const Way& way, const std::vector<int>& left, Tried& tried) const;
  double areaOf(const std::vector<Slice>& slices) const;

  const CuttingProblem& m_problem;
  std::vector<std::int64_t> m_kerfs;            // of each kind of sheet
  std::vector<std::vector<PieceSize>> m_sizes;  // for each different kerf
  std::vector<std::size_t> m_sizesOf;           // of each kind of sheet
  std::vector<int> m_offcuts;                   // largest first
  std::vector<int> m_new;                       // least worth for its area first
  std::vector<double> m_areas;                  // of the pieces' kinds
  double m_leastRatio = 0;
};

}  // namespace core::materials
