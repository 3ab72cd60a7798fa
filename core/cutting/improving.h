#pragma once
// The search for a plan. It never makes the plan worse.
#include <cstdint>
#include <vector>

#include "core/cutting/fill_sheets.h"
#include "core/cutting/worth_bound.h"

namespace core::cutting {

class Improving {
 public:
  // Stands still at `least`.
  Improving(const CuttingProblem& problem, const Bounds& least);

  // Whole plans, so many, in place of the plan where one is better. Requires that the plan has room for the filler's
  // kerfs, or is the empty one of the beginning.
  void anew(const Filler& filler, int ways);
  // Empties a few sheets and fills them anew, so many times. Requires the same.
  void improve(const Filler& filler, int rounds);
  const SlicedPlan& plan() const { return m_plan; }
  bool isLeast() const;

 private:
  struct Measure;

  std::uint32_t random(std::uint32_t below);
  Filler::Way anyWay(const std::vector<int>& kinds);
  std::vector<int> orderBy(int key, double noise, std::vector<int> kinds);
  std::vector<std::size_t> someSheets();
  void refill(const Filler& filler, const std::vector<std::size_t>& chosen);

  const CuttingProblem& m_problem;
  const Bounds m_least;
  std::vector<int> m_allKinds;
  std::vector<int> m_onHand;  // beside what the plan uses
  SlicedPlan m_plan;
  std::vector<double> m_fullness;  // of the plan's sheets
  int m_way = 0;
  std::uint64_t m_seed = 20'260'101;
};

}  // namespace core::cutting
