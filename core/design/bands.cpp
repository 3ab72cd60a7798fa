// Bands: rectangular rings round the box of the top board's face opening.
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

Box boxAt(const Layout& layout, const Reach& reach) {
  const Box& face = layout.boards.front().face;
  return {face.width + 2 * reach.sides.inMillimetres(), face.height + 2 * reach.topBottom.inMillimetres()};
}

// A band whose inner edge was marked elsewhere lies where it was marked, and the next follows it. Rings are whole
// nanometres, so the boxes of what follows are summed up from the mark itself.
void registerAsMarked(const Band& band, const AsMade& made, const BandLayout* before, const Box& face,
                      BandLayout& placed) {
  const auto settle = [&](const char* size, double Box::*way, bool BandLayout::*marked, Length offset,
                          Length Reach::*reach) {
    const auto pin = made.pin("band." + band.id + ".inner." + size);
    const bool follows = before != nullptr && before->*marked;
    if (!pin && !follows) return;
    placed.*marked = true;
    placed.inner.*way = pin ? pin->inMillimetres() : before->outer.*way + 2 * offset.inMillimetres();
    placed.outer.*way = placed.inner.*way + 2 * placed.width;
    placed.ring.from.*reach = Length::nanometres(std::llround((placed.inner.*way - face.*way) / 2 * 1e6));
    placed.ring.to.*reach = placed.ring.from.*reach + band.width;
  };
  settle("width", &Box::width, &BandLayout::markedAcross, band.offsetSides, &Reach::sides);
  settle("height", &Box::height, &BandLayout::markedDown, band.offsetTopBottom, &Reach::topBottom);
}

// Strips are as long as they were cut; what they reach beyond the outer corners is then their trim.
void placeStrips(const Band& band, const AsMade& made, BandLayout& placed, base::Problems& problems) {
  const double trim = band.trim.inMillimetres();
  const auto strip = [&](const char* lies, double outer, double& trimmed) {
    const auto pin = made.pin("band." + band.id + ".strip." + lies);
    trimmed = trim;
    if (!pin) return outer + 2 * trim;
    trimmed = (pin->inMillimetres() - outer) / 2;
    if (trimmed < -1e-9) {
      conflict(problems, band.place.pointer,
               Message("made.strip-too-short")
                   .with("band", band.id)
                   .with("strip", mm(*pin))
                   .with("outer", Millimetres{outer})
                   .with("by", Millimetres{-2 * trimmed}));
    }
    return pin->inMillimetres();
  };
  double trimHorizontal = 0, trimVertical = 0;
  placed.stripHorizontal = strip("horizontal", placed.outer.width, trimHorizontal);
  placed.stripVertical = strip("vertical", placed.outer.height, trimVertical);
  // Glue beginning too early would be cut through at the mitre; too late, it is only brushed in afterwards.
  placed.trim = std::max(trimHorizontal, trimVertical);
}

// A strip with its trim and, where it has one, the repeat it is cut longer by.
void checkStrips(const Band& band, const BandLayout& placed, base::Problems& problems) {
  const double strip = std::max(placed.stripHorizontal, placed.stripVertical);
  const auto tooLong = [&] { return Message("job.strip-too-long").with("band", band.id); };
  if (!checkCuttable(strip, band.place.pointer + "/trim", tooLong(), problems) || !band.repeat) return;
  const double repeat = band.repeat->inMillimetres();
  checkCuttable(strip + repeat, band.place.pointer + "/repeat",
                Message("job.strip-too-long-with-repeat").with("band", band.id), problems);
}

void placeDryEnds(const Band& band, BandLayout& placed, base::Problems& problems) {
  const Length least = band.width + kBeyondMitre;
  const Length usual = std::max(Length::wholeMillimetres(20), band.width + Length::wholeMillimetres(6));
  const Length dryEnd = band.dryEnd.value_or(usual);
  placed.dryEnd = dryEnd.inMillimetres();
  placed.glueFrom = placed.trim == band.trim.inMillimetres() ? (band.trim + dryEnd).inMillimetres()
                                                             : placed.trim + dryEnd.inMillimetres();
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

void placeBands(const Job& job, const AsMade& made, Layout& layout, base::Problems& problems) {
  Reach edge;
  for (const Band& band : job.bands) {
    BandLayout placed;
    placed.id = band.id;
    placed.ring.from = {edge.sides + band.offsetSides, edge.topBottom + band.offsetTopBottom};
    placed.ring.to = movedOut(placed.ring.from, band.width);
    placed.inner = boxAt(layout, placed.ring.from);
    placed.outer = boxAt(layout, placed.ring.to);
    placed.width = band.width.inMillimetres();
    registerAsMarked(band, made, layout.bands.empty() ? nullptr : &layout.bands.back(), layout.boards.front().face,
                     placed);
    edge = placed.ring.to;
    placed.mitre = placed.width * std::numbers::sqrt2;
    placed.area = 2 * placed.width * (placed.inner.width + placed.inner.height + 2 * placed.width);
    placeStrips(band, made, placed, problems);
    checkStrips(band, placed, problems);
    placeDryEnds(band, placed, problems);
    noticeMotif(band, problems);
    checkReach(job, layout, geometry::outside(faceRectangle(layout), placed.ring.to), band.id,
               band.place.pointer + "/width", problems);
    layout.bands.push_back(std::move(placed));
  }
}

}  // namespace core::design::detail
