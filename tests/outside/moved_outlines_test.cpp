// Moved outlines beside those of a general geometry library (GEOS, its buffer with mitred joins), which knows chords
// alone. Compared only where both follow the same rule: corners that open lie between straights and within the limit;
// joints are smooth; corners that close are trimmed. The bound is that library's own: the height of its chords, and a
// hundredth of the distance where it simplifies a curve that shrinks, before it moves it.
#include <array>
#include <numbers>
#include <random>

#include "core/geometry/move.h"
#include "tests/support/catch.h"
#include "tests/support/forms.h"
#include "tests/support/planar.h"

using namespace core::geometry;
using tests::Planar;

namespace {

constexpr double kPi = std::numbers::pi;
constexpr int kToQuarter = 96;
constexpr double kChord = kPi / 2 / kToQuarter;
constexpr double kMitreLimit = 4;
constexpr double kSimplified = 0.01;  // of the distance

double between(std::mt19937& random, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(random);
}

double turnAt(const Segment& one, const Segment& next) {
  const Point a = directionAtEnd(one);
  const Point b = directionAtStart(next);
  return std::atan2(cross(a, b), dot(a, b));
}

// A ring of corners about the middle, its sides straight or bent, its corners sharp or rounded smoothly.
Outline anyOutline(std::mt19937& random) {
  const int count = 4 + static_cast<int>(random() % 7);
  const bool plain = random() % 3 == 0;
  std::vector<Point> corners;
  for (int i = 0; i < count; ++i) {
    const double angle = 2 * kPi * (i + between(random, -0.3, 0.3)) / count;
    const double reach = between(random, 50, 170);
    corners.push_back({reach * std::cos(angle), reach * std::sin(angle)});
  }
  const auto at = [&](int i) { return corners[static_cast<std::size_t>((i + count) % count)]; };
  // What a rounded corner takes of its sides, as radius and length.
  std::vector<double> radius(corners.size(), 0), taken(corners.size(), 0);
  for (int i = 0; i < count; ++i) {
    if (plain || random() % 2 == 0) continue;
    const Point in = at(i) - at(i - 1), out = at(i + 1) - at(i);
    const double turn = std::fabs(std::atan2(cross(in, out), dot(in, out)));
    const double room = 0.4 * std::min(length(in), length(out));
    const auto k = static_cast<std::size_t>(i);
    radius[k] = between(random, 3, 60);
    taken[k] = radius[k] * std::tan(turn / 2);
    if (taken[k] > room) {
      taken[k] = room;
      radius[k] = room / std::tan(turn / 2);
    }
  }
  std::vector<Segment> segments;
  for (int i = 0; i < count; ++i) {
    const auto k = static_cast<std::size_t>(i), next = static_cast<std::size_t>((i + 1) % count);
    const Point along = (1 / distance(at(i), at(i + 1))) * (at(i + 1) - at(i));
    const Point from = at(i) + taken[k] * along;
    const Point to = at(i + 1) - taken[next] * along;
    if (radius[k] == 0 && radius[next] == 0 && !plain && random() % 3 == 0) {
      // Bent outwards or inwards by up to a tenth of its length.
      const double bend = between(random, 0.02, 0.1) * (random() % 2 == 0 ? 1 : -1);
      const double size = distance(from, to);
      const double round = size * (0.25 / std::fabs(bend) + std::fabs(bend)) / 2;
      const Point middle = 0.5 * (from + to);
      const double back = round - std::fabs(bend) * size;
      const Point side = (bend > 0 ? 1.0 : -1.0) * Point{-along.y, along.x};
      segments.push_back(arcAbout(middle + back * side, from, to, bend > 0));
    } else {
      segments.push_back(Straight{from, to});
    }
    if (radius[next] > 0) {
      const Point out = (1 / distance(at(i + 1), at(i + 2))) * (at(i + 2) - at(i + 1));
      const bool clockwise = cross(along, out) > 0;
      const Point side = (clockwise ? 1.0 : -1.0) * Point{-along.y, along.x};
      segments.push_back(arcAbout(to + radius[next] * side, to, at(i + 1) + taken[next] * out, clockwise));
    }
  }
  // The ends of neighbours to the bit.
  for (std::size_t i = 0; i < segments.size(); ++i) {
    const Point end = endOf(segments[i]);
    Segment& next = segments[(i + 1) % segments.size()];
    if (auto* straight = std::get_if<Straight>(&next)) straight->from = end;
    if (auto* arc = std::get_if<Arc>(&next)) arc->from = end;
  }
  return Outline(std::move(segments));
}

Outline anyWindow(std::mt19937& random) {
  const auto forms = tests::everyForm();
  const auto& form = forms[random() % forms.size()];
  const auto made = construct(form.entry, form.width, form.height);
  REQUIRE(made.ok());
  return made.value().outline;
}

// Whether every corner that opens lies between straights within the limit.
bool isMatched(const Outline& outline, double d) {
  const auto& segments = outline.segments();
  for (std::size_t i = 0; i < segments.size() && segments.size() > 1; ++i) {
    const Segment& one = segments[i];
    const Segment& next = segments[(i + 1) % segments.size()];
    const double turn = turnAt(one, next);
    const bool spike = std::fabs(turn) > kPi - 1e-6;
    if (std::fabs(turn) < 1e-6) continue;
    // A spike that closes shows no side: only an ogee's has one, and it opens outwards.
    if (spike ? d < 0 : (turn > 0) != (d > 0)) continue;
    const bool straight = std::holds_alternative<Straight>(one) && std::holds_alternative<Straight>(next);
    if (!straight || 1 / std::cos(turn / 2) > kMitreLimit - 0.05) return false;
  }
  return true;
}

double chordHeight(double radius) { return radius * (1 - std::cos(kChord / 2)); }

struct Bound {
  double along = 0;    // beside the curves
  double corners = 0;  // where they cross
};

// How far that library's result may lie from the rule's.
Bound boundOf(const Outline& before, const Outline& after, double d) {
  double height = 1e-9;
  bool shrinks = false;
  for (const Outline* outline : {&before, &after}) {
    for (const Segment& segment : outline->segments()) {
      double radius = 0;
      bool out = true;
      if (const auto* arc = std::get_if<Arc>(&segment)) {
        radius = arc->radius;
        out = arc->sweep > 0;
      } else if (const auto* oval = std::get_if<OvalArc>(&segment)) {
        const double longer = std::max(oval->semiX, oval->semiY);
        radius = longer * longer / std::min(oval->semiX, oval->semiY) + std::fabs(oval->out);
      } else {
        continue;
      }
      height = std::max(height, chordHeight(radius));
      shrinks = shrinks || out == (d < 0);
    }
  }
  height = std::max(height, std::fabs(d) * (1 / std::cos(kChord / 2) - 1));
  Bound bound;
  bound.along = 2 * height + (shrinks ? kSimplified * std::fabs(d) : 0);
  bound.corners = bound.along;
  const auto& segments = after.segments();
  for (std::size_t i = 0; i < segments.size() && segments.size() > 1; ++i) {
    const double turn = std::fabs(turnAt(segments[i], segments[(i + 1) % segments.size()]));
    bound.corners = std::max(bound.corners, bound.along / std::max(1e-6, std::cos(turn / 2)));
  }
  return bound;
}

struct Tally {
  int compared = 0, tight = 0, gone = 0, unmatched = 0, vanished = 0;
  double worst = 0;  // of the bound
};

void compare(const Planar& planar, const Outline& before, double d, Tally& tally) {
  INFO("moved by " << d << ": " << outlineText(before));
  if (!isMatched(before, d)) {
    ++tally.unmatched;
    return;
  }
  const auto polygon = planar.polygon(Planar::chords(before, kToQuarter));
  if (!planar.isSimple(polygon)) {
    ++tally.unmatched;
    return;
  }
  const auto theirs = planar.moved(polygon, d, kMitreLimit);
  const auto ours = moved(before, d);
  if (!ours) {
    if (ours.error().kind == MoveProblem::Kind::ArcVanishes) {
      ++tally.vanished;
      return;
    }
    const bool whole = planar.parts(theirs) == 1 && planar.holes(theirs) == 0;
    INFO(name(ours.error().kind) << ", theirs has " << planar.area(theirs) << " mm2 in " << planar.parts(theirs));
    CHECK(!whole);
    ++tally.gone;
    return;
  }
  INFO("ours: " << outlineText(ours.value()));
  REQUIRE(planar.parts(theirs) == 1);
  REQUIRE(planar.holes(theirs) == 0);
  const Bound bound = boundOf(before, ours.value(), d);
  const auto mine = planar.polygon(Planar::chords(ours.value(), 4 * kToQuarter));
  const double apart = planar.hausdorff(mine, theirs);
  CHECK(apart <= bound.corners);
  tally.worst = std::max(tally.worst, apart / bound.corners);
  ++tally.compared;
  if (bound.corners < 0.02) ++tally.tight;
}

void print(const char* what, const Tally& tally) {
  std::printf(
      "%s: %d compared (%d of them within 0.02 mm), %d gone or in parts in both, worst %.2f of the bound; "
      "%d not alike in their rules, %d with an arc that vanishes\n",
      what, tally.compared, tally.tight, tally.gone, tally.worst, tally.unmatched, tally.vanished);
}

}  // namespace

