// Leaf fields: areas of regions with everything inside them left out, and the leaf and size they take.
#include <cmath>

#include "core/design/layout_internal.h"

namespace core::design::detail {
namespace {

using base::Message;
using geometry::FrameArea;
using geometry::Reach;
using geometry::Rectangle;
using geometry::Ring;

constexpr Length kEverything = units::kLongestLength;
// What is left under a thousandth of a square millimetre is rounding, not a field.
constexpr double kNothing = 1e-3;

Rectangle movedIn(const Rectangle& r, double by) { return {r.left + by, r.top + by, r.right - by, r.bottom - by}; }

// Whole leaves, up; a value within 1e-9 above a whole number is that number.
double wholeLeaves(double leaves) { return std::ceil(leaves - 1e-9); }

Ring regionRing(const Leaf& leaf, const Layout& layout) {
  const Reach everything{kEverything, kEverything};
  switch (leaf.region) {
    case RegionKind::Face: return {Reach(), everything};
    case RegionKind::Outside: return {layout.band(leaf.regionOf)->ring.to, everything};
    case RegionKind::Inside: return {Reach(), layout.band(leaf.regionOf)->ring.from};
    case RegionKind::On: return layout.band(leaf.regionOf)->ring;
    case RegionKind::Spandrel:
    case RegionKind::Bevel: break;
  }
  return {};
}

// The region from edge to edge of what bounds it, kept off its outer edge.
FrameArea regionBounds(const Leaf& leaf, const Ring& ring, const Layout& layout) {
  const Rectangle face = faceRectangle(layout);
  const bool toMountEdge = ring.to.sides == kEverything;
  const Rectangle outer = toMountEdge ? mountRectangle(layout) : geometry::outside(face, ring.to);
  return {movedIn(outer, leaf.keepOffEdge.inMillimetres()), geometry::outside(face, ring.from)};
}

// Everything that lies inside the region and is not leafed.
std::vector<FrameArea> leftOut(const Leaf& leaf, const Layout& layout) {
  const Rectangle face = faceRectangle(layout);
  std::vector<FrameArea> areas;
  for (const BandLayout& band : layout.bands) {
    if (leaf.region == RegionKind::On && leaf.regionOf == band.id) continue;
    areas.push_back({geometry::outside(face, band.ring.to), geometry::outside(face, band.ring.from)});
  }
  for (const LineLayout& line : layout.lines) {
    const Length k = leaf.keepOffLines;
    const Reach from{line.ring.from.sides - k, line.ring.from.topBottom - k};
    const Reach to{line.ring.to.sides + k, line.ring.to.topBottom + k};
    areas.push_back({geometry::outside(face, to), geometry::outside(face, from)});
  }
  return areas;
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
  FrameArea bounds;
  std::vector<FrameArea> without;
};

void checkAgainst(const Field& field, const Field& earlier, base::Problems& problems) {
  double both = 0;
  if (field.leaf->region == RegionKind::Bevel || earlier.leaf->region == RegionKind::Bevel) {
    const bool same = field.leaf->region == earlier.leaf->region && field.leaf->regionOf == earlier.leaf->regionOf;
    if (!same) return;
    conflict(problems, field.leaf->place.pointer + "/region",
             Message("job.leaf-twice").with("first", field.leaf->id).with("second", earlier.leaf->id));
    return;
  }
  std::vector<FrameArea> without = field.without;
  without.insert(without.end(), earlier.without.begin(), earlier.without.end());
  both = geometry::area({field.bounds, earlier.bounds}, without);
  if (both <= kNothing) return;
  conflict(
      problems, field.leaf->place.pointer + "/region",
      Message("job.leaf-overlap").with("first", field.leaf->id).with("second", earlier.leaf->id).with("area", both));
}

}  // namespace

void placeLeaf(const Job& job, Layout& layout, base::Problems& problems) {
  std::vector<Field> fields;
  for (const Leaf& leaf : job.leaf) {
    LeafLayout placed;
    placed.id = leaf.id;
    Field field{&leaf, {}, {}};
    if (leaf.region == RegionKind::Bevel) {
      placed.onBevel = true;
      placed.area = layout.board(leaf.regionOf)->bevelArea;
      if (leaf.keepOffEdge > Length() || leaf.keepOffLines > Length()) {
        conflict(problems, leaf.place.pointer + "/keepOff", Message("job.keep-off-bevel"));
      }
    } else {
      placed.ring = regionRing(leaf, layout);
      field.bounds = regionBounds(leaf, placed.ring, layout);
      field.without = leftOut(leaf, layout);
      placed.area = geometry::area({field.bounds}, field.without);
    }
    if (placed.area <= kNothing) {
      conflict(problems, leaf.place.pointer + "/region", Message("job.leaf-nowhere").with("leaf", leaf.id));
    }
    placed.sheets = sheetsFor(leaf, placed.area);
    placed.size = placed.area * 1e-6 * leaf.spread * (1 + leaf.potLoss);
    for (const Field& earlier : fields) checkAgainst(field, earlier, problems);
    fields.push_back(std::move(field));
    layout.leaf.push_back(std::move(placed));
  }
}

}  // namespace core::design::detail
