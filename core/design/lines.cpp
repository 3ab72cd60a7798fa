// Lines: what follows an edge of a band or the window, and what must not overlap or hang over.
#include <algorithm>
#include <cmath>

#include "core/design/layout_internal.h"

namespace core::design::detail {
namespace {

using base::Message;
using base::Millimetres;
using geometry::Reach;
using geometry::Ring;

// Shapes whose corners are square somewhere: an arch has its sill.
bool hasSquareCorners(Shape shape) { return shape == Shape::Rectangle || shape == Shape::Arch; }

void checkOverWindow(const Line& line, const LineLayout& placed, base::Problems& problems) {
  const Length over = -std::min(placed.ring.from.sides, placed.ring.from.topBottom);
  if (over <= Length()) return;
  const bool followsIt = line.along == Edge::Window;
  conflict(
      problems, line.place.pointer + "/gap",
      Message(followsIt ? "job.line-onto-bevel" : "job.line-over-window").with("line", line.id).with("by", mm(over)),
      followsIt ? base::Severity::Notice : base::Severity::Error);
}

Lie lieOf(const LineLayout& line) { return {line.ring, line.curved, line.outer.bounds()}; }

Lie lieOf(const Layout& layout, const BandLayout& band) {
  return {band.ring, false, geometry::outside(faceRectangle(layout), band.ring.to)};
}

void checkOverlaps(const Job& job, const Layout& layout, std::size_t index, base::Problems& problems) {
  const Line& line = job.lines[index];
  const LineLayout& placed = layout.lines[index];
  const auto check = [&](const std::string& other, const Lie& lie) {
    const double by = overlapOf(layout, lieOf(placed), lie);
    if (by <= 0) return;
    conflict(problems, line.place.pointer,
             Message("job.overlap").with("first", line.id).with("second", other).with("by", Millimetres{by}));
  };
  for (const BandLayout& band : layout.bands) {
    // Covering the edge it follows is what a negative gap is for, and the gap goes no further than the width;
    // but a line wider than its band would come out on the other side of it.
    const bool followed = line.along != Edge::Window && line.band == band.id;
    if (!followed) {
      check(band.id, lieOf(layout, band));
    } else if (-line.gap > band.ring.to.sides - band.ring.from.sides) {
      conflict(problems, line.place.pointer + "/gap",
               Message("job.line-across-band")
                   .with("line", line.id)
                   .with("band", band.id)
                   .with("by", mm(-line.gap - (band.ring.to.sides - band.ring.from.sides))));
    }
  }
  for (std::size_t i = 0; i < index; ++i) check(layout.lines[i].id, lieOf(layout.lines[i]));
}

// The path in a shaped window: the face outline moved out to both edges and to the centre. False where it cannot be.
bool placeCurved(const Line& line, const Layout& layout, LineLayout& placed, Effort& effort, base::Problems& problems) {
  const std::string pointer = line.place.pointer + "/gap";
  const double gap = line.gap.inMillimetres();
  auto inner = roundWindow(layout, gap, pointer, line.id, effort, problems);
  if (!inner) return false;
  auto centre = roundWindow(layout, gap + placed.width / 2, pointer, line.id, effort, problems);
  if (!centre) return false;
  auto outer = roundWindow(layout, (line.gap + line.width).inMillimetres(), pointer, line.id, effort, problems);
  if (!outer) return false;
  placed.inner = std::move(*inner);
  placed.centre = std::move(*centre);
  placed.outer = std::move(*outer);
  const Rectangle box = placed.centre.bounds();
  placed.path = {box.right - box.left, box.bottom - box.top};
  placed.total = placed.centre.perimeter();
  placed.fromFaceSides = placed.fromFaceTopBottom = gap + placed.width / 2;
  return true;
}

void placeRectangular(const Layout& layout, LineLayout& placed) {
  const Rectangle face = faceRectangle(layout);
  const Box& box = layout.boards.front().face;
  const Reach& from = placed.ring.from;
  const Box inner{box.width + 2 * from.sides.inMillimetres(), box.height + 2 * from.topBottom.inMillimetres()};
  placed.path = inner.movedOut(placed.width / 2);
  placed.total = placed.path.perimeter();
  placed.fromFaceSides = (placed.path.width - box.width) / 2;
  placed.fromFaceTopBottom = (placed.path.height - box.height) / 2;
  const double x = placed.fromFaceSides;
  const double y = placed.fromFaceTopBottom;
  placed.centre = geometry::outlineOf(Rectangle{face.left - x, face.top - y, face.right + x, face.bottom + y});
  geometry::Patch patch = patchOf(layout, placed.ring);
  placed.inner = std::move(patch.inner);
  placed.outer = std::move(patch.outer);
}

// How far a rectangle hangs over the edge of the mount, on its worst side.
struct Overhang {
  double by = 0;
  std::string side;
};

Overhang beyondMount(const Layout& layout, const Rectangle& reach) {
  const Rectangle mount = mountRectangle(layout);
  const std::pair<double, const char*> overs[] = {{mount.top - reach.top, "top"},
                                                  {reach.bottom - mount.bottom, "bottom"},
                                                  {mount.left - reach.left, "left"},
                                                  {reach.right - mount.right, "right"}};
  const auto worst = std::max_element(std::begin(overs), std::end(overs),
                                      [](const auto& a, const auto& b) { return a.first < b.first; });
  // Within a millionth of a millimetre it lies on the edge.
  return worst->first > 1e-6 ? Overhang{worst->first, worst->second} : Overhang{};
}

}  // namespace

Ring ringOf(const Followed& followed, const Layout& layout) {
  const Length gap = followed.gap;
  const Length width = followed.width;
  if (followed.along == Edge::Window) return {movedOut(Reach(), gap), movedOut(Reach(), gap + width)};
  const Ring& band = layout.band(followed.band)->ring;
  if (followed.along == Edge::BandOuter) return {movedOut(band.to, gap), movedOut(band.to, gap + width)};
  return {movedOut(band.from, -(gap + width)), movedOut(band.from, -gap)};
}

double overlapOf(const Layout& layout, const Lie& a, const Lie& b) {
  if (a.curved == b.curved) return geometry::overlap(a.ring, b.ring).inMillimetres();
  const Lie& curved = a.curved ? a : b;
  const Lie& straight = a.curved ? b : a;
  const Rectangle inner = geometry::outside(faceRectangle(layout), straight.ring.from);
  const double by = std::max({inner.left - curved.reach.left, curved.reach.right - inner.right,
                              inner.top - curved.reach.top, curved.reach.bottom - inner.bottom});
  // The last bits of an outline's points do not overlap anything.
  return std::fabs(by) < 1e-9 ? 0 : by;
}

void checkReach(const Job& job, const Layout& layout, const Rectangle& reach, const std::string& id,
                const std::string& pointer, base::Problems& problems) {
  if (const Overhang over = beyondMount(layout, reach); over.by > 0) {
    conflict(problems, pointer,
             Message("job.beyond-mount").with("id", id).with("side", over.side).with("by", Millimetres{over.by}));
    return;
  }
  // What reaches under the frame's lip is made for nothing: the maker should know, but may mean it.
  const double seen = std::min({layout.framedLeft, layout.framedRight, layout.framedTop, layout.framedBottom});
  const Rectangle face = faceRectangle(layout);
  const double furthest =
      std::max({face.left - reach.left, reach.right - face.right, face.top - reach.top, reach.bottom - face.bottom});
  if (seen <= 0 || furthest <= seen + 1e-6) return;
  conflict(problems, pointer,
           Message("job.under-lip")
               .with("id", id)
               .with("cover", mm(job.rebate.cover))
               .with("by", Millimetres{furthest - seen}),
           base::Severity::Notice);
}

void placeLines(const Job& job, Layout& layout, Effort& effort, base::Problems& problems) {
  for (std::size_t i = 0; i < job.lines.size(); ++i) {
    if (effort.spent()) return;
    const Line& line = job.lines[i];
    LineLayout placed;
    placed.id = line.id;
    placed.width = line.width.inMillimetres();
    // Halves of odd nanometres are not lengths, so the centre is taken in double.
    placed.offset = std::fabs(line.gap.inMillimetres() + placed.width / 2);
    placed.ring = ringOf({line.along, line.band, line.gap, line.width}, layout);
    placed.curved = layout.shaped && line.along == Edge::Window;
    placed.corners = !placed.curved || hasSquareCorners(job.window.form.shape);
    if (!placed.curved) placeRectangular(layout, placed);
    const bool good = !placed.curved || placeCurved(line, layout, placed, effort, problems);
    layout.lines.push_back(std::move(placed));
    if (!good) continue;
    checkOverWindow(line, layout.lines.back(), problems);
    checkReach(job, layout, layout.lines.back().outer.bounds(), line.id, line.place.pointer + "/gap", problems);
    checkOverlaps(job, layout, i, problems);
  }
}

}  // namespace core::design::detail
