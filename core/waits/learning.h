#pragma once
// What this maker's own times say of a material: a factor k on the modelled time, learned from looks.
//
// ln k of a kind of material ~ N(m, 0.25^2) about the maker's overall m ~ N(0, 0.35^2 - 0.25^2): a kind seen alone has
// the prior N(0, 0.35^2), a kind never seen has what the others taught. A time found is k times the modelled one, its
// logarithm spread by 0.20 as a Student t of 4 degrees of freedom, so that one absurd value ("I came back after
// lunch") moves little. Looks give intervals, not instants: their likelihood is a difference of the distribution
// function. A batch of long ago is spread further, by 0.05^2 of variance a month. The spread itself is not learned:
// a handful of looks cannot tell it.
//
// Densities on 200 points of ln k in [-1.5, 1.5]; the two levels are exact on that grid.
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/units/span.h"

namespace core::waits {

// The ratio of a time found to the time modelled.
struct Observation {
  double lower = 0;      // it was not ready yet; 0: nobody had looked before
  double upper = 0;      // it was ready; infinity: not yet at the last look; equal to `lower`: found exactly
  double ageMonths = 0;  // since then
};

struct Belief {
  double mean = 0;      // of ln k
  double variance = 0;  // of ln k
  double resolved = 0;  // share of the prior's variance that is gone, 0 to 1
  int count = 0;        // observations of this kind
  // Middle of its newest bounded observations, three at most, as a ratio; nothing where there is none.
  std::optional<double> recent;
  int recentCount = 0;
};

inline constexpr double kPriorDeviation = 0.35;   // of ln k of a kind nobody has seen
inline constexpr double kKindDeviation = 0.25;    // of a kind about the maker's overall
inline constexpr double kSpread = 0.20;           // of one time about k
inline constexpr double kDriftDeviation = 0.05;   // a month
inline constexpr double kFreedom = 4;             // degrees of freedom of the spread

// A density of ln k on the grid.
class Density {
 public:
  static constexpr int kPoints = 200;
  static constexpr double kEnd = 1.5;
  static double at(int point) { return -kEnd + 2 * kEnd * point / (kPoints - 1); }

  // N(mean, deviation^2), within the grid.
  static Density normal(double mean, double deviation);
  // Times the likelihood of an observation whose logarithm is spread by `spread` with `freedom` degrees of freedom
  // (infinite: a normal one). What is no observation changes nothing; returns whether it was one.
  bool observe(const Observation& observation, double spread, double freedom);
  void multiply(const Density& other);
  // The density of the sum with a normal deviate.
  Density blurred(double deviation) const;

  double mean() const;
  double variance() const;
  double mode() const;  // of the parabola through the three highest points

 private:
  void normalise();
  std::vector<double> m_weights = std::vector<double>(kPoints, 1.0 / kPoints);
};

class Beliefs {
 public:
  Beliefs();  // nothing learned
  // Nonsense among the observations (negative, not a number, lower above upper) is left out and not counted.
  explicit Beliefs(const std::map<std::string, std::vector<Observation>>& byKind);

  Belief of(const std::string& kind) const;

 private:
  std::map<std::string, Belief> m_kinds;
  Belief m_unseen;
};

// A modelled span as this maker finds it, quantiles in logarithms: the likely time moved by the belief, each half-width
// h = (1 - w) h(modelled) + w 1.2816 sqrt(variance + 0.20^2) with w = resolved. With nothing learned the modelled span
// itself; a likely time of zero stays.
units::Span learned(const units::Span& modelled, const Belief& belief);

}  // namespace core::waits
