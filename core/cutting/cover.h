#pragma once
// The least cost of enough room: so many of each kind, none of more than there is.
#include <cstdint>
#include <limits>
#include <vector>

namespace core::cutting {

struct Room {
  std::int64_t room = 0;  // in one
  std::int64_t cost = 0;  // of one
  int quantity = 0;
};

// Never above the least cost of rooms that hold `need` together, and equal to it unless there are so many choices that
// the search is given up; then it is what parts of rooms would cost. kNotEnough where all there is does not hold it.
// Requires costs whose sums stay below 2^62.
inline constexpr std::int64_t kNotEnough = std::numeric_limits<std::int64_t>::max();
std::int64_t leastCost(std::vector<Room> rooms, std::int64_t need);

}  // namespace core::cutting
