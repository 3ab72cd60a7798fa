#pragma once
// Measures a tone from its samples alone, independently of how it was made.
#include <cstddef>
#include <span>
#include <vector>

namespace tests {

struct MeasuredPulse {
  // When the level exceeds nine tenths of the loudest, in seconds from the first sample.
  double rises = 0;
  double falls = 0;
  double riseSeconds = 0;  // from a tenth to nine tenths
  double level = 0;        // RMS
};

// Returns the RMS over two periods of `fundamental`, centred on each sample.
std::vector<double> envelope(std::span<const float> samples, int rate, double fundamental);
std::vector<MeasuredPulse> measurePulses(std::span<const float> samples, int rate, double fundamental);

// Returns the level of one frequency in a Hann-weighted stretch, in decibels of full scale.
double levelAt(std::span<const float> samples, int rate, double frequency);
// Returns the strongest frequency between two bounds, to 1 Hz.
double strongestFrequency(std::span<const float> samples, int rate, double from, double to);
// Returns how many multiples (without the fundamental itself) within 300..4000 Hz are within 15 dB of it.
int audiblePartials(std::span<const float> samples, int rate, double fundamental);

// Resamples band-limited, by windowed sinc.
std::vector<float> resample(std::span<const float> samples, int from, int to);

// Stretches that are not silence, parted by at least `gapSeconds` of it, as [first, last) samples.
struct Stretch {
  std::size_t first = 0;
  std::size_t last = 0;
};
std::vector<Stretch> soundingStretches(std::span<const float> samples, int rate, double gapSeconds);

}  // namespace tests
