#include "tests/outside/by_definition.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tests {
namespace {

constexpr double kPi = std::numbers::pi;
using Curves = std::optional<std::vector<Curve>>;

double gap(Spot a, Spot b) { return std::hypot(a.x - b.x, a.y - b.y); }

// Where a function that goes from one sign to the other changes it; nothing where it does not.
std::optional<double> change(double low, double high, const std::function<double(double)>& f) {
  const bool below = f(low) < 0;
  if (below == (f(high) < 0)) return std::nullopt;
  for (int i = 0; i < 200; ++i) {
    const double middle = (low + high) / 2;
    ((f(middle) < 0) == below ? low : high) = middle;
  }
  return (low + high) / 2;
}

Curve line(Spot a, Spot b) {
  return [=](double t) { return Spot{a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)}; };
}

// Angles upwards from the right.
Curve arc(Spot centre, double radius, double from, double to) {
  return [=](double t) {
    const double angle = from + t * (to - from);
    return Spot{centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)};
  };
}

double angleOf(Spot centre, Spot p) { return std::atan2(p.y - centre.y, p.x - centre.x); }

void addJamb(std::vector<Curve>& curves, double height) {
  const Spot apex = curves.front()(0);
  const Spot foot = curves.back()(1);
  const double bottom = apex.y - height;
  curves.push_back(line(foot, {foot.x, bottom}));
  curves.push_back(line({foot.x, bottom}, {0, bottom}));
}

// One circle about the axis through the apex and a springing point: the centre is as far from both.
Curves oneCentred(double half, double rise) {
  const auto centre = change(-1e7, rise, [&](double y) { return (rise - y) - std::hypot(half, y); });
  if (!centre) return std::nullopt;
  const Spot c{0, *centre};
  return std::vector<Curve>{arc(c, rise - c.y, kPi / 2, angleOf(c, {half, 0}))};
}

// A circle about a point of the springing line, as far from the springing point as from the apex.
Curves pointed(double half, double rise) {
  const auto centre = change(-1e7, 0, [&](double x) { return (half - x) - std::hypot(x, rise); });
  if (!centre) return std::nullopt;
  const Spot c{*centre, 0};
  return std::vector<Curve>{arc(c, half - c.x, angleOf(c, {0, rise}), 0)};
}

// A small arc from the springing and a large one that goes on smoothly to the apex, its centre on the small radius
// drawn on backwards; pointed, so its centre lies across the axis from its arc.
Curves fourCentred(double half, double rise, double radius, double angle) {
  if (radius >= half) return std::nullopt;
  const Spot small{half - radius, 0};
  const Spot joint{small.x + radius * std::cos(angle), radius * std::sin(angle)};
  if (rise <= joint.y) return std::nullopt;
  const auto centreAt = [&](double back) { return Spot{small.x - back * std::cos(angle), -back * std::sin(angle)}; };
  const auto off = [&](double back) { return gap(centreAt(back), {0, rise}) - (radius + back); };
  const auto back = change(0, 1e9, off);
  if (!back || centreAt(*back).x >= 0) return std::nullopt;
  const Spot large = centreAt(*back);
  return std::vector<Curve>{arc(large, radius + *back, angleOf(large, {0, rise}), angle), arc(small, radius, angle, 0)};
}

// The large centre on the axis under the apex, the small circle touching the large one from inside.
Curves basket(double half, double rise, double radius) {
  if (radius >= rise || rise >= half) return std::nullopt;
  const Spot small{half - radius, 0};
  const auto large = change(rise, 1e9, [&](double r) { return gap(small, {0, rise - r}) - (r - radius); });
  if (!large) return std::nullopt;
  const Spot centre{0, rise - *large};
  const double angle = angleOf(centre, small);
  return std::vector<Curve>{arc(centre, *large, kPi / 2, angle), arc(small, radius, angle, 0)};
}

