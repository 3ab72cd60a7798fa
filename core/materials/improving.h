#pragma once
// The search for a plan at one kerf.
#include <cstdint>
#include <vector>

#include "core/materials/fill_sheets.h"
#include "core/materials/worth_bound.h"

namespace core::materials {

class Improving {
 public:
  // Ends early at `least`.
  Improving(const Filler& filler, const Bounds& least);

  void start(int ways);      // the best of so many whole plans
  void improve(int rounds);  // empties a few sheets and fills them anew, so many times
  const SlicedPlan& plan() const { return m_plan; }
  bool isLeast() const;

 private:
  struct Measure;

  std::uint32_t random(std::uint32_t below);
  Filler::Way anyWay(const std::vector<int>& kinds);
  std::vector<int> orderBy(int key, double noise, std::vector<int> kinds);
  std::vector<std::size_t> someSheets();
  void refill(const std::vector<std::size_t>& chosen);
  double fullness(const SlicedSheet& sheet) const;

  const Filler& m_filler;
  const Bounds m_least;
  std::vector<int> m_allKinds;
  std::vector<int> m_onHand;  // beside what the plan uses
  SlicedPlan m_plan;
  std::vector<double> m_fullness;  // of the plan's sheets
  std::uint64_t m_seed = 20'260'101;
};

}  // namespace core::materials
