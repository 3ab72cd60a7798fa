#pragma once
// A fingerprint of the benches' events a job was folded over: two jobs with equal fingerprints fold to the same state.
#include <string>
#include <vector>

#include "core/record/event.h"

namespace core::shop {

class ShopPrint {
 public:
  // Events of all benches, in any order.
  explicit ShopPrint(std::vector<record::Event> benchEvents);

  // The fingerprint of every event that can touch a job.
  const std::string& whole() const { return m_whole; }
  // The fingerprint for a job that is settled since `newest`, the clock of its own newest event: a later preparation
  // does not count, unless it takes back something earlier.
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
