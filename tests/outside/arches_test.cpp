// Heads of one, two, three and four centres. Sources of the constructions: M. H. Bloxam, The Principles of Gothic
// Ecclesiastical Architecture (lancet, equilateral and drop arches by their radius; the four-centred arch);
// J. Gwilt, Encyclopaedia of Architecture, in Papworth's edition (the equilateral arch). The figures are the
// closed forms that follow from tangency, worked to six decimals apart from this program; each stands above its table.
#include <numbers>

#include "tests/outside/heads_here.h"

using namespace core::geometry;
using tests::arched;
using tests::checkArea;
using tests::checkLength;
using tests::checkPoint;
using tests::headOf;
using tests::kDegree;

TEST_CASE("round heads are half circles") {
  // Closed form: r = S / 2, length pi r, area pi r^2 / 2.
  const double rows[][4] = {{100, 50, 157.079633, 3926.990817},
                            {180, 90, 282.743339, 12723.450247},
                            {254, 127, 398.982267, 25335.373955},
                            {300, 150, 471.238898, 35342.917353},
                            {412.75, 206.375, 648.346184, 66901.221850}};
  for (const auto& [span, radius, length, area] : rows) {
    INFO(span);
    const auto head = headOf(arched(Head::Round), span, radius);
    checkLength(head.length, length);
    checkArea(head.area, area);
    REQUIRE(head.arcs.size() == 1);
    checkLength(head.arcs[0].radius, radius);
    checkPoint(head.arcs[0].centre, 0, 0);
  }
}

TEST_CASE("segmental heads have the radius of their chord and rise") {
  // Closed form: R = S^2 / 8h + h / 2, half angle t = 2 atan(2h / S), length 2 R t, area R^2 (t - sin t cos t).
  const double rows[][7] = {{300, 60, 217.5, -157.5, 43.602819, 331.040548, 12375.659605},
                            {200, 50, 125, -75, 53.130102, 231.823805, 6988.987781},
                            {254, 25.4, 330.2, -304.8, 22.619865, 260.720055, 4335.281155},
                            {400, 100, 250, -150, 53.130102, 463.647609, 27955.951125},
                            {120, 60, 60, 0, 90, 188.495559, 5654.866776}};
  for (const auto& [span, rise, radius, centre, halfAngle, length, area] : rows) {
    INFO(span << " by " << rise);
    const auto head = headOf(arched(Head::Segmental, rise), span, rise);
    REQUIRE(head.arcs.size() == 1);
    checkLength(head.arcs[0].radius, radius);
    checkPoint(head.arcs[0].centre, 0, centre);
    CHECK(head.arcs[0].sweep / kDegree / 2 == Approx(halfAngle).margin(1e-6));
    checkLength(head.length, length);
    checkArea(head.area, area);
  }
}

TEST_CASE("pointed heads: equilateral, lancet and drop arches, and a given rise") {
  // Closed form: R = h^2 / S + S / 4, centres (+-(R - S / 2), 0), each sweep p = acos((R - S / 2) / R), length 2 R p,
  // area R^2 p - (R - S / 2) h; the angle between the tangents at the apex is 2 p.
  struct Row {
    const char* kind;
    double span, radius, centre, rise, sweep, length, area;
  };
  const Row rows[] = {{"equilateral", 200, 200, 100, 173.205081, 60, 418.879020, 24567.393972},
                      {"equilateral", 300, 300, 150, 259.807621, 60, 628.318531, 55276.636437},
                      {"lancet, 1.25", 200, 250, 150, 200, 53.130102, 463.647609, 27955.951125},
                      {"lancet, 1.5", 200, 300, 200, 223.606798, 48.189685, 504.641202, 30974.820801},
                      {"lancet, 2", 150, 300, 225, 198.431348, 41.409622, 433.640549, 20399.028929},
                      {"drop, 0.75", 200, 150, 50, 141.421356, 70.528779, 369.287825, 20625.519078},
                      {"drop, 0.8", 300, 240, 90, 222.485955, 67.975687, 569.471785, 48312.878297},
                      {"drop, 2/3", 300, 200, 50, 193.649167, 75.522488, 527.246429, 43042.184501},
                      {"rise 240", 200, 338, 238, 240, 45.239730, 533.757594, 33085.033358},
                      {"rise as span", 180, 225, 135, 180, 53.130102, 417.282848, 22644.320411}};
  for (const Row& row : rows) {
    INFO(row.kind << " on " << row.span);
    // Where the rise is a root it is entered to the nearest nanometre: the radius follows 2 h / S times as far, the
    // area by half the span.
    const double off = 5e-7;
    const double slack = row.rise == std::floor(row.rise) ? 0 : off * 2 * row.rise / row.span;
    const auto head = headOf(arched(Head::Pointed, row.rise), row.span, row.rise);
    REQUIRE(head.arcs.size() == 2);
    const Arc& right = head.arcs[1];
    checkLength(right.radius, row.radius, slack);
    checkPoint(right.centre, -row.centre, 0, slack);
    checkPoint(head.arcs[0].centre, row.centre, 0, slack);
    checkPoint(right.from, 0, row.rise);
    CHECK(right.sweep / kDegree == Approx(row.sweep).margin(1e-6));
    const Point before = directionAtEnd(head.arcs[0]);
    const Point after = directionAtStart(right);
    const double inner = 180 - std::atan2(cross(before, after), dot(before, after)) / kDegree;
    CHECK(inner == Approx(2 * row.sweep).margin(2e-6));
    checkLength(head.length, row.length, slack);
    checkArea(head.area, row.area, slack > 0 ? off * row.span / 2 : 0);
  }
}

