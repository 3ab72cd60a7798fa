#include "core/waits/likelihood.h"

#include <algorithm>
#include <limits>
#include <numbers>

namespace core::waits {

namespace {

struct Robust {
  static double density(double r) {
    const double q = 1 + r * r / 4;
    return 0.375 / (q * q * std::sqrt(q));
  }
  // The share above r. Closed form for four degrees of freedom.
  static double above(double r) {
    const double q = r * r + 4;
    return 0.5 - r * (r * r + 6) / (2 * q * std::sqrt(q));
  }
};

struct Normal {
  static double density(double r) { return std::exp(-r * r / 2) / std::sqrt(2 * std::numbers::pi); }
  static double above(double r) { return std::erfc(r / std::numbers::sqrt2) / 2; }
};

// Each difference is taken in its own tail, where it loses no digits.
template <typename Law>
double between(double a, double b) {
  if (a >= 0) return Law::above(a) - Law::above(b);
  if (b <= 0) return Law::above(-b) - Law::above(-a);
  return 1 - Law::above(-a) - Law::above(b);
}

double clampedLog(double ratio) { return std::clamp(std::log(ratio), -kGridEnd, kGridEnd); }

template <typename Law>
void add(const Observation& observation, Grid& sum) {
  constexpr double kLeast = std::numeric_limits<double>::min();
  const double scale =
      std::sqrt(kScatter * kScatter + kDriftPerMonth * kDriftPerMonth * std::max(0.0, observation.ageMonths));
  const bool fromBelow = observation.lower == 0;
  const bool toAbove = std::isinf(observation.upper);
  const double lower = fromBelow ? -kGridEnd : clampedLog(observation.lower);
  const double upper = toAbove ? kGridEnd : clampedLog(observation.upper);
  // A difference of shares has no digits left in so narrow an interval; the density is the same up to a constant.
  const bool exact = !fromBelow && !toAbove && upper - lower < 1e-4 * scale;
  for (int i = 0; i < kGridPoints; ++i) {
    const double a = (lower - gridPoint(i)) / scale;
    const double b = (upper - gridPoint(i)) / scale;
    const double likelihood = exact       ? Law::density((a + b) / 2)
                              : fromBelow ? Law::above(-b)
                              : toAbove   ? Law::above(a)
                                          : between<Law>(a, b);
    sum[i] += std::log(std::max(likelihood, kLeast));
  }
}

}  // namespace

bool meaningful(const Observation& observation) {
  const auto& [lower, upper, age] = observation;
  return lower >= 0 && lower <= upper && std::isfinite(lower) && upper > 0 && !(lower == 0 && std::isinf(upper)) &&
         std::isfinite(age);
}

Grid logLikelihood(const std::vector<Observation>& observations, Scatter scatter) {
  Grid sum{};
  for (const auto& observation : observations) {
    scatter == Scatter::Robust ? add<Robust>(observation, sum) : add<Normal>(observation, sum);
  }
  return sum;
}

}  // namespace core::waits
