#include "core/sheets/piece.h"

#include <algorithm>
#include <array>

#include "core/base/text.h"
#include "core/sheets/piece_matter.h"
#include "core/sheets/places.h"
#include "core/workflow/workflow.h"

namespace core::sheets {
namespace {

using design::Layout;
using detail::Rectangle;

// Legs of the marked corner's triangle: a share of the shorter edge, within what a pencil would draw.
constexpr double kMarkShare = 0.04;
constexpr double kShortestMark = 4;
constexpr double kLongestMark = 15;

class Painter {
 public:
  explicit Painter(const design::Design& design) : m_design(design), m_job(design.job), m_layout(design.layout) {
    m_drawing.width = m_layout.outerWidth;
    m_drawing.height = m_layout.outerHeight;
  }

  void face() {
    artwork();
    for (std::size_t i = m_layout.boards.size(); i-- > 0;) boardFromFace(i);
    for (std::size_t i = 0; i < m_layout.spandrels.size(); ++i) {
      const design::SpandrelLayout& spandrel = m_layout.spandrels[i];
      add(spandrel.id, Role::Spandrel, detail::between(spandrel.seen, {}), detail::matterOf(m_job.spandrels[i]));
    }
    for (std::size_t i = 0; i < m_layout.washes.size(); ++i) {
      const design::WashLayout& wash = m_layout.washes[i];
      add(wash.id, Role::Wash, detail::between(wash.outer, wash.inner), detail::matterOf(m_job.washes[i], wash));
    }
    for (const bool onBand : {false, true}) {
      if (onBand) {
        for (std::size_t i = 0; i < m_layout.bands.size(); ++i) strips(i);
      }
      for (std::size_t i = 0; i < m_layout.leaf.size(); ++i) {
        if ((m_job.leaf[i].region == design::RegionKind::On) == onBand) leaf(i);
      }
    }
    for (std::size_t i = 0; i < m_layout.lines.size(); ++i) {
      const design::LineLayout& line = m_layout.lines[i];
      add(line.id, Role::Line, detail::between(line.outer, line.inner), detail::matterOf(m_job.lines[i]));
    }
    mark(m_job.boards.front());
  }

  void back() {
    const geometry::Outline edge = geometry::outlineOf(detail::mount(m_layout));
    add(m_layout.boards.back().id, Role::BoardFace, detail::between(edge, m_layout.boards.back().sightOutline),
        detail::matterOf(m_job.boards.back()));
    for (const design::BoardLayout& board : m_layout.boards) {
      add(board.id, Role::BoardEdge, detail::ring(detail::mount(m_layout)));
      add(board.id, Role::BoardSight, detail::along(board.sightOutline));
    }
    mark(m_job.boards.back());
    m_drawing.side = Side::Back;
    detail::turn(m_drawing.primitives, m_drawing.width);
  }

  Drawing take() { return std::move(m_drawing); }

 private:
  template <typename Shape>
  void add(std::string element, Role role, Shape shape, std::optional<Matter> matter = std::nullopt) {
    m_drawing.primitives.push_back(
        {std::move(element), role, detail::Shape(std::move(shape)), std::move(matter), Standing::Made});
  }

  void artwork() {
    const design::BoardLayout& innermost = m_layout.boards.back();
    const Rectangle opening = detail::sightOf(innermost);
    const Rectangle sheet = detail::sheetOf(m_layout);
    const Rectangle seen{std::max(opening.left, sheet.left), std::max(opening.top, sheet.top),
                         std::min(opening.right, sheet.right), std::min(opening.bottom, sheet.bottom)};
    // A work that fills the opening shows in the opening's own form; a float shows whole.
    const bool fills = seen.left == opening.left && seen.right == opening.right && seen.top == opening.top &&
                       seen.bottom == opening.bottom;
    Matter matter;
    matter.substance = Substance::Sheet;
    add("art", Role::Artwork,
        fills ? detail::between(innermost.sightOutline, {}) : detail::Shape(detail::frame(seen, {})), matter);
  }

  void boardFromFace(std::size_t index) {
    const design::BoardLayout& board = m_layout.boards[index];
    const geometry::Outline edge = geometry::outlineOf(detail::mount(m_layout));
    const geometry::Outline& reachesTo = index == 0 ? edge : m_layout.boards[index - 1].sightOutline;
    const design::Board& entered = m_job.boards[index];
    add(board.id, Role::BoardFace, detail::between(reachesTo, board.faceOutline), detail::matterOf(entered));
    if (board.bevelPlan > 0)
      add(board.id, Role::Bevel, detail::between(board.faceOutline, board.sightOutline), detail::bevelOf(entered));
    add(board.id, Role::BoardSight, detail::along(board.sightOutline));
    if (index == 0) add(board.id, Role::BoardEdge, detail::along(edge));
  }

  void strips(std::size_t index) {
    const design::BandLayout& band = m_layout.bands[index];
    const Rectangle face = detail::topFace(m_layout);
    const Rectangle outer = detail::around(face, band.outer);
    const Rectangle inner = detail::around(face, band.inner);
    const std::array<Point, 4> outside = detail::clockwise(outer);
    const std::array<Point, 4> inside = detail::clockwise(inner);
    constexpr std::array<const char*, 4> kSides = {"top", "right", "bottom", "left"};
    constexpr std::array<const char*, 4> kCorners = {"tl", "tr", "br", "bl"};
    for (std::size_t i = 0; i < 4; ++i) {
      const std::size_t next = (i + 1) % 4;
      add(band.id + '.' + kSides[i], Role::Band, Stroke{{outside[i], outside[next], inside[next], inside[i]}, true},
          detail::stripOf(m_job.bands[index], band, inside, i));
    }
    for (std::size_t i = 0; i < 4; ++i) {
      add(band.id + ".corner." + kCorners[i], Role::Mitre, Stroke{{inside[i], outside[i]}, false});
    }
  }

  void leaf(std::size_t index) {
    const design::LeafLayout& field = m_layout.leaf[index];
    const design::Leaf& entered = m_job.leaf[index];
    const auto shape = [&]() -> detail::Shape {
      if (field.onBevel) {
        const design::BoardLayout& board = *m_layout.board(entered.regionOf);
        return detail::between(board.faceOutline, board.sightOutline);
      }
      if (entered.region == design::RegionKind::Spandrel)
        return detail::between(m_layout.spandrel(entered.regionOf)->seen, {});
      return detail::between(field.outer, field.inner);
    };
    add(field.id, Role::Leaf, shape(), detail::leafOf(m_design, index));
  }

  // On the side of that board that is seen.
  void mark(const design::Board& board) {
    const double shorter = std::min(m_drawing.width, m_drawing.height);
    const double leg = std::clamp(shorter * kMarkShare, kShortestMark, kLongestMark);
    add("piece", Role::Mark, Stroke{{{0, 0}, {leg, 0}, {0, leg}}, true}, detail::matterOf(board));
  }

  const design::Design& m_design;
  const design::Job& m_job;
  const Layout& m_layout;
  Drawing m_drawing;
};

}  // namespace

Drawing drawPiece(const design::Design& design, Side side) {
  Painter painter(design);
  if (side == Side::Face) {
    painter.face();
  } else {
    painter.back();
  }
  return painter.take();
}

bool belongsTo(const std::string& element, const std::string& thing) {
  if (thing.empty()) return true;
  // A part of a field is shown by its whole field.
  const std::string whole = workflow::wholeThing(thing);
  return element == whole || base::startsWith(element, whole + '.');
}

}  // namespace core::sheets