// Upper circle about a point level with the apex and as far from it as it is wide; the two circles touch from outside.
Curves ogee(double half, double rise, double radius) {
  const Spot lower{half - radius, 0};
  const auto upper = change(0, 1e9, [&](double r) { return gap(lower, {r, rise}) - (radius + r); });
  if (!upper) return std::nullopt;
  const Spot centre{*upper, rise};
  const double angle = angleOf(lower, centre);
  std::vector<Curve> curves = {arc(centre, *upper, kPi, angle + kPi), arc(lower, radius, angle, 0)};
  // The apex is the highest point, and nothing dips below the springing line.
  for (const Curve& curve : curves) {
    for (int i = 1; i < 2000; ++i) {
      const double y = curve(i / 2000.0).y;
      if (y > rise || y < 0) return std::nullopt;
    }
  }
  return curves;
}

// Along the side lobe until it enters the top one, then along that to the axis.
Curves trefoil(double half, double side, double top, double up) {
  if (side > half || top > half) return std::nullopt;
  const Spot sideCentre{half - side, 0};
  const Spot topCentre{0, up};
  const auto off = [&](double angle) {
    return gap({sideCentre.x + side * std::cos(angle), side * std::sin(angle)}, topCentre) - top;
  };
  constexpr int kLooks = 3000;
  double last = 0;
  for (int i = 1; i <= kLooks; ++i) {
    const double angle = kPi * i / kLooks;
    if (sideCentre.x + side * std::cos(angle) <= 0) return std::nullopt;
    if (off(angle) > 0) {
      last = angle;
      continue;
    }
    const auto enters = change(last, angle, off);
    if (!enters) return std::nullopt;
    const Spot cusp{sideCentre.x + side * std::cos(*enters), side * std::sin(*enters)};
    // Its crown is its highest point.
    if (cusp.x <= 0 || (*enters > kPi / 2 && side > up + top)) return std::nullopt;
    return std::vector<Curve>{arc(topCentre, top, kPi / 2, angleOf(topCentre, cusp)),
                              arc(sideCentre, side, *enters, 0)};
  }
  return std::nullopt;
}

// Half circles on the sides of half a regular polygon, drawn at 1 and then made to reach as far as the opening.
Curves multifoil(double half, int lobes) {
  const auto corner = [&](int k) { return Spot{std::cos(kPi * k / lobes), std::sin(kPi * k / lobes)}; };
  const auto lobe = [&](int k, double scale) {
    const Spot a = corner(k);
    const Spot b = corner(k + 1);
    const Spot middle{(a.x + b.x) / 2, (a.y + b.y) / 2};
    const double facing = kPi * (k + 0.5) / lobes;
    const double radius = gap(a, b) / 2 * scale;
    const bool crown = 2 * k + 1 == lobes;
    return arc({middle.x * scale, middle.y * scale}, radius, crown ? kPi / 2 : facing + kPi / 2, facing - kPi / 2);
  };
  double reach = 0;
  // The lowest lobe reaches farthest, straight to its right.
  const Curve lowest = lobe(0, 1);
  for (int i = 0; i <= 100; ++i) reach = std::max(reach, lowest(i / 100.0).x);
  double low = 0, high = 1;
  for (int i = 0; i < 200; ++i) {
    const double a = low + (high - low) / 3, b = high - (high - low) / 3;
    (lowest(a).x < lowest(b).x ? low : high) = lowest(a).x < lowest(b).x ? a : b;
  }
  reach = std::max(reach, lowest((low + high) / 2).x);
  std::vector<Curve> curves;
  for (int k = lobes / 2; k >= 0; --k) curves.push_back(lobe(k, half / reach));
  return curves;
}

