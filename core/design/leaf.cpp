// Leaf fields: areas of regions with everything inside them left out, and the leaf and size they take.
#include <algorithm>
#include <cmath>
#include <iterator>

#include "core/design/layout_internal.h"

namespace core::design::detail {
namespace {

using base::Message;
using geometry::Patch;
using geometry::Reach;
using geometry::Ring;

constexpr Length kEverything = units::kLongestLength;
// Whole leaves, up; a value within 1e-9 above a whole number is that number.
double wholeLeaves(double leaves) { return std::ceil(leaves - 1e-9); }

Ring regionRing(const Leaf& leaf, const Layout& layout) {
  const Reach everything{kEverything, kEverything};
  switch (leaf.region) {
    case RegionKind::Face: return {Reach(), everything};
    case RegionKind::Outside: return {layout.band(leaf.regionOf)->ring.to, everything};
    case RegionKind::Inside: return {Reach(), layout.band(leaf.regionOf)->ring.from};
    case RegionKind::On: return layout.band(leaf.regionOf)->ring;
    case RegionKind::Spandrel: return layout.spandrel(leaf.regionOf)->ring;
    case RegionKind::Bevel: break;
  }
  return {};
}

// The region from edge to edge of what bounds it, kept off its outer edge.
void placeBounds(const Leaf& leaf, const Layout& layout, LeafLayout& placed) {
  const double keepOff = leaf.keepOffEdge.inMillimetres();
  if (leaf.region == RegionKind::Spandrel) {
    const SpandrelLayout& spandrel = *layout.spandrel(leaf.regionOf);
    Rectangle outer = geometry::movedOut(spandrel.frame, -keepOff);
    // Below it ends in the air, at a line nobody sees.
    outer.bottom = spandrel.frame.bottom;
    placed.outer = outer.empty() ? Outline() : geometry::outlineOf(outer);
    return;
  }
  const Rectangle face = faceRectangle(layout);
  const bool toMountEdge = placed.ring.to.sides == kEverything;
  const Rectangle outer =
      geometry::movedOut(toMountEdge ? mountRectangle(layout) : geometry::outside(face, placed.ring.to), -keepOff);
  placed.outer = outer.empty() ? Outline() : geometry::outlineOf(outer);
  const bool fromWindow = leaf.region == RegionKind::Face || leaf.region == RegionKind::Inside;
  placed.inner =
      fromWindow ? layout.boards.front().faceOutline : geometry::outlineOf(geometry::outside(face, placed.ring.from));
}

// A line with what is kept off beside it.
bool addLine(const Leaf& leaf, const LineLayout& line, const Layout& layout, std::vector<Patch>& areas, Effort& effort,
             base::Problems& problems) {
  const Length k = leaf.keepOffLines;
  const Reach from{line.ring.from.sides - k, line.ring.from.topBottom - k};
  const Reach to{line.ring.to.sides + k, line.ring.to.topBottom + k};
  if (k == Length()) {
    areas.push_back({line.outer, line.inner});
    return true;
  }
  if (!line.curved) {
    areas.push_back(patchOf(layout, {from, to}));
    return true;
  }
  const std::string pointer = leaf.place.pointer + "/keepOff/lines";
  auto outer = roundWindow(layout, to.sides.inMillimetres(), pointer, leaf.id, effort, problems);
  if (!outer) return false;
  // Within the opening there is nothing to keep off.
  Outline inner = layout.boards.front().faceOutline;
  if (from.sides > Length()) {
    auto moved = roundWindow(layout, from.sides.inMillimetres(), pointer, leaf.id, effort, problems);
    if (!moved) return false;
    inner = std::move(*moved);
  }
  areas.push_back({std::move(*outer), std::move(inner)});
  return true;
}

// Everything that lies inside the region and is not leafed.
std::optional<std::vector<Patch>> leftOut(const Leaf& leaf, const Layout& layout, Effort& effort,
                                          base::Problems& problems) {
  std::vector<Patch> areas;
  for (const BandLayout& band : layout.bands) {
    if (leaf.region == RegionKind::On && leaf.regionOf == band.id) continue;
    areas.push_back(patchOf(layout, band.ring));
  }
  for (const LineLayout& line : layout.lines) {
    if (!addLine(leaf, line, layout, areas, effort, problems)) return std::nullopt;
  }
  for (const SpandrelLayout& spandrel : layout.spandrels) {
    if (leaf.region == RegionKind::Spandrel && leaf.regionOf == spandrel.id) continue;
    areas.push_back({spandrel.seen, {}});
  }
  for (const WashLayout& wash : layout.washes) areas.push_back({wash.outer, wash.inner});
  return areas;
}

// The patches a field lies in: of a spandrel also what of it shows.
std::vector<Patch> within(const Leaf& leaf, const LeafLayout& placed, const Layout& layout) {
  std::vector<Patch> patches = {{placed.outer, placed.inner}};
  if (leaf.region == RegionKind::Spandrel) patches.push_back({layout.spandrel(leaf.regionOf)->seen, {}});
  return patches;
}

double sheetsFor(const Leaf& leaf, double area) {
  const double width = leaf.leafWidth.inMillimetres();
  const double height = leaf.leafHeight.inMillimetres();
  if (leaf.method == LeafMethod::Laid) {
    const double lap = leaf.lap.inMillimetres();
    return wholeLeaves(area * (1 + leaf.waste) / ((width - lap) * (height - lap)));
  }
  return wholeLeaves(area * leaf.coverage / ((1 - leaf.waste) * width * height));
}

struct Field {
  const Leaf* leaf;
  std::vector<Patch> within;
  std::vector<Patch> without;
};

void checkAgainst(const Field& field, const Field& earlier, Effort& effort, base::Problems& problems) {
  if (field.leaf->region == RegionKind::Bevel || earlier.leaf->region == RegionKind::Bevel) {
    const bool same = field.leaf->region == earlier.leaf->region && field.leaf->regionOf == earlier.leaf->regionOf;
    if (!same) return;
    conflict(problems, field.leaf->place.pointer + "/region",
             Message("job.leaf-twice").with("first", field.leaf->id).with("second", earlier.leaf->id));
    return;
  }
  std::vector<Patch> inside = field.within;
  inside.insert(inside.end(), earlier.within.begin(), earlier.within.end());
  // What neither is laid on is mostly the same for both.
  std::vector<Patch> without = field.without;
  std::copy_if(earlier.without.begin(), earlier.without.end(), std::back_inserter(without), [&](const Patch& patch) {
    return std::find(field.without.begin(), field.without.end(), patch) == field.without.end();
  });
  const double both = areaOf(inside, without, field.leaf->place.pointer + "/region", effort, problems);
  if (both <= kNothing) return;
  conflict(
      problems, field.leaf->place.pointer + "/region",
      Message("job.leaf-overlap").with("first", field.leaf->id).with("second", earlier.leaf->id).with("area", both));
}

}  // namespace

void placeLeaf(const Job& job, Layout& layout, Effort& effort, base::Problems& problems) {
  std::vector<Field> fields;
  for (const Leaf& leaf : job.leaf) {
    if (effort.spent()) return;
    LeafLayout placed;
    placed.id = leaf.id;
    Field field{&leaf, {}, {}};
    if (leaf.region == RegionKind::Bevel) {
      placed.onBevel = true;
      const BoardLayout& board = *layout.board(leaf.regionOf);
      placed.area = board.bevelArea;
      placed.within = {{board.faceOutline, board.sightOutline}};
      if (leaf.keepOffEdge > Length() || leaf.keepOffLines > Length()) {
        conflict(problems, leaf.place.pointer + "/keepOff", Message("job.keep-off-bevel"));
      }
    } else {
      placed.ring = regionRing(leaf, layout);
      placeBounds(leaf, layout, placed);
      auto without = leftOut(leaf, layout, effort, problems);
      if (!without) continue;
      field.within = within(leaf, placed, layout);
      field.without = std::move(*without);
      placed.area = areaOf(field.within, field.without, leaf.place.pointer, effort, problems);
      if (effort.spent()) return;
    }
    if (placed.area <= kNothing) {
      conflict(problems, leaf.place.pointer + "/region", Message("job.leaf-nowhere").with("leaf", leaf.id));
    }
    placed.sheets = sheetsFor(leaf, placed.area);
    placed.size = placed.area * 1e-6 * leaf.spread * (1 + leaf.potLoss);
    for (const Field& earlier : fields) checkAgainst(field, earlier, effort, problems);
    if (!placed.onBevel) {
      placed.within = field.within;
      placed.without = field.without;
    }
    fields.push_back(std::move(field));
    layout.leaf.push_back(std::move(placed));
  }
}

}  // namespace core::design::detail
