#pragma once
// Exact areas of what meets on a piece, as long as their budget lasts. Only layout's own files use this.
//
// Every piece of outline is held against every other, and a window of many lobes has them by the hundred: a file within
// all limits can ask for minutes of it. The budget is counted by pieces, so that it ends at the same place on every
// machine, and lies far beyond what is made by hand.
#include <cstdint>
#include <string>
#include <vector>

#include "core/base/problem.h"
#include "core/geometry/region.h"

namespace core::design::detail {

class Areas {
 public:
  explicit Areas(base::Problems& problems) : m_problems(problems) {}

  // mm², as geometry::area. Where the budget is spent: 0, and once job.too-much-to-place at that place.
  double of(const std::vector<geometry::Patch>& inside, const std::vector<geometry::Patch>& without,
            const std::string& pointer);
  bool spent() const { return m_left < 0; }

 private:
  base::Problems& m_problems;
  std::int64_t m_left = 100'000'000;
};

}  // namespace core::design::detail
