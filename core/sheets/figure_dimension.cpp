// The dimension of one figure, on the side of the piece it is measured on.
#include <algorithm>
#include <cmath>

#include "core/sheets/piece.h"
#include "core/sheets/places.h"

namespace core::sheets {
namespace {

using design::Figure;
using detail::Rectangle;

// Half the length of the strokes that end a dimension line: a share of the longer edge.
constexpr double kEndShare = 0.012;

// Everything as seen from the face; turned over at the end where the figure is measured on the back.
class Dimension {
 public:
  Dimension(const design::Design& design, const Figure& figure)
      : m_design(design), m_layout(design.layout), m_figure(figure) {
    m_end = std::max(m_layout.outerWidth, m_layout.outerHeight) * kEndShare;
  }

  std::optional<FigureDimension> draw() {
    const bool placed = m_figure.element.empty() ? ofPiece() : ofElement();
    if (!placed) return std::nullopt;
    if (m_result.side == Side::Back) detail::turn(m_result.primitives, m_layout.outerWidth);
    return std::move(m_result);
  }

 private:
  bool is(std::string_view kind) const { return m_figure.kind == kind; }
  std::string element() const { return m_figure.element.empty() ? "piece" : m_figure.element; }

  bool along(const Point& from, const Point& to) {
    const double length = std::hypot(to.x - from.x, to.y - from.y);
    if (length <= 0) return false;
    const Point across{-(to.y - from.y) / length * m_end, (to.x - from.x) / length * m_end};
    add(Role::Dimension, Stroke{{from, to}, false});
    for (const Point& end : {from, to}) {
      add(Role::Dimension, Stroke{{{end.x - across.x, end.y - across.y}, {end.x + across.x, end.y + across.y}}, false});
    }
    add(Role::DimensionText, Text{{(from.x + to.x) / 2, (from.y + to.y) / 2}, m_figure.display, 0});
    return true;
  }
  bool across(double from, double to, double y) { return along({from, y}, {to, y}); }
  bool down(double from, double to, double x) { return along({x, from}, {x, to}); }

  template <typename Shape>
  void add(Role role, Shape shape) {
    m_result.primitives.push_back({element(), role, std::move(shape)});
  }

  static double middleX(const Rectangle& r) { return (r.left + r.right) / 2; }
  static double middleY(const Rectangle& r) { return (r.top + r.bottom) / 2; }

  // Width or height of a rectangle, through its middle.
  bool sizeOf(const Rectangle& r, std::string_view prefix) {
    if (is(std::string(prefix) + "width")) return across(r.left, r.right, middleY(r));
    if (is(std::string(prefix) + "height")) return down(r.top, r.bottom, middleX(r));
    return false;
  }

  // From an inner edge outwards by a size on each side: borders.
  bool borderOf(const Rectangle& r, std::string_view prefix, double top, double bottom, double left, double right) {
    if (is(std::string(prefix) + "top")) return down(r.top - top, r.top, middleX(r));
    if (is(std::string(prefix) + "bottom")) return down(r.bottom, r.bottom + bottom, middleX(r));
    if (is(std::string(prefix) + "left")) return across(r.left - left, r.left, middleY(r));
    if (is(std::string(prefix) + "right")) return across(r.right, r.right + right, middleY(r));
    return false;
  }

  bool ofPiece() {
    const Rectangle edge = detail::mount(m_layout);
    const Rectangle opening = detail::sightOf(m_layout.boards.back());
    const Rectangle face = detail::topFace(m_layout);
    if (is("outer.width")) return across(edge.left, edge.right, (opening.bottom + edge.bottom) / 2);
    if (is("outer.height")) return down(edge.top, edge.bottom, (opening.right + edge.right) / 2);
    if (is("art.left") || is("art.top")) return ofArt();
    return sizeOf(opening, "visible.") ||
           borderOf(face, "border.seen.", m_layout.seenTop, m_layout.seenBottom, m_layout.seenLeft,
                    m_layout.seenRight) ||
           borderOf(face, "border.framed.", m_layout.framedTop, m_layout.framedBottom, m_layout.framedLeft,
                    m_layout.framedRight);
  }

  bool ofArt() {
    const Rectangle sheet = detail::sheetOf(m_layout);
    m_result.primitives.push_back({"art", Role::Artwork, detail::ring(sheet)});
    return is("art.left") ? across(0, sheet.left, middleY(sheet)) : down(0, sheet.top, middleX(sheet));
  }

