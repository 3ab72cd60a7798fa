#include "core/sheets/card_lines.h"

#include <algorithm>
#include <cmath>

#include "core/sheets/piece.h"
#include "core/sheets/piece_matter.h"
#include "core/sheets/places.h"

namespace core::sheets::detail {
namespace {

// Shares of the numbers' cap height.
constexpr double kHead = 0.8;         // length of an arrow's head
constexpr double kRing = 0.34;        // radius of a datum's ring
constexpr double kCorner = 1.3;       // leg of the marked corner's triangle
constexpr double kArm = 0.5;          // of the cross at a place
constexpr double kOutside = 1.3;      // of a dimension line that comes from outside
constexpr double kPastCorner = 1.4;   // a side of the window goes on past its corners
constexpr double kRoomForTick = 1.7;  // between edge and opening
constexpr double kTickBeside = 0.75;  // the middle of a tick, off its line
constexpr double kTickBefore = 0.5;   // and before the end of it

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
  const auto& entered = design.job.boards;
  const auto own = std::find_if(entered.begin(), entered.end(), [&](const auto& one) { return one.id == board; });
  // Surface and waste lie under the lines of their own outlines.
  std::vector<Primitive> outlines;
  for (const Primitive& primitive : drawPiece(design, Side::Back).primitives) {
    if (primitive.element != board || primitive.matter) continue;
    outlines.push_back({board, primitive.role, onBoard(place, primitive.shape)});
  }
  for (Primitive ground : outlines) {
    ground.role = ground.role == Role::BoardEdge ? Role::BoardFace : Role::Waste;
    ground.matter = matterOf(*own);
    lines.push_back(std::move(ground));
  }
  lines.insert(lines.end(), outlines.begin(), outlines.end());
  // The triangle keeps its size on the glass: it is to be seen on the smallest board.
  const double leg = kCorner * place.cap;
  const Point corner{place.edges.right, place.edges.top};
  lines.push_back({board, Role::Mark, Stroke{{corner, {corner.x - leg, corner.y}, {corner.x, corner.y + leg}}, true}});
  return lines;
}

geometry::Rectangle openingOf(const CardPlace& place, const design::Design& design, const std::string& board) {
  const Rectangle sight = sightOf(*design.layout.board(board));
  const double width = design.layout.outerWidth;
  const Point from = place.on(Point{width - sight.right, sight.top});
  const Point to = place.on(Point{width - sight.left, sight.bottom});
  return {from.x, from.y, to.x, to.y};
}

std::vector<Primitive> madeLines(const CardPlace& place, const design::Design& design, const CardMeasure& measure,
                                 const geometry::Rectangle& opening) {
  std::vector<Primitive> made;
  const Point to = place.on(measure.to);
  const bool upright = runsAcross(measure);
  if (measure.gives == Gives::Line && !measure.ofWindow) {
    made.push_back({measure.element, Role::Guide, throughBoard(place, to, upright)});
  } else if (measure.gives == Gives::Line) {
    const double past = kPastCorner * place.cap;
    const Rectangle& edges = place.edges;
    if (upright) {
      made.push_back({measure.element, Role::Line,
                      Stroke{{{to.x, std::max(edges.top, opening.top - past)},
                              {to.x, std::min(edges.bottom, opening.bottom + past)}},
                             false}});
    } else {
      made.push_back({measure.element, Role::Line,
                      Stroke{{{std::max(edges.left, opening.left - past), to.y},
                              {std::min(edges.right, opening.right + past), to.y}},
                             false}});
    }
  } else {
    addGiven(made, place, measure);
    std::vector<Primitive> mirrored = made;
    const double axis = place.on(Point{design.layout.outerWidth - design.layout.board(measure.element)->axis, 0}).x;
    turn(mirrored, 2 * axis);
    if (measure.datum == Datum::CentreLine || measure.gives == Gives::Curve)
      made.insert(made.end(), mirrored.begin(), mirrored.end());
  }
  return made;
}

std::optional<Point> tickOf(const CardPlace& place, const CardMeasure& measure, const std::vector<Primitive>& made,
                            const geometry::Rectangle& opening) {
  if (measure.gives != Gives::Line || made.empty()) return std::nullopt;
  const Point end = std::get<Stroke>(made.front().shape).points.front();
  const double beside = kTickBeside * place.cap, before = kTickBefore * place.cap;
  const double needed = kRoomForTick * place.cap;
  if (runsAcross(measure)) {
    // The triangle has the corner.
    const bool room = opening.top - place.edges.top >= needed && end.x + 2 * beside < place.edges.right - place.cap / 2;
    return room ? std::optional(Point{end.x + beside, end.y + before}) : std::nullopt;
  }
  const bool room = opening.left - place.edges.left >= needed && end.y - 2 * beside > place.edges.top;
  return room ? std::optional(Point{end.x + before, end.y - beside}) : std::nullopt;
}

void addDimension(std::vector<Primitive>& list, const CardPlace& place, const CardMeasure& measure, Point from,
                  Point to) {
  const std::string& element = measure.element;
  const bool bothEnds = measure.gives == Gives::Distance;
  const double length = geometry::distance(from, to);
  const double head = kHead * place.cap;
  const Point unit = (1 / length) * (to - from);
  list.push_back({element, Role::Dimension, Stroke{{from, to}, false}});
  if (length < (bothEnds ? 2.6 : 1.6) * head + (bothEnds ? 0 : kRing * place.cap)) {
    const Point reach = kOutside * place.cap * unit;
    list.push_back({element, Role::Dimension, Stroke{{to + reach, to}, false}});
    addHead(list, place, element, to + reach, to);
    if (bothEnds) {
      list.push_back({element, Role::Dimension, Stroke{{from - reach, from}, false}});
      addHead(list, place, element, from - reach, from);
    }
  } else {
    addHead(list, place, element, from, to);
    if (bothEnds) addHead(list, place, element, to, from);
  }
  if (bothEnds) return;
  const Point start{from.x + kRing * place.cap, from.y};
  list.push_back({element, Role::Dimension, Path{{geometry::arcAbout(from, start, start, true)}, true}});
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
