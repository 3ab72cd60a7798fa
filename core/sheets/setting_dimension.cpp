// Dimensions of the setting-out and of what follows a shaped window.
#include "core/sheets/dimension.h"

namespace core::sheets::detail {

bool Dimension::ofPoint(const design::BoardLayout& board, std::string_view prefix, const Point& at) {
  const auto named = [&](std::string_view name) { return is(std::string(prefix) + std::string(name)); };
  if (named("left")) return across(0, at.x, at.y);
  if (named("top")) return down(0, at.y, at.x);
  for (const char* side : {".left", ".right"}) {
    if (!named("fromAxis" + std::string(side))) continue;
    guide({board.axis, 0}, {board.axis, m_layout.outerHeight});
    return across(board.axis, at.x, at.y);
  }
  for (const char* side : {".above", ".below"}) {
    if (!named("fromSpringing" + std::string(side))) continue;
    guide({0, board.springing}, {m_layout.outerWidth, board.springing});
    return down(board.springing, at.y, at.x);
  }
  return false;
}

bool Dimension::ofSettingOut(const design::BoardLayout& board) {
  if (is("board.axis")) return across(0, board.axis, board.springing);
  if (is("board.springing")) return down(0, board.springing, board.axis);
  const auto index = static_cast<std::size_t>(&board - m_layout.boards.data());
  const design::SettingOut setting = design::settingOut(m_layout, index);
  for (const design::SettingArc& arc : setting.arcs) {
    if (arc.number != m_figure.number) continue;
    if (ofPoint(board, "board.arc.centre.", arc.centre)) return true;
    if (is("board.arc.radius")) return ofRadius(board, arc);
  }
  for (const design::SettingPoint& point : setting.points) {
    if (point.number == m_figure.number && ofPoint(board, "board.point.", point.at)) return true;
  }
  for (const design::SettingPoint& point : setting.ordinates) {
    if (point.number == m_figure.number && ofPoint(board, "board.oval.", point.at)) return true;
  }
  return setting.oval && ofOval(board);
}

bool Dimension::ofRadius(const design::BoardLayout& board, const design::SettingArc& arc) {
  const auto& segments = board.sightOutline.segments();
  const geometry::Segment& drawn = segments[static_cast<std::size_t>(arc.from) - 1];
  m_result.primitives.push_back({element(), Role::Dimension, Path{{drawn}, false}});
  return along(arc.centre, geometry::pointAt(drawn, 0.5));
}

bool Dimension::ofOval(const design::BoardLayout& board) {
  const Rectangle box = sightOf(board);
  const Point middle{middleX(box), middleY(box)};
  const bool wide = box.right - box.left >= box.bottom - box.top;
  const bool longer = is("board.oval.semiMajor") || is("board.oval.focus");
  if (!longer && !is("board.oval.semiMinor")) return false;
  if (wide == longer) return across(middle.x, middle.x + m_figure.value, middle.y);
  return down(middle.y - m_figure.value, middle.y, middle.x);
}

bool Dimension::ofSpandrel(const design::SpandrelLayout& spandrel) {
  const Rectangle& paper = spandrel.paper;
  const double top = spandrel.seen.bounds().top;
  if (is("spandrel.width")) return across(paper.left, paper.right, (top + topFace(m_layout).top) / 2);
  return is("spandrel.height") && down(paper.top, paper.bottom, (paper.left + topFace(m_layout).left) / 2);
}

bool Dimension::ofWash(const design::WashLayout& wash) {
  const Rectangle inner = wash.inner.bounds();
  const Rectangle face = topFace(m_layout);
  if (is("wash.fromFace.sides")) return across(inner.left, face.left, sideLevel(wash.inner));
  if (is("wash.fromFace.topBottom")) return down(face.bottom, inner.bottom, middleX(inner));
  if (!is("wash.width")) return false;
  const Rectangle outer = wash.outer.bounds();
  const auto fits = [&](double gap) { return std::fabs(gap - m_figure.value) < 1e-6; };
  const double level = sideLevel(wash.inner);
  if (fits(inner.left - outer.left)) return across(outer.left, inner.left, level);
  if (fits(outer.right - inner.right)) return across(inner.right, outer.right, level);
  if (fits(inner.top - outer.top)) return down(outer.top, inner.top, middleX(inner));
  return down(inner.bottom, outer.bottom, middleX(inner));
}

bool Dimension::ofCurvedLine(const Rectangle& face, const design::LineLayout& placed) {
  const Rectangle path = placed.centre.bounds();
  const double level = sideLevel(placed.centre);
  if (is("line.horizontal")) return across(path.left, path.right, level);
  if (is("line.vertical")) return down(path.top, path.bottom, middleX(path));
  if (is("line.offset") || is("line.fromFace.sides")) return across(face.left, path.left, level);
  if (is("line.fromFace.topBottom")) return down(face.bottom, path.bottom, middleX(path));
  if (is("line.cornerMark") || is("line.fromFaceCorner")) {
    return along({face.left, face.bottom}, {path.left, path.bottom});
  }
  return false;
}

}  // namespace core::sheets::detail