  bool ofElement() {
    const auto& boards = m_layout.boards;
    for (std::size_t i = 0; i < boards.size(); ++i) {
      if (boards[i].id == m_figure.element) return ofBoard(boards[i], i == 0 ? nullptr : &boards[i - 1]);
    }
    if (const design::BandLayout* band = m_layout.band(m_figure.element)) return ofBand(*band);
    for (const design::Line& line : m_design.job.lines) {
      if (line.id == m_figure.element) return ofLine(line, *m_layout.line(line.id));
    }
    return false;
  }

  bool ofBoard(const design::BoardLayout& board, const design::BoardLayout* above) {
    const Rectangle sight = detail::sightOf(board);
    const Rectangle face = detail::faceOf(board);
    if (is("board.bevel.plan")) return across(face.left, sight.left, middleY(sight));
    if (above != nullptr) {
      const double from = detail::sightOf(*above).left;
      if (is("board.reveal")) return across(from, sight.left, middleY(sight));
      if (is("board.reveal.flat")) return across(from, face.left, middleY(sight));
    }
    if (sizeOf(face, "board.face.") ||
        borderOf(sight, "board.border.", board.borderTop, board.borderBottom, board.borderLeft, board.borderRight)) {
      return true;
    }
    m_result.side = Side::Back;
    // Seen from the back, left is the face's right.
    if (is("board.back.left")) return across(sight.right, m_layout.outerWidth, middleY(sight));
    if (is("board.back.right")) return across(0, sight.left, middleY(sight));
    if (is("board.mark.left")) return across(0, sight.left, middleY(sight));
    if (is("board.mark.right")) return across(0, sight.right, middleY(sight));
    if (is("board.mark.top")) return down(0, sight.top, middleX(sight));
    if (is("board.mark.bottom")) return down(0, sight.bottom, middleX(sight));
    return sizeOf(sight, "board.sight.");
  }

  bool ofBand(const design::BandLayout& band) {
    const Rectangle face = detail::topFace(m_layout);
    const Rectangle outer = detail::around(face, band.outer);
    const Rectangle inner = detail::around(face, band.inner);
    // The lines through the middle of the top and the left strip, and their cut ends.
    const double y = (outer.top + inner.top) / 2;
    const double x = (outer.left + inner.left) / 2;
    const double overX = (band.stripHorizontal - band.outer.width) / 2;
    const double overY = (band.stripVertical - band.outer.height) / 2;
    const double value = m_figure.value;
    if (is("band.strip.horizontal")) return across(outer.left - overX, outer.right + overX, y);
    if (is("band.strip.vertical")) return down(outer.top - overY, outer.bottom + overY, x);
    if (is("band.strip.width")) return down(outer.top, inner.top, middleX(outer));
    if (is("band.mitre")) return along({outer.left, outer.top}, {inner.left, inner.top});
    if (is("band.dryEnd")) return across(outer.left, outer.left + value, y);
    if (is("band.glueFrom") || is("band.firstMotif.horizontal")) {
      return across(outer.left - overX, outer.left - overX + value, y);
    }
    if (is("band.firstMotif.vertical")) return down(outer.top - overY, outer.top - overY + value, x);
    return sizeOf(inner, "band.inner.") || sizeOf(outer, "band.outer.");
  }

  bool ofLine(const design::Line& line, const design::LineLayout& placed) {
    const Rectangle face = detail::topFace(m_layout);
    const Rectangle path = detail::around(face, placed.path);
    const Rectangle edge = detail::followedBy(m_layout, line);
    if (is("line.horizontal")) return across(path.left, path.right, path.top);
    if (is("line.vertical")) return down(path.top, path.bottom, path.left);
    if (is("line.offset")) return down(edge.top, path.top, middleX(path));
    if (is("line.cornerMark")) return along({edge.left, edge.top}, {path.left, path.top});
    if (is("line.fromFace.sides")) return across(face.left, path.left, middleY(path));
    if (is("line.fromFace.topBottom")) return down(face.top, path.top, middleX(path));
    if (is("line.fromFaceCorner")) return along({face.left, face.top}, {path.left, path.top});
    return false;
  }

  const design::Design& m_design;
  const design::Layout& m_layout;
  const Figure& m_figure;
  double m_end = 0;
  FigureDimension m_result;
};

}  // namespace

std::optional<FigureDimension> drawFigure(const design::Design& design, const std::string& figureId) {
  const Figure* figure = design.figures.find(figureId);
  if (figure == nullptr) return std::nullopt;
  return Dimension(design, *figure).draw();
}

}  // namespace core::sheets
