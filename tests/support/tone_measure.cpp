#include "tests/support/tone_measure.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tests {
namespace {

constexpr double kPi = std::numbers::pi;
constexpr float kSilence = 3.0F / 32768.0F;

// Where the line through samples `i - 1` and `i` passes `level`, in seconds.
double crossing(const std::vector<double>& line, std::size_t i, double level, int rate) {
  const double part = (level - line[i - 1]) / (line[i] - line[i - 1]);
  return (static_cast<double>(i - 1) + part) / rate;
}

}  // namespace

std::vector<double> envelope(std::span<const float> samples, int rate, double fundamental) {
  const auto half = static_cast<std::ptrdiff_t>(std::lround(rate / fundamental));
  const auto count = static_cast<std::ptrdiff_t>(samples.size());
  std::vector<double> sums(samples.size() + 1, 0.0);
  for (std::size_t i = 0; i < samples.size(); ++i) {
    sums[i + 1] = sums[i] + static_cast<double>(samples[i]) * static_cast<double>(samples[i]);
  }
  std::vector<double> line(samples.size());
  for (std::ptrdiff_t i = 0; i < count; ++i) {
    const auto first = static_cast<std::size_t>(std::max<std::ptrdiff_t>(i - half, 0));
    const auto last = static_cast<std::size_t>(std::min(i + half, count));
    line[static_cast<std::size_t>(i)] = std::sqrt(std::max(sums[last] - sums[first], 0.0) / (2.0 * double(half)));
  }
  return line;
}

std::vector<MeasuredPulse> measurePulses(std::span<const float> samples, int rate, double fundamental) {
  const auto line = envelope(samples, rate, fundamental);
  const double loudest = line.empty() ? 0 : *std::max_element(line.begin(), line.end());
  std::vector<MeasuredPulse> pulses;
  double atTenth = 0;
  bool up = false;
  for (std::size_t i = 1; i < line.size(); ++i) {
    if (line[i - 1] < 0.1 * loudest && line[i] >= 0.1 * loudest) atTenth = crossing(line, i, 0.1 * loudest, rate);
    if (!up && line[i - 1] < 0.9 * loudest && line[i] >= 0.9 * loudest) {
      up = true;
      pulses.push_back({crossing(line, i, 0.9 * loudest, rate), 0, 0, 0});
      pulses.back().riseSeconds = pulses.back().rises - atTenth;
    }
    if (up) pulses.back().level = std::max(pulses.back().level, line[i]);
    // A ripple at the top is not a fall: only half the height ends the pulse.
    if (up && line[i - 1] >= 0.9 * loudest && line[i] < 0.9 * loudest) {
      pulses.back().falls = crossing(line, i, 0.9 * loudest, rate);
    }
    if (up && line[i] < 0.5 * loudest) up = false;
  }
  return pulses;
}

double levelAt(std::span<const float> samples, int rate, double frequency) {
  const double step = 2 * kPi * frequency / rate;
  const double factor = 2 * std::cos(step);
  const auto count = static_cast<double>(samples.size());
  double before = 0;
  double beforeThat = 0;
  for (std::size_t i = 0; i < samples.size(); ++i) {
    const double window = 0.5 - 0.5 * std::cos(2 * kPi * static_cast<double>(i) / (count - 1));
    const double now = window * static_cast<double>(samples[i]) + factor * before - beforeThat;
    beforeThat = before;
    before = now;
  }
  const double power = before * before + beforeThat * beforeThat - factor * before * beforeThat;
  // A Hann window halves the amplitude, a real sine shares it between two lines.
  return 20 * std::log10(std::max(std::sqrt(std::max(power, 0.0)) * 4 / count, 1e-12));
}

double strongestFrequency(std::span<const float> samples, int rate, double from, double to) {
  double best = from;
  double level = -1000;
  for (double frequency = from; frequency <= to; frequency += 1) {
    const double here = levelAt(samples, rate, frequency);
    if (here > level) {
      level = here;
      best = frequency;
    }
  }
  return best;
}

int audiblePartials(std::span<const float> samples, int rate, double fundamental) {
  const double reference = levelAt(samples, rate, fundamental);
  int count = 0;
  for (int k = 2; k * fundamental <= 4000; ++k) {
    if (k * fundamental >= 300 && std::abs(levelAt(samples, rate, k * fundamental) - reference) <= 15) ++count;
  }
  return count;
}

std::vector<float> resample(std::span<const float> samples, int from, int to) {
  constexpr int kHalfWidth = 32;  // zero crossings on each side
  const double ratio = static_cast<double>(to) / from;
  const double cutoff = std::min(1.0, ratio) * 0.95;
  const auto length = static_cast<std::size_t>(std::floor(static_cast<double>(samples.size()) * ratio));
  std::vector<float> out(length);
  for (std::size_t i = 0; i < length; ++i) {
    const double centre = static_cast<double>(i) / ratio;
    const double reach = kHalfWidth / cutoff;
    const auto first = static_cast<std::ptrdiff_t>(std::ceil(centre - reach));
    const auto last = static_cast<std::ptrdiff_t>(std::floor(centre + reach));
    double sum = 0;
    for (std::ptrdiff_t k = std::max<std::ptrdiff_t>(first, 0);
         k <= std::min(last, static_cast<std::ptrdiff_t>(samples.size()) - 1); ++k) {
      const double x = (static_cast<double>(k) - centre) * cutoff;
      const double sinc = std::abs(x) < 1e-9 ? 1 : std::sin(kPi * x) / (kPi * x);
      const double window = 0.5 + 0.5 * std::cos(kPi * x / kHalfWidth);
      sum += static_cast<double>(samples[static_cast<std::size_t>(k)]) * sinc * window * cutoff;
    }
    out[i] = static_cast<float>(sum);
  }
  return out;
}

std::vector<Stretch> soundingStretches(std::span<const float> samples, int rate, double gapSeconds) {
  const auto gap = static_cast<std::size_t>(gapSeconds * rate);
  std::vector<Stretch> stretches;
  for (std::size_t i = 0; i < samples.size(); ++i) {
    if (std::abs(samples[i]) <= kSilence) continue;
    if (stretches.empty() || i - stretches.back().last > gap) stretches.push_back({i, i});
    stretches.back().last = i + 1;
  }
  return stretches;
}

}  // namespace tests
