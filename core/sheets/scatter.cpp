#include "core/sheets/scatter.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace core::sheets {
namespace {

using geometry::Outline;
using geometry::Patch;
using geometry::Rectangle;
using geometry::Segment;
using Quad = std::array<Point, 4>;

// A flake comes out of a tile of about this side, mm; a field gets neither more nor fewer tiles than these.
constexpr double kTile = 5.5;
constexpr double kMostTiles = 2400;
constexpr double kFewestTiles = 40;
// A narrow field round a large mount lies on a net that is mostly empty.
constexpr double kMostKnots = 40'000;
// With a corner moved by no more than a quarter of the side a tile stays convex, so that a flake shrunk within it
// stays in it.
constexpr double kJitter = 0.25;
// Up to this coverage flakes are as unequal as flakes are; beyond they grow, until from `kWhole` on they are whole
// tiles.
constexpr double kLoose = 0.12;
constexpr double kWhole = 0.77;
constexpr double kSmallest = 0.04;
// What a tile at the field's edge has inside is counted on this many points each way.
constexpr int kSamples = 7;

// Numbers that are the same on every machine (SplitMix64).
class Dice {
 public:
  explicit Dice(std::uint64_t state) : m_state(state) {}
  std::uint64_t next() {
    std::uint64_t z = m_state += 0x9E3779B97F4A7C15U;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
    return z ^ (z >> 31U);
  }
  double share() { return static_cast<double>(next() >> 11U) * 0x1p-53; }

 private:
  std::uint64_t m_state;
};

std::uint64_t hashOf(std::string_view text) {
  std::uint64_t hash = 0xCBF29CE484222325U;
  for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001B3U;
  return hash;
}

double areaOf(const Quad& quad) { return std::fabs(geometry::cross(quad[2] - quad[0], quad[3] - quad[1])) / 2; }

Point middleOf(const Quad& quad) { return 0.25 * (quad[0] + quad[1] + quad[2] + quad[3]); }

Quad grown(const Quad& quad, double factor) {
  const Point middle = middleOf(quad);
  Quad result;
  for (std::size_t i = 0; i < quad.size(); ++i) result[i] = middle + factor * (quad[i] - middle);
  return result;
}

double reachOf(const Quad& quad) {
  const Point middle = middleOf(quad);
  double reach = 0;
  for (const Point& corner : quad) reach = std::max(reach, geometry::distance(middle, corner));
  return reach;
}

// A patch of the plane with its edges laid out for many questions about small places.
class Region {
 public:
  Region(const Patch& patch, bool wanted) : m_patch(&patch), m_wanted(wanted) {
    for (const Outline* outline : {&patch.outer, &patch.inner}) {
      for (const Segment& segment : outline->segments()) m_edges.push_back({segment, geometry::boundsOf(segment)});
    }
    if (!patch.outer.empty()) m_bounds = patch.outer.bounds();
  }

  // Returns whether an edge may run through a quadrilateral; never false where one does.
  bool isNear(Point middle, double reach) const {
    return isWithin(m_bounds, middle, reach) && std::any_of(m_edges.begin(), m_edges.end(), [&](const Edge& edge) {
             return isWithin(edge.bounds, middle, reach) && geometry::distanceTo(edge.segment, middle, reach) < reach;
           });
  }
  // Returns whether a place is on the side that the field is on.
  bool allows(Point point) const { return contains(point) == m_wanted; }

 private:
  struct Edge {
    Segment segment;
    Rectangle bounds;
  };

  static bool isWithin(const Rectangle& bounds, Point point, double reach) {
    return point.x > bounds.left - reach && point.x < bounds.right + reach && point.y > bounds.top - reach &&
           point.y < bounds.bottom + reach;
  }
  bool contains(Point point) const {
    return isWithin(m_bounds, point, 0) && m_patch->outer.contains(point) &&
           (m_patch->inner.empty() || !m_patch->inner.contains(point));
  }

  const Patch* m_patch;
  bool m_wanted;
  Rectangle m_bounds;
  std::vector<Edge> m_edges;
};

class Field {
 public:
  Field(const std::vector<Patch>& within, const std::vector<Patch>& without) {
    for (const Patch& patch : within) m_regions.emplace_back(patch, true);
    for (const Patch& patch : without) m_regions.emplace_back(patch, false);
  }

  // Returns the share of a quadrilateral that lies in the field. Only regions whose edges are near are asked about each
  // of its places: elsewhere it is all on one side.
  double shareOf(const Quad& quad) const {
    const Point middle = middleOf(quad);
    const double reach = reachOf(quad);
    std::vector<const Region*> near;
    for (const Region& region : m_regions) {
      if (region.isNear(middle, reach)) {
        near.push_back(&region);
      } else if (!region.allows(middle)) {
        return 0;
      }
    }
    if (near.empty()) return 1;
    int inside = 0;
    for (int i = 0; i < kSamples; ++i) {
      for (int k = 0; k < kSamples; ++k) {
        const double u = (i + 0.5) / kSamples;
        const double v = (k + 0.5) / kSamples;
        const Point point = (1 - u) * ((1 - v) * quad[0] + v * quad[3]) + u * ((1 - v) * quad[1] + v * quad[2]);
        inside += std::all_of(near.begin(), near.end(), [&](const Region* region) { return region->allows(point); });
      }
    }
    return static_cast<double>(inside) / (kSamples * kSamples);
  }