Curves headOf(const ShapeEntry& entry, double half) {
  const double rise = entry.rise.inMillimetres();
  const double radius = entry.radius.inMillimetres();
  switch (entry.head) {
    case Head::Round: return oneCentred(half, half);
    case Head::Segmental: return rise <= half ? oneCentred(half, rise) : std::nullopt;
    case Head::Pointed: return pointed(half, rise);
    case Head::FourCentred: return fourCentred(half, rise, radius, entry.angle * kPi / 180);
    case Head::Basket: return basket(half, rise, radius);
    case Head::Ogee: return ogee(half, rise, radius);
    case Head::Horseshoe: {
      if (rise <= half || rise >= 2 * half) return std::nullopt;
      const Spot centre{0, rise - half};
      return std::vector<Curve>{arc(centre, half, kPi / 2, -std::asin(centre.y / half))};
    }
    case Head::Trefoil:
      return trefoil(half, entry.sideRadius.inMillimetres(), entry.topRadius.inMillimetres(),
                     entry.topCentre.inMillimetres());
    case Head::Multifoil: return multifoil(half, entry.lobes);
  }
  return std::nullopt;
}

// One corner of a window without an arch, from its start along the top to its end down the side; the lower one mirrors.
Curves cornered(Shape shape, double x, double y, double cut) {
  if (cut > x || cut > y) return std::nullopt;
  const auto piece = [&](double sign) -> Curve {
    Curve upper;
    if (shape == Shape::Rounded) upper = arc({x - cut, y - cut}, cut, kPi / 2, 0);
    if (shape == Shape::Scalloped) upper = arc({x, y}, cut, kPi, 3 * kPi / 2);
    if (shape == Shape::Chamfered) upper = line({x - cut, y}, {x, y - cut});
    if (sign > 0) return upper;
    return [upper](double t) { return Spot{upper(1 - t).x, -upper(1 - t).y}; };
  };
  return std::vector<Curve>{line({0, y}, {x - cut, y}), piece(1), line({x, y - cut}, {x, cut - y}), piece(-1),
                            line({x - cut, -y}, {0, -y})};
}

}  // namespace

Curves rightHalf(const ShapeEntry& entry, double width, double height) {
  const double x = width / 2;
  const double y = height / 2;
  switch (entry.shape) {
    case Shape::Rectangle:
      return std::vector<Curve>{line({0, y}, {x, y}), line({x, y}, {x, -y}), line({x, -y}, {0, -y})};
    case Shape::Rounded:
    case Shape::Scalloped:
    case Shape::Chamfered: return cornered(entry.shape, x, y, entry.corner.inMillimetres());
    case Shape::Round:
      if (width != height) return std::nullopt;
      [[fallthrough]];
    case Shape::Oval:
      return std::vector<Curve>{[=](double t) { return Spot{x * std::sin(kPi * t), y * std::cos(kPi * t)}; }};
    case Shape::Arch: break;
  }
  auto curves = headOf(entry, x);
  if (!curves || curves->front()(0).y > height) return std::nullopt;
  addJamb(*curves, height);
  return curves;
}

Measured measured(const std::vector<Curve>& rightHalf, int steps) {
  Measured sum;
  sum.top = rightHalf.front()(0).y;
  sum.bottom = rightHalf.back()(1).y;
  for (const Curve& curve : rightHalf) {
    double fine[2] = {}, coarse[2] = {};
    Spot last = curve(0);
    Spot evenLast = last;
    const auto add = [](double* to, Spot a, Spot b) {
      to[0] += gap(a, b);
      to[1] += (a.y - b.y) * (a.x + b.x) / 2;
    };
    for (int i = 1; i <= steps; ++i) {
      const Spot next = curve(double(i) / steps);
      add(fine, last, next);
      if (i % 2 == 0) {
        add(coarse, evenLast, next);
        evenLast = next;
      }
      last = next;
      sum.halfWidth = std::max(sum.halfWidth, next.x);
    }
    sum.perimeter += 2 * (4 * fine[0] - coarse[0]) / 3;
    sum.area += 2 * (4 * fine[1] - coarse[1]) / 3;
  }
  return sum;
}

}  // namespace tests
