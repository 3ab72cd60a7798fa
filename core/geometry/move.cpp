#include "core/geometry/move.h"

#include <algorithm>
#include <limits>
#include <numbers>
#include <optional>

#include "core/geometry/intersect.h"
#include "core/geometry/trim.h"

namespace core::geometry {
namespace {

// Nearer than this, ends are one point (mm).
constexpr double kSame = 1e-9;
constexpr double kFarthestMeeting = 4;  // times the distance moved
// Ends nearer than the root of this times the distance moved are joined half way: the corner they make turns so little
// that the point lies within 1e-11 mm of both pieces, where crossing them would lose it in rounding.
constexpr double kHardlyTurns = 1e-11;  // mm
// What a corner that hardly turns leaves beyond its crossing is too short to be told by its distance (times the
// distance moved, and times the piece).
constexpr double kShortTail = 0.05;
constexpr double kShortTailOfPiece = 0.25;

using Kind = MoveProblem::Kind;

// A straight or an arc along its normal; nothing where an arc's radius would reach zero.
std::optional<Segment> alongNormal(const Segment& segment, double d) {
  if (const auto* straight = std::get_if<Straight>(&segment)) {
    const Point along = directionAtStart(segment);
    const Point by{d * along.y, -d * along.x};
    return Straight{straight->from + by, straight->to + by};
  }
  const Arc& arc = std::get<Arc>(segment);
  const double radius = arc.sweep > 0 ? arc.radius + d : arc.radius - d;
  if (radius <= kSame) return std::nullopt;
  const double grown = radius / arc.radius;
  return Arc{arc.centre, radius, arc.centre + grown * (arc.from - arc.centre),
             arc.centre + grown * (arc.to - arc.centre), arc.sweep};
}

// Returns which way the outline turns at the end of one segment into the next: > 0 clockwise, a corner of the opening.
double turnBetween(const Segment& one, const Segment& next) {
  const double turn = cross(directionAtEnd(one), directionAtStart(next));
  const bool back = dot(directionAtEnd(one), directionAtStart(next)) < 0;
  if (!back || std::fabs(turn) > 1e-7) return turn;
  // A spike whose sides touch at its point: a little way off, it shows which side is inside.
  constexpr double kALittle = 0.01;
  const Point corner = endOf(one);
  return cross(corner - pointAt(one, 1 - kALittle), pointAt(next, kALittle) - corner);
}

Segment withStart(const Segment& segment, Point start) {
  if (const auto* straight = std::get_if<Straight>(&segment)) return Straight{start, straight->to};
  Arc arc = std::get<Arc>(segment);
  const double before = 2 * std::numbers::pi - angleAlong(arc, start);
  arc.sweep += arc.sweep > 0 ? before : -before;
  arc.from = start;
  return arc;
}

Segment withEnd(const Segment& segment, Point end) {
  if (const auto* straight = std::get_if<Straight>(&segment)) return Straight{straight->from, end};
  Arc arc = std::get<Arc>(segment);
  const double whole = angleAlong(arc, end);
  arc.sweep = arc.sweep > 0 ? whole : -whole;
  arc.to = end;
  return arc;
}

// Returns how far a point of its carrier is beyond the end (before the start) of a segment, in mm along it. Returns
// nothing where the point is behind a straight; on a circle every point is ahead.
std::optional<double> beyondEnd(const Segment& segment, Point point) {
  if (const auto* straight = std::get_if<Straight>(&segment)) {
    const double ahead = dot(point - straight->to, directionAtEnd(segment));
    if (ahead < -kSame) return std::nullopt;
    return ahead;
  }
  const Arc& arc = std::get<Arc>(segment);
  const double angle = angleAlong(arc, point) - std::fabs(arc.sweep);
  if (angle < 0) return std::nullopt;
  return angle * arc.radius;
}

// The point at which two moved pieces, extended along themselves past their corner, meet first.
std::optional<Point> meeting(const Segment& one, const Segment& next, Point corner, double farthest) {
  std::optional<Point> nearest;
  double least = std::numeric_limits<double>::infinity();
  const Segment nextBackwards = reversed(next);
  for (const Point& point : carrierMeetings(one, next)) {
    if (distance(corner, point) > farthest + kSame) continue;
    const auto ahead = beyondEnd(one, point);
    const auto behind = beyondEnd(nextBackwards, point);
    if (!ahead || !behind || *ahead + *behind >= least) continue;
    least = *ahead + *behind;
    nearest = point;
  }
  return nearest;
}

double turnAbout(Point centre, Point from, Point to) {
  return std::atan2(cross(from - centre, to - centre), dot(from - centre, to - centre));
}

// Sets the end of one piece and the start of the next to a point of both, less than half a turn from where they are.
void join(Segment& one, Segment& next, Point point) {
  if (auto* straight = std::get_if<Straight>(&one)) straight->to = point;
  if (auto* arc = std::get_if<Arc>(&one)) {
    arc->sweep += turnAbout(arc->centre, arc->to, point);
    arc->to = point;
  }
  if (auto* straight = std::get_if<Straight>(&next)) straight->from = point;
  if (auto* arc = std::get_if<Arc>(&next)) {
    arc->sweep -= turnAbout(arc->centre, arc->from, point);
    arc->from = point;
  }
}

// The point at which two moved pieces cross close by a corner that closes.
std::optional<Point> crossingAtTail(const Segment& one, const Segment& next, double d) {
  const double shorter = std::min(lengthOf(one), lengthOf(next));
  double least = std::min(kShortTail * std::fabs(d), kShortTailOfPiece * shorter);
  std::optional<Point> nearest;
  for (const Point& point : carrierMeetings(one, next)) {
    const double away = std::max(distance(point, endOf(one)), distance(point, startOf(next)));
    if (away > least) continue;
    const bool within =
        dot(endOf(one) - point, directionAtEnd(one)) >= 0 && dot(point - startOf(next), directionAtStart(next)) >= 0;
    if (!within) continue;
    least = away;
    nearest = point;
  }
  return nearest;
}

// The moved pieces in order, closed at every corner that opens; where they cross they are left as they are.
std::vector<Segment> joined(const std::vector<Segment>& before, std::vector<Segment> pieces, double d) {
  const std::size_t count = pieces.size();
  std::vector<std::optional<Segment>> cornerArcs(count);
  if (count == 1) return pieces;
  for (std::size_t i = 0; i < count; ++i) {
    Segment& one = pieces[i];
    Segment& next = pieces[(i + 1) % count];
    const Point corner = endOf(before[i]);
    const Point end = endOf(one);
    const double gap = distance(end, startOf(next));
    if (gap <= kSame || gap * gap <= kHardlyTurns * std::fabs(d)) {
      join(one, next, gap <= kSame ? end : 0.5 * (end + startOf(next)));
      continue;
    }
    const bool opens = (turnBetween(before[i], before[(i + 1) % count]) > 0) == (d > 0);
    if (!opens) {
      if (const auto point = crossingAtTail(one, next, d)) join(one, next, *point);
      continue;
    }
    if (const auto point = meeting(one, next, corner, kFarthestMeeting * std::fabs(d))) {
      one = withEnd(one, *point);
      next = withStart(next, *point);
    } else {
      cornerArcs[i] = arcAbout(corner, end, startOf(next), d > 0);
    }
  }
  std::vector<Segment> closed;
  for (std::size_t i = 0; i < count; ++i) {
    closed.push_back(pieces[i]);
    if (cornerArcs[i]) closed.push_back(*cornerArcs[i]);
  }
  return closed;
}

base::Result<Outline, MoveProblem> movedOval(const OvalArc& oval, double d) {
  OvalArc other = oval;
  other.out += d;
  const double least = oval::leastCurvatureRadius(oval.semiX, oval.semiY);
  if (other.out <= -least + kSame) return MoveProblem{Kind::ArcVanishes, least + oval.out};
  return Outline({other});
}

}  // namespace

std::string_view name(MoveProblem::Kind kind) {
  switch (kind) {
    case Kind::ArcVanishes: return "arc-vanishes";
    case Kind::Nothing: return "nothing";
    case Kind::Parts: return "parts";
  }
  return "";
}

base::Result<Outline, MoveProblem> moved(const Outline& outline, double d) {
  if (d == 0 || outline.empty()) return outline;
  std::vector<Segment> pieces;
  for (const Segment& segment : outline.segments()) {
    if (const auto* oval = std::get_if<OvalArc>(&segment)) {
      const bool alone = outline.segments().size() == 1 && std::fabs(oval->sweep) >= 2 * std::numbers::pi;
      if (!alone) return MoveProblem{Kind::Parts, 0};
      return movedOval(*oval, d);
    }
    const auto piece = alongNormal(segment, d);
    if (!piece) return MoveProblem{Kind::ArcVanishes, std::get<Arc>(segment).radius};
    pieces.push_back(*piece);
  }
  return detail::trimmed(outline, joined(outline.segments(), std::move(pieces), d), d);
}

}  // namespace core::geometry
