#pragma once
// The sounds of the bench as samples, made from sums of partials. Pure functions of tone and sample rate.
//
// The pulses keep to the timing and the spectrum that workshop and bedside signals share: a fundamental low enough
// for older ears, partials that a small speaker and a noisy machine leave audible, rises too slow to startle.
#include <cstdint>
#include <vector>

namespace app::sound {

enum class Tone {
  Soft,    // one quiet pulse: something waits until the blade is down; a window was missed
  Low,     // two pulses: worth knowing
  Medium,  // three pulses: an alert that is open or over
  High     // three and two pulses, twice, quicker and a third higher: a window that closes
};

// Samples never go beyond this, so that no resampler or mixer on the way clips them.
inline constexpr double kPeak = 0.9;
// From a tenth to nine tenths of a pulse's height.
inline constexpr double kRiseSeconds = 0.025;

// A pulse, from the rise through nine tenths of its height to the fall through the same, in seconds from the start of
// the burst.
struct Pulse {
  double rises = 0;
  double falls = 0;
};

double fundamental(Tone tone);  // Hz
// Levels of the partials from the fundamental up, decibels relative to it.
const std::vector<double>& partials();
std::vector<Pulse> pulses(Tone tone);
// Returns the length of the whole burst with its first rise and last fall.
double lengthSeconds(Tone tone);
std::int64_t lengthNanoseconds(Tone tone);

// Returns one channel in -kPeak..kPeak that begins and ends at 0. `sampleRate` in Hz, at least twice the highest
// partial.
std::vector<float> synthesise(Tone tone, int sampleRate);

double gain(double decibels);

}  // namespace app::sound
