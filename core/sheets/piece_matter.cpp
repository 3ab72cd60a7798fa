#include "core/sheets/piece_matter.h"

#include <cmath>

#include "core/materials/repeat_match.h"
#include "core/sheets/scatter.h"

namespace core::sheets::detail {
namespace {

using design::Centring;
using design::Motif;

Matter made(Substance substance, std::string name) {
  Matter matter;
  matter.substance = substance;
  matter.name = std::move(name);
  return matter;
}

// A pattern that runs on begins at the bottom left corner, up the left side and round clockwise, so that the one
// corner where it may fail to meet is at the bottom. Returns how far along a strip's inner edge its first motif stands.
double runningStart(const design::Band& band, const design::BandLayout& placed, std::size_t strip, double repeat) {
  constexpr std::array<std::size_t, 4> kPlaceInRun = {1, 2, 3, 0};  // of top, right, bottom, left
  const auto round = materials::runRound(band, placed);
  using Along = materials::RunRound::Along;
  // How far outside the inner edge the line lies along which the repeats are counted.
  const double out = !round || round->best == Along::Inner ? 0
                     : round->best == Along::Outer         ? placed.width
                                                           : placed.width / 2;
  double run = 0;
  for (std::size_t before = 0; before < kPlaceInRun[strip]; ++before) {
    run += (before % 2 == 0 ? placed.inner.height : placed.inner.width) + 2 * out;
  }
  return std::fmod(std::ceil(run / repeat) * repeat - run + repeat / 2, repeat) - out;
}

}  // namespace

Matter matterOf(const design::Board& board) { return made(Substance::Board, board.material); }

Matter coreOf(const design::Board& board) { return made(Substance::Core, board.material); }

Matter bevelOf(const design::Board& board) {
  return board.bevelColour ? made(Substance::Paint, *board.bevelColour) : coreOf(board);
}

Matter matterOf(const design::Line& line) {
  Matter matter = made(Substance::Pigment, line.colour);
  matter.width = line.width.inMillimetres();
  return matter;
}

Matter matterOf(const design::Wash& wash, const design::WashLayout& placed) {
  Matter matter = made(Substance::Wash, wash.colour);
  matter.width = placed.width;
  return matter;
}

Matter matterOf(const design::Spandrel& spandrel) { return made(Substance::Paper, spandrel.paper); }

Matter leafOf(const design::Design& design, std::size_t index) {
  const design::Leaf& entered = design.job.leaf[index];
  const design::LeafLayout& placed = design.layout.leaf[index];
  if (entered.method == design::LeafMethod::Scattered) {
    Matter matter = made(Substance::Flake, "");
    const std::string seed = design.job.title + '\n' + design.job.reference + '\n' + entered.id;
    // A bevel is seen from above, narrower than its slope.
    const double area = placed.onBevel ? geometry::area(placed.within, {}) : placed.area;
    matter.scatter =
        std::make_shared<const Scatter>(strewn(placed.within, placed.without, area, entered.coverage, seed));
    return matter;
  }
  Matter matter = made(Substance::LaidLeaf, "");
  matter.scatter = std::make_shared<const Scatter>(Scatter{{}, placed.within, placed.without});
  matter.lap = entered.lap.inMillimetres();
  matter.leafWidth = entered.leafWidth.inMillimetres() - matter.lap;
  matter.leafHeight = entered.leafHeight.inMillimetres() - matter.lap;
  return matter;
}

Matter stripOf(const design::Band& band, const design::BandLayout& placed, const std::array<Point, 4>& inside,
               std::size_t strip) {
  Matter matter = made(Substance::Paper, band.paper);
  const Point from = inside[strip];
  const Point to = inside[(strip + 1) % 4];
  const double length = geometry::distance(from, to);
  if (!(length > 0)) return matter;
  Run run;
  run.along = 1 / length * (to - from);
  run.outwards = {run.along.y, -run.along.x};
  run.width = placed.width;
  run.repeat = band.repeat ? band.repeat->inMillimetres() : 0;
  run.mirror = band.motif == Motif::Mirror;
  double start = length / 2;
  if (run.repeat > 0 && band.motif == Motif::Directional) {
    start = runningStart(band, placed, strip, run.repeat);
  } else if ((strip % 2 == 0 ? band.centreHorizontal : band.centreVertical) == Centring::Ground) {
    start += run.repeat / 2;
  }
  run.from = from + start * run.along;
  matter.run = run;
  return matter;
}

}  // namespace core::sheets::detail
