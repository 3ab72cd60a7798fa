#pragma once
// The pencil box of the drawings of acts: surfaces, tools, arrows. Lengths in mm of the sample, angles in degrees
// counter-clockwise from the right as seen.
#include <initializer_list>
#include <string>
#include <vector>

#include "core/sheets/act.h"
#include "core/sheets/drawing.h"

namespace core::sheets::detail {

inline constexpr double kActWidth = 120;
inline constexpr double kActHeight = 80;

using craft::ActPlace;
using Points = std::vector<Point>;

// From `from` degrees to `to`, both ends included.
Points arc(const Point& centre, double radius, double from, double to);
Points arc(const Point& centre, double across, double down, double from, double to);
// From one point to the other, drawn towards the control point (quadratic), in short straights.
Points curve(const Point& from, const Point& control, const Point& to);
Points joined(Points first, const Points& second);
// Turned about a point.
Points turned(Points points, const Point& about, double degrees);
Points moved(Points points, const Point& by);

class ActPainter {
 public:
  explicit ActPainter(ActPapers papers);
  Drawing take() { return std::move(m_drawing); }

  // Where a sentence that speaks of that part points to: a number stands there, a hand's breadth from the next.
  void place(craft::ActPlace place, const Point& at) { m_drawing.places.push_back({place, at}); }

  void area(Role role, Points points);  // closed
  void line(Role role, Points points);
  void box(Role role, const Point& from, const Point& to);
  void ring(Role role, const Point& outerFrom, const Point& outerTo, const Point& innerFrom, const Point& innerTo);
  // A board of the piece, seen from its face or its back; a strip of its paper, whose pattern runs along it.
  void board(Points points);
  void board(const Point& from, const Point& to);
  void strip(const Point& from, const Point& to);
  // The same cut to another form: its pattern runs from a point on its inner edge that way.
  void strip(Points points, const Point& from, const Point& along, double width);
  void disc(Role role, const Point& centre, double radius);
  // 45 degree hatching of a convex shape.
  void hatch(const Points& convex);
  // Dashes along a hidden edge.
  void dashes(Role role, const Point& from, const Point& to);
  void markedCorner(const Point& corner, double legAcross, double legDown);

  // Along the points, with its head at the last.
  void arrow(const Points& points);

  // Tools: the tip at a point, the handle leaving it at an angle.
  void brush(const Point& tip, double angle, bool charged = true);
  void knife(const Point& tip, double angle, bool edgeLeft = true);
  void pencil(const Point& tip, double angle);
  void pen(const Point& tip, double angle);
  void bone(const Point& tip, double angle);
  void finger(const Point& tip, double angle);
  void weight(const Point& bottomMiddle, double width, double height);
  void paper(const Point& from, const Point& to);  // a strip with a pattern, whatever the piece's own is
  void rule(const Point& from, const Point& to);   // lying level, its edges divided

 private:
  template <typename Shape>
  void add(Role role, Shape shape);
  // A shape given along the tool: x from the tip along the handle, y to its left.
  void along(Role role, const Point& tip, double angle, const Points& shape);

  void addOf(Matter matter, Points points);

  ActPapers m_papers;
  Drawing m_drawing;
};

// A board lying on the bench seen from the front edge and a little above: its near end is cut square, the far end
// lies up and to the right.
struct Slab {
  double left = 8;
  double right = 70;  // at the top, near end
  double slope = 0;   // how much further right the bottom goes (bevel face up), or less (back up)
  double top = 46;    // of the near end
  double thickness = 14;
  Point away = {16, -30};  // from the near end to the far one

  // A point on the top: `x` at the near end, `depth` 0 near to 1 far.
  Point onTop(double x, double depth) const { return {x + away.x * depth, top + away.y * depth}; }
  Point onBevel(double share, double depth) const {
    return {right + slope * share + away.x * depth, top + thickness * share + away.y * depth};
  }
  // Between two distances from the left at the near end and two depths.
  Points patch(double fromX, double toX, double fromDepth = 0, double toDepth = 1) const;
  Points bevelPatch(double fromDepth = 0, double toDepth = 1) const;
};
void paint(ActPainter& painter, const Slab& slab);

}  // namespace core::sheets::detail
