// The openings as they were measured: what the plan said, moved to where the rule found it, outermost board first.
#include <algorithm>
#include <cmath>

#include "core/design/layout_internal.h"
#include "core/geometry/move.h"
#include "core/geometry/window_form.h"

namespace core::design::detail {
namespace {

using base::Message;
using base::Millimetres;

// An opening across the mount or down it: near is the side of the marked corner.
struct Across {
  double near = 0, far = 0;
  double sight = 0, face = 0;
  double faceNear = 0;  // from the mount's edge to the face opening
};

// By how much an opening left its plan.
struct Off {
  double near = 0, far = 0, sight = 0;
};

struct Direction {
  const char *size, *near, *far;
};
constexpr Direction kAcross = {"width", "left", "right"};
constexpr Direction kDown = {"height", "top", "bottom"};

struct Outer {
  double planned = 0, made = 0;
};

class Opening {
 public:
  Opening(const Board& board, const AsMade& made, const Direction& direction, base::Problems& problems)
      : m_board(board), m_made(made), m_direction(direction), m_problems(problems) {}

  // `above` is null for the outermost board.
  Across place(const Across& planned, const Outer& outer, const Off* above) const {
    const auto sight = pin("sight.", m_direction.size);
    const auto face = pin("face.", m_direction.size);
    const auto near = pin("border.", m_direction.near);
    const auto far = pin("border.", m_direction.far);
    const double bevels = planned.face - planned.sight;

    Across made = planned;
    if (sight) {
      made.sight = *sight;
    } else if (face) {
      made.sight = *face - bevels;
    } else if (near && far) {
      made.sight = outer.made - *near - *far;
    } else if (above != nullptr && m_made.follow(m_board.id) == Follow::Reveal) {
      made.sight += above->sight;
    }
    made.face = face ? *face : made.sight == planned.sight ? planned.face : made.sight + bevels;
    if (near) {
      made.near = *near;
    } else if (far) {
      made.near = outer.made - made.sight - *far;
    } else if (above == nullptr) {
      // The mark nearest the datum edge stands; the one that closes the opening took the difference.
      made.near += (outer.made - outer.planned) / 2;
    } else {
      // Even in the opening above, as that came out.
      made.near += above->near + (above->sight - (made.sight - planned.sight)) / 2;
    }
    const bool asPlanned = made.near == planned.near && made.sight == planned.sight && outer.made == outer.planned;
    made.far = far ? *far : asPlanned ? planned.far : outer.made - made.near - made.sight;
    const double bevelNear = planned.near - planned.faceNear;
    made.faceNear = made.near == planned.near && made.face == planned.face
                        ? planned.faceNear
                        : made.near - bevelNear - (made.face - (made.sight + bevels)) / 2;
    if (sight && face) checkFace(*sight, bevels, *face);
    if (near && far) checkBorders(*near, made.sight, *far, outer.made);
    return made;
  }

 private:
  std::optional<double> pin(const char* group, const char* name) const {
    const auto length = m_made.pin("board." + m_board.id + '.' + group + name);
    return length ? std::optional(length->inMillimetres()) : std::nullopt;
  }

  Message about(std::string_view id, double by) const {
    return Message(id)
        .with("board", m_board.id)
        .with("direction", std::string(m_direction.size))
        .with("by", Millimetres{by});
  }

  void checkFace(double sight, double bevels, double face) const {
    const double by = std::fabs(sight + bevels - face);
    if (by <= kFaceAgrees.inMillimetres() + 1e-9) return;
    conflict(m_problems, m_board.place.pointer,
             about("made.sight-against-face", by)
                 .with("sight", Millimetres{sight})
                 .with("bevels", Millimetres{bevels})
                 .with("face", Millimetres{face}));
  }

  void checkBorders(double near, double sight, double far, double outer) const {
    const double by = std::fabs(near + sight + far - outer);
    if (by <= kBordersClose.inMillimetres() + 1e-9) return;
    conflict(m_problems, m_board.place.pointer,
             about("made.borders-against-outer", by)
                 .with("sum", Millimetres{near + sight + far})
                 .with("outer", Millimetres{outer}));
  }

