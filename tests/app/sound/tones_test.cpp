#include <algorithm>
#include <cmath>

#include "app/sound/player.h"
#include "app/sound/tones.h"
#include "tests/support/catch.h"
#include "tests/support/tone_measure.h"
#include "tests/support/tone_verdicts.h"

using namespace app::sound;
using tests::checkVerdicts;
using tests::Wanted;
using tests::wanted;

TEST_CASE("each tone has the pulses, the rise and the partials it was designed with, at every rate") {
  for (const Wanted& want : wanted()) {
    for (const int rate : {16'000, 44'100, 48'000}) checkVerdicts(want, synthesise(want.tone, rate), rate);
  }
}

TEST_CASE("a tone keeps its verdicts when it is resampled on the way to the loudspeaker") {
  for (const Wanted& want : wanted()) {
    const auto samples = synthesise(want.tone, 48'000);
    for (const int rate : {16'000, 44'100}) checkVerdicts(want, tests::resample(samples, 48'000, rate), rate);
  }
}

TEST_CASE("a tone begins and ends at zero and makes no step on the way") {
  for (const Wanted& want : wanted()) {
    const auto samples = synthesise(want.tone, 48'000);
    CHECK(samples.front() == 0);
    CHECK(samples.back() == 0);
    // The first and last millisecond of a slow rise.
    for (std::size_t i = 0; i < 48; ++i) {
      CHECK(std::abs(samples[i]) < 0.01F);
      CHECK(std::abs(samples[samples.size() - 1 - i]) < 0.01F);
    }
  }
}

TEST_CASE("the fundamental and the octave a tablet can play carry the level") {
  const auto samples = synthesise(Tone::Medium, 48'000);
  const auto pulse = pulses(Tone::Medium).front();
  const auto flat = std::span<const float>(samples).subspan(static_cast<std::size_t>((pulse.rises + 0.012) * 48'000),
                                                            static_cast<std::size_t>(0.120 * 48'000));
  double inOctave = 0;
  double all = 0;
  for (int k = 1; k * 520 <= 8000; ++k) {
    const double power = std::pow(10, tests::levelAt(flat, 48'000, k * 520) / 10);
    all += power;
    if (k * 520 <= 1050) inOctave += power;
  }
  CHECK(inOctave > 0.5 * all);
}

TEST_CASE("a new tone waits for the fade of the one before: two never sound at once") {
  Player player(48'000);
  std::vector<std::int16_t> out(48'000 * 5);
  player.play(Tone::Medium, 0);
  player.take(out.data(), 4'800, 1);
  player.play(Tone::High, 0);
  player.take(out.data() + 4'800, out.size() - 4'800, 1);
  std::vector<float> samples(out.size());
  std::transform(out.begin(), out.end(), samples.begin(), [](std::int16_t s) { return float(s) / 32768.0F; });

  const auto after = std::span<const float>(samples).subspan(4'800);
  for (std::size_t i = 0; i < after.size(); ++i) REQUIRE(std::abs(after[i]) <= 0.98F);
  const auto highOnly = after.subspan(960);
  const auto high = synthesise(Tone::High, 48'000);
  for (std::size_t i = 0; i < high.size(); ++i) REQUIRE(std::abs(highOnly[i] - high[i]) < 1e-3F);
  for (std::size_t i = high.size(); i < highOnly.size(); ++i) REQUIRE(highOnly[i] == 0);
  CHECK(!player.playing());
}

TEST_CASE("hushing fades within 20 ms and without a step") {
  Player player(48'000);
  std::vector<std::int16_t> out(9'600);
  player.play(Tone::Medium, 0);
  player.take(out.data(), 4'800, 1);
  player.hush();
  player.take(out.data() + 4'800, 4'800, 1);
  CHECK(!player.playing());
  CHECK(*std::max_element(out.begin() + 4'800, out.begin() + 5'000) > 3'000);
  CHECK(std::all_of(out.begin() + 4'800 + 960, out.end(), [](std::int16_t s) { return s == 0; }));
  int steepest = 0;
  int steepestBefore = 0;
  for (std::size_t i = 1'000; i < out.size(); ++i) {
    int& of = i < 4'800 ? steepestBefore : steepest;
    of = std::max(of, std::abs(out[i] - out[i - 1]));
  }
  CHECK(steepest <= steepestBefore + 100);
}

TEST_CASE("dropping forgets a tone nobody took") {
  Player player(48'000);
  player.play(Tone::High, 0);
  player.drop();
  std::vector<std::int16_t> out(4'800, 1);
  player.take(out.data(), 2'400, 2);
  CHECK(std::all_of(out.begin(), out.end(), [](std::int16_t s) { return s == 0; }));
}
