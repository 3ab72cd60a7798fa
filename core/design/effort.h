#pragma once
// The limit on the work of laying out a job.
//
// Every piece of outline is held against every other, and a window of many lobes has them by the hundred: a file within
// all limits can ask for minutes of it. Effort is counted by pieces and not by a clock, so that it ends at the same
// place on every machine.
#include <cstdint>

namespace core::design {

class Effort {
 public:
  // One unit is about a nanosecond on a machine of the year 2026. The limit of one layout is far beyond anything made
  // by hand: a window of 99 lobes with eight lines and a leaf field round it takes a fifth of it.
  static constexpr std::int64_t kOfALayout = 250'000'000;

  explicit Effort(std::int64_t most = kOfALayout) : m_left(most) {}

  // False where no more is left; then it is spent for good.
  bool spend(std::int64_t effort) {
    m_left = spent() || m_left < effort ? -1 : m_left - effort;
    return !spent();
  }
  bool spent() const { return m_left < 0; }

 private:
  std::int64_t m_left;
};

}  // namespace core::design
