#pragma once
// Rectangles and the rings between them. Bands, and the lines along them, are concentric with the box of the face
// opening, so a ring is two distances from that box, one for the sides and one for top and bottom.
#include <cstdint>
#include <vector>

#include "core/units/length.h"

namespace core::geometry {

struct Box {
  double width = 0;
  double height = 0;
  double perimeter() const { return 2 * (width + height); }
  double area() const { return width * height; }
  // Returns the box with every side moved outwards by d.
  Box movedOut(double d) const { return {width + 2 * d, height + 2 * d}; }
  friend bool operator==(const Box&, const Box&) = default;
};

// A distance outwards from the face opening, exact.
struct Reach {
  units::Length sides;
  units::Length topBottom;
  friend bool operator==(const Reach&, const Reach&) = default;
};

Reach movedOut(const Reach& reach, units::Length by);

struct Ring {
  Reach from;
  Reach to;
};

// Returns by how much two rings overlap: the least distance one would have to move for them to part; zero or less where
// they do not overlap. Exact.
units::Length overlap(const Ring& a, const Ring& b);

// Returns whether two rings share an edge or more.
bool touch(const Ring& a, const Ring& b);

// A rectangle on the mount, corners in mm.
struct Rectangle {
  double left = 0, top = 0, right = 0, bottom = 0;
  bool empty() const { return right <= left || bottom <= top; }
};

// Returns the rectangle with every side moved outwards, or inwards where by < 0.
Rectangle movedOut(const Rectangle& rectangle, double by);

// Returns the rectangle a distance outside the face opening `face`.
Rectangle outside(const Rectangle& face, const Reach& reach);

}  // namespace core::geometry
