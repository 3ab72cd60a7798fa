#pragma once
// Rectangles laid on sheets by a general nesting library (libnest2d), which places outlines side by side wherever they
// have room and need not cut from edge to edge. For benchmarks alone. Its headers are C++17 and so is nesting.cpp.
#include <cstdint>
#include <vector>

namespace tests {

struct NestedRectangle {
  std::int64_t width = 0, height = 0;
};

// Returns how many sheets of one kind the library needs, turning by quarters as it likes and keeping `distance` between
// any two; -1 where it leaves some out. Lengths in one unit, below 1e6 of it.
int sheetsToNest(const std::vector<NestedRectangle>& rectangles, const NestedRectangle& sheet, std::int64_t distance);

}  // namespace tests
