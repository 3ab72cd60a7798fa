#include "app/sound/tones.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace app::sound {
namespace {

constexpr double kPi = std::numbers::pi;

// Where a raised cosine passes a tenth and nine tenths of its height, as parts of the whole ramp.
const double kAtTenth = std::acos(0.8) / kPi;
const double kAtNineTenths = std::acos(-0.8) / kPi;

double rampSeconds() { return kRiseSeconds / (kAtNineTenths - kAtTenth); }
// From silence to nine tenths.
double leadSeconds() { return rampSeconds() * kAtNineTenths; }

double raisedCosine(double part) { return 0.5 - 0.5 * std::cos(kPi * std::clamp(part, 0.0, 1.0)); }

double envelope(const Pulse& pulse, double seconds) {
  const double fromStart = seconds - (pulse.rises - leadSeconds());
  const double toEnd = (pulse.falls + leadSeconds()) - seconds;
  return raisedCosine(std::min(fromStart, toEnd) / rampSeconds());
}

// Each partial from the two before it: sin(k x) = 2 cos x sin((k - 1) x) - sin((k - 2) x).
double sumOfPartials(double x, const std::vector<double>& gains) {
  const double twiceCosine = 2 * std::cos(x);
  double before = 0;
  double here = std::sin(x);
  double sum = 0;
  for (const double gain : gains) {
    sum += gain * here;
    before = std::exchange(here, twiceCosine * here - before);
  }
  return sum;
}

void addRow(std::vector<Pulse>& row, double& at, int count, double length, double gap) {
  for (int i = 0; i < count; ++i) {
    row.push_back({at, at + length});
    at += length + gap;
  }
  at -= gap;
}

}  // namespace

double fundamental(Tone tone) { return tone == Tone::High ? 660.0 : 520.0; }

const std::vector<double>& partials() {
  static const std::vector<double> levels{0.0, -3.0, -5.0, -7.0, -9.0, -12.0};
  return levels;
}

std::vector<Pulse> pulses(Tone tone) {
  std::vector<Pulse> row;
  double at = leadSeconds();
  switch (tone) {
    case Tone::Soft: addRow(row, at, 1, 0.180, 0.0); break;
    case Tone::Low: addRow(row, at, 2, 0.180, 0.200); break;
    case Tone::Medium: addRow(row, at, 3, 0.180, 0.200); break;
    case Tone::High:
      for (int half = 0; half < 2; ++half) {
        addRow(row, at, 3, 0.150, 0.100);
        at += 0.350;  // one pulse left out
        addRow(row, at, 2, 0.150, 0.100);
        at += 0.500;
      }
      break;
  }
  return row;
}

double lengthSeconds(Tone tone) { return pulses(tone).back().falls + leadSeconds(); }

std::int64_t lengthNanoseconds(Tone tone) { return static_cast<std::int64_t>(lengthSeconds(tone) * 1e9); }

double gain(double decibels) { return std::pow(10.0, decibels / 20.0); }

std::vector<float> synthesise(Tone tone, int sampleRate) {
  const auto row = pulses(tone);
  const auto count = static_cast<std::size_t>(std::ceil(lengthSeconds(tone) * sampleRate)) + 1;
  std::vector<double> gains;
  for (const double level : partials()) gains.push_back(gain(level));
  std::vector<double> wave(count, 0.0);
  for (std::size_t i = 0; i < count; ++i) {
    const double seconds = static_cast<double>(i) / sampleRate;
    double height = 0;
    for (const Pulse& pulse : row) height = std::max(height, envelope(pulse, seconds));
    if (height <= 0) continue;
    wave[i] = height * sumOfPartials(2 * kPi * fundamental(tone) * seconds, gains);
  }
  double highest = 0;
  for (const double sample : wave) highest = std::max(highest, std::abs(sample));
  // The soft and the low tone are the same voice, drawn back.
  const double scale = kPeak / highest * gain(tone == Tone::Soft ? -9 : tone == Tone::Low ? -6 : 0);
  std::vector<float> samples(count);
  std::transform(wave.begin(), wave.end(), samples.begin(),
                 [scale](double sample) { return static_cast<float>(sample * scale); });
  samples.front() = 0;
  samples.back() = 0;
  return samples;
}

}  // namespace app::sound
