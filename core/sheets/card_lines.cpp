#include "core/sheets/card_lines.h"

#include <algorithm>
#include <cmath>

#include "core/sheets/piece.h"

namespace core::sheets::detail {
namespace {

// Shares of the numbers' cap height.
constexpr double kHead = 0.65;   // length of an arrow's head
constexpr double kRing = 0.22;   // radius of a datum's ring
constexpr double kCorner = 1.3;  // leg of the marked corner's triangle
constexpr double kArm = 0.5;     // of the cross at a place

bool runsAcross(const CardMeasure& measure) { return std::fabs(measure.from.y - measure.to.y) < 1e-6; }

// The line through a point, right across the board, along which a measure's ends lie.
Stroke throughBoard(const CardPlace& place, Point at, bool upright) {
  if (upright) return {{{at.x, place.edges.top}, {at.x, place.edges.bottom}}, false};
  return {{{place.edges.left, at.y}, {place.edges.right, at.y}}, false};
}

void addHead(std::vector<Primitive>& list, const CardPlace& place, const std::string& element, Point from, Point to) {
  const double length = geometry::distance(from, to);
  const Point unit = (1 / length) * (to - from);
  const Point across{-unit.y, unit.x};
  const double size = std::min(kHead * place.cap, length * 0.45);
  const Point neck = to - size * unit;
  list.push_back(
      {element, Role::Dimension, Stroke{{to, neck + 0.36 * size * across, neck - 0.36 * size * across}, true}});
}

decltype(Primitive::shape) onBoard(const CardPlace& place, const decltype(Primitive::shape)& shape) {
  if (const auto* stroke = std::get_if<Stroke>(&shape)) {
    Stroke moved = *stroke;
    for (Point& point : moved.points) point = place.on(point);
    return moved;
  }
  const auto* path = std::get_if<Path>(&shape);
  if (path == nullptr) return shape;
  Path moved = *path;
  for (geometry::Segment& segment : moved.segments) segment = place.on(segment);
  return moved;
}

}  // namespace

geometry::Segment CardPlace::on(const geometry::Segment& segment) const {
  if (const auto* straight = std::get_if<geometry::Straight>(&segment)) {
    return geometry::Straight{on(straight->from), on(straight->to)};
  }
  if (const auto* arc = std::get_if<geometry::Arc>(&segment)) {
    return geometry::Arc{on(arc->centre), arc->radius * scale, on(arc->from), on(arc->to), arc->sweep};
  }
  geometry::OvalArc oval = std::get<geometry::OvalArc>(segment);
  oval.centre = on(oval.centre);
  oval.semiX *= scale;
  oval.semiY *= scale;
  oval.out *= scale;
  return oval;
}

std::vector<Primitive> boardLines(const CardPlace& place, const design::Design& design, const std::string& board) {
  std::vector<Primitive> lines;
  for (const Primitive& primitive : drawPiece(design, Side::Back).primitives) {
    // Lines alone: numbers stand on the board too, and want no ground of their own.
    if (primitive.role == Role::Mark || primitive.matter || primitive.element != board) continue;
    lines.push_back({board, primitive.role, onBoard(place, primitive.shape)});
  }
  // The triangle keeps its size on the glass: it is to be seen on the smallest board.
  const double leg = kCorner * place.cap;
  const Point corner{place.edges.right, place.edges.top};
  lines.push_back({board, Role::Mark, Stroke{{corner, {corner.x - leg, corner.y}, {corner.x, corner.y + leg}}, true}});
  if (!design.layout.shaped) return lines;
  const design::BoardLayout& layout = *design.layout.board(board);
  const Point crossing = place.on(Point{design.layout.outerWidth - layout.axis, layout.springing});
  for (const bool upright : {true, false})
    lines.push_back({board, Role::Guide, throughBoard(place, crossing, upright)});
  return lines;
}

void addDimension(std::vector<Primitive>& list, const CardPlace& place, const CardMeasure& measure, Point from,
                  Point to, bool inked) {
  const std::string& element = measure.element;
  list.push_back({element, Role::Dimension, Stroke{{from, to}, false}});
  addHead(list, place, element, from, to);
  if (measure.gives == Gives::Distance) {
    addHead(list, place, element, to, from);
  } else if (inked) {
    const Point start{from.x + kRing * place.cap, from.y};
    list.push_back({element, Role::Dimension, Path{{geometry::arcAbout(from, start, start, true)}, true}});
  }
}

void addDatum(std::vector<Primitive>& list, const CardPlace& place, const CardMeasure& measure) {
  if (measure.gives == Gives::Distance || measure.gives == Gives::Curve) return;
  const bool upright = runsAcross(measure);
  const Stroke edge = throughBoard(place, place.on(measure.from), upright);
  list.push_back({measure.element, Role::BoardEdge, edge});
  if (!measure.fromEdge) return;
  const double size = kHatchShare * place.cap;
  const Point begin = edge.points[0], end = edge.points[1];
  const bool far = upright ? begin.x > (place.edges.left + place.edges.right) / 2
                           : begin.y > (place.edges.top + place.edges.bottom) / 2;
  const double outwards = far ? size : -size;
  const double length = geometry::distance(begin, end);
  for (double at = size; at <= length; at += size) {
    const Point foot = begin + (at / length) * (end - begin);
    const Point tip = upright ? Point{foot.x + outwards, foot.y - size} : Point{foot.x - size, foot.y + outwards};
    list.push_back({measure.element, Role::Waste, Stroke{{foot, tip}, false}});
  }
}

void addGiven(std::vector<Primitive>& list, const CardPlace& place, const CardMeasure& measure) {
  const std::string& element = measure.element;
  const Point to = place.on(measure.to);
  if (measure.gives == Gives::Line) {
    list.push_back({element, Role::Line, throughBoard(place, to, runsAcross(measure))});
  } else if (measure.gives == Gives::Place) {
    const double arm = kArm * place.cap;
    list.push_back({element, Role::Line, Stroke{{{to.x - arm, to.y}, {to.x + arm, to.y}}, false}});
    list.push_back({element, Role::Line, Stroke{{{to.x, to.y - arm}, {to.x, to.y + arm}}, false}});
  } else if (measure.arc) {
    list.push_back({element, Role::Line, Path{{place.on(*measure.arc)}, false}});
  }
}

std::vector<Stroke> chordsOf(const std::vector<Primitive>& drawn) {
  constexpr int kChords = 12;
  std::vector<Stroke> lines;
  for (const Primitive& primitive : drawn) {
    if (const auto* stroke = std::get_if<Stroke>(&primitive.shape)) {
      lines.push_back(*stroke);
      if (stroke->closed) lines.back().points.push_back(stroke->points.front());
    } else if (const auto* path = std::get_if<Path>(&primitive.shape)) {
      Stroke chords;
      for (const geometry::Segment& segment : path->segments) {
        for (int i = 0; i <= kChords; ++i) chords.points.push_back(geometry::pointAt(segment, double(i) / kChords));
      }
      lines.push_back(std::move(chords));
    }
  }
  return lines;
}

}  // namespace core::sheets::detail
