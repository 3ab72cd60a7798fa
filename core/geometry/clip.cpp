#include "core/geometry/clip.h"

#include <algorithm>
#include <optional>

#include "core/geometry/run.h"

namespace core::geometry {
namespace {

struct Crossing {
  std::size_t segment;
  double share;
  Point point;
};

// Corners and turning points often lie on the level itself: whether a segment passes it is decided a hair above.
constexpr double kHair = 1e-9;

// Where a segment passes a level, as shares of it.
void addCrossings(const Segment& segment, std::size_t index, double level, std::vector<Crossing>& crossings) {
  std::vector<Run> runs;
  cutIntoRuns(segment, 0, runs);
  for (const Run& run : runs) {
    if (!(run.top < level - kHair && level - kHair <= run.bottom)) continue;
    const double y = std::min(level, run.bottom);
    const Point point{run.xAt(y), y};
    double share = 0;
    if (const auto* straight = std::get_if<Straight>(&segment)) {
      share = (y - straight->from.y) / (straight->to.y - straight->from.y);
    } else if (const auto* arc = std::get_if<Arc>(&segment)) {
      share = angleAlong(*arc, point) / std::fabs(arc->sweep);
    } else {
      const auto& oval = std::get<OvalArc>(segment);
      share = (oval::parameterAtY(oval, y, run.low, run.high) - oval.start) / oval.sweep;
    }
    // A hair before an arc's start is a whole turn after it.
    if (distance(point, startOf(segment)) < kHair) share = 0;
    if (distance(point, endOf(segment)) < kHair) share = 1;
    crossings.push_back({index, std::clamp(share, 0.0, 1.0), point});
  }
}

// The outline from one crossing on, round to the other.
std::vector<Segment> stretch(const std::vector<Segment>& segments, const Crossing& from, const Crossing& to) {
  std::vector<Segment> found;
  const auto add = [&](const Segment& segment, double a, double b) {
    if (b - a > 1e-12) found.push_back(part(segment, a, b));
  };
  // Where both are one point, the hole only touches the level there: all of it lies above.
  const bool whole = distance(from.point, to.point) < kHair;
  if (!whole && from.segment == to.segment && from.share <= to.share) {
    add(segments[from.segment], from.share, to.share);
    return found;
  }
  add(segments[from.segment], from.share, 1);
  for (std::size_t i = (from.segment + 1) % segments.size(); i != to.segment % segments.size();
       i = (i + 1) % segments.size()) {
    found.push_back(segments[i]);
  }
  add(segments[to.segment], 0, to.share);
  return found;
}

}  // namespace

Outline notched(const Rectangle& rectangle, const Outline& hole) {
  std::vector<Crossing> crossings;
  const auto& segments = hole.segments();
  for (std::size_t i = 0; i < segments.size(); ++i) addCrossings(segments[i], i, rectangle.bottom, crossings);
  if (crossings.size() < 2 || rectangle.empty()) return rectangle.empty() ? Outline() : outlineOf(rectangle);
  const auto byX = [](const Crossing& a, const Crossing& b) { return a.point.x < b.point.x; };
  const Crossing& left = *std::min_element(crossings.begin(), crossings.end(), byX);
  const Crossing& right = *std::max_element(crossings.begin(), crossings.end(), byX);
  // The hole runs clockwise, so from the left crossing it goes over the top to the right one.
  const std::vector<Segment> over = stretch(segments, left, right);
  std::vector<Segment> outline;
  Point at{rectangle.left, rectangle.bottom};
  const auto go = [&](Point to) {
    if (!(to == at)) outline.push_back(Straight{at, to});
    at = to;
  };
  go({rectangle.left, rectangle.top});
  go({rectangle.right, rectangle.top});
  go({rectangle.right, rectangle.bottom});
  // The bits of a curve's end, not those of the level, so that neighbours meet.
  go(over.empty() ? right.point : endOf(over.back()));
  for (auto segment = over.rbegin(); segment != over.rend(); ++segment) outline.push_back(reversed(*segment));
  at = over.empty() ? at : startOf(over.front());
  go({rectangle.left, rectangle.bottom});
  return Outline(std::move(outline));
}

}  // namespace core::geometry
