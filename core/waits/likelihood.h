#pragma once
// Computes the likelihood of k, the maker's own factor on the modelled times, from found times, over a fixed grid of ln
// k.
#include <array>
#include <cmath>
#include <vector>

namespace core::waits {

// The ratio of the time found to the time modelled: above zero where `lower` is 0 (it was already so at the first
// look), at least `lower` where `upper` is infinite (not yet so at the last), between the two looks otherwise, measured
// where they are equal. The age is in months of 30 days; one below zero (a clock set back) counts as new.
struct Observation {
  double lower = 0;
  double upper = 0;
  double ageMonths = 0;

  friend bool operator==(const Observation&, const Observation&) = default;
};

// Returns whether it constrains k: 0 <= lower <= upper, lower finite, upper not 0, not the whole of (0, infinity), age
// finite.
bool meaningful(const Observation& observation);

// The distribution of single times round k in ln. The robust one is a Student's t with 4 degrees of freedom, so that
// one "came back after lunch" has little weight; the normal one is for comparison with closed forms.
enum class Scatter { Robust, Normal };

inline constexpr double kScatter = 0.20;        // scale of one time, of ln
inline constexpr double kDriftPerMonth = 0.05;  // by which k wanders from batch to batch, of ln

constexpr int kGridPoints = 200;
constexpr double kGridEnd = 1.5;
using Grid = std::array<double, kGridPoints>;

constexpr double gridStep() { return 2 * kGridEnd / (kGridPoints - 1); }
constexpr double gridPoint(int index) { return -kGridEnd + index * gridStep(); }

// Returns the log-likelihood of the observations at each ln k of the grid, each with scale sqrt(kScatter^2 +
// kDriftPerMonth^2 age). All must be meaningful; bounds beyond the grid are moved to its ends.
Grid logLikelihood(const std::vector<Observation>& observations, Scatter scatter);

}  // namespace core::waits
