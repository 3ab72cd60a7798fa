#include "core/design/package_parts.h"

#include <algorithm>

namespace core::design {

bool hasSpacer(const Job& job) { return job.deliver == units::Deliver::Framed && job.package.spacer > Length(); }

Length hiddenAtTop(const Rebate& rebate) { return rebate.cover - rebate.allowanceTotal; }

std::optional<Length> widestHiddenSpacer(const Rebate& rebate) {
  const Length widest = std::min(rebate.cover - kBehindLip, hiddenAtTop(rebate));
  if (widest < kNarrowestSpacer) return std::nullopt;
  return widest;
}

Length spacerWidth(const Job& job) {
  if (job.package.spacerWidth) return *job.package.spacerWidth;
  return widestHiddenSpacer(job.rebate).value_or(kNarrowestSpacer);
}

Length airOf(const Job& job) {
  Length air = job.package.spacer - job.artwork.thickness;
  for (const Board& board : job.boards) air = air + board.thickness;
  if (const auto support = supportOf(job)) air = air - support->thickness;
  return air;
}

std::optional<SpacerStrips> spacerOf(const Job& job, const Layout& layout) {
  if (!hasSpacer(job)) return std::nullopt;
  SpacerStrips strips;
  strips.width = spacerWidth(job);
  strips.horizontal = layout.outerWidth;
  strips.vertical = layout.outerHeight - 2 * strips.width.inMillimetres();
  if (strips.vertical <= 0) return std::nullopt;
  return strips;
}

std::optional<Support> supportOf(const Job& job) {
  if (!job.window.floats || job.deliver == units::Deliver::Mount) return std::nullopt;
  const Length usual = job.package.spacer > Length() ? job.boards.back().thickness : Length();
  Support support;
  support.thickness = job.package.support.value_or(usual);
  support.width = job.artwork.sheet.width - 2 * kBehindSheet;
  support.height = job.artwork.sheet.height - 2 * kBehindSheet;
  if (std::min({support.thickness, support.width, support.height}) <= Length()) return std::nullopt;
  return support;
}

}  // namespace core::design