  const Board& m_board;
  const AsMade& m_made;
  const Direction& m_direction;
  base::Problems& m_problems;
};

// An outline of the window's form whose box has grown by so much beyond the plan's.
struct Grown {
  Outline outline;
  double springing = 0;
};
std::optional<Grown> grownOutline(const Job& job, const Box& visible, double wider, double higher, double movedBy,
                                  Effort& effort, base::Problems& problems) {
  geometry::ShapeEntry form = job.window.form;
  // A circle that came out wider than high is an oval.
  if (form.shape == Shape::Round && wider != higher) form.shape = Shape::Oval;
  auto made = geometry::construct(form, visible.width + wider, visible.height + higher);
  if (!made) {
    conflict(problems, job.window.place.pointer + '/' + made.error().key, made.error().message);
    return std::nullopt;
  }
  Grown grown{std::move(made.value().outline), made.value().springing};
  if (movedBy == 0) return grown;
  if (!mayMove(grown.outline, job.window.place.pointer, effort, problems)) return std::nullopt;
  auto moved = geometry::moved(grown.outline, movedBy);
  if (!moved) {
    conflict(problems, job.window.place.pointer, Message("made.no-such-outline").with("by", Millimetres{movedBy}));
    return std::nullopt;
  }
  grown.outline = std::move(moved).value();
  return grown;
}

Outline placedAt(const Outline& outline, const Rectangle& at) {
  const Rectangle bounds = outline.bounds();
  return outline.shifted({at.left - bounds.left, at.top - bounds.top});
}

class Placer {
 public:
  Placer(const Job& job, const AsMade& made, Layout& layout, Effort& effort, base::Problems& problems)
      : m_job(job), m_made(made), m_layout(layout), m_effort(effort), m_problems(problems) {}

  bool place() {
    const Outer across = outer("outer.width", m_layout.outerWidth);
    const Outer down = outer("outer.height", m_layout.outerHeight);
    m_layout.outerWidth = across.made;
    m_layout.outerHeight = down.made;
    double reveals = 0;
    for (const BoardLayout& board : m_layout.boards) reveals += board.reveal;
    const Box visible = m_layout.visible;
    Off aboveAcross, aboveDown;
    for (std::size_t i = 0; i < m_layout.boards.size(); ++i) {
      BoardLayout& board = m_layout.boards[i];
      reveals -= board.reveal;
      const Across plannedX{board.borderLeft, board.borderRight, board.sight.width, board.face.width,
                            board.faceAt.left};
      const Across plannedY{board.borderTop, board.borderBottom, board.sight.height, board.face.height,
                            board.faceAt.top};
      const Opening wide(m_job.boards[i], m_made, kAcross, m_problems);
      const Opening high(m_job.boards[i], m_made, kDown, m_problems);
      const Across x = wide.place(plannedX, across, i == 0 ? nullptr : &aboveAcross);
      const Across y = high.place(plannedY, down, i == 0 ? nullptr : &aboveDown);
      const Off offX{x.near - plannedX.near, x.far - plannedX.far, x.sight - plannedX.sight};
      const Off offY{y.near - plannedY.near, y.far - plannedY.far, y.sight - plannedY.sight};
      if (!moveBoard(board, visible, x, y, reveals)) return false;
      if (i > 0) setReveals(m_job.boards[i], board, aboveAcross, aboveDown, offX, offY);
      setDiagonals(m_job.boards[i], board);
      aboveAcross = offX;
      aboveDown = offY;
    }
    m_layout.axis = m_layout.boards.front().axis;
    m_layout.springing = m_layout.boards.front().springing;
    m_layout.widerBy = {aboveAcross.sight, aboveDown.sight};
    m_layout.visible = m_layout.boards.back().sight;
    return true;
  }

 private:
  Outer outer(const char* figure, double planned) const {
    const auto pin = m_made.pin(figure);
    return {planned, pin ? pin->inMillimetres() : planned};
  }

  bool moveBoard(BoardLayout& board, const Box& visible, const Across& x, const Across& y, double beyond) {
    const Box planned = board.sight;
    const Box plannedFace = board.face;
    const Rectangle plannedAt = board.sightAt;
    const Rectangle plannedFaceAt = board.faceAt;
    board.sight = {x.sight, y.sight};
    board.face = {x.face, y.face};
    board.borderLeft = x.near;
    board.borderRight = x.far;
    board.borderTop = y.near;
    board.borderBottom = y.far;
    board.sightAt = {x.near, y.near, x.near + x.sight, y.near + y.sight};
    board.faceAt = {x.faceNear, y.faceNear, x.faceNear + x.face, y.faceNear + y.face};
    const bool same = board.sight == planned && board.face == plannedFace && board.sightAt.left == plannedAt.left &&
                      board.sightAt.top == plannedAt.top && board.faceAt.left == plannedFaceAt.left &&
                      board.faceAt.top == plannedFaceAt.top;
    if (same) {
      board.sightAt = plannedAt;
      board.faceAt = plannedFaceAt;
      return true;
    }
    board.axis += (x.near + x.sight / 2) - (plannedAt.left + planned.width / 2);
    board.springing += y.near - plannedAt.top;
    if (!m_layout.shaped) {
      board.sightOutline = geometry::outlineOf(board.sightAt);
      board.faceOutline = geometry::outlineOf(board.faceAt);
      board.sightPerimeter = board.sight.perimeter();
      board.sightArea = board.sight.area();
      board.facePerimeter = board.face.perimeter();
    } else {
      if (board.sight == planned) {
        board.sightOutline = placedAt(board.sightOutline, board.sightAt);
      } else {
        const auto grown = grownOutline(m_job, visible, board.sight.width - planned.width,
                                        board.sight.height - planned.height, beyond, m_effort, m_problems);
        if (!grown) return false;
        const double top = grown->outline.bounds().top;
        board.sightOutline = placedAt(grown->outline, board.sightAt);
        board.springing = grown->springing + board.sightAt.top - top;
      }
      if (board.face == plannedFace) {
        board.faceOutline = placedAt(board.faceOutline, board.faceAt);
      } else {
        const auto grown =
            grownOutline(m_job, visible, board.face.width - plannedFace.width, board.face.height - plannedFace.height,
                         beyond + board.bevelPlan, m_effort, m_problems);
        if (!grown) return false;
        board.faceOutline = placedAt(grown->outline, board.faceAt);
      }
      board.sightPerimeter = board.sightOutline.perimeter();
      board.sightArea = board.sightOutline.area();
      board.facePerimeter = board.faceOutline.perimeter();
    }
    board.bevelArea = (board.sightPerimeter + board.facePerimeter) / 2 * board.bevelSlope;
    return true;
  }

