#pragma once
// Areas compared exactly: two lengths of ten metres make 1e20 nm2, more than 64 bits hold.
#include <compare>
#include <cstdint>

namespace core::cutting {

struct WideArea {
  std::int64_t high = 0, low = 0;  // high * 2^30 + low

  // Requires lengths of zero or more, below 2^36 nm (68 m).
  static constexpr WideArea of(std::int64_t width, std::int64_t height) {
    constexpr std::int64_t kMask = (std::int64_t{1} << 30) - 1;
    const std::int64_t low = (width & kMask) * (height & kMask);
    const std::int64_t middle =
        (width >> 30) * (height & kMask) + (width & kMask) * (height >> 30) + ((width >> 30) * (height >> 30) << 30);
    return {middle + (low >> 30), low & kMask};
  }

  friend constexpr auto operator<=>(const WideArea&, const WideArea&) = default;
};

}  // namespace core::cutting
