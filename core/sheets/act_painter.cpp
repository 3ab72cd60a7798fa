#include "core/sheets/act_painter.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace core::sheets::detail {
namespace {

constexpr double kArrowHead = 6.5;
constexpr double kArrowHalf = 3.2;
constexpr double kHatchGap = 3.2;
constexpr double kDash = 2;
constexpr double kArcStep = 7.5;  // degrees

double radians(double degrees) { return degrees * std::numbers::pi / 180; }

}  // namespace

Points arc(const Point& centre, double across, double down, double from, double to) {
  const int steps = std::max(1, static_cast<int>(std::ceil(std::abs(to - from) / kArcStep)));
  Points points;
  for (int i = 0; i <= steps; ++i) {
    const double at = radians(from + (to - from) * i / steps);
    points.push_back({centre.x + across * std::cos(at), centre.y - down * std::sin(at)});
  }
  return points;
}

Points arc(const Point& centre, double radius, double from, double to) { return arc(centre, radius, radius, from, to); }

Points curve(const Point& from, const Point& control, const Point& to) {
  constexpr int kSteps = 14;
  Points points;
  for (int i = 0; i <= kSteps; ++i) {
    const double t = static_cast<double>(i) / kSteps;
    points.push_back(from * ((1 - t) * (1 - t)) + control * (2 * t * (1 - t)) + to * (t * t));
  }
  return points;
}

Points joined(Points first, const Points& second) {
  first.insert(first.end(), second.begin(), second.end());
  return first;
}

Points turned(Points points, const Point& about, double degrees) {
  const double c = std::cos(radians(degrees));
  const double s = std::sin(radians(degrees));
  for (Point& point : points) {
    const Point from = point - about;
    point = {about.x + from.x * c + from.y * s, about.y - from.x * s + from.y * c};
  }
  return points;
}

Points moved(Points points, const Point& by) {
  for (Point& point : points) point = point + by;
  return points;
}

ActPainter::ActPainter(ActPapers papers) : m_papers(std::move(papers)) {
  m_drawing.width = kActWidth;
  m_drawing.height = kActHeight;
}

template <typename Shape>
void ActPainter::add(Role role, Shape shape) {
  m_drawing.primitives.push_back({"act", role, std::move(shape)});
}

void ActPainter::area(Role role, Points points) { add(role, Stroke{std::move(points), true}); }
void ActPainter::line(Role role, Points points) { add(role, Stroke{std::move(points), false}); }
void ActPainter::box(Role role, const Point& from, const Point& to) { add(role, Frame{from, to, {}, {}}); }
void ActPainter::ring(Role role, const Point& outerFrom, const Point& outerTo, const Point& innerFrom,
                      const Point& innerTo) {
  if (role == Role::Sheet) {
    Matter matter;
    matter.name = m_papers.board;
    m_drawing.primitives.push_back({"act", role, Frame{outerFrom, outerTo, innerFrom, innerTo}, std::move(matter)});
    return;
  }
  add(role, Frame{outerFrom, outerTo, innerFrom, innerTo});
}
void ActPainter::addOf(Matter matter, Points points) {
  m_drawing.primitives.push_back({"act", Role::Sheet, Stroke{std::move(points), true}, std::move(matter)});
}

void ActPainter::board(Points points) {
  Matter matter;
  matter.name = m_papers.board;
  addOf(std::move(matter), std::move(points));
}

void ActPainter::board(const Point& from, const Point& to) { board({from, {to.x, from.y}, to, {from.x, to.y}}); }

void ActPainter::strip(Points points, const Point& from, const Point& along, double width) {
  Matter matter;
  matter.substance = Substance::Paper;
  matter.name = m_papers.paper;
  Run run;
  run.from = from;
  run.along = along;
  run.outwards = {along.y, -along.x};
  run.width = width;
  run.repeat = m_papers.repeat * width;
  matter.run = run;
  addOf(std::move(matter), std::move(points));
}

void ActPainter::strip(const Point& from, const Point& to) {
  const bool lying = to.x - from.x > to.y - from.y;
  strip({from, {to.x, from.y}, to, {from.x, to.y}},
        lying ? Point{(from.x + to.x) / 2, to.y} : Point{from.x, (from.y + to.y) / 2},
        lying ? Point{1, 0} : Point{0, 1}, lying ? to.y - from.y : to.x - from.x);
}