 private:
  std::vector<Region> m_regions;
};

// A net of tiles with moved knots, turned by some angle, so that nothing of it is seen in the flakes.
class Net {
 public:
  Net(const Rectangle& bounds, double tile, std::uint64_t seed) : m_bounds(bounds), m_tile(tile), m_seed(seed) {
    const double angle = Dice(seed).share() * std::numbers::pi / 2;
    m_along = {std::cos(angle), std::sin(angle)};
    m_middle = {(bounds.left + bounds.right) / 2, (bounds.top + bounds.bottom) / 2};
  }

  std::vector<Quad> tiles() const {
    const double half = std::hypot(m_bounds.right - m_bounds.left, m_bounds.bottom - m_bounds.top) / 2;
    const int reach = static_cast<int>(half / m_tile) + 2;
    std::vector<Quad> result;
    for (int i = -reach; i < reach; ++i) {
      for (int k = -reach; k < reach; ++k) {
        const Quad tile = {knot(i, k), knot(i + 1, k), knot(i + 1, k + 1), knot(i, k + 1)};
        if (touches(tile)) result.push_back(tile);
      }
    }
    return result;
  }

 private:
  Point knot(int i, int k) const {
    Dice dice(m_seed ^ (static_cast<std::uint64_t>(static_cast<std::uint32_t>(i)) << 32U) ^
              static_cast<std::uint32_t>(k));
    const double x = (i + (dice.share() - 0.5) * 2 * kJitter) * m_tile;
    const double y = (k + (dice.share() - 0.5) * 2 * kJitter) * m_tile;
    return m_middle + x * m_along + y * Point{-m_along.y, m_along.x};
  }

  bool touches(const Quad& tile) const {
    const Point middle = middleOf(tile);
    const double reach = 1.5 * m_tile;
    return middle.x > m_bounds.left - reach && middle.x < m_bounds.right + reach && middle.y > m_bounds.top - reach &&
           middle.y < m_bounds.bottom + reach;
  }

  Rectangle m_bounds;
  double m_tile;
  std::uint64_t m_seed;
  Point m_along, m_middle;
};

struct Strewn {
  Quad tile;
  Flake flake;
  double area = 0;  // of the flake, in the field
};

// A flake has a corner on each side of its tile, which turns it any way, and is then shrunk towards some place in it.
Flake flakeIn(const Quad& tile, double coverage, Dice& dice) {
  const double tight = std::clamp((coverage - kLoose) / (kWhole - kLoose), 0.0, 1.0);
  Flake flake;
  Point towards;
  double weight = 0;
  for (std::size_t i = 0; i < tile.size(); ++i) {
    const double along = (0.1 + 0.8 * dice.share()) * (1 - tight);
    flake.corners[i] = (1 - along) * tile[i] + along * tile[(i + 1) % tile.size()];
    const double pull = 0.2 + dice.share();
    towards = towards + pull * flake.corners[i];
    weight += pull;
  }
  towards = 1 / weight * towards;
  const double u = dice.share();
  const double loose = kSmallest + (1 - kSmallest) * u * u;
  const double side = std::sqrt(loose + (1 - loose) * tight);
  for (Point& corner : flake.corners) corner = towards + side * (corner - towards);
  flake.tone = static_cast<int>(dice.next() % 3);
  return flake;
}

}  // namespace

Scatter strewn(std::vector<Patch> within, std::vector<Patch> without, double area, double coverage,
               std::string_view seed) {
  Scatter result{{}, std::move(within), std::move(without)};
  const double wanted = area * coverage;
  if (!(wanted > 0) || result.within.empty() || result.within.front().outer.empty()) return result;
  const Rectangle bounds = result.within.front().outer.bounds();
  const double box = (bounds.right - bounds.left) * (bounds.bottom - bounds.top);
  const double tile = std::max(std::clamp(kTile, std::sqrt(area / kMostTiles), std::sqrt(area / kFewestTiles)),
                               std::sqrt(box / kMostKnots));
  const Field field(result.within, result.without);
  std::vector<Quad> tiles = Net(bounds, tile, hashOf(seed)).tiles();
  Dice dice(hashOf(seed) + 1);
  for (std::size_t i = tiles.size(); i > 1; --i) std::swap(tiles[i - 1], tiles[dice.next() % i]);
  std::vector<Strewn> lain;
  double covered = 0;
  for (const Quad& each : tiles) {
    if (covered >= wanted) break;
    Strewn one{each, flakeIn(each, coverage, dice), 0};
    const double inside = field.shareOf(one.flake.corners);
    if (inside <= 0) continue;
    one.flake.cut = inside < 1;
    one.area = areaOf(one.flake.corners) * inside;
    if (covered + one.area > wanted) {
      one.flake.corners = grown(one.flake.corners, std::sqrt((wanted - covered) / one.area));
      one.area = wanted - covered;
    }
    covered += one.area;
    lain.push_back(one);
  }
  // Every tile has its flake and it is not enough yet: flakes grow to whole tiles, one after the other.
  for (Strewn& one : lain) {
    if (covered >= wanted) break;
    const double inside = field.shareOf(one.tile);
    one.flake.corners = one.tile;
    one.flake.cut = inside < 1;
    covered += areaOf(one.tile) * inside - one.area;
  }
  for (Strewn& one : lain) result.flakes.push_back(one.flake);
  // What no flake touches need not be kept clear.
  std::erase_if(result.without, [&](const Patch& patch) {
    const Region region(patch, false);
    return std::none_of(result.flakes.begin(), result.flakes.end(), [&](const Flake& flake) {
      return flake.cut && region.isNear(middleOf(flake.corners), reachOf(flake.corners));
    });
  });
  return result;
}

}  // namespace core::sheets
