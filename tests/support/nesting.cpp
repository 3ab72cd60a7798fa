#include "tests/support/nesting.h"

#include <libnest2d/libnest2d.hpp>

#include <algorithm>

namespace tests {

int sheetsToNest(const std::vector<NestedRectangle>& rectangles, const NestedRectangle& sheet, std::int64_t distance) {
  std::vector<libnest2d::Item> items;
  for (const NestedRectangle& rectangle : rectangles) {
    items.emplace_back(libnest2d::Rectangle(rectangle.width, rectangle.height));
  }
  const auto sheets = libnest2d::nest(items, libnest2d::Box(sheet.width, sheet.height), distance);
  const bool isWhole = std::all_of(items.begin(), items.end(), [](const auto& item) { return item.binId() >= 0; });
  return isWhole ? static_cast<int>(sheets) : -1;
}

}  // namespace tests
