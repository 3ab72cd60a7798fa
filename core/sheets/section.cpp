#include "core/sheets/section.h"

#include <algorithm>

#include "core/sheets/piece_matter.h"
#include "core/sheets/section_places.h"

namespace core::sheets {
namespace {

// The part of the solid board that is shown, and of the things in the window.
constexpr double kSolid = 6;
constexpr double kBeyond = 5;
// Air above and below, so that nothing touches the edge of the drawing.
constexpr double kAir = 1;

}  // namespace

namespace detail {

SectionPlaces sectionPlaces(const design::Design& design) {
  const auto& boards = design.layout.boards;
  double outermost = boards.front().faceAt.left;
  double innermost = outermost;
  for (const design::BoardLayout& board : boards) {
    outermost = std::min(outermost, board.faceAt.left);
    innermost = std::max(innermost, board.sightAt.left);
  }
  SectionPlaces places;
  places.from = outermost - kSolid;
  places.width = innermost + kBeyond - places.from;
  places.levels = {kAir};
  for (const design::BoardLayout& board : boards) places.levels.push_back(places.levels.back() + board.thickness);
  return places;
}

}  // namespace detail

Drawing drawSection(const design::Design& design) {
  const auto& boards = design.layout.boards;
  const detail::SectionPlaces places = detail::sectionPlaces(design);
  const double from = places.from;
  Drawing drawing;
  drawing.width = places.width;
  for (std::size_t i = 0; i < boards.size(); ++i) {
    const design::BoardLayout& board = boards[i];
    const design::Board& entered = design.job.boards[i];
    const double face = board.faceAt.left - from;
    const double sight = board.sightAt.left - from;
    const double y = places.levels[i];
    const double below = places.levels[i + 1];
    drawing.primitives.push_back({board.id, Role::Section,
                                  Stroke{{{0, y}, {face, y}, {sight, below}, {0, below}}, true},
                                  detail::coreOf(entered)});
    drawing.primitives.push_back(
        {board.id, Role::Bevel, Stroke{{{face, y}, {sight, below}}, false}, detail::bevelOf(entered)});
  }
  double y = places.levels.back();
  const double work = design.job.artwork.thickness.inMillimetres();
  const double edge = std::max(0.0, design.layout.artLeft - from);
  drawing.primitives.push_back(
      {"art", Role::Sheet, Stroke{{{edge, y}, {drawing.width, y}, {drawing.width, y + work}, {edge, y + work}}, true}});
  y += work;
  if (const double back = design.job.package.backMount.inMillimetres(); back > 0) {
    drawing.primitives.push_back(
        {"back", Role::Section, Stroke{{{0, y}, {drawing.width, y}, {drawing.width, y + back}, {0, y + back}}, true}});
    y += back;
  }
  drawing.height = y + kAir;
  return drawing;
}

}  // namespace core::sheets
