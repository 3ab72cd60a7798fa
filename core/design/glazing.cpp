#include "core/design/glazing.h"

#include <algorithm>

namespace core::design {

bool faceTouchesGlazing(const Job& job) {
  if (job.deliver != units::Deliver::Framed) return false;
  if (job.package.glazing <= Length() || job.package.spacer > Length()) return false;
  const bool leafOnFace = std::any_of(job.leaf.begin(), job.leaf.end(),
                                      [](const Leaf& field) { return field.region != RegionKind::Bevel; });
  return leafOnFace || !job.lines.empty() || !job.washes.empty();
}

}  // namespace core::design
