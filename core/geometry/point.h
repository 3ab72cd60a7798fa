#pragma once
// Points of a plane in millimetres: x to the right, y downwards, as everything on a mount is measured.
#include <cmath>

namespace core::geometry {

struct Point {
  double x = 0;
  double y = 0;
  friend constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
  friend constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
  friend constexpr Point operator*(double factor, Point p) { return {factor * p.x, factor * p.y}; }
  friend constexpr Point operator*(Point p, double factor) { return factor * p; }
  friend constexpr bool operator==(Point, Point) = default;
};

constexpr double dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }
constexpr double cross(Point a, Point b) { return a.x * b.y - a.y * b.x; }
// It uses the plain root: nothing measured here is near the ends of what a double holds.
inline double length(Point p) { return std::sqrt(p.x * p.x + p.y * p.y); }
inline double distance(Point a, Point b) { return length(b - a); }

}  // namespace core::geometry
