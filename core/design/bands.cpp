// Bands: rectangular rings round the box of the top board's face opening.
#include <algorithm>
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

Box boxAt(const Layout& layout, const Reach& reach) {
  const Box& face = layout.boards.front().face;
  return {face.width + 2 * reach.sides.inMillimetres(), face.height + 2 * reach.topBottom.inMillimetres()};
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
    checkReach(job, layout, geometry::outside(faceRectangle(layout), placed.ring.to), band.id,
               band.place.pointer + "/width", problems);
    layout.bands.push_back(std::move(placed));
  }
}

}  // namespace core::design::detail
