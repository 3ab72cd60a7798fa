// Sources: the closed forms for normal data with known spread (normal prior) and unknown spread (normal-inverse-gamma
// prior, predicting with a Student's t) as in Gelman et al., Bayesian Data Analysis; the weights 5/(4 + r^2) of the
// robust mode from Lange, Little and Taylor 1989, Robust Statistical Modeling Using the t Distribution; and integrals
// written out here by definition, on lattices of their own.
#include <cmath>
#include <functional>
#include <limits>
#include <random>

#include "core/waits/learning.h"
#include "tests/support/catch.h"

using namespace core;
using waits::Observation;

namespace {

constexpr double kEndless = std::numeric_limits<double>::infinity();
constexpr double kTenth = 1.2816;
constexpr double kPriorSd = 0.35;
constexpr double kSd = 0.20;

Observation exactly(double ratio) { return {ratio, ratio, 0}; }

// 52, 47 and 61 minutes against 40, 40 and 44.
const std::vector<Observation> kThree = {exactly(52.0 / 40), exactly(47.0 / 40), exactly(61.0 / 44)};

waits::Belief alone(const std::vector<Observation>& found, waits::Scatter scatter) {
  const waits::Kind kind{"size", waits::Cause::Own};
  return waits::Beliefs({{kind, found}}, scatter).of(kind);
}

// Where the posterior of a kind alone is highest, through the three grid points round it.
double mode(const std::vector<Observation>& found, waits::Scatter scatter) {
  auto density = waits::logLikelihood(found, scatter);
  int best = 1;
  for (int i = 0; i < waits::kGridPoints; ++i) {
    density[i] -= waits::gridPoint(i) * waits::gridPoint(i) / (2 * kPriorSd * kPriorSd);
    if (i < waits::kGridPoints - 1 && density[i] > density[best]) best = i;
  }
  const double slope = (density[best + 1] - density[best - 1]) / 2;
  const double bend = density[best + 1] - 2 * density[best] + density[best - 1];
  return waits::gridPoint(best) - waits::gridStep() * slope / bend;
}

double normalDensity(double x, double sd) { return std::exp(-x * x / (2 * sd * sd)) / sd; }

double student4(double r) { return 0.375 * std::pow(1 + r * r / 4, -2.5); }

// Simpson's rule.
double integral(double from, double to, int pieces, const std::function<double(double)>& f) {
  double sum = f(from) + f(to);
  for (int i = 1; i < pieces; ++i) sum += (i % 2 == 1 ? 4 : 2) * f(from + (to - from) * i / pieces);
  return sum * (to - from) / pieces / 3;
}

// How likely the observation is where ln k is `mu`, by the area under the density between its bounds.
double likelihood(const Observation& observation, double mu) {
  const double scale = std::sqrt(kSd * kSd + 0.05 * 0.05 * observation.ageMonths);
  const double a = observation.lower > 0 ? (std::log(observation.lower) - mu) / scale : -400;
  const double b = std::isinf(observation.upper) ? 400 : (std::log(observation.upper) - mu) / scale;
  if (a == b) return student4(a);
  // r = sinh(u) reaches far into the tails in few pieces.
  const auto inSinh = [](double u) { return student4(std::sinh(u)) * std::cosh(u); };
  return integral(std::asinh(a), std::asinh(b), 200, inSinh);
}

struct Moments {
  double mean;
  double variance;
};

Moments moments(const std::vector<double>& density, double from, double step) {
  double mass = 0;
  double first = 0;
  double second = 0;
  for (std::size_t i = 0; i < density.size(); ++i) {
    const double x = from + step * static_cast<double>(i);
    mass += density[i];
    first += density[i] * x;
    second += density[i] * x * x;
  }
  return {first / mass, second / mass - first / mass * first / mass};
}

// ln k from -2 to 2 in 800 steps, farther and finer than the code under test.
constexpr double kFrom = -2;
constexpr double kStep = 0.005;
constexpr int kPoints = 801;

std::vector<double> denseLikelihood(const std::vector<Observation>& found) {
  std::vector<double> product(kPoints, 1);
  for (int i = 0; i < kPoints; ++i) {
    for (const auto& observation : found) product[i] *= likelihood(observation, kFrom + i * kStep);
  }
  return product;
}

Moments denseAlone(const std::vector<Observation>& found) {
  auto density = denseLikelihood(found);
  for (int i = 0; i < kPoints; ++i) density[i] *= normalDensity(kFrom + i * kStep, kPriorSd);
  return moments(density, kFrom, kStep);
}

}  // namespace