void ActPainter::disc(Role role, const Point& centre, double radius) { area(role, arc(centre, radius, 0, 352.5)); }

void ActPainter::hatch(const Points& convex) {
  // Lines x + y = c, each from where it enters the shape to where it leaves.
  double least = convex.front().x + convex.front().y;
  double most = least;
  for (const Point& point : convex) {
    least = std::min(least, point.x + point.y);
    most = std::max(most, point.x + point.y);
  }
  for (double c = least + kHatchGap; c < most; c += kHatchGap) {
    Points met;
    for (std::size_t i = 0; i < convex.size(); ++i) {
      const Point& a = convex[i];
      const Point& b = convex[(i + 1) % convex.size()];
      const double atA = a.x + a.y - c;
      const double atB = b.x + b.y - c;
      if ((atA < 0) == (atB < 0)) continue;
      met.push_back(a + (b - a) * (atA / (atA - atB)));
    }
    if (met.size() == 2) line(Role::Waste, met);
  }
}

void ActPainter::dashes(Role role, const Point& from, const Point& to) {
  const double whole = length(to - from);
  const Point step = (to - from) * (1 / whole);
  for (double at = 0; at < whole; at += 2 * kDash) {
    line(role, {from + step * at, from + step * std::min(whole, at + kDash)});
  }
}

void ActPainter::markedCorner(const Point& corner, double legAcross, double legDown) {
  area(Role::Mark, {corner, corner + Point{legAcross, 0}, corner + Point{0, legDown}});
}

void ActPainter::arrow(const Points& points) {
  const Point tip = points.back();
  // The shaft ends within the head; the head points along what it replaces.
  Points shaft = points;
  while (shaft.size() > 2 && length(tip - shaft[shaft.size() - 2]) < kArrowHead) shaft.erase(shaft.end() - 2);
  const Point before = shaft[shaft.size() - 2];
  const Point ahead = (tip - before) * (1 / length(tip - before));
  const Point aside{-ahead.y, ahead.x};
  const Point base = tip - ahead * kArrowHead;
  shaft.back() = base + ahead * (kArrowHead * 0.3);
  line(Role::Motion, shaft);
  area(Role::Motion, {tip, base + aside * kArrowHalf, base - aside * kArrowHalf});
}

void ActPainter::along(Role role, const Point& tip, double angle, const Points& shape) {
  const double c = std::cos(radians(angle));
  const double s = std::sin(radians(angle));
  Points points;
  for (const Point& p : shape) points.push_back({tip.x + p.x * c - p.y * s, tip.y - p.x * s - p.y * c});
  area(role, std::move(points));
}

void ActPainter::brush(const Point& tip, double angle, bool charged) {
  along(Role::Tool, tip, angle, {{16, 2.4}, {36, 1.6}, {40, 0}, {36, -1.6}, {16, -2.4}});
  along(Role::Section, tip, angle, {{11, 3.5}, {17, 2.8}, {17, -2.8}, {11, -3.5}});
  along(charged ? Role::Film : Role::Tool, tip, angle,
        {{0, 0.8}, {4, 3.2}, {11, 3.5}, {11, -3.5}, {4, -3.2}, {0, -0.8}});
}

void ActPainter::knife(const Point& tip, double angle, bool edgeLeft) {
  const double e = edgeLeft ? 1 : -1;
  along(Role::Blade, tip, angle, {{0, 0}, {15, 0}, {15, -3.4 * e}, {5, -3.4 * e}});
  along(Role::Tool, tip, angle,
        {{13, 1.4 * e}, {36, 1.4 * e}, {38, -0.4 * e}, {38, -3.2 * e}, {36, -5 * e}, {13, -5 * e}});
}

void ActPainter::pencil(const Point& tip, double angle) {
  along(Role::Tool, tip, angle, {{0, 0}, {6, 2}, {34, 2}, {34, -2}, {6, -2}});
  along(Role::Blade, tip, angle, {{0, 0}, {2.2, 0.75}, {2.2, -0.75}});
}

