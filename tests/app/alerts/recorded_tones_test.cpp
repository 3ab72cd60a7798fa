// Run beside a real sound server (tests/support/with_sound.sh). The tones as the server played them have to pass, at
// three rates, what the tones as they were made have to pass.
#include <algorithm>
#include <cmath>
#include <iostream>
#include <utility>

#include "app/alerts/alerts.h"
#include "tests/support/catch.h"
#include "tests/support/sound_faults.h"
#include "tests/support/tone_verdicts.h"

using app::alerts::Alerts;
using app::sound::Tone;
using core::intents::AlertClass;
using tests::boottimeNow;
using tests::kSecond;

namespace {

constexpr int kRecordings = 5;

// What calls each of the tones.
std::shared_ptr<const core::alerts::AlertSchedule> schedule(Tone tone) {
  const AlertClass kind = tone == Tone::High ? AlertClass::Closing : AlertClass::Open;
  auto alert = tests::dueAlert("size", kind, boottimeNow());
  if (tone == Tone::Low) alert.level = core::alerts::Level::Low;
  return tests::scheduleOf({alert}, tone == Tone::Soft);
}

std::vector<float> record(const tests::SoundRecording& recording, Tone tone) {
  // Each anew: a call that sounds again is louder, and calls that are worth little are counted.
  Alerts alerts(boottimeNow);
  REQUIRE(tests::becomes(alerts, Alerts::Sound::Ready, 5));
  const std::int64_t from = boottimeNow();
  alerts.publish(schedule(tone));
  tests::spin(static_cast<std::int64_t>((app::sound::lengthSeconds(tone) + 0.5) * 1e9));
  const auto all = recording.samples();
  const std::size_t first = std::min(recording.sampleAt(from), all.size());
  return {all.begin() + static_cast<std::ptrdiff_t>(first), all.end()};
}

// A server short of time plays a tone with a hole in it or leaves a piece out: it lasts longer or shorter then, or it
// falls apart. That says nothing of the tone, so it is recorded again; a tone that is never whole has failed.
bool isWhole(const tests::Wanted& want, std::span<const float> samples, int rate) {
  const auto pulses = tests::measurePulses(samples, rate, want.fundamental);
  if (pulses.size() != want.gaps.size() + 1) return false;
  double length = want.pulse * static_cast<double>(pulses.size());
  for (const double gap : want.gaps) length += gap;
  return std::abs(pulses.back().falls - pulses.front().rises - length) < 0.004;
}

}  // namespace

TEST_CASE("each tone as it was heard has the pulses, the rise and the partials it was designed with, at every rate") {
  const tests::SoundRecording recording;
  REQUIRE(recording.waitForSamples(5 * kSecond));
  tests::spin(kSecond / 2);
  for (const tests::Wanted& want : tests::wanted()) {
    INFO("tone " << static_cast<int>(want.tone));
    std::vector<float> samples;
    int recordings = 0;
    do {
      samples = record(recording, want.tone);
    } while (++recordings < kRecordings && !isWhole(want, samples, tests::kRecordingRate));
    std::cout << "tone " << static_cast<int>(want.tone) << ": recording " << recordings << "\n";
    tests::checkVerdicts(want, samples, tests::kRecordingRate);
    for (const int rate : {16'000, 44'100}) {
      tests::checkVerdicts(want, tests::resample(samples, tests::kRecordingRate, rate), rate);
    }
  }
}
