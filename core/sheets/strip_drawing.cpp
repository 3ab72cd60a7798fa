#include "core/sheets/strip_drawing.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

#include "core/base/text.h"
#include "core/sheets/piece_matter.h"
#include "core/sheets/places.h"

namespace core::sheets {
namespace {

using design::BandLayout;
using design::Figure;

// Half the strokes at a dimension's ends, and how far above the strip it lies, in widths of the strip.
constexpr double kEnd = 0.4;
constexpr double kAbove = 0.7;

// From the strip's left end, or across it from its outer edge.
struct Span {
  double from = 0, to = 0;
  bool across = false;
};

// Where on a strip of that length a figure is measured.
std::optional<Span> spanOf(const Figure& figure, const BandLayout& band, double length) {
  const auto is = [&](std::string_view kind) { return figure.kind == kind; };
  if (is("band.strip.horizontal") || is("band.strip.vertical")) return Span{0, length};
  if (is("band.glueFrom") || is("band.firstMotif.horizontal") || is("band.firstMotif.vertical"))
    return Span{0, figure.value};
  if (is("band.dryEnd")) return Span{band.trim, band.trim + figure.value};
  if (is("band.strip.width")) return Span{0, band.width, true};
  return std::nullopt;
}

}  // namespace

std::optional<StripInHand> drawStrip(const design::Design& design, const std::string& figureId) {
  const Figure* figure = design.figures.find(figureId);
  if (figure == nullptr) return std::nullopt;
  const auto& bands = design.layout.bands;
  const auto band =
      std::find_if(bands.begin(), bands.end(), [&](const auto& one) { return one.id == figure->element; });
  if (band == bands.end()) return std::nullopt;
  const bool upright = base::endsWith(figure->kind, ".vertical");
  const double length = upright ? band->stripVertical : band->stripHorizontal;
  const auto span = spanOf(*figure, *band, length);
  if (!span || !(length > 0)) return std::nullopt;

  const detail::Rectangle inner = detail::around(detail::topFace(design.layout), band->inner);
  const std::array<Point, 4> inside = detail::clockwise(inner);
  const std::size_t side = upright ? 3 : 0;
  Matter matter =
      detail::stripOf(design.job.bands[static_cast<std::size_t>(band - bands.begin())], *band, inside, side);
  if (matter.run) {
    const double onInner = geometry::dot(matter.run->from - inside[side], matter.run->along);
    const double overhang = (length - geometry::distance(inside[side], inside[(side + 1) % 4])) / 2;
    matter.run->from = {onInner + overhang, band->width};
    matter.run->along = {1, 0};
    matter.run->outwards = {0, -1};
  }
  StripInHand result;
  result.strip.width = length;
  result.strip.height = band->width;
  result.strip.primitives.push_back({band->id, Role::Band,
                                     Stroke{{{0, 0}, {length, 0}, {length, band->width}, {0, band->width}}, true},
                                     std::move(matter)});
  // Beside the strip: above its length, before its left end where it goes across.
  const double beside = -kAbove * band->width;
  const double end = kEnd * band->width;
  const auto line = [&](Point from, Point to) {
    if (span->across) std::swap(from.x, from.y), std::swap(to.x, to.y);
    result.dimension.push_back({band->id, Role::Dimension, Stroke{{from, to}, false}});
  };
  line({span->from, beside}, {span->to, beside});
  for (const double at : {span->from, span->to}) line({at, beside - end}, {at, beside + end});
  return result;
}

}  // namespace core::sheets
