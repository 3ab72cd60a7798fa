#pragma once
// What of the benches' streams a job was folded over, as a short text to compare: two that are equal fold to the same.
#include <string>
#include <vector>

#include "core/record/event.h"

namespace core::shop {

class ShopPrint {
 public:
  // Events of all benches, in any order.
  explicit ShopPrint(std::vector<record::Event> benchEvents);

  // Everything that can touch a job.
  const std::string& whole() const { return m_whole; }
  // For a job that is settled since `newest`, the clock of its own newest event: what was made ready later does not
  // count, unless it takes back something earlier.
  std::string upTo(const record::Hlc& newest) const;

 private:
  struct Mark {
    record::Hlc hlc;
    std::uint64_t sum = 0;  // of it and all before
  };
  std::vector<Mark> m_marks;
  std::uint64_t m_odd = 0;
  std::string m_whole;
};

}  // namespace core::shop
