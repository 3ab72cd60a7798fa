#pragma once
// The most that guillotine cuts can get out of one sheet where each piece may be cut as often as one likes: no cutting
// of the pieces really wanted gets more, so it bounds what a sheet can hold.
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace core::cutting {

struct ValuedPiece {
  std::int64_t width = 0, height = 0;
  bool mayTurn = false;
  std::int64_t value = 0;  // zero or more
};

// Exact: some best cutting has every cut at a sum of pieces' sizes (each part pushed to the left and to the top), so
// those positions alone are looked at. Lengths as in the problem, in any unit. Returns nothing where more than
// `mostPositions` would have to be looked at along a side.
std::optional<std::int64_t> mostWorth(std::int64_t width, std::int64_t height, std::int64_t kerf,
                                      const std::vector<ValuedPiece>& pieces, std::size_t mostPositions = 1000);

}  // namespace core::cutting
