#include "core/units/duration.h"

#include <array>
#include <cmath>
#include <utility>

#include "core/base/text.h"

namespace core::units {

base::Result<Duration, base::Message> parseDuration(std::string_view text) {
  constexpr std::array<std::pair<std::string_view, double>, 6> kUnits = {
      {{" s", 1e3}, {" min", 60e3}, {" h", 3'600e3}, {" d", 86'400e3}, {" week", 604'800e3}, {" weeks", 604'800e3}}};
  for (const auto& [suffix, perUnit] : kUnits) {
    if (!base::endsWith(text, suffix)) continue;
    const auto number = base::parseDecimal(text.substr(0, text.size() - suffix.size()));
    if (!number || *number < 0) return base::Message("duration.malformed");
    const double milliseconds = *number * perUnit;
    if (milliseconds > 10'000 * 3'600e3) return base::Message("duration.too-long");
    if (std::fabs(milliseconds - std::round(milliseconds)) > 1e-6) return base::Message("duration.too-fine");
    return Duration::milliseconds(std::llround(milliseconds));
  }
  return base::Message("duration.malformed");
}

}  // namespace core::units
