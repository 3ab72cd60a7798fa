#pragma once
// The pieces an outline is made of: straights, circular arcs, and the parallel curve of an ellipse. Each is held by
// what a maker would set it out from (ends; centre, radius and sweep; semi-axes), never by chords.
//
// Angles are in radians from the x axis towards the y axis, which is clockwise as seen, y being downwards. An outline
// runs clockwise as seen, so a positive sweep bulges out of the opening and a negative one cuts into it.
#include <limits>
#include <variant>
#include <vector>

#include "core/geometry/point.h"
#include "core/geometry/rectangle.h"

namespace core::geometry {

struct Straight {
  Point from, to;
  friend bool operator==(const Straight&, const Straight&) = default;
};

// The ends are held as well as the angles, so that neighbours share them to the bit.
struct Arc {
  Point centre;
  double radius = 0;  // > 0
  Point from, to;
  double sweep = 0;  // 0 < |sweep| <= 2 pi; from == to only for a whole circle
  friend bool operator==(const Arc&, const Arc&) = default;
};

// Points (semiX cos t, semiY sin t) of an ellipse, each moved `out` along the outward normal; t runs from `start`
// by `sweep`. Requires 0 < semiX, semiY and, for a smooth curve, out > -(the least radius of curvature).
struct OvalArc {
  Point centre;
  double semiX = 0, semiY = 0;
  double out = 0;
  double start = 0, sweep = 0;
  friend bool operator==(const OvalArc&, const OvalArc&) = default;
};

using Segment = std::variant<Straight, Arc, OvalArc>;

// The arc from one point to another about a centre, turning the way of `positive`. Equal points make a whole circle.
Arc arcAbout(Point centre, Point from, Point to, bool positive);

Point startOf(const Segment& segment);
Point endOf(const Segment& segment);
// The point a share (0 to 1) along, by length of a straight and by angle of a curve.
Point pointAt(const Segment& segment, double share);
// Unit vector of travel at the start and at the end.
Point directionAtStart(const Segment& segment);
Point directionAtEnd(const Segment& segment);
// Error at most a few units in the last place; of an oval by quadrature, 1e-12 relative.
double lengthOf(const Segment& segment);
// The segment's part of the enclosed area: half the integral of x dy - y dx.
double areaUnder(const Segment& segment);
Rectangle boundsOf(const Segment& segment);
// Where the distance is `below` or more, any value of `below` or more may be returned, which saves work.
double distanceTo(const Segment& segment, Point point, double below = std::numeric_limits<double>::infinity());
Segment reversed(const Segment& segment);
Segment shifted(const Segment& segment, Point by);
// Left and right change places about the line x = axis; runs the other way, so that an outline stays clockwise.
Segment mirrored(const Segment& segment, double axis);

// The angle of a point seen from an arc's centre, counted from the arc's start in its own direction: 0 to 2 pi.
double angleAlong(const Arc& arc, Point point);
// Returns the part of a segment between two shares of it.
Segment part(const Segment& segment, double fromShare, double toShare);

// The ellipse's own numbers, used by outlines and by the setting-out.
namespace oval {
Point pointAt(const OvalArc& oval, double t);
// Returns the rate of travel along x and y at t, per radian.
Point rateAt(const OvalArc& oval, double t);
// Integral of x dy from t0 to t1 about the centre's own origin, 1e-13 relative.
double integralXdY(const OvalArc& oval, double t0, double t1);
// Length from t0 to t1, 1e-13 relative.
double length(const OvalArc& oval, double t0, double t1);
// The parameter at which the curve has that y, within [low, high] over which y is monotone.
double parameterAtY(const OvalArc& oval, double y, double low, double high);
// Perimeter of the ellipse itself: 4 a E(m), by the arithmetic-geometric mean; exact to the last places.
double perimeter(double semiX, double semiY);
// Least radius of curvature of the ellipse: how far inwards its parallel curve stays smooth.
double leastCurvatureRadius(double semiX, double semiY);
}  // namespace oval

}  // namespace core::geometry
