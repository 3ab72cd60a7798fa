#include "core/geometry/trim.h"

#include <algorithm>
#include <optional>

#include "core/geometry/intersect.h"
#include "core/geometry/run.h"

namespace core::geometry::detail {
namespace {

using Kind = MoveProblem::Kind;

// A cut this near an end of a piece is that end (mm).
constexpr double kEnd = 1e-9;
// Parts nearer to the first outline than the distance less this are dropped (mm). Cut pieces that are wrong are wrong
// by much more, unless they are shorter than anybody can see.
constexpr double kTooNear = 1e-7;
// Ends this near are one corner (mm).
constexpr double kSameCorner = 1e-6;

struct Cut {
  double share;
  Point point;
};

bool apart(const Rectangle& a, const Rectangle& b) {
  return a.right < b.left - kEnd || b.right < a.left - kEnd || a.bottom < b.top - kEnd || b.bottom < a.top - kEnd;
}

// Where the point cuts the segment, within it but not at its ends.
void addCut(const Segment& segment, Point point, std::vector<Cut>& cuts) {
  if (distance(point, startOf(segment)) <= kEnd || distance(point, endOf(segment)) <= kEnd) return;
  const double share = shareAt(segment, point);
  if (share > 0 && share < 1) cuts.push_back({share, point});
}

bool lies(const Segment& segment, Point point) { return distanceTo(segment, point, 2 * kEnd) <= kEnd; }

std::vector<std::vector<Cut>> crossings(const std::vector<Segment>& pieces) {
  std::vector<std::vector<Cut>> cuts(pieces.size());
  std::vector<Rectangle> bounds;
  for (const Segment& piece : pieces) bounds.push_back(boundsOf(piece));
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    for (std::size_t k = i + 1; k < pieces.size(); ++k) {
      if (apart(bounds[i], bounds[k])) continue;
      for (const Point& point : carrierMeetings(pieces[i], pieces[k])) {
        if (!lies(pieces[i], point) || !lies(pieces[k], point)) continue;
        addCut(pieces[i], point, cuts[i]);
        addCut(pieces[k], point, cuts[k]);
      }
    }
  }
  return cuts;
}

Segment between(const Segment& piece, const Cut& from, const Cut& to) {
  if (std::holds_alternative<Straight>(piece)) return Straight{from.point, to.point};
  Arc arc = std::get<Arc>(piece);
  arc.from = from.point;
  arc.to = to.point;
  arc.sweep *= to.share - from.share;
  return arc;
}

void cutUp(const Segment& piece, std::vector<Cut>& cuts, std::vector<Segment>& parts) {
  std::sort(cuts.begin(), cuts.end(), [](const Cut& a, const Cut& b) { return a.share < b.share; });
  Cut from{0, startOf(piece)};
  for (const Cut& cut : cuts) {
    if (distance(from.point, cut.point) <= kEnd) continue;
    parts.push_back(between(piece, from, cut));
    from = cut;
  }
  parts.push_back(cuts.empty() ? piece : between(piece, from, {1, endOf(piece)}));
}

// Returns whether a moved part is on its own side of the outline, no nearer than the distance: a corner extended far
// may end on the other side.
bool isInPlace(const Outline& from, const std::vector<Run>& runs, const Segment& part, double d) {
  const Point middle = pointAt(part, 0.5);
  return from.distanceTo(middle) >= std::fabs(d) - kTooNear && isWithin(runs, middle) == (d < 0);
}

// Parts that lie on one another: of two that run the same way one remains, of two that run against each other none.
void dropDoubled(std::vector<Segment>& parts) {
  const auto same = [](Point a, Point b) { return distance(a, b) <= kSameCorner; };
  std::vector<bool> dropped(parts.size(), false);
  for (std::size_t i = 0; i < parts.size(); ++i) {
    for (std::size_t k = i + 1; k < parts.size() && !dropped[i]; ++k) {
      if (dropped[k]) continue;
      const bool along = same(startOf(parts[i]), startOf(parts[k])) && same(endOf(parts[i]), endOf(parts[k]));
      const bool against = same(startOf(parts[i]), endOf(parts[k])) && same(endOf(parts[i]), startOf(parts[k]));
      if (!(along || against) || !same(pointAt(parts[i], 0.5), pointAt(parts[k], 0.5))) continue;
      // A part shorter than a corner is neither.
      if (along && against) continue;
      dropped[k] = true;
      if (against) dropped[i] = true;
    }
  }
  std::vector<Segment> kept;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (!dropped[i]) kept.push_back(parts[i]);
  }
  parts = std::move(kept);
}

// Parts that lead nowhere or come from nowhere: what a corner extended far has cut off from the rest.
void dropLoose(std::vector<Segment>& parts) {
  const auto leads = [&](const Segment& one, const Segment& next) {
    return distance(endOf(one), startOf(next)) <= kSameCorner;
  };
  for (std::size_t before = 0; before != parts.size();) {
    before = parts.size();
    const std::vector<Segment> all = parts;
    std::erase_if(parts, [&](const Segment& part) {
      const bool goes = std::any_of(all.begin(), all.end(), [&](const Segment& next) { return leads(part, next); });
      return !goes || std::none_of(all.begin(), all.end(), [&](const Segment& one) { return leads(one, part); });
    });
  }
}

