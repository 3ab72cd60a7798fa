#pragma once
#include <algorithm>
#include <string>

namespace core::base {

// The first of the items with that id; null where there is none.
template <typename Items>
auto withId(Items& items, const std::string& id) -> decltype(&items.front()) {
  const auto found = std::find_if(items.begin(), items.end(), [&](const auto& one) { return one.id == id; });
  return found == items.end() ? nullptr : &*found;
}

}  // namespace core::base