TEST_CASE("random outlines move as a general geometry library moves their chords") {
  const Planar planar;
  std::mt19937 random(4);
  std::array<Tally, 2> tallies;
  for (int round = 0; round < 900; ++round) {
    const Outline outline = anyOutline(random);
    // Now and then as far as it takes for an opening to close or to fall into parts.
    const double most = round % 4 == 0 ? 90 : 20;
    compare(planar, outline, between(random, 0.5, most), tallies[0]);
    compare(planar, outline, -between(random, 0.5, most), tallies[1]);
  }
  print("outwards", tallies[0]);
  print("inwards", tallies[1]);
  for (const Tally& tally : tallies) {
    CHECK(tally.compared > 250);
    CHECK(tally.tight > 50);
  }
  CHECK(tallies[1].gone > 10);
}

TEST_CASE("windows move as a general geometry library moves their chords") {
  const Planar planar;
  std::mt19937 random(6);
  std::array<Tally, 2> tallies;
  for (int round = 0; round < 120; ++round) {
    const Outline outline = anyWindow(random);
    compare(planar, outline, between(random, 0.5, 30), tallies[0]);
    compare(planar, outline, -between(random, 0.5, 15), tallies[1]);
  }
  print("outwards", tallies[0]);
  print("inwards", tallies[1]);
  for (const Tally& tally : tallies) CHECK(tally.compared > 50);
}