  void setReveals(const Board& source, BoardLayout& board, const Off& aboveX, const Off& aboveY, const Off& x,
                  const Off& y) {
    const double planned = board.reveal;
    board.revealLeft = planned + (x.near - aboveX.near);
    board.revealRight = planned + (x.far - aboveX.far);
    board.revealTop = planned + (y.near - aboveY.near);
    board.revealBottom = planned + (y.far - aboveY.far);
    const double sides[] = {board.revealLeft, board.revealRight, board.revealTop, board.revealBottom};
    board.evenReveal =
        std::all_of(std::begin(sides), std::end(sides), [&](double side) { return std::fabs(side - planned) <= 1e-9; });
    if (board.evenReveal) return;
    board.reveal = *std::min_element(std::begin(sides), std::end(sides));
    board.flatReveal = board.reveal - board.bevelPlan;
    if (board.flatReveal > 0) return;
    conflict(m_problems, source.place.pointer + "/reveal",
             Message("job.reveal-within-bevel")
                 .with("board", source.id)
                 .with("reveal", Millimetres{board.reveal})
                 .with("bevel", Millimetres{board.bevelPlan})
                 .with("by", Millimetres{-board.flatReveal}));
  }

  // In a parallelogram the squares of the diagonals make up twice those of the sides.
  void setDiagonals(const Board& source, BoardLayout& board) {
    if (m_layout.shaped) return;
    const double square = std::hypot(board.sight.width, board.sight.height);
    const auto marked = m_made.pin("board." + source.id + ".diagonal.marked");
    const auto other = m_made.pin("board." + source.id + ".diagonal.other");
    board.diagonalMarked = marked ? marked->inMillimetres() : square;
    board.diagonalOther = other ? other->inMillimetres() : square;
    if (!marked || !other) return;
    const double mean =
        std::sqrt((board.diagonalMarked * board.diagonalMarked + board.diagonalOther * board.diagonalOther) / 2);
    const double off = std::fabs(mean - square);
    if (off > 2 * kSquare.inMillimetres() + 1e-9) {
      conflict(m_problems, source.place.pointer,
               Message("made.diagonals-against-opening")
                   .with("board", source.id)
                   .with("diagonal", Millimetres{mean})
                   .with("opening", Millimetres{square})
                   .with("by", Millimetres{off}));
      return;
    }
    const double skew = std::fabs(board.diagonalMarked - board.diagonalOther);
    if (skew <= kSquare.inMillimetres() + 1e-9) return;
    conflict(m_problems, source.place.pointer,
             Message("made.out-of-square").with("board", source.id).with("by", Millimetres{skew}),
             base::Severity::Notice);
  }

  const Job& m_job;
  const AsMade& m_made;
  Layout& m_layout;
  Effort& m_effort;
  base::Problems& m_problems;
};

}  // namespace

bool openAsMade(const Job& job, const AsMade& made, Layout& layout, Effort& effort, base::Problems& problems) {
  return Placer(job, made, layout, effort, problems).place();
}

void checkCover(const Job& job, const Layout& layout, base::Problems& problems) {
  if (job.window.floats) return;
  const Sheet& sheet = job.artwork.sheet;
  const double overlap = job.window.distance.inMillimetres();
  const struct {
    double wider, before, after;
  } ways[] = {{layout.widerBy.width, sheet.left.inMillimetres(),
               (sheet.width - sheet.left - job.artwork.width).inMillimetres()},
              {layout.widerBy.height, sheet.top.inMillimetres(),
               (sheet.height - sheet.top - job.artwork.height).inMillimetres()}};
  for (const auto& way : ways) {
    if (way.wider == 0) continue;
    const double cover = overlap - way.wider / 2;
    const double held = cover + std::min(way.before, way.after);
    if (held <= 0) {
      conflict(problems, job.window.place.pointer, Message("made.work-not-covered").with("by", Millimetres{-held}));
    } else if (cover <= 0) {
      conflict(problems, job.window.place.pointer, Message("made.shows-beyond").with("by", Millimetres{-cover}),
               base::Severity::Notice);
    }
  }
}

}  // namespace core::design::detail
