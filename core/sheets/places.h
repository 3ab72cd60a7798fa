#pragma once
// The places of things on the mount, as rectangles seen from the face, and how they turn over to the back.
#include <array>
#include <vector>

#include "core/design/design.h"
#include "core/geometry/rectangle.h"
#include "core/sheets/drawing.h"

namespace core::sheets::detail {

using geometry::Rectangle;

Rectangle mount(const design::Layout& layout);
Rectangle sightOf(const design::BoardLayout& board);
Rectangle faceOf(const design::BoardLayout& board);
// The face opening of the outermost board: what bands and lines are laid out round.
Rectangle topFace(const design::Layout& layout);
Rectangle around(const Rectangle& centre, const design::Box& box);
Rectangle sheetOf(const design::Layout& layout);
// The edge a line follows.
Rectangle followedBy(const design::Layout& layout, const design::Line& line);

// Corners from the top left.
std::array<Point, 4> clockwise(const Rectangle& rectangle);

Frame frame(const Rectangle& outer, const Rectangle& inner);
Stroke ring(const Rectangle& rectangle);

// Return the region between two outlines, and the line along one: a frame and a stroke where they are rectangles, so
// that a plain mount is drawn of nothing but corners. An empty inner leaves no hole.
using Shape = decltype(Primitive::shape);
Shape between(const geometry::Outline& outer, const geometry::Outline& inner);
Shape along(const geometry::Outline& outline);

// Returns the same seen from the other side of a mount of that width: left and right change places.
Point turned(const Point& point, double width);
void turn(std::vector<Primitive>& primitives, double width);

}  // namespace core::sheets::detail
