#include "core/sheets/places.h"

#include <algorithm>

namespace core::sheets::detail {

Rectangle mount(const design::Layout& layout) { return {0, 0, layout.outerWidth, layout.outerHeight}; }

Rectangle sightOf(const design::BoardLayout& board) { return board.sightAt; }

Rectangle faceOf(const design::BoardLayout& board) { return board.faceAt; }

Rectangle topFace(const design::Layout& layout) { return faceOf(layout.boards.front()); }

Rectangle around(const Rectangle& centre, const design::Box& box) {
  const double x = (centre.left + centre.right) / 2;
  const double y = (centre.top + centre.bottom) / 2;
  return {x - box.width / 2, y - box.height / 2, x + box.width / 2, y + box.height / 2};
}

Rectangle sheetOf(const design::Layout& layout) {
  return {layout.artLeft, layout.artTop, layout.artLeft + layout.sheetWidth, layout.artTop + layout.sheetHeight};
}

Rectangle followedBy(const design::Layout& layout, const design::Line& line) {
  const Rectangle face = topFace(layout);
  if (line.along == design::Edge::Window) return face;
  const design::BandLayout& band = *layout.band(line.band);
  return around(face, line.along == design::Edge::BandInner ? band.inner : band.outer);
}

std::array<Point, 4> clockwise(const Rectangle& r) {
  return {Point{r.left, r.top}, Point{r.right, r.top}, Point{r.right, r.bottom}, Point{r.left, r.bottom}};
}

Frame frame(const Rectangle& outer, const Rectangle& inner) {
  Frame result{{outer.left, outer.top}, {outer.right, outer.bottom}, {}, {}};
  if (!inner.empty()) {
    result.innerFrom = {inner.left, inner.top};
    result.innerTo = {inner.right, inner.bottom};
  }
  return result;
}

Stroke ring(const Rectangle& rectangle) {
  const std::array<Point, 4> corners = clockwise(rectangle);
  return {{corners.begin(), corners.end()}, true};
}

namespace {

bool isPlain(const geometry::Outline& outline) { return outline.empty() || geometry::isRectangle(outline); }
Rectangle boxOf(const geometry::Outline& outline) { return outline.empty() ? Rectangle{} : outline.bounds(); }

}  // namespace

Shape between(const geometry::Outline& outer, const geometry::Outline& inner) {
  if (isPlain(outer) && isPlain(inner)) return frame(boxOf(outer), boxOf(inner));
  return geometry::Patch{outer, inner};
}

Shape along(const geometry::Outline& outline) {
  if (isPlain(outline)) return ring(boxOf(outline));
  return Path{outline.segments(), true};
}

Point turned(const Point& point, double width) { return {width - point.x, point.y}; }

namespace {

struct Turner {
  double width;

  void operator()(Frame& frame) const {
    const bool hole = frame.innerFrom != frame.innerTo;
    across(frame.outerFrom, frame.outerTo);
    if (hole) across(frame.innerFrom, frame.innerTo);
  }
  void operator()(Stroke& stroke) const {
    for (Point& point : stroke.points) point = turned(point, width);
  }
  void operator()(Text& text) const { text.at = turned(text.at, width); }
  void operator()(geometry::Patch& patch) const {
    patch.outer = patch.outer.mirrored(width / 2);
    patch.inner = patch.inner.mirrored(width / 2);
  }
  void operator()(Path& path) const {
    path.segments = geometry::Outline(std::move(path.segments)).mirrored(width / 2).segments();
  }

 private:
  void across(Point& from, Point& to) const {
    from.x = width - from.x;
    to.x = width - to.x;
    std::swap(from.x, to.x);
  }
};

}  // namespace

void turn(std::vector<Primitive>& primitives, double width) {
  for (Primitive& primitive : primitives) std::visit(Turner{width}, primitive.shape);
}

}  // namespace core::sheets::detail
