#include "core/waits/learning.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

namespace core::waits {
namespace {

using units::Duration;

// From the middle of a normal distribution to its tenth and its ninetieth percentile.
constexpr double kTenth = 1.2815515655446004;
constexpr std::size_t kRecent = 3;
// Keeps a density from vanishing where an observation lies far off it.
constexpr double kFloor = 1e-12;

double normalShare(double x) { return 0.5 * std::erfc(-x / std::numbers::sqrt2); }
double normalDensity(double x) { return std::exp(-x * x / 2); }

// Student's t in closed form; for four degrees of freedom, the only finite number of them used.
double tShare(double x) {
  if (std::isinf(x)) return x < 0 ? 0 : 1;
  const double q = x * x / 4;
  return 0.5 + 0.375 * x / std::sqrt(1 + q) * (1 - x * x / (12 * (1 + q)));
}
double tDensity(double x) { return std::pow(1 + x * x / 4, -2.5); }

bool makesSense(const Observation& observation) {
  const bool ordered = observation.lower >= 0 && observation.upper >= observation.lower && observation.upper > 0;
  return ordered && !std::isinf(observation.lower) && observation.ageMonths >= 0 &&
         !(observation.lower == 0 && std::isinf(observation.upper));
}

double spreadAt(double ageMonths) { return std::sqrt(kSpread * kSpread + kDriftDeviation * kDriftDeviation * ageMonths); }

// The middle of a bounded observation; nothing where it is open to one side.
std::optional<double> middle(const Observation& observation) {
  if (observation.lower <= 0 || std::isinf(observation.upper)) return std::nullopt;
  return std::sqrt(observation.lower * observation.upper);
}

void noteRecent(Belief& belief, std::vector<Observation> observations) {
  std::stable_sort(observations.begin(), observations.end(),
                   [](const Observation& a, const Observation& b) { return a.ageMonths < b.ageMonths; });
  std::vector<double> middles;
  for (const Observation& observation : observations) {
    const auto at = makesSense(observation) ? middle(observation) : std::nullopt;
    if (at && middles.size() < kRecent) middles.push_back(*at);
  }
  if (middles.empty()) return;
  std::sort(middles.begin(), middles.end());
  belief.recent = middles.size() % 2 == 1 ? middles[middles.size() / 2]
                                          : std::sqrt(middles[middles.size() / 2 - 1] * middles[middles.size() / 2]);
  belief.recentCount = static_cast<int>(middles.size());
}

Belief beliefOf(const Density& density) {
  Belief belief;
  belief.mean = density.mean();
  belief.variance = density.variance();
  static const double prior = Density::normal(0, kPriorDeviation).variance();
  belief.resolved = std::clamp(1 - belief.variance / prior, 0.0, 1.0);
  return belief;
}

double overallDeviation() { return std::sqrt(kPriorDeviation * kPriorDeviation - kKindDeviation * kKindDeviation); }

}  // namespace

Density Density::normal(double mean, double deviation) {
  Density density;
  for (int i = 0; i < kPoints; ++i) {
    density.m_weights[static_cast<std::size_t>(i)] = normalDensity((at(i) - mean) / deviation);
  }
  density.normalise();
  return density;
}

void Density::normalise() {
  const double sum = std::accumulate(m_weights.begin(), m_weights.end(), 0.0);
  for (double& weight : m_weights) weight /= sum;
}

bool Density::observe(const Observation& observation, double spread, double freedom) {
  if (!makesSense(observation)) return false;
  const bool isNormal = std::isinf(freedom);
  // Beyond the grid the likelihood would tell nothing apart.
  const auto clamped = [](double logarithm) { return std::clamp(logarithm, -kEnd, kEnd); };
  const double lower = observation.lower > 0 ? clamped(std::log(observation.lower)) : -INFINITY;
  const double upper = std::isinf(observation.upper) ? INFINITY : clamped(std::log(observation.upper));
  for (int i = 0; i < kPoints; ++i) {
    const double from = (lower - at(i)) / spread;
    const double to = (upper - at(i)) / spread;
    const double likelihood = lower == upper ? (isNormal ? normalDensity(from) : tDensity(from))
                              : isNormal     ? normalShare(to) - normalShare(from)
                                             : tShare(to) - tShare(from);
    m_weights[static_cast<std::size_t>(i)] *= std::max(likelihood, kFloor);
  }
  normalise();
  return true;
}

void Density::multiply(const Density& other) {
  for (std::size_t i = 0; i < m_weights.size(); ++i) m_weights[i] *= std::max(other.m_weights[i], kFloor / kPoints);
  normalise();
}

Density Density::blurred(double deviation) const {
  // The kernel depends on the distance alone.
  std::vector<double> kernel(kPoints);
  for (int i = 0; i < kPoints; ++i) kernel[static_cast<std::size_t>(i)] = normalDensity((at(i) - at(0)) / deviation);
  Density sum;
  for (std::size_t i = 0; i < m_weights.size(); ++i) {
    double weight = 0;
    for (std::size_t j = 0; j < m_weights.size(); ++j) weight += m_weights[j] * kernel[i > j ? i - j : j - i];
    sum.m_weights[i] = weight;
  }
  sum.normalise();
  return sum;
}

double Density::mean() const {
  double sum = 0;
  for (int i = 0; i < kPoints; ++i) sum += m_weights[static_cast<std::size_t>(i)] * at(i);
  return sum;
}

double Density::variance() const {
  const double middle = mean();
  double sum = 0;
  for (int i = 0; i < kPoints; ++i) sum += m_weights[static_cast<std::size_t>(i)] * (at(i) - middle) * (at(i) - middle);
  return sum;
}

double Density::mode() const {
  const auto top = std::max_element(m_weights.begin(), m_weights.end());
  const auto index = static_cast<int>(top - m_weights.begin());
  if (index == 0 || index == kPoints - 1) return at(index);
  const double left = std::log(*(top - 1));
  const double here = std::log(*top);
  const double right = std::log(*(top + 1));
  return at(index) + (at(1) - at(0)) * 0.5 * (left - right) / (left - 2 * here + right);
}

Beliefs::Beliefs() : Beliefs(std::map<std::string, std::vector<Observation>>()) {}

Beliefs::Beliefs(const std::map<std::string, std::vector<Observation>>& byKind) {
  struct Kind {
    const std::string* name;
    Density likelihood;
    Density message;  // to the overall
    int count = 0;
  };
  std::vector<Kind> kinds;
  Density overall = Density::normal(0, overallDeviation());
  for (const auto& [name, observations] : byKind) {
    Kind kind{&name, {}, {}, 0};
    for (const Observation& observation : observations) {
      kind.count += kind.likelihood.observe(observation, spreadAt(observation.ageMonths), kFreedom);
    }
    if (kind.count == 0) continue;
    kind.message = kind.likelihood.blurred(kKindDeviation);
    kinds.push_back(std::move(kind));
  }
  for (const Kind& kind : kinds) overall.multiply(kind.message);
  m_unseen = kinds.empty() ? Belief{0, kPriorDeviation * kPriorDeviation, 0, 0, {}, 0}
                           : beliefOf(overall.blurred(kKindDeviation));
  for (const Kind& kind : kinds) {
    // What the other kinds say of this one.
    Density others = Density::normal(0, overallDeviation());
    for (const Kind& other : kinds) {
      if (other.name != kind.name) others.multiply(other.message);
    }
    Density density = others.blurred(kKindDeviation);
    density.multiply(kind.likelihood);
    Belief belief = beliefOf(density);
    belief.count = kind.count;
    noteRecent(belief, byKind.at(*kind.name));
    m_kinds.emplace(*kind.name, belief);
  }
}

Belief Beliefs::of(const std::string& kind) const {
  const auto found = m_kinds.find(kind);
  return found == m_kinds.end() ? m_unseen : found->second;
}

units::Span learned(const units::Span& modelled, const Belief& belief) {
  const auto likely = static_cast<double>(modelled.likely.inMilliseconds());
  if (likely <= 0 || (belief.mean == 0 && belief.resolved == 0)) return modelled;
  const double moved = likely * std::exp(belief.mean);
  const double own = kTenth * std::sqrt(belief.variance + kSpread * kSpread);
  // A half-width in logarithms; a quantile of zero has none and stays zero until something is learned of it.
  const auto out = [&](Duration at, double side) {
    const auto milliseconds = static_cast<double>(at.inMilliseconds());
    const double stated = milliseconds > 0 ? std::abs(std::log(milliseconds / likely)) : 3 * own;
    const double width = (1 - belief.resolved) * stated + belief.resolved * own;
    return Duration::milliseconds(std::llround(moved * std::exp(side * width)));
  };
  return {out(modelled.early, -1), Duration::milliseconds(std::llround(moved)), out(modelled.late, 1)};
}

}  // namespace core::waits
