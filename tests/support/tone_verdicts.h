#pragma once
// The requirements of each tone, by measurement of its samples alone: made, resampled or recorded.
#include <algorithm>
#include <cmath>
#include <numeric>
#include <span>
#include <vector>

#include "app/sound/tones.h"
#include "tests/support/catch.h"
#include "tests/support/tone_measure.h"

namespace tests {

struct Wanted {
  app::sound::Tone tone;
  double fundamental;
  double pulse;
  std::vector<double> gaps;
};

inline const std::vector<Wanted>& wanted() {
  static const std::vector<Wanted> all{
      {app::sound::Tone::Soft, 520, 0.180, {}},
      {app::sound::Tone::Low, 520, 0.180, {0.200}},
      {app::sound::Tone::Medium, 520, 0.180, {0.200, 0.200}},
      {app::sound::Tone::High, 660, 0.150, {0.100, 0.100, 0.350, 0.100, 0.500, 0.100, 0.100, 0.350, 0.100}},
  };
  return all;
}

inline void checkVerdicts(const Wanted& want, std::span<const float> samples, int rate) {
  INFO("rate " << rate << ", fundamental " << want.fundamental);
  const auto pulses = measurePulses(samples, rate, want.fundamental);
  REQUIRE(pulses.size() == want.gaps.size() + 1);
  for (std::size_t i = 0; i < pulses.size(); ++i) {
    INFO("pulse " << i);
    CHECK(pulses[i].falls - pulses[i].rises == Approx(want.pulse).margin(0.003));
    CHECK(pulses[i].riseSeconds == Approx(0.025).margin(0.003));
    CHECK(std::abs(20 * std::log10(pulses[i].level / pulses[0].level)) < 1.0);
    if (i > 0) CHECK(pulses[i].rises - pulses[i - 1].falls == Approx(want.gaps[i - 1]).margin(0.003));
  }
  const auto first = static_cast<std::size_t>((pulses[0].rises + 0.012) * rate);
  const auto flat = samples.subspan(first, static_cast<std::size_t>(0.120 * rate));
  CHECK(strongestFrequency(flat, rate, 100, 1200) == Approx(want.fundamental).margin(1));
  CHECK(audiblePartials(flat, rate, want.fundamental) >= 4);
  const double sum = std::accumulate(samples.begin(), samples.end(), 0.0);
  CHECK(std::abs(sum / static_cast<double>(samples.size())) < 0.001);
  for (const float sample : samples) {
    if (std::abs(sample) > 0.98F) FAIL("a sample lies at " << sample);
  }
}

}  // namespace tests
