#pragma once
// The two ways of being led through the work on a piece.
#include <optional>
#include <string_view>

namespace core::units {

enum class Way {
  Every,  // each act by itself, for who is learning
  Short,  // a stretch of a stage at a time
};
inline constexpr Way kWays[] = {Way::Every, Way::Short};

constexpr std::string_view name(Way way) { return way == Way::Every ? "every" : "short"; }

constexpr std::optional<Way> way(std::string_view word) {
  for (const Way one : kWays) {
    if (name(one) == word) return one;
  }
  return std::nullopt;
}

}  // namespace core::units
