// Heads that turn about, pass their springing or are cut by cusps. Sources of the constructions: M. H. Bloxam, The
// Principles of Gothic Ecclesiastical Architecture (the ogee from four centres, two of them at the height of the apex);
// D. E. Smith, The Teaching of Geometry (trefoil). The figures are closed forms from tangency, worked to six decimals
// apart from this program.
#include <numbers>

#include "tests/outside/heads_here.h"

using namespace core::geometry;
using tests::arched;
using tests::checkArea;
using tests::checkLength;
using tests::checkPoint;
using tests::headOf;
using tests::kDegree;

TEST_CASE("ogees with their upper centres at the height of the apex") {
  // Closed form: r + R = h^2 / S + S / 4; both sweeps a = atan2(h, R - S / 2 + r); length 2 (r + R) a. Equilateral:
  // r = R = S / 2, area S^2 root 3 / 4.
  struct Row {
    double span, rise, lower, upper, sweep, jointX, jointY, length, area;
  };
  const Row rows[] = {{200, 173.205081, 100, 100, 60, 50, 86.602540, 418.879020, 17320.508076},
                      {300, 280, 100, 236.333333, 56.357180, 105.401388, 83.250743, 661.647278, 35071.043876},
                      {200, 200, 60, 190, 53.130102, 76, 48, 463.647609, 15862.905415},
                      {240, 180, 80, 115, 67.380135, 70.769231, 73.846154, 458.642031, 19873.764462}};
  for (const Row& row : rows) {
    INFO(row.span << " by " << row.rise);
    const bool exact = row.rise == std::floor(row.rise);
    const double slack = exact ? 0 : 5e-7 * 2 * row.rise / row.span;
    const auto head = headOf(arched(Head::Ogee, row.rise, row.lower), row.span, row.rise);
    REQUIRE(head.arcs.size() == 4);
    const Arc& upper = head.arcs[2];
    const Arc& lower = head.arcs[3];
    checkLength(upper.radius, row.upper, slack);
    checkPoint(upper.centre, row.upper, row.rise, slack);
    checkPoint(upper.to, row.jointX, row.jointY, slack);
    checkLength(lower.radius, row.lower);
    CHECK(lower.sweep / kDegree == Approx(row.sweep).margin(1e-6));
    CHECK(-upper.sweep / kDegree == Approx(row.sweep).margin(1e-6));
    checkLength(head.length, row.length, slack);
    checkArea(head.area, row.area, exact ? 0 : 5e-7 * row.span);
  }
}

TEST_CASE("round horseshoes") {
  // Closed form: R = S^2 / 8h + h / 2, e = h - R, length R (pi + 2 asin(e / R)), area as of a segment of that rise.
  const double rows[][6] = {{200, 140, 105.714286, 34.285714, 401.945521, 24674.263266},
                            {200, 160, 111.25, 48.75, 450.427670, 29930.039149},
                            {300, 200, 156.25, 43.75, 579.559511, 51840.586816},
                            {254, 152.4, 129.116667, 23.283333, 452.454781, 32166.709916},
                            {160, 150, 96.333333, 53.666667, 416.483295, 24353.945370}};
  for (const auto& [span, rise, radius, centre, length, area] : rows) {
    INFO(span << " by " << rise);
    // The opening is as wide as the circle; span and rise fix the circle.
    const double circle = span * span / (8 * rise) + rise / 2;
    const auto head = headOf(arched(Head::Horseshoe, rise), 2 * circle, span, rise);
    REQUIRE(head.arcs.size() == 1);
    checkLength(head.arcs[0].radius, radius);
    checkPoint(head.arcs[0].centre, 0, centre);
    checkPoint(head.arcs[0].to, span / 2, 0);
    checkLength(head.length, length);
    checkArea(head.area, area);
  }
}

TEST_CASE("lobes on the sides of half a regular polygon, springing within their reach") {
  // Closed form: half angle g = 90 degrees / n; lobe radius q sin g, centres q cos g from the middle, length n pi r,
  // reach to the sides q (cos^2 g + sin g), rise q (cos g + sin g).
  struct Row {
    int lobes;
    double q, radius, centre, length, area, crown;
  };
  const Row rows[] = {{3, 100, 50, 86.602540, 471.238898, 24771.353508, 136.602540},
                      {5, 100, 30.901699, 95.105652, 485.402760, 22194.516400, 126.007351},
                      {7, 150, 33.378140, 146.239187, 734.023638, 46418.516365, 179.617327},
                      {5, 127, 39.245158, 120.784178, 616.461505, 35797.535502, 160.029336},
                      {9, 120, 20.837781, 118.176930, 589.174386, 28301.448799, 139.014712}};
  for (const Row& row : rows) {
    INFO(row.lobes << " lobes, " << row.q);
    const double g = 90 * kDegree / row.lobes;
    const double width = 2 * row.q * (std::cos(g) * std::cos(g) + std::sin(g));
    const double rise = row.q * (std::cos(g) + std::sin(g));
    const auto head = headOf(tests::multifoil(row.lobes), width, 2 * row.q, rise);
    REQUIRE(head.arcs.size() == static_cast<std::size_t>(row.lobes));
    for (const Arc& arc : head.arcs) {
      checkLength(arc.radius, row.radius);
      checkLength(length(arc.centre), row.centre);
      CHECK(arc.sweep == Approx(std::numbers::pi));
    }
    checkPoint(head.arcs.front().from, -row.q, 0);
    const Arc& crown = head.arcs[head.arcs.size() / 2];
    checkLength(crown.radius - crown.centre.y, row.crown);
    checkLength(head.length, row.length);
    checkArea(head.area, row.area);
  }
}

TEST_CASE("trefoils whose side lobes spring upright") {
  // Closed form: side centres (+-c, 0) with c = S / 2 - r, top centre (0, b), D = root(c^2 + b^2); side sweep
  // atan2(b, -c) - acos((D^2 + r^2 - R^2) / 2 D r).
  struct Row {
    double span, side, top, centre, cuspX, cuspY, sideSweep, topHalfSweep, length, area;
  };
  const Row rows[] = {{200, 50, 50, 60, 48.987702, 49.989751, 91.160088, 101.548945, 336.340712, 13847.267490},
                      {300, 75, 75, 90, 73.481553, 74.984627, 91.160088, 101.548945, 504.511069, 31156.351852},
                      {240, 50, 70, 80, 63.010324, 49.509034, 98.035898, 115.822539, 454.112771, 22689.356120},
                      {300, 90, 60, 110, 56.545044, 89.933660, 92.200034, 109.538427, 519.071694, 31532.949530}};
  for (const Row& row : rows) {
    INFO(row.span << ", " << row.side << ", " << row.top);
    const auto head = headOf(tests::trefoil(row.side, row.top, row.centre), row.span, row.centre + row.top);
    REQUIRE(head.arcs.size() == 3);
    checkPoint(head.arcs[1].to, row.cuspX, row.cuspY);
    checkPoint(head.arcs[1].centre, 0, row.centre);
    checkPoint(head.arcs[2].centre, row.span / 2 - row.side, 0);
    CHECK(head.arcs[2].sweep / kDegree == Approx(row.sideSweep).margin(1e-6));
    CHECK(head.arcs[1].sweep / kDegree / 2 == Approx(row.topHalfSweep).margin(1e-6));
    checkLength(head.length, row.length);
    checkArea(head.area, row.area);
  }
}
