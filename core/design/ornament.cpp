// Spandrels and washes: what lies between the window, bands and lines.
#include <algorithm>
#include <cmath>

#include "core/design/layout_internal.h"
#include "core/geometry/clip.h"

namespace core::design::detail {
namespace {

using base::Message;
using base::Millimetres;
using geometry::Patch;
using geometry::Reach;
using geometry::Ring;

struct Neighbour {
  std::string id;
  Patch patch;
};

// Everything with an area of its own that is already placed.
std::vector<Neighbour> neighbours(const Layout& layout) {
  std::vector<Neighbour> all;
  for (const BandLayout& band : layout.bands) {
    all.push_back({band.id, patchOf(layout, band.ring)});
  }
  for (const LineLayout& line : layout.lines) all.push_back({line.id, {line.outer, line.inner}});
  for (const SpandrelLayout& spandrel : layout.spandrels) all.push_back({spandrel.id, {spandrel.seen, {}}});
  for (const WashLayout& wash : layout.washes) all.push_back({wash.id, {wash.outer, wash.inner}});
  return all;
}

void checkOverlaps(const Layout& layout, const std::string& id, const Patch& patch, const std::string& pointer,
                   Effort& effort, base::Problems& problems) {
  for (const Neighbour& other : neighbours(layout)) {
    const double both = areaOf({patch, other.patch}, {}, pointer, effort, problems);
    if (both <= kNothing) continue;
    conflict(problems, pointer,
             Message("job.overlap-area").with("first", id).with("second", other.id).with("area", both));
  }
}

// The frame's reach from the face box, exact.
Reach frameReach(const Spandrel& spandrel, const Layout& layout) {
  if (spandrel.frameBand.empty()) return {spandrel.frameOffset, spandrel.frameOffset};
  return layout.band(spandrel.frameBand)->ring.from;
}

void placeSpandrel(const Job& job, const Spandrel& spandrel, Layout& layout, Effort& effort, base::Problems& problems) {
  const std::string& pointer = spandrel.place.pointer;
  SpandrelLayout placed;
  placed.id = spandrel.id;
  placed.ring = {Reach(), frameReach(spandrel, layout)};
  placed.frame = geometry::outside(faceRectangle(layout), placed.ring.to);
  const auto hole = roundWindow(layout, spandrel.shy.inMillimetres(), pointer + "/shy", spandrel.id, effort, problems);
  if (!hole) return;
  const Rectangle box = hole->bounds();
  const double over =
      std::max({placed.frame.left - box.left, box.right - placed.frame.right, placed.frame.top - box.top});
  if (over > 1e-9) {
    conflict(problems, pointer + "/shy",
             Message("job.spandrel-beyond-frame").with("id", spandrel.id).with("by", Millimetres{over}));
    return;
  }
  const double level = spandrel.fromSill ? faceRectangle(layout).bottom : layout.springing;
  const double under = spandrel.under.inMillimetres();
  placed.paper = movedOut(placed.frame, under);
  placed.paper.bottom = level;
  placed.frame.bottom = level;
  placed.cut = geometry::notched(placed.paper, *hole);
  placed.seen = geometry::notched(placed.frame, *hole);
  placed.area = placed.cut.area();
  if (placed.area <= kNothing) {
    conflict(problems, pointer, Message("job.spandrel-nowhere").with("id", spandrel.id));
    return;
  }
  const double trim = 2 * spandrel.trim.inMillimetres();
  const double longest =
      std::max(placed.paper.right - placed.paper.left, placed.paper.bottom - placed.paper.top) + trim;
  checkCuttable(longest, pointer + "/trim", Message("job.spandrel-too-long").with("id", spandrel.id), problems);
  checkReach(job, layout, placed.paper, spandrel.id, pointer + (under > 0 ? "/under" : "/frame"), problems);
  checkOverlaps(layout, spandrel.id, {placed.seen, {}}, pointer, effort, problems);
  layout.spandrels.push_back(std::move(placed));
}

// The narrowest distance between two outlines one of which holds the other, from the sides of their boxes: a moved
// outline touches its box on every side.
double narrowest(const Outline& inner, const Outline& outer) {
  const Rectangle a = inner.bounds();
  const Rectangle b = outer.bounds();
  return std::min({a.left - b.left, b.right - a.right, a.top - b.top, b.bottom - a.bottom});
}

bool placeBetween(const Wash& wash, const Layout& layout, WashLayout& placed) {
  const LineLayout* inner = layout.line(wash.lineA);
  const LineLayout* outer = layout.line(wash.lineB);
  const bool swapped = inner->curved == outer->curved ? outer->ring.from.sides < inner->ring.from.sides : outer->curved;
  if (swapped) std::swap(inner, outer);
  placed.inner = inner->outer;
  placed.outer = outer->inner;
  placed.ring = {inner->ring.to, outer->ring.from};
  placed.width = narrowest(placed.inner, placed.outer);
  if (inner->curved == outer->curved) {
    placed.width =
        std::min(placed.ring.to.sides - placed.ring.from.sides, placed.ring.to.topBottom - placed.ring.from.topBottom)
            .inMillimetres();
  }
  return placed.width > 0;
}

bool placeFollowing(const Wash& wash, const Layout& layout, WashLayout& placed, Effort& effort,
                    base::Problems& problems) {
  placed.width = wash.width.inMillimetres();
  placed.ring = ringOf({wash.along, wash.band, wash.gap, wash.width}, layout);
  if (!layout.shaped || wash.along != Edge::Window) {
    geometry::Patch patch = patchOf(layout, placed.ring);
    placed.inner = std::move(patch.inner);
    placed.outer = std::move(patch.outer);
    return true;
  }
  const std::string pointer = wash.place.pointer + "/gap";
  const double gap = wash.gap.inMillimetres();
  auto inner = roundWindow(layout, gap, pointer, wash.id, effort, problems);
  auto outer = roundWindow(layout, (wash.gap + wash.width).inMillimetres(), pointer, wash.id, effort, problems);
  if (!inner || !outer) return false;
  placed.inner = std::move(*inner);
  placed.outer = std::move(*outer);
  return true;
}

void placeWash(const Job& job, const Wash& wash, Layout& layout, Effort& effort, base::Problems& problems) {
  WashLayout placed;
  placed.id = wash.id;
  const std::string& pointer = wash.place.pointer;
  if (wash.between) {
    if (!placeBetween(wash, layout, placed)) {
      conflict(problems, pointer + "/between",
               Message("job.wash-nowhere")
                   .with("id", wash.id)
                   .with("first", wash.lineA)
                   .with("second", wash.lineB)
                   .with("by", Millimetres{-placed.width}));
      return;
    }
  } else if (!placeFollowing(wash, layout, placed, effort, problems)) {
    return;
  }
  const Length over = -std::min(placed.ring.from.sides, placed.ring.from.topBottom);
  if (over > Length()) {
    conflict(problems, pointer + "/gap", Message("job.wash-over-window").with("id", wash.id).with("by", mm(over)));
    return;
  }
  placed.area = areaOf({{placed.outer, placed.inner}}, {}, pointer, effort, problems);
  checkReach(job, layout, placed.outer.bounds(), wash.id, pointer + (wash.between ? "/between" : "/width"), problems);
  checkOverlaps(layout, wash.id, {placed.outer, placed.inner}, pointer, effort, problems);
  layout.washes.push_back(std::move(placed));
}

}  // namespace

void placeSpandrels(const Job& job, Layout& layout, Effort& effort, base::Problems& problems) {
  for (const Spandrel& spandrel : job.spandrels) placeSpandrel(job, spandrel, layout, effort, problems);
}

void placeWashes(const Job& job, Layout& layout, Effort& effort, base::Problems& problems) {
  for (const Wash& wash : job.washes) {
    if (!effort.spent()) placeWash(job, wash, layout, effort, problems);
  }
}

}  // namespace core::design::detail
