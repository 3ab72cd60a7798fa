// Bands and lines: rings round the top board's face opening.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/design/layout_internal.h"

namespace core::design::detail {
namespace {

using base::Message;
using base::Millimetres;
using geometry::Reach;
using geometry::Ring;

// Dry ends leave at least this beyond the mitre, so that the cut never crosses glued paper.
constexpr Length kBeyondMitre = Length::wholeMillimetres(2);

Reach movedOut(const Reach& reach, Length by) { return {reach.sides + by, reach.topBottom + by}; }

Box boxAt(const Layout& layout, const Reach& reach) {
  const Box& face = layout.boards.front().face;
  return {face.width + 2 * reach.sides.inMillimetres(), face.height + 2 * reach.topBottom.inMillimetres()};
}

// By how much a ring hangs over the outer edge of the mount, on its worst side.
struct Overhang {
  double by = 0;
  std::string side;
};

Overhang beyondMount(const Layout& layout, const Ring& ring) {
  const double sides = ring.to.sides.inMillimetres();
  const double topBottom = ring.to.topBottom.inMillimetres();
  const std::pair<double, const char*> overs[] = {{topBottom - layout.seenTop, "top"},
                                                  {topBottom - layout.seenBottom, "bottom"},
                                                  {sides - layout.seenLeft, "left"},
                                                  {sides - layout.seenRight, "right"}};
  const auto worst = std::max_element(std::begin(overs), std::end(overs),
                                      [](const auto& a, const auto& b) { return a.first < b.first; });
  // Within a millionth of a millimetre it lies on the edge.
  return worst->first > 1e-6 ? Overhang{worst->first, worst->second} : Overhang{};
}

// What reaches under the frame's lip is made for nothing: the maker should know, but may mean it.
void noticeUnderLip(const Job& job, const Layout& layout, const Ring& ring, const std::string& id,
                    const std::string& pointer, base::Problems& problems) {
  const double seen = std::min({layout.framedLeft, layout.framedRight, layout.framedTop, layout.framedBottom});
  const double reach = std::max(ring.to.sides.inMillimetres(), ring.to.topBottom.inMillimetres());
  if (seen <= 0 || reach <= seen + 1e-6) return;
  conflict(
      problems, pointer,
      Message("job.under-lip").with("id", id).with("cover", mm(job.rebate.cover)).with("by", Millimetres{reach - seen}),
      base::Severity::Notice);
}

void placeDryEnds(const Band& band, BandLayout& placed, base::Problems& problems) {
  const Length least = band.width + kBeyondMitre;
  const Length usual = std::max(Length::wholeMillimetres(20), band.width + Length::wholeMillimetres(6));
  const Length dryEnd = band.dryEnd.value_or(usual);
  placed.dryEnd = dryEnd.inMillimetres();
  placed.glueFrom = (band.trim + dryEnd).inMillimetres();
  if (dryEnd < least) {
    conflict(problems, band.place.pointer + "/dryEnd",
             Message("job.dry-end-too-short")
                 .with("band", band.id)
                 .with("dryEnd", mm(dryEnd))
                 .with("least", mm(least))
                 .with("by", mm(least - dryEnd)));
  }
  const double shorter = std::min(placed.outer.width, placed.outer.height);
  if (2 * placed.dryEnd >= shorter) {
    conflict(problems, band.place.pointer + (band.dryEnd ? "/dryEnd" : "/width"),
             Message("job.dry-ends-meet")
                 .with("band", band.id)
                 .with("dryEnd", mm(dryEnd))
                 .with("side", Millimetres{shorter})
                 .with("by", Millimetres{2 * placed.dryEnd - shorter}));
  }
}

void noticeMotif(const Band& band, base::Problems& problems) {
  if (band.motif == Motif::Directional) {
    conflict(problems, band.place.pointer + "/motif", Message("job.directional-corners").with("band", band.id),
             base::Severity::Notice);
  } else if (band.motif == Motif::Mirror && !band.repeat) {
    conflict(problems, band.place.pointer + "/motif", Message("job.mirror-without-repeat").with("band", band.id),
             base::Severity::Notice);
  }
}

Ring ringOf(const Line& line, const Layout& layout) {
  if (line.along == Edge::Window) {
    const Reach edge;
    return {movedOut(edge, line.gap), movedOut(edge, line.gap + line.width)};
  }
  const Ring& band = layout.band(line.band)->ring;
  if (line.along == Edge::BandOuter) {
    return {movedOut(band.to, line.gap), movedOut(band.to, line.gap + line.width)};
  }
  return {movedOut(band.from, -(line.gap + line.width)), movedOut(band.from, -line.gap)};
}

void checkOverWindow(const Line& line, const LineLayout& placed, base::Problems& problems) {
  const Length over = -std::min(placed.ring.from.sides, placed.ring.from.topBottom);
  if (over <= Length()) return;
  const bool followsIt = line.along == Edge::Window;
  conflict(
      problems, line.place.pointer + "/gap",
      Message(followsIt ? "job.line-onto-bevel" : "job.line-over-window").with("line", line.id).with("by", mm(over)),
      followsIt ? base::Severity::Notice : base::Severity::Error);
}

void checkOverlaps(const Job& job, const Layout& layout, std::size_t index, base::Problems& problems) {
  const Line& line = job.lines[index];
  const Ring& ring = layout.lines[index].ring;
  const auto check = [&](const std::string& other, const Ring& otherRing) {
    const Length by = geometry::overlap(ring, otherRing);
    if (by <= Length()) return;
    conflict(problems, line.place.pointer,
             Message("job.overlap").with("first", line.id).with("second", other).with("by", mm(by)));
  };
  for (const BandLayout& band : layout.bands) {
    // Covering the edge it follows is what a negative gap is for, and the gap goes no further than the width;
    // but a line wider than its band would come out on the other side of it.
    const bool followed = line.along != Edge::Window && line.band == band.id;
    if (!followed) {
      check(band.id, band.ring);
    } else if (-line.gap > band.ring.to.sides - band.ring.from.sides) {
      conflict(problems, line.place.pointer + "/gap",
               Message("job.line-across-band")
                   .with("line", line.id)
                   .with("band", band.id)
                   .with("by", mm(-line.gap - (band.ring.to.sides - band.ring.from.sides))));
    }
  }
  for (std::size_t i = 0; i < index; ++i) check(layout.lines[i].id, layout.lines[i].ring);
}

}  // namespace

void placeBands(const Job& job, Layout& layout, base::Problems& problems) {
  Reach edge;
  for (const Band& band : job.bands) {
    BandLayout placed;
    placed.id = band.id;
    placed.ring.from = {edge.sides + band.offsetSides, edge.topBottom + band.offsetTopBottom};
    placed.ring.to = movedOut(placed.ring.from, band.width);
    edge = placed.ring.to;
    placed.inner = boxAt(layout, placed.ring.from);
    placed.outer = boxAt(layout, placed.ring.to);
    placed.width = band.width.inMillimetres();
    placed.stripHorizontal = placed.outer.width + 2 * band.trim.inMillimetres();
    placed.stripVertical = placed.outer.height + 2 * band.trim.inMillimetres();
    placed.mitre = placed.width * std::numbers::sqrt2;
    placed.area = 2 * placed.width * (placed.inner.width + placed.inner.height + 2 * placed.width);
    placeDryEnds(band, placed, problems);
    noticeMotif(band, problems);
    if (const Overhang over = beyondMount(layout, placed.ring); over.by > 0) {
      conflict(
          problems, band.place.pointer + "/width",
          Message("job.beyond-mount").with("id", band.id).with("side", over.side).with("by", Millimetres{over.by}));
    } else {
      noticeUnderLip(job, layout, placed.ring, band.id, band.place.pointer, problems);
    }
    layout.bands.push_back(std::move(placed));
  }
}

void placeLines(const Job& job, Layout& layout, base::Problems& problems) {
  for (std::size_t i = 0; i < job.lines.size(); ++i) {
    const Line& line = job.lines[i];
    LineLayout placed;
    placed.id = line.id;
    placed.width = line.width.inMillimetres();
    // Halves of odd nanometres are not lengths, so the centre is taken in double.
    placed.offset = std::fabs(line.gap.inMillimetres() + placed.width / 2);
    placed.ring = ringOf(line, layout);
    const Box from = boxAt(layout, placed.ring.from);
    placed.path = from.movedOut(placed.width / 2);
    layout.lines.push_back(placed);
    checkOverWindow(line, layout.lines.back(), problems);
    if (const Overhang over = beyondMount(layout, placed.ring); over.by > 0) {
      conflict(
          problems, line.place.pointer + "/gap",
          Message("job.beyond-mount").with("id", line.id).with("side", over.side).with("by", Millimetres{over.by}));
    } else {
      noticeUnderLip(job, layout, placed.ring, line.id, line.place.pointer, problems);
    }
    checkOverlaps(job, layout, i, problems);
  }
}

}  // namespace core::design::detail
