#include "core/materials/strip_order.h"

#include <array>
#include <cmath>

#include "core/materials/repeat_match_internal.h"

namespace core::materials {
namespace {

using design::Motif;

// From 0 up to the repeat; what rounding left below a whole one is nothing.
double within(double value, double repeat) {
  double rest = std::fmod(value, repeat);
  if (rest < 0) rest += repeat;
  return rest > repeat - 1e-9 ? 0 : rest;
}

bool level(StripSide side) { return side == StripSide::Top || side == StripSide::Bottom; }

// Returns how far inside the outer corner the points are between which the pattern runs on, measured along the strip.
double insideCorner(const RunRound& round, double width) {
  switch (round.best) {
    case RunRound::Along::Outer: return 0;
    case RunRound::Along::Mean: return width / 2;
    case RunRound::Along::Inner: return width;
  }
  return 0;
}

}  // namespace

StripOrder stripOrder(const design::Band& band, const design::BandLayout& placed) {
  const auto round = runRound(band, placed);
  const double repeat = band.repeat && band.motif != Motif::Plain ? band.repeat->inMillimetres() : 0;
  const double inside = round ? insideCorner(*round, placed.width) : 0;
  using enum StripSide;
  const std::array order = round ? std::array{Bottom, Left, Top, Right} : std::array{Top, Right, Bottom, Left};
  StripOrder result;
  double point = 0;  // directional: where on the run the pattern of the next strip's first corner is
  for (const StripSide side : order) {
    StripCut strip;
    strip.number = static_cast<int>(result.strips.size()) + 1;
    strip.side = side;
    strip.length = level(side) ? placed.stripHorizontal : placed.stripVertical;
    const double outer = level(side) ? placed.outer.width : placed.outer.height;
    const double trim = (strip.length - outer) / 2;
    if (repeat > 0 && !round) {
      strip.firstMotif =
          detail::firstMotif(strip.length, level(side) ? band.centreHorizontal : band.centreVertical, repeat);
    }
    if (!result.strips.empty()) {
      // The phase wanted at the strip's cut end, against the run's own.
      const double begin = round ? point - inside - trim : result.strips.front().firstMotif - strip.firstMotif;
      if (repeat > 0) strip.lost = within(begin - result.run, repeat);
      strip.begin = result.run + strip.lost;
    }
    if (round) {
      strip.firstMotif = within(-strip.begin, repeat);
      point = strip.begin + trim + outer - inside;
    }
    result.run = strip.begin + strip.length;
    result.lost += strip.lost;
    result.strips.push_back(strip);
  }
  return result;
}

}  // namespace core::materials
