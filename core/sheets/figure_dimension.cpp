// The dimension of one figure, on the side of the piece it is measured on.
#include "core/sheets/dimension.h"

namespace core::sheets {
namespace detail {

double Dimension::sideLevel(const geometry::Outline& outline) {
  const Rectangle box = outline.bounds();
  for (const geometry::Segment& segment : outline.segments()) {
    const Rectangle one = geometry::boundsOf(segment);
    if (one.left > box.left + 1e-9) continue;
    if (const auto* arc = std::get_if<geometry::Arc>(&segment)) return arc->centre.y;
    if (one.right <= one.left) return middleY(one);
  }
  return middleY(box);
}

bool Dimension::sizeOf(const Rectangle& r, double level, std::string_view prefix) {
  if (is(std::string(prefix) + "width")) return across(r.left, r.right, level);
  if (is(std::string(prefix) + "height")) return down(r.top, r.bottom, middleX(r));
  return false;
}

bool Dimension::borderOf(const Rectangle& r, double level, std::string_view prefix, double top, double bottom,
                         double left, double right) {
  if (is(std::string(prefix) + "top")) return down(r.top - top, r.top, middleX(r));
  if (is(std::string(prefix) + "bottom")) return down(r.bottom, r.bottom + bottom, middleX(r));
  if (is(std::string(prefix) + "left")) return across(r.left - left, r.left, level);
  if (is(std::string(prefix) + "right")) return across(r.right, r.right + right, level);
  return false;
}

bool Dimension::ofPiece() {
  const Rectangle edge = mount(m_layout);
  const Rectangle opening = sightOf(m_layout.boards.back());
  const Rectangle face = topFace(m_layout);
  if (is("outer.width")) return across(edge.left, edge.right, (opening.bottom + edge.bottom) / 2);
  if (is("outer.height")) return down(edge.top, edge.bottom, (opening.right + edge.right) / 2);
  if (is("art.left") || is("art.top")) return ofArt();
  if (is("art.sheet.width") || is("art.sheet.height")) return ofSheet();
  if (is("art.width") || is("art.height")) return ofShownPart(opening);
  const double level = sideLevel(m_layout.boards.back().sightOutline);
  return sizeOf(opening, level, "visible.") ||
         borderOf(face, level, "border.seen.", m_layout.seenTop, m_layout.seenBottom, m_layout.seenLeft,
                  m_layout.seenRight) ||
         borderOf(face, level, "border.framed.", m_layout.framedTop, m_layout.framedBottom, m_layout.framedLeft,
                  m_layout.framedRight);
}

// It is covered, or has air round it, alike on all sides.
bool Dimension::ofShownPart(const Rectangle& opening) {
  const double aside = (m_design.job.artwork.width.inMillimetres() - (opening.right - opening.left)) / 2;
  const double above = (m_design.job.artwork.height.inMillimetres() - (opening.bottom - opening.top)) / 2;
  const Rectangle shown{opening.left - aside, opening.top - above, opening.right + aside, opening.bottom + above};
  m_result.primitives.push_back({"art", Role::Artwork, ring(shown)});
  return is("art.width") ? across(shown.left, shown.right, middleY(shown))
                         : down(shown.top, shown.bottom, middleX(shown));
}

bool Dimension::ofArt() {
  const Rectangle sheet = sheetOf(m_layout);
  m_result.primitives.push_back({"art", Role::Artwork, ring(sheet)});
  return is("art.left") ? across(0, sheet.left, middleY(sheet)) : down(0, sheet.top, middleX(sheet));
}

bool Dimension::ofSheet() {
  const Rectangle sheet = sheetOf(m_layout);
  m_result.primitives.push_back({"art", Role::Artwork, ring(sheet)});
  return is("art.sheet.width") ? across(sheet.left, sheet.right, middleY(sheet))
                               : down(sheet.top, sheet.bottom, middleX(sheet));
}

bool Dimension::ofElement() {
  const auto& boards = m_layout.boards;
  for (std::size_t i = 0; i < boards.size(); ++i) {
    if (boards[i].id == m_figure.element) return ofBoard(boards[i], i == 0 ? nullptr : &boards[i - 1]);
  }
  if (const design::BandLayout* band = m_layout.band(m_figure.element)) return ofBand(*band);
  if (const design::SpandrelLayout* spandrel = m_layout.spandrel(m_figure.element)) return ofSpandrel(*spandrel);
  if (const design::WashLayout* wash = m_layout.wash(m_figure.element)) return ofWash(*wash);
  for (const design::Line& line : m_design.job.lines) {
    if (line.id == m_figure.element) return ofLine(line, *m_layout.line(line.id));
  }
  return false;
}

bool Dimension::ofBoard(const design::BoardLayout& board, const design::BoardLayout* above) {
  const Rectangle sight = sightOf(board);
  const Rectangle face = faceOf(board);
  const double level = sideLevel(board.sightOutline);
  if (is("board.bevel.plan")) return across(face.left, sight.left, level);
  if (above != nullptr) {
    const double from = sightOf(*above).left;
    if (is("board.reveal") || is("board.reveal.left")) return across(from, sight.left, level);
    const Rectangle outside = sightOf(*above);
    if (is("board.reveal.right")) return across(sight.right, outside.right, level);
    if (is("board.reveal.top")) return down(outside.top, sight.top, middleX(sight));
    if (is("board.reveal.bottom")) return down(sight.bottom, outside.bottom, middleX(sight));
    if (is("board.reveal.flat")) return across(from, face.left, level);
  }
  if (sizeOf(face, level, "board.face.") || borderOf(sight, level, "board.border.", board.borderTop, board.borderBottom,
                                                     board.borderLeft, board.borderRight)) {
    return true;
  }
  m_result.side = Side::Back;
  // Seen from the back, left is the face's right.
  if (is("board.back.left")) return across(sight.right, m_layout.outerWidth, level);
  if (is("board.back.right")) return across(0, sight.left, level);
  if (is("board.mark.left")) return across(0, sight.left, level);
  if (is("board.mark.right")) return across(0, sight.right, level);
  if (is("board.mark.top")) return down(0, sight.top, middleX(sight));
  if (is("board.mark.bottom")) return down(0, sight.bottom, middleX(sight));
  if (is("board.diagonal.marked")) return along({sight.left, sight.top}, {sight.right, sight.bottom});
  if (is("board.diagonal.other")) return along({sight.right, sight.top}, {sight.left, sight.bottom});
  return sizeOf(sight, level, "board.sight.") || ofSettingOut(board);
}

bool Dimension::ofBand(const design::BandLayout& band) {
  const Rectangle face = topFace(m_layout);
  const Rectangle outer = around(face, band.outer);
  const Rectangle inner = around(face, band.inner);
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

bool Dimension::ofLine(const design::Line& line, const design::LineLayout& placed) {
  const Rectangle face = topFace(m_layout);
  if (placed.curved) return ofCurvedLine(face, placed);
  const Rectangle path = around(face, placed.path);
  const Rectangle edge = followedBy(m_layout, line);
  if (is("line.horizontal")) return across(path.left, path.right, path.top);
  if (is("line.vertical")) return down(path.top, path.bottom, path.left);
  if (is("line.offset")) return down(edge.top, path.top, middleX(path));
  if (is("line.cornerMark")) return along({edge.left, edge.top}, {path.left, path.top});
  if (is("line.fromFace.sides")) return across(face.left, path.left, middleY(path));
  if (is("line.fromFace.topBottom")) return down(face.top, path.top, middleX(path));
  if (is("line.fromFaceCorner")) return along({face.left, face.top}, {path.left, path.top});
  return false;
}

}  // namespace detail

std::optional<FigureDimension> drawFigure(const design::Design& design, const std::string& figureId) {
  const design::Figure* figure = design.figures.find(figureId);
  if (figure == nullptr) return std::nullopt;
  return detail::Dimension(design, *figure).draw();
}

void turnToBack(FigureDimension& dimension, const design::Design& design) {
  if (dimension.side == Side::Back) return;
  detail::turn(dimension.primitives, design.layout.outerWidth);
  dimension.side = Side::Back;
}

}  // namespace core::sheets
