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

double share(const Span& span, Duration at) {
  const double past = static_cast<double>((at - span.likely).inMilliseconds());
  const Duration side = past < 0 ? span.likely - span.early : span.late - span.likely;
  if (past == 0) return 0.5;
  if (side <= Duration()) return past < 0 ? 0.02 : 0.98;
  return std::clamp(0.5 + 0.4 * past / static_cast<double>(side.inMilliseconds()), 0.02, 0.98);
}

}  // namespace core::units
