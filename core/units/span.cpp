#include "core/units/span.h"

#include <algorithm>
#include <cmath>

#include "core/base/check.h"

namespace core::units {

Duration quantile(const Span& span, double p) {
  ENSURE(p >= 0.02 && p <= 0.98);
  const auto early = static_cast<double>(span.early.inMilliseconds());
  const auto likely = static_cast<double>(span.likely.inMilliseconds());
  const auto late = static_cast<double>(span.late.inMilliseconds());
  const double value =
      p < 0.5 ? likely + (p - 0.5) / 0.4 * (likely - early) : likely + (p - 0.5) / 0.4 * (late - likely);
  return Duration::milliseconds(std::llround(std::max(0.0, value)));
}

}  // namespace core::units