void ActPainter::pen(const Point& tip, double angle) {
  along(Role::Tool, tip, angle, {{11, 1.7}, {38, 1.4}, {38, -1.4}, {11, -1.7}});
  along(Role::Film, tip, angle, {{0, 0.2}, {4, 1}, {7, 1.2}, {7, -1.2}, {4, -1}, {0, -0.2}});
  along(Role::Tool, tip, angle, {{0, 0.3}, {5, 1.9}, {11, 2.1}, {11, 1}, {5, 0.9}});
  along(Role::Tool, tip, angle, {{0, -0.3}, {5, -1.9}, {11, -2.1}, {11, -1}, {5, -0.9}});
}

void ActPainter::bone(const Point& tip, double angle) {
  along(
      Role::Tool, tip, angle,
      {{0, 0}, {1, 2}, {5, 3.4}, {12, 4}, {36, 3.4}, {39, 1.6}, {39, -1.6}, {36, -3.4}, {12, -4}, {5, -3.4}, {1, -2}});
}

void ActPainter::finger(const Point& tip, double angle) {
  Points shape = {{30, -6.4}, {16, -5.6}};
  for (const Point& point : arc({5.2, 0}, 5.2, 270, 90)) shape.push_back({point.x, -point.y});
  shape.push_back({16, 5.6});
  shape.push_back({30, 6.4});
  along(Role::Tool, tip, angle, shape);
  along(Role::Section, tip, angle, {{2, 2.8}, {4.6, 4.4}, {10.5, 4.9}, {10.5, 2.2}, {4.6, 1.8}});
}

void ActPainter::weight(const Point& bottomMiddle, double width, double height) {
  const double grip = width * 0.22;
  box(Role::Tool, bottomMiddle + Point{-grip, -height - 4.5}, bottomMiddle + Point{grip, -height});
  box(Role::Section, bottomMiddle + Point{-width / 2, -height}, bottomMiddle + Point{width / 2, 0});
}

void ActPainter::rule(const Point& from, const Point& to) {
  box(Role::Tool, from, to);
  int count = 0;
  for (double x = from.x + 3; x < to.x - 1.5; x += 3) {
    line(Role::Guide, {{x, from.y}, {x, from.y + (count++ % 5 == 0 ? 3.6 : 2)}});
  }
}

void ActPainter::paper(const Point& from, const Point& to) {
  strip(from, to);
  // Its own pattern tells which way it runs.
  if (!m_papers.paper.empty()) return;
  const bool lying = to.x - from.x > to.y - from.y;
  const double length = (lying ? to.x - from.x : to.y - from.y) - 4;
  const double middle = lying ? (from.y + to.y) / 2 : (from.x + to.x) / 2;
  constexpr double kWave = 8;
  constexpr double kHeight = 3.6;
  Points wave;
  double side = 1;
  for (double at = 0; at + kWave / 2 <= length; at += kWave / 2, side = -side) {
    const double start = (lying ? from.x : from.y) + 2 + at;
    Points half = curve({start, middle}, {start + kWave / 4, middle + side * kHeight}, {start + kWave / 2, middle});
    if (!lying) {
      for (Point& point : half) std::swap(point.x, point.y);
    }
    wave = joined(std::move(wave), half);
  }
  line(Role::Guide, std::move(wave));
}

Points Slab::patch(double fromX, double toX, double fromDepth, double toDepth) const {
  return {onTop(fromX, fromDepth), onTop(toX, fromDepth), onTop(toX, toDepth), onTop(fromX, toDepth)};
}

Points Slab::bevelPatch(double fromDepth, double toDepth) const {
  return {onBevel(0, fromDepth), onBevel(1, fromDepth), onBevel(1, toDepth), onBevel(0, toDepth)};
}

void paint(ActPainter& painter, const Slab& slab) {
  if (slab.slope >= 0) painter.area(Role::Sheet, slab.bevelPatch());
  painter.board(slab.patch(slab.left, slab.right));
  painter.area(Role::Section, {{slab.left, slab.top},
                               {slab.right, slab.top},
                               {slab.right + slab.slope, slab.top + slab.thickness},
                               {slab.left, slab.top + slab.thickness}});
}

}  // namespace core::sheets::detail
