// The openings of the boards, from the innermost outwards.
#include <algorithm>
#include <cmath>

#include "core/design/layout_internal.h"
#include "core/geometry/move.h"
#include "core/geometry/window_form.h"

namespace core::design::detail {
namespace {

using base::Message;
using base::Millimetres;

// A size of an outline that has grown as much on both sides is the exact sum, and not that sum with the rounding of
// the outline's own points.
constexpr double kRounding = 1e-9;
double settled(double measured, double exact) { return std::fabs(measured - exact) <= kRounding ? exact : measured; }

std::string_view boardMessage(geometry::MoveProblem::Kind kind) {
  switch (kind) {
    case geometry::MoveProblem::Kind::ArcVanishes: return "shape.board-arc-vanishes";
    case geometry::MoveProblem::Kind::Nothing: return "shape.board-nothing";
    case geometry::MoveProblem::Kind::Parts: return "shape.board-parts";
  }
  return "shape.board-nothing";
}

std::string_view followerMessage(geometry::MoveProblem::Kind kind) {
  switch (kind) {
    case geometry::MoveProblem::Kind::ArcVanishes: return "shape.follower-arc-vanishes";
    case geometry::MoveProblem::Kind::Nothing: return "shape.follower-nothing";
    case geometry::MoveProblem::Kind::Parts: return "shape.follower-parts";
  }
  return "shape.follower-nothing";
}

std::optional<Outline> movedFor(const Outline& outline, double by, const std::string& board, const std::string& pointer,
                                Effort& effort, base::Problems& problems) {
  if (!mayMove(outline, pointer, effort, problems)) return std::nullopt;
  auto result = geometry::moved(outline, by);
  if (result) return std::move(result).value();
  const geometry::MoveProblem& problem = result.error();
  conflict(problems, pointer,
           Message(boardMessage(problem.kind))
               .with("board", board)
               .with("distance", Millimetres{by})
               .with("radius", Millimetres{problem.room})
               .with("by", Millimetres{by - problem.room}));
  return std::nullopt;
}

Box boxOf(const Outline& outline, const Box& exact) {
  const Rectangle bounds = outline.bounds();
  return {settled(bounds.right - bounds.left, exact.width), settled(bounds.bottom - bounds.top, exact.height)};
}

void measure(BoardLayout& board) {
  board.sightPerimeter = board.sightOutline.perimeter();
  board.sightArea = board.sightOutline.area();
  board.facePerimeter = board.faceOutline.perimeter();
}

void setBevel(const Board& board, BoardLayout& placed) {
  placed.id = board.id;
  placed.thickness = board.thickness.inMillimetres();
  const bool square = board.bevelAngle.inDegrees() == 90;
  placed.bevelPlan = square ? 0 : placed.thickness / board.bevelAngle.tangent();
  placed.bevelSlope = placed.thickness / board.bevelAngle.sine();
  placed.bevelAngle = board.bevelAngle.inDegrees();
}

void checkReveal(const Board& board, BoardLayout& placed, base::Problems& problems) {
  placed.reveal = board.reveal.inMillimetres();
  placed.flatReveal = placed.reveal - placed.bevelPlan;
  if (placed.flatReveal > 0) return;
  conflict(problems, board.place.pointer + "/reveal",
           Message("job.reveal-within-bevel")
               .with("board", board.id)
               .with("reveal", Millimetres{placed.reveal})
               .with("bevel", Millimetres{placed.bevelPlan})
               .with("by", Millimetres{-placed.flatReveal}));
}

}  // namespace

ExactBox visibleOpening(const Job& job, base::Problems& problems) {
  const Artwork& art = job.artwork;
  const Sheet& sheet = art.sheet;
  const std::string& sheetPointer = art.sheetPlace.pointer;
  const auto within = [&](Length start, Length shown, Length whole, std::string_view key) {
    const Length over = start + shown - whole;
    if (over <= Length()) return;
    conflict(problems, sheetPointer + '/' + std::string(key),
             Message("job.shown-beyond-sheet")
                 .with("sheet", mm(whole))
                 .with("needed", mm(start + shown))
                 .with("by", mm(over)));
  };
  within(sheet.left, art.width, sheet.width, "width");
  within(sheet.top, art.height, sheet.height, "height");
  const Length distance = job.window.distance;
  if (job.window.floats) return {sheet.width + 2 * distance, sheet.height + 2 * distance};
  const ExactBox opening{art.width - 2 * distance, art.height - 2 * distance};
  const Length least = std::min(opening.width, opening.height);
  if (least <= Length()) {
    conflict(problems, job.window.place.pointer + "/overlap",
             Message("job.overlap-closes-window")
                 .with("overlap", mm(distance))
                 .with("shown", mm(std::min(art.width, art.height)))
                 .with("by", mm(-least)));
  }
  return opening;
}

bool makeOpenings(const Job& job, ExactBox opening, Layout& layout, Effort& effort, base::Problems& problems) {
  auto form = geometry::construct(job.window.form, layout.visible.width, layout.visible.height);
  if (!form) {
    conflict(problems, job.window.place.pointer + '/' + form.error().key, form.error().message);
    return false;
  }
  layout.shaped = job.window.form.shape != Shape::Rectangle;
  layout.springing = form.value().springing;
  Outline sight = form.value().outline;
  layout.boards.resize(job.boards.size());
  for (std::size_t i = job.boards.size(); i-- > 0;) {
    const Board& board = job.boards[i];
    BoardLayout& placed = layout.boards[i];
    setBevel(board, placed);
    if (i > 0) checkReveal(board, placed, problems);
    auto face = movedFor(sight, placed.bevelPlan, board.id, board.place.pointer + "/thickness", effort, problems);
    if (!face) return false;
    placed.sight = boxOf(sight, opening.box());
    placed.face = boxOf(*face, placed.sight.movedOut(placed.bevelPlan));
    placed.sightOutline = sight;
    placed.faceOutline = std::move(*face);
    if (i == 0) break;
    auto above =
        movedFor(sight, placed.reveal, job.boards[i - 1].id, board.place.pointer + "/reveal", effort, problems);
    if (!above) return false;
    sight = std::move(*above);
    opening = {opening.width + 2 * board.reveal, opening.height + 2 * board.reveal};
  }
  return true;
}

void settleOpenings(Layout& layout) {
  BoardLayout& top = layout.boards.front();
  const Rectangle topSight = top.sightOutline.bounds();
  const geometry::Point by{top.borderLeft - topSight.left, top.borderTop - topSight.top};
  layout.axis = by.x;
  layout.springing += by.y;
  double reveals = 0;
  for (BoardLayout& board : layout.boards) {
    reveals += board.reveal;
    const Rectangle sight = board.sightOutline.bounds();
    const Rectangle face = board.faceOutline.bounds();
    board.borderTop = top.borderTop + settled(sight.top - topSight.top, reveals);
    board.borderBottom = top.borderBottom + settled(topSight.bottom - sight.bottom, reveals);
    board.borderLeft = top.borderLeft + settled(sight.left - topSight.left, reveals);
    board.borderRight = top.borderRight + settled(topSight.right - sight.right, reveals);
    board.sightAt = {board.borderLeft, board.borderTop, board.borderLeft + board.sight.width,
                     board.borderTop + board.sight.height};
    const double left = board.borderLeft - settled(sight.left - face.left, board.bevelPlan);
    const double topOfFace = board.borderTop - settled(sight.top - face.top, board.bevelPlan);
    board.faceAt = {left, topOfFace, left + board.face.width, topOfFace + board.face.height};
    if (layout.shaped) {
      board.sightOutline = board.sightOutline.shifted(by);
      board.faceOutline = board.faceOutline.shifted(by);
      measure(board);
    } else {
      board.sightOutline = geometry::outlineOf(board.sightAt);
      board.faceOutline = geometry::outlineOf(board.faceAt);
      board.sightPerimeter = board.sight.perimeter();
      board.sightArea = board.sight.area();
      board.facePerimeter = board.face.perimeter();
    }
    board.bevelArea = (board.sightPerimeter + board.facePerimeter) / 2 * board.bevelSlope;
    board.axis = layout.axis;
    board.springing = layout.springing;
    if (!layout.shaped) {
      board.diagonalMarked = std::hypot(board.sight.width, board.sight.height);
      board.diagonalOther = board.diagonalMarked;
    }
  }
}

std::optional<Outline> roundWindow(const Layout& layout, double by, const std::string& pointer, const std::string& id,
                                   Effort& effort, base::Problems& problems) {
  const Outline& window = layout.boards.front().faceOutline;
  if (!mayMove(window, pointer, effort, problems)) return std::nullopt;
  auto result = geometry::moved(window, by);
  if (result) return std::move(result).value();
  conflict(problems, pointer,
           Message(followerMessage(result.error().kind))
               .with("id", id)
               .with("distance", Millimetres{by})
               .with("radius", Millimetres{result.error().room}));
  return std::nullopt;
}

}  // namespace core::design::detail
