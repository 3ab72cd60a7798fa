#pragma once
// A closed outline of straights, arcs and parallel curves of an ellipse: a window's opening, the edge of a line, the
// bound of a wash. Clockwise as seen (y downwards), one loop, not crossing itself.
#include <string>
#include <string_view>
#include <vector>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/geometry/segment.h"

namespace core::geometry {

class Outline {
 public:
  Outline() = default;
  // Requires each segment to end where the next begins, to the bit for straights and arcs, and the last where the
  // first begins.
  explicit Outline(std::vector<Segment> segments) : m_segments(std::move(segments)) {}

  const std::vector<Segment>& segments() const { return m_segments; }
  bool empty() const { return m_segments.empty(); }

  // Millimetres and square millimetres; a few units in the last place for straights and arcs.
  double perimeter() const;
  double area() const;
  Rectangle bounds() const;
  // Returns whether a point is inside; on the edge itself either answer is possible.
  bool contains(Point point) const;
  double distanceTo(Point point) const;

  Outline shifted(Point by) const;
  // Left and right change places about the line x = axis.
  Outline mirrored(double axis) const;

  friend bool operator==(const Outline&, const Outline&) = default;

 private:
  std::vector<Segment> m_segments;
};

Outline outlineOf(const Rectangle& rectangle);
// Returns whether the outline is a rectangle with its sides along the axes.
bool isRectangle(const Outline& outline);

// Returns one line of text, with the shortest digits that read back to the same bits:
//   "from 0 0 line 10 0 arc 10 5 5 10 10 3.141592653589793 line 0 10 line 0 0"
// `line x y` goes straight to a point; `arc cx cy r x y sweep` turns about a centre at a radius to a point, by a sweep
// in radians, positive clockwise as seen; `oval cx cy a b out start sweep` is a parallel curve of an ellipse. The last
// segment returns to `from`. An outline without segments is the empty text.
std::string outlineText(const Outline& outline);
// Reads that form. Refuses words that are no number or beyond 100 m, arcs whose ends are more than 1e-6 mm off their
// circle or their sweep, ovals whose curve is not smooth, and outlines that do not close; an outline that closes within
// 1e-6 mm is closed to the bit. The message gives the number of the word at which reading stopped.
base::Result<Outline, base::Message> parseOutline(std::string_view text);

}  // namespace core::geometry