// Returns whether the parts, in their order, are one loop: so it is wherever no more was trimmed than what corners
// leave over.
bool areOneLoop(const std::vector<Segment>& parts) {
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (distance(endOf(parts[i]), startOf(parts[(i + 1) % parts.size()])) > kSameCorner) return false;
  }
  return !parts.empty();
}

// Clockwise from the end of one part into the next, -pi to pi.
double turnInto(const Segment& one, const Segment& next) {
  const Point a = directionAtEnd(one);
  const Point b = directionAtStart(next);
  return std::atan2(cross(a, b), dot(a, b));
}

// Follows kept parts from corner to corner, where several go on taking the one that keeps closest to the inside. Every
// part is used once; returns loops.
std::optional<std::vector<std::vector<Segment>>> loops(const std::vector<Segment>& parts) {
  std::vector<std::vector<Segment>> found;
  std::vector<bool> used(parts.size(), false);
  for (std::size_t first = 0; first < parts.size(); ++first) {
    if (used[first]) continue;
    std::vector<Segment> loop = {parts[first]};
    used[first] = true;
    const Point begin = startOf(parts[first]);
    while (distance(endOf(loop.back()), begin) > kSameCorner) {
      const Point end = endOf(loop.back());
      std::size_t next = parts.size();
      for (std::size_t i = 0; i < parts.size(); ++i) {
        if (used[i] || distance(end, startOf(parts[i])) > kSameCorner) continue;
        if (next == parts.size() || turnInto(loop.back(), parts[i]) > turnInto(loop.back(), parts[next])) next = i;
      }
      if (next == parts.size()) return std::nullopt;
      used[next] = true;
      loop.push_back(parts[next]);
    }
    found.push_back(std::move(loop));
  }
  return found;
}

// The one loop of parts in no order.
base::Result<std::vector<Segment>, MoveProblem> onlyLoop(std::vector<Segment> parts, double d) {
  dropDoubled(parts);
  dropLoose(parts);
  if (parts.empty()) return MoveProblem{Kind::Nothing, 0};
  auto found = loops(parts);
  if (!found) return MoveProblem{Kind::Parts, 0};
  // Inwards no hole can come about: a loop the wrong way round is what corners extended far have cut off.
  if (d < 0) std::erase_if(*found, [](const std::vector<Segment>& loop) { return Outline(loop).area() <= 0; });
  if (found->empty()) return MoveProblem{Kind::Nothing, 0};
  if (found->size() > 1) return MoveProblem{Kind::Parts, 0};
  return std::move(found->front());
}

void setStart(Segment& segment, Point point) {
  if (auto* straight = std::get_if<Straight>(&segment)) straight->from = point;
  if (auto* arc = std::get_if<Arc>(&segment)) arc->from = point;
}

// Returns whether one part only continues where the other ended.
bool goesOn(const Segment& one, const Segment& next) {
  const auto* arc = std::get_if<Arc>(&one);
  const auto* nextArc = std::get_if<Arc>(&next);
  if (arc != nullptr && nextArc != nullptr) {
    return arc->centre == nextArc->centre && arc->radius == nextArc->radius && (arc->sweep > 0) == (nextArc->sweep > 0);
  }
  if (arc != nullptr || nextArc != nullptr) return false;
  const Point a = directionAtEnd(one);
  const Point b = directionAtStart(next);
  return dot(a, b) > 0 && std::fabs(cross(a, b)) < 1e-12;
}

// Parts of one piece that were cut apart and both kept are one piece again.
void mend(std::vector<Segment>& loop) {
  for (std::size_t i = 0; i + 1 < loop.size();) {
    if (!goesOn(loop[i], loop[i + 1])) {
      ++i;
      continue;
    }
    if (auto* straight = std::get_if<Straight>(&loop[i])) straight->to = endOf(loop[i + 1]);
    if (auto* arc = std::get_if<Arc>(&loop[i])) {
      const Arc& next = std::get<Arc>(loop[i + 1]);
      arc->to = next.to;
      arc->sweep += next.sweep;
    }
    loop.erase(loop.begin() + static_cast<std::ptrdiff_t>(i) + 1);
  }
  // Neighbours share their corner to the bit.
  for (std::size_t i = 0; i < loop.size(); ++i) setStart(loop[(i + 1) % loop.size()], endOf(loop[i]));
}

}  // namespace

base::Result<Outline, MoveProblem> trimmed(const Outline& from, const std::vector<Segment>& pieces, double d) {
  auto cuts = crossings(pieces);
  std::vector<Segment> parts;
  for (std::size_t i = 0; i < pieces.size(); ++i) cutUp(pieces[i], cuts[i], parts);
  std::vector<Run> runs;
  for (const Segment& segment : from.segments()) cutIntoRuns(segment, 0, runs);
  std::erase_if(parts, [&](const Segment& part) { return !isInPlace(from, runs, part, d); });
  if (!areOneLoop(parts)) {
    auto loop = onlyLoop(std::move(parts), d);
    if (!loop) return loop.error();
    parts = std::move(loop).value();
  }
  mend(parts);
  Outline outline(std::move(parts));
  if (outline.area() <= 0) return MoveProblem{Kind::Nothing, 0};
  return outline;
}

}  // namespace core::geometry::detail