TEST_CASE("three times with a known spread give the closed form's factor and minutes", "[waits]") {
  const auto belief = alone(kThree, waits::Scatter::Normal);
  CHECK(belief.mean == Approx(0.2256).margin(0.0000501));
  CHECK(std::sqrt(belief.variance) == Approx(0.1097).margin(0.0000501));
  CHECK(belief.median() == Approx(1.253).margin(0.000501));
  const auto quantile = [](const waits::Belief& of, double z) {
    return 42 * std::exp(of.mean + z * std::sqrt(of.variance + kSd * kSd));
  };
  CHECK(quantile({}, -kTenth) == Approx(25.1).margin(0.0501));
  CHECK(quantile({}, 0) == Approx(42.0).margin(0.0501));
  CHECK(quantile({}, kTenth) == Approx(70.4).margin(0.0501));
  CHECK(quantile(belief, -kTenth) == Approx(39.3).margin(0.0501));
  CHECK(quantile(belief, 0) == Approx(52.6).margin(0.0501));
  CHECK(quantile(belief, kTenth) == Approx(70.5).margin(0.0501));
}

TEST_CASE("a stated span as wide as the prior becomes the closed form's to half a percent", "[waits]") {
  const auto minutes = [](double value) { return units::Duration::milliseconds(std::llround(value * 60'000)); };
  const auto span =
      waits::learned({minutes(25.06), minutes(42), minutes(70.40)}, alone(kThree, waits::Scatter::Normal));
  CHECK(span.early.inMinutes() == Approx(39.3).epsilon(0.005));
  CHECK(span.likely.inMinutes() == Approx(52.6).epsilon(0.001));
  CHECK(span.late.inMinutes() == Approx(70.5).epsilon(0.005));
}

TEST_CASE("any number of measured times with a known spread give the closed form", "[waits]") {
  std::mt19937 random(3);
  std::normal_distribution<double> ln(0.1, 0.3);
  for (int n = 1; n <= 40; ++n) {
    std::vector<Observation> found;
    double sum = 0;
    for (int i = 0; i < n; ++i) {
      const double y = std::clamp(ln(random), -1.0, 1.0);
      found.push_back(exactly(std::exp(y)));
      sum += y;
    }
    const double variance = 1 / (1 / (kPriorSd * kPriorSd) + n / (kSd * kSd));
    const auto belief = alone(found, waits::Scatter::Normal);
    INFO(n << " times");
    CHECK(belief.mean == Approx(variance * sum / (kSd * kSd)).margin(1e-6));
    CHECK(belief.variance == Approx(variance).epsilon(1e-5));
  }
}

TEST_CASE("a known spread loses little to one learned as well", "[waits]") {
  const double kappa0 = kSd * kSd / (kPriorSd * kPriorSd);
  const double y[] = {std::log(52.0 / 40), std::log(47.0 / 40), std::log(61.0 / 44)};
  const double mean = (y[0] + y[1] + y[2]) / 3;
  double squares = 0;
  for (const double each : y) squares += (each - mean) * (each - mean);
  const double kappa = kappa0 + 3;
  const double a = 3 + 1.5;
  const double b = 0.12 + squares / 2 + kappa0 * 3 * mean * mean / (2 * kappa);
  const double scale = std::sqrt(b * (kappa + 1) / (a * kappa));
  constexpr double kTenthOfNine = 1.383029;  // of Student's t with 9 degrees of freedom, from printed tables
  const double centre = 3 * mean / kappa;
  CHECK(42 * std::exp(centre - kTenthOfNine * scale) == Approx(40.0).margin(0.0501));
  CHECK(42 * std::exp(centre) == Approx(52.6).margin(0.0501));
  CHECK(42 * std::exp(centre + kTenthOfNine * scale) == Approx(69.2).margin(0.0501));

  const auto belief = alone(kThree, waits::Scatter::Normal);
  const double ours = kTenth * std::sqrt(belief.variance + kSd * kSd);
  CHECK(belief.mean == Approx(centre).margin(1e-4));
  CHECK(ours == Approx(kTenthOfNine * scale).epsilon(0.08));  // each end of the span within 2 %
}

TEST_CASE("one time of 160 minutes against 40 moves the robust mode to 1.311, the plain one to 1.639", "[waits]") {
  auto four = kThree;
  four.push_back(exactly(160.0 / 40));
  CHECK(std::exp(mode(four, waits::Scatter::Normal)) == Approx(1.639).margin(0.000501));
  CHECK(std::exp(mode(four, waits::Scatter::Robust)) == Approx(1.311).margin(0.000501));
}

TEST_CASE("measured, between looks, not yet and already so are what integrating by definition gives", "[waits]") {
  const std::vector<std::vector<Observation>> cases = {
      {exactly(1.3)},
      {{35.0 / 40, 55.0 / 40, 0}},
      {{60.0 / 40, kEndless, 0}},
      {{0, 30.0 / 40, 0}},
      {{35.0 / 40, 55.0 / 40, 0}, {60.0 / 40, kEndless, 3}, exactly(1.2), {0, 1.5, 12}},
      {exactly(1.2), exactly(1.25), exactly(3.6), {1.0, 1.4, 1}, {0.9, 1.02, 6}}};
  for (const auto& found : cases) {
    const auto belief = alone(found, waits::Scatter::Robust);
    const auto [mean, variance] = denseAlone(found);
    CHECK(belief.mean == Approx(mean).margin(2e-4));
    CHECK(belief.variance == Approx(variance).epsilon(3e-3));
  }
}

TEST_CASE("two kinds of one maker are what integrating over the maker as well gives", "[waits]") {
  const std::vector<Observation> size = {exactly(1.5), {1.2, 1.6, 2}, {1.3, kEndless, 0}};
  const std::vector<Observation> wash = {exactly(0.9)};
  const auto sizes = denseLikelihood(size);
  const auto washes = denseLikelihood(wash);
  std::vector<double> ofSize(kPoints);
  std::vector<double> ofWash(kPoints);
  std::vector<double> ofNever(kPoints);
  for (int j = 0; j < kPoints; ++j) {
    const double m = kFrom + j * kStep;
    const double prior = normalDensity(m, std::sqrt(0.35 * 0.35 - 0.25 * 0.25));
    double sizeMass = 0;
    double washMass = 0;
    for (int i = 0; i < kPoints; ++i) {
      const double given = normalDensity(kFrom + i * kStep - m, 0.25);
      sizeMass += given * sizes[i];
      washMass += given * washes[i];
    }
    for (int i = 0; i < kPoints; ++i) {
      const double given = prior * normalDensity(kFrom + i * kStep - m, 0.25);
      ofSize[i] += given * sizes[i] * washMass;
      ofWash[i] += given * washes[i] * sizeMass;
      ofNever[i] += given * sizeMass * washMass;
    }
  }
  const auto film = [](const char* name) { return waits::Kind{name, waits::Cause::Film}; };
  const waits::Beliefs beliefs({{film("size"), size}, {film("wash"), wash}});
  const auto check = [&](const waits::Kind& kind, const std::vector<double>& density) {
    const auto [mean, variance] = moments(density, kFrom, kStep);
    INFO(kind.name);
    CHECK(beliefs.of(kind).mean == Approx(mean).margin(2e-4));
    CHECK(beliefs.of(kind).variance == Approx(variance).epsilon(3e-3));
  };
  check(film("size"), ofSize);
  check(film("wash"), ofWash);
  check(film("never"), ofNever);
}