TEST_CASE("four-centred heads: from a square on the middle of the span, and general ones") {
  // Closed form: c = S / 2 - r, q = r + c cos a - h sin a, D = (c^2 + h^2 - r^2) / 2q, R = r + D; the large centre
  // (c - D cos a, -D sin a), the joint (c + r cos a, r sin a); the apex stands at b = atan2(h + D sin a, D cos a - c)
  // from the large centre; length 2 (r a + R (b - a)). The squares: r a quarter or a third of the span, a 45 degrees.
  struct Row {
    const char* kind;
    double span, rise, small, angle, large, centreX, centreY, jointX, jointY, total, length, area;
  };
  const Row rows[] = {{"quarter square", 200, 84.775907, 50, 45, 191.421356, -50, -100, 85.355339, 35.355339, 74.858492,
                       278.050256, 11819.979517},
                      {"quarter square", 300, 127.163860, 75, 45, 287.132034, -75, -150, 128.033009, 53.033009,
                       74.858492, 417.075383, 26594.953914},
                      {"third square", 300, 136.186941, 100, 45, 241.421356, -50, -100, 120.710678, 70.710678,
                       78.047144, 435.574364, 29661.922396},
                      {"general", 300, 110, 50, 55, 618.085685, -225.840563, -465.348550, 128.678822, 40.957602,
                       68.568590, 388.738971, 21493.524137},
                      {"general", 240, 84, 36, 60, 1255.673265, -525.836633, -1056.268032, 102, 31.176915, 65.243127,
                       305.211101, 12745.319383},
                      {"general", 400, 150, 80, 50, 441.136103, -112.133813, -276.646305, 171.423009, 61.283555,
                       75.274214, 528.812716, 41409.505802}};
  for (const Row& row : rows) {
    INFO(row.kind << " on " << row.span);
    // A rise entered to the nearest nanometre: the large circle follows (h + D sin a) / q times as far.
    const bool exact = row.rise == std::floor(row.rise);
    const double c = row.span / 2 - row.small;
    const double a = row.angle * kDegree;
    const double q = row.small + c * std::cos(a) - row.rise * std::sin(a);
    const double slack = exact ? 0 : 5e-7 * (row.rise + (row.large - row.small) * std::sin(a)) / q;
    const auto head = headOf(arched(Head::FourCentred, row.rise, row.small, row.angle), row.span, row.rise);
    REQUIRE(head.arcs.size() == 4);
    checkLength(head.arcs[2].radius, row.large, slack);
    checkPoint(head.arcs[2].centre, row.centreX, row.centreY, slack);
    checkPoint(head.arcs[2].to, row.jointX, row.jointY);
    checkPoint(head.arcs[2].from, 0, row.rise);
    checkLength(head.arcs[3].radius, row.small);
    CHECK((head.arcs[2].sweep + head.arcs[3].sweep) / kDegree == Approx(row.total).margin(exact ? 1e-6 : 3e-6));
    checkLength(head.length, row.length);
    checkArea(head.area, row.area, exact ? 0 : 5e-7 * row.span);
  }
}

TEST_CASE("a four-centred head's rise ends where its upper sides would be straight") {
  // Closed form: h = (r + c cos a) / sin a.
  const double rows[][4] = {{240, 36, 60, 90.066642}, {300, 60, 55, 136.265154}, {200, 40, 65, 72.113576}};
  for (const auto& [span, small, angle, limit] : rows) {
    INFO(span);
    const auto refused = construct(arched(Head::FourCentred, limit + 0.001, small, angle), span, 500);
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.error().message.id == "shape.rise-too-high");
    const auto* most = refused.error().message.argument("most");
    REQUIRE(most != nullptr);
    checkLength(std::get<core::base::Millimetres>(*most).value, limit);
    CHECK(construct(arched(Head::FourCentred, limit - 0.001, small, angle), span, 500).ok());
  }
}

TEST_CASE("three-centred basket heads") {
  // Closed form: R = (c^2 + h^2 - r^2) / 2 (h - r), large centre (0, h - R), small sweep a = atan2(R - h, c).
  const double rows[][7] = {{300, 100, 60, 181.25, 42.075022, 391.334359, 22809.797008},
                            {200, 70, 40, 115, 36.869898, 264.757989, 10593.081032},
                            {400, 130, 80, 249, 44.760270, 518.206209, 39674.658584},
                            {254, 90, 50, 144.1125, 35.098004, 337.440703, 17265.497436}};
  for (const auto& [span, rise, small, large, sweep, length, area] : rows) {
    INFO(span << " by " << rise);
    const auto head = headOf(arched(Head::Basket, rise, small), span, rise);
    REQUIRE(head.arcs.size() == 3);
    checkLength(head.arcs[1].radius, large);
    checkPoint(head.arcs[1].centre, 0, rise - large);
    checkPoint(head.arcs[2].centre, span / 2 - small, 0);
    checkLength(head.arcs[2].radius, small);
    CHECK(head.arcs[2].sweep / kDegree == Approx(sweep).margin(1e-6));
    checkLength(head.length, length);
    checkArea(head.area, area);
  }
}
