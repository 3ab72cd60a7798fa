#include "core/geometry/run.h"

#include <algorithm>
#include <array>
#include <numbers>

namespace core::geometry {
namespace {

constexpr double kHalfTurn = std::numbers::pi;

// The angles between low and high at which a circle or an oval turns back in y: odd quarters.
struct Turns {
  // A whole turn, begun anywhere, turns back three times at most.
  std::array<double, 6> angles;
  std::size_t count = 0;

  void add(double angle) { angles[count++] = angle; }
  std::size_t size() const { return count; }
  double operator[](std::size_t at) const { return angles[at]; }
  double front() const { return angles[0]; }
};

Turns turnsBetween(double low, double high) {
  Turns turns;
  turns.add(low);
  for (double turn = (std::floor(low / kHalfTurn - 0.5) + 1.5) * kHalfTurn; turn < high && turns.size() < 5;
       turn += kHalfTurn) {
    if (turn > low) turns.add(turn);
  }
  turns.add(high);
  return turns;
}

void finish(Run run, std::vector<Run>& runs) {
  if (run.bottom > run.top) runs.push_back(run);
}

void cutArc(const Arc& arc, Run run, std::vector<Run>& runs) {
  const Point from = arc.sweep > 0 ? arc.from : arc.to;
  const Point to = arc.sweep > 0 ? arc.to : arc.from;
  const double low = std::atan2(from.y - arc.centre.y, from.x - arc.centre.x);
  const Turns turns = turnsBetween(low, low + std::fabs(arc.sweep));
  for (std::size_t i = 0; i + 1 < turns.size(); ++i) {
    const auto end = [&](std::size_t at) {
      if (at == 0) return from;
      if (at + 1 == turns.size()) return to;
      return Point{arc.centre.x, arc.centre.y + (std::sin(turns[at]) > 0 ? arc.radius : -arc.radius)};
    };
    const Point a = end(i);
    const Point b = end(i + 1);
    const double middle = (turns[i] + turns[i + 1]) / 2;
    run.side = std::cos(middle) >= 0 ? 1 : -1;
    run.top = std::min(a.y, b.y);
    run.bottom = std::max(a.y, b.y);
    run.left = std::min(a.x, b.x);
    run.right = std::max(a.x, b.x);
    // The circle's own extreme lies in this run where the run passes the centre's height.
    if (run.top < arc.centre.y && run.bottom > arc.centre.y) {
      run.left = std::min(run.left, arc.centre.x + run.side * arc.radius);
      run.right = std::max(run.right, arc.centre.x + run.side * arc.radius);
    }
    finish(run, runs);
  }
}

void cutOval(const OvalArc& oval, Run run, std::vector<Run>& runs) {
  const double low = std::min(oval.start, oval.start + oval.sweep);
  const Turns turns = turnsBetween(low, low + std::fabs(oval.sweep));
  for (std::size_t i = 0; i + 1 < turns.size(); ++i) {
    const Point a = oval::pointAt(oval, turns[i]);
    // A whole turn comes back to the bit: no height may fall between the last run and the first.
    const bool closes = i + 2 == turns.size() && std::fabs(oval.sweep) >= 2 * kHalfTurn;
    const Point b = oval::pointAt(oval, closes ? turns.front() : turns[i + 1]);
    run.top = std::min(a.y, b.y);
    run.bottom = std::max(a.y, b.y);
    run.low = a.y <= b.y ? turns[i] : turns[i + 1];
    run.high = a.y <= b.y ? turns[i + 1] : turns[i];
    const double reach = oval.semiX + std::fabs(oval.out);
    run.left = oval.centre.x - reach;
    run.right = oval.centre.x + reach;
    finish(run, runs);
  }
}

double ovalParameter(const Run& run, const OvalArc& oval, double y) {
  if (y <= run.top) return run.low;
  if (y >= run.bottom) return run.high;
  return oval::parameterAtY(oval, y, run.low, run.high);
}

void addIfShared(const Run& a, const Run& b, double y, std::vector<double>& heights) {
  if (y > std::max(a.top, b.top) && y < std::min(a.bottom, b.bottom)) heights.push_back(y);
}

void crossStraights(const Run& a, const Run& b, std::vector<double>& heights) {
  const auto& s = std::get<Straight>(*a.segment);
  const auto& t = std::get<Straight>(*b.segment);
  const Point u = s.to - s.from;
  const Point v = t.to - t.from;
  const double turn = cross(u, v);
  if (turn == 0) return;
  addIfShared(a, b, s.from.y + cross(t.from - s.from, v) / turn * u.y, heights);
}

void crossStraightArc(const Run& straightRun, const Run& arcRun, std::vector<double>& heights) {
  const auto& s = std::get<Straight>(*straightRun.segment);
  const auto& arc = std::get<Arc>(*arcRun.segment);
  const Point along = (1 / distance(s.from, s.to)) * (s.to - s.from);
  const Point foot = s.from + dot(arc.centre - s.from, along) * along;
  const double square = arc.radius * arc.radius - dot(foot - arc.centre, foot - arc.centre);
  if (square <= 0) return;
  for (const double sign : {-1.0, 1.0})
    addIfShared(straightRun, arcRun, foot.y + sign * std::sqrt(square) * along.y, heights);
}

void crossArcs(const Run& a, const Run& b, std::vector<double>& heights) {
  const auto& p = std::get<Arc>(*a.segment);
  const auto& q = std::get<Arc>(*b.segment);
  const Point between = q.centre - p.centre;
  const double apart = length(between);
  if (apart == 0) return;
  const double along = (apart * apart + p.radius * p.radius - q.radius * q.radius) / (2 * apart);
  const double square = p.radius * p.radius - along * along;
  if (square <= 0) return;
  const Point unit = (1 / apart) * between;
  for (const double sign : {-1.0, 1.0}) {
    addIfShared(a, b, p.centre.y + along * unit.y + sign * std::sqrt(square) * unit.x, heights);
  }
}

// Parallel curves of one ellipse never cross.
bool areParallel(const OvalArc& a, const OvalArc& b) {
  return a.centre == b.centre && a.semiX == b.semiX && a.semiY == b.semiY;
}

// Any two runs, by where the difference of their x changes sign.
void crossBySampling(const Run& a, const Run& b, std::vector<double>& heights) {
  constexpr int kSamples = 64;
  const double top = std::max(a.top, b.top);
  const double bottom = std::min(a.bottom, b.bottom);
  if (bottom <= top) return;
  const auto apart = [&](double y) { return a.xAt(y) - b.xAt(y); };
  double y0 = top;
  double d0 = apart(y0);
  for (int i = 1; i <= kSamples; ++i) {
    const double y1 = top + (bottom - top) * i / kSamples;
    const double d1 = apart(y1);
    if ((d0 < 0) != (d1 < 0)) {
      double low = y0;
      double high = y1;
      for (int k = 0; k < 60; ++k) {
        const double middle = (low + high) / 2;
        ((apart(middle) < 0) == (d0 < 0) ? low : high) = middle;
      }
      heights.push_back((low + high) / 2);
    }
    y0 = y1;
    d0 = d1;
  }
}

}  // namespace

double Run::xAt(double y) const {
  if (const auto* straight = std::get_if<Straight>(segment)) {
    const Point along = straight->to - straight->from;
    return straight->from.x + (y - straight->from.y) / along.y * along.x;
  }
  if (const auto* arc = std::get_if<Arc>(segment)) {
    const double dy = y - arc->centre.y;
    return arc->centre.x + side * std::sqrt(std::max(0.0, arc->radius * arc->radius - dy * dy));
  }
  const auto& oval = std::get<OvalArc>(*segment);
  return oval::pointAt(oval, ovalParameter(*this, oval, y)).x;
}

double Run::integral(double y0, double y1) const {
  if (std::holds_alternative<Straight>(*segment)) return (xAt(y0) + xAt(y1)) / 2 * (y1 - y0);
  if (const auto* arc = std::get_if<Arc>(segment)) {
    const double r = arc->radius;
    const double u0 = std::clamp(y0 - arc->centre.y, -r, r);
    const double u1 = std::clamp(y1 - arc->centre.y, -r, r);
    const double h0 = std::sqrt(std::max(0.0, r * r - u0 * u0));
    const double h1 = std::sqrt(std::max(0.0, r * r - u1 * u1));
    // Triangles and a sector; the sector's angle in one arctangent keeps the places of a thin slice.
    const double angle = std::atan2(u1 * h0 - u0 * h1, h0 * h1 + u0 * u1);
    return arc->centre.x * (y1 - y0) + side * (u1 * h1 - u0 * h0 + r * r * angle) / 2;
  }
  const auto& oval = std::get<OvalArc>(*segment);
  const double t0 = ovalParameter(*this, oval, y0);
  const double t1 = ovalParameter(*this, oval, y1);
  return oval::integralXdY(oval, t0, t1) + oval.centre.x * (y1 - y0);
}

void cutIntoRuns(const Segment& segment, std::size_t outline, std::vector<Run>& runs) {
  Run run;
  run.segment = &segment;
  run.outline = outline;
  if (const auto* straight = std::get_if<Straight>(&segment)) {
    run.top = std::min(straight->from.y, straight->to.y);
    run.bottom = std::max(straight->from.y, straight->to.y);
    run.left = std::min(straight->from.x, straight->to.x);
    run.right = std::max(straight->from.x, straight->to.x);
    finish(run, runs);
  } else if (const auto* arc = std::get_if<Arc>(&segment)) {
    cutArc(*arc, run, runs);
  } else {
    cutOval(std::get<OvalArc>(segment), run, runs);
  }
}

bool isWithin(const std::vector<Run>& runs, Point point) {
  bool within = false;
  for (const Run& run : runs) {
    if (point.y < run.top || point.y >= run.bottom || point.x >= run.right) continue;
    if (point.x < run.left || run.xAt(point.y) > point.x) within = !within;
  }
  return within;
}

void addCrossings(const Run& a, const Run& b, std::vector<double>& heights) {
  if (a.bottom <= b.top || b.bottom <= a.top || a.right < b.left || b.right < a.left) return;
  const bool straightA = std::holds_alternative<Straight>(*a.segment);
  const bool straightB = std::holds_alternative<Straight>(*b.segment);
  const bool ovalA = std::holds_alternative<OvalArc>(*a.segment);
  const bool ovalB = std::holds_alternative<OvalArc>(*b.segment);
  if (ovalA && ovalB && areParallel(std::get<OvalArc>(*a.segment), std::get<OvalArc>(*b.segment))) return;
  if (ovalA || ovalB) {
    crossBySampling(a, b, heights);
  } else if (straightA && straightB) {
    crossStraights(a, b, heights);
  } else if (straightA) {
    crossStraightArc(a, b, heights);
  } else if (straightB) {
    crossStraightArc(b, a, heights);
  } else {
    crossArcs(a, b, heights);
  }
}

}  // namespace core::geometry
