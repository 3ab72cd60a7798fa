#include "core/design/effort.h"

#include "core/design/layout_internal.h"

namespace core::design::detail {
namespace {

std::int64_t piecesOf(const Outline& outline) { return static_cast<std::int64_t>(outline.segments().size()); }

// Returns whether there was enough; tells where there was not.
bool spend(Effort& effort, std::int64_t much, const std::string& pointer, base::Problems& problems) {
  if (effort.spend(much)) return true;
  conflict(problems, pointer, base::Message("job.too-much-to-place"));
  return false;
}

// Does the same within a layout, which reports it once.
bool spendOn(Effort& effort, std::int64_t much, const std::string& pointer, base::Problems& problems) {
  return !effort.spent() && spend(effort, much, pointer, problems);
}

}  // namespace

bool mayBegin(const Job& job, Effort& effort, base::Problems& problems) {
  // Everything is held against everything else by its edges.
  constexpr std::int64_t kOfALayout = 8'000, kOfAPair = 30;
  const std::size_t all = job.boards.size() + job.bands.size() + job.lines.size() + job.spandrels.size() +
                          job.washes.size() + job.leaf.size();
  return spend(effort, kOfALayout + kOfAPair * static_cast<std::int64_t>(all * all), "", problems);
}

double areaOf(const std::vector<geometry::Patch>& inside, const std::vector<geometry::Patch>& without,
              const std::string& pointer, Effort& effort, base::Problems& problems) {
  // Each piece begins a strip of the plane and is held against each other by its bounds; two ovals are crossed by
  // sampling, whether they cross or not.
  constexpr std::int64_t kStraight = 400, kArc = 3'000, kBounds = 2, kOvals = 9'000;
  std::int64_t pieces = 0, ovals = 0, each = 0;
  for (const auto* patches : {&inside, &without}) {
    for (const geometry::Patch& patch : *patches) {
      for (const Outline* outline : {&patch.outer, &patch.inner}) {
        pieces += piecesOf(*outline);
        for (const geometry::Segment& segment : outline->segments()) {
          each += std::holds_alternative<geometry::Straight>(segment) ? kStraight : kArc;
          ovals += std::holds_alternative<geometry::OvalArc>(segment) ? 1 : 0;
        }
      }
    }
  }
  if (!spendOn(effort, each + kBounds * pieces * pieces + kOvals * ovals * ovals, pointer, problems)) return 0;
  return geometry::area(inside, without);
}

bool mayMove(const Outline& outline, const std::string& pointer, Effort& effort, base::Problems& problems) {
  // Each moved piece is crossed with each, and held against each piece it came from.
  constexpr std::int64_t kOfAMove = 2'000, kOfAPair = 110;
  const std::int64_t pieces = piecesOf(outline);
  return spendOn(effort, kOfAMove + kOfAPair * pieces * pieces, pointer, problems);
}

}  // namespace core::design::detail
