#include "core/waits/learning.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <tuple>

namespace core::waits {

using units::Duration;
using units::Span;

namespace {

constexpr double kTenth = 1.2815515655446004;  // the normal quantile of nine in ten

// Normal density round 0 without its constant, which no result depends on, at every difference of two grid points.
using Kernel = std::array<double, 2 * kGridPoints - 1>;

const Kernel& withinMaker() {
  static const Kernel kernel = [] {
    Kernel made{};
    for (int i = 0; i < static_cast<int>(made.size()); ++i) {
      const double x = (i - (kGridPoints - 1)) * gridStep();
      made[i] = std::exp(-x * x / (2 * kWithinMakerVariance));
    }
    return made;
  }();
  return kernel;
}

// From densities of kinds to densities of the maker's m, and back: the same sum either way.
Grid convolved(const Grid& density) {
  Grid sum{};
  for (int j = 0; j < kGridPoints; ++j) {
    const double* kernel = withinMaker().data() + (kGridPoints - 1 - j);
    for (int i = 0; i < kGridPoints; ++i) sum[i] += kernel[i] * density[j];
  }
  return sum;
}

// exp, with the greatest at 1.
Grid exponential(const Grid& logarithms) {
  const double greatest = *std::max_element(logarithms.begin(), logarithms.end());
  Grid result{};
  for (int i = 0; i < kGridPoints; ++i) result[i] = std::exp(logarithms[i] - greatest);
  return result;
}

Grid logarithm(const Grid& density) {
  Grid result{};
  for (int i = 0; i < kGridPoints; ++i) result[i] = std::log(density[i]);
  return result;
}

struct Moments {
  double mean = 0;
  double variance = 0;
};

Moments moments(const Grid& density) {
  double mass = 0;
  double first = 0;
  for (int i = 0; i < kGridPoints; ++i) {
    mass += density[i];
    first += density[i] * gridPoint(i);
  }
  const double mean = first / mass;
  double second = 0;
  for (int i = 0; i < kGridPoints; ++i) second += density[i] * (gridPoint(i) - mean) * (gridPoint(i) - mean);
  return {mean, second / mass};
}

Grid makersPrior() {
  Grid logarithms{};
  for (int i = 0; i < kGridPoints; ++i) {
    logarithms[i] = -gridPoint(i) * gridPoint(i) / (2 * (kPriorVariance - kWithinMakerVariance));
  }
  return logarithms;
}

Belief beliefFrom(const Grid& density) {
  // The grid cuts the prior's last tails off, so the resolved share is computed against the prior as the grid has it.
  static const double first = moments(convolved(exponential(makersPrior()))).variance;
  const auto [mean, variance] = moments(density);
  Belief belief;
  belief.mean = mean;
  // Two that contradict each other can lie farther apart than the prior is wide. That is no reason to promise less
  // than before.
  belief.variance = std::min(variance, kPriorVariance);
  belief.resolved = std::clamp(1 - variance / first, 0.0, 1.0);
  return belief;
}

// Newest first; a total order, so that sums and medians come out the same whatever order they were given in.
std::vector<Observation> sortedMeaningful(const std::vector<Observation>& all) {
  std::vector<Observation> kept;
  std::copy_if(all.begin(), all.end(), std::back_inserter(kept), meaningful);
  std::sort(kept.begin(), kept.end(), [](const Observation& a, const Observation& b) {
    return std::tie(a.ageMonths, a.lower, a.upper) < std::tie(b.ageMonths, b.lower, b.upper);
  });
  return kept;
}

void addRecent(const std::vector<Observation>& newestFirst, Belief& belief) {
  std::vector<double> middles;
  for (const auto& observation : newestFirst) {
    if (observation.lower == 0 || std::isinf(observation.upper)) continue;
    middles.push_back((std::log(observation.lower) + std::log(observation.upper)) / 2);
    if (middles.size() == 3) break;
  }
  if (middles.empty()) return;
  std::sort(middles.begin(), middles.end());
  const auto size = middles.size();
  belief.recent = std::exp((middles[(size - 1) / 2] + middles[size / 2]) / 2);
  belief.recentCount = static_cast<int>(size);
}

}  // namespace

double Belief::median() const { return std::exp(mean); }

bool farOutside(double lower, double upper, const Span& stated) {
  const auto early = static_cast<double>(stated.early.inMilliseconds());
  const auto likely = static_cast<double>(stated.likely.inMilliseconds());
  const auto late = static_cast<double>(stated.late.inMilliseconds());
  return upper * likely < early / kBelievable || lower * likely > late * kBelievable;
}

Beliefs::Beliefs(const std::map<Kind, std::vector<Observation>>& byKind, Scatter scatter) {
  struct Found {
    std::vector<Observation> observations;
    Grid likelihood;
    Grid message;  // what it says of the maker's m, in ln; nothing of a kind with a cause of its own
  };
  std::map<Kind, Found> kinds;
  Grid maker = makersPrior();
  bool films = false;
  for (const auto& [kind, all] : byKind) {
    auto observations = sortedMeaningful(all);
    if (observations.empty()) continue;
    Found found{std::move(observations), {}, {}};
    found.likelihood = exponential(logLikelihood(found.observations, scatter));
    if (kind.cause == Cause::Film) {
      films = true;
      found.message = logarithm(convolved(found.likelihood));
      for (int i = 0; i < kGridPoints; ++i) maker[i] += found.message[i];
    }
    kinds.emplace(kind, std::move(found));
  }
  if (films) m_unseenFilm = beliefFrom(convolved(exponential(maker)));
  for (const auto& [kind, found] : kinds) {
    Grid others = kind.cause == Cause::Film ? maker : makersPrior();
    for (int i = 0; i < kGridPoints; ++i) others[i] -= found.message[i];
    Grid density = convolved(exponential(others));
    for (int i = 0; i < kGridPoints; ++i) density[i] *= found.likelihood[i];
    Belief belief = beliefFrom(density);
    belief.count = static_cast<int>(found.observations.size());
    addRecent(found.observations, belief);
    m_byKind.emplace(kind, belief);
  }
}

Belief Beliefs::of(const Kind& kind) const {
  const auto found = m_byKind.find(kind);
  if (found != m_byKind.end()) return found->second;
  return kind.cause == Cause::Film ? m_unseenFilm : Belief();
}

Span learned(const Span& modelled, const Belief& belief) {
  if (belief.mean == 0 && belief.resolved == 0) return modelled;
  const double k = belief.median();
  const double unresolved = (1 - belief.resolved) * (1 - belief.resolved);
  const double own = kTenth * std::sqrt(belief.variance + kScatter * kScatter);
  const auto factor = [&](double half) { return std::exp((1 - unresolved) * own + unresolved * half); };
  const auto whole = [](double milliseconds) { return Duration::milliseconds(std::llround(milliseconds)); };

  const auto early = static_cast<double>(modelled.early.inMilliseconds());
  const auto likely = static_cast<double>(modelled.likely.inMilliseconds());
  const auto late = static_cast<double>(modelled.late.inMilliseconds());
  if (likely <= 0) return {modelled.early, modelled.likely, std::max(modelled.likely, whole(late * k))};
  const double learnedEarly =
      early > 0 ? likely * k / factor(std::log(likely / early)) : (1 - unresolved) * likely * k / std::exp(own);
  return {whole(learnedEarly), whole(likely * k), whole(likely * k * factor(std::log(late / likely)))};
}

}  // namespace core::waits
