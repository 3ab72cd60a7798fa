#include "core/design/areas.h"

#include "core/design/layout_internal.h"

namespace core::design::detail {
namespace {

// What a piece of outline costs beside a straight: an arc is crossed in closed form, an oval's part by sampling.
std::int64_t weightOf(const geometry::Segment& segment) {
  constexpr std::int64_t kArc = 4, kOval = 400;
  if (std::holds_alternative<geometry::OvalArc>(segment)) return kOval;
  return std::holds_alternative<geometry::Arc>(segment) ? kArc : 1;
}

}  // namespace

double Areas::of(const std::vector<geometry::Patch>& inside, const std::vector<geometry::Patch>& without,
                 const std::string& pointer) {
  if (spent()) return 0;
  std::int64_t pieces = 0;
  std::int64_t weight = 0;
  for (const auto* patches : {&inside, &without}) {
    for (const geometry::Patch& patch : *patches) {
      for (const geometry::Outline* outline : {&patch.outer, &patch.inner}) {
        pieces += static_cast<std::int64_t>(outline->segments().size());
        for (const geometry::Segment& segment : outline->segments()) weight += weightOf(segment);
      }
    }
  }
  m_left -= pieces * weight;
  if (!spent()) return geometry::area(inside, without);
  conflict(m_problems, pointer, base::Message("job.too-much-to-place"));
  return 0;
}

}  // namespace core::design::detail
