// Run beside a real sound server (tests/support/with_sound.sh). The tones as the server played them, taken up at three
// rates at once, have to pass what the tones as they were made have to pass.
#include <algorithm>

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

// What calls each of the tones.
std::shared_ptr<const core::record::AlertSchedule> schedule(Tone tone) {
  const AlertClass kind = tone == Tone::High ? AlertClass::Closing : AlertClass::Open;
  auto alert = tests::dueAlert("size", kind, boottimeNow());
  if (tone == Tone::Low) alert.level = core::record::Level::Low;
  return tests::scheduleOf({alert}, tone == Tone::Soft);
}

std::vector<float> between(const tests::SoundRecording& recording, std::int64_t from, std::int64_t until) {
  const auto all = recording.samples();
  const std::size_t last = std::min(recording.sampleAt(until), all.size());
  const std::size_t first = std::min(recording.sampleAt(from), last);
  return {all.begin() + static_cast<std::ptrdiff_t>(first), all.begin() + static_cast<std::ptrdiff_t>(last)};
}

}  // namespace

TEST_CASE("each tone as it was heard has the pulses, the rise and the partials it was designed with, at every rate") {
  const int number = GENERATE(0, 1, 2, 3);
  const auto& want = tests::wanted()[static_cast<std::size_t>(number)];
  const tests::SoundRecording at16(16'000);
  const tests::SoundRecording at44(44'100);
  const tests::SoundRecording at48(48'000);
  Alerts alerts(boottimeNow);
  REQUIRE(tests::becomes(alerts, Alerts::Sound::Ready, 5));
  for (const auto* recording : {&at16, &at44, &at48}) REQUIRE(recording->waitForSamples(5 * kSecond));
  tests::spin(kSecond / 2);
  const std::int64_t from = boottimeNow();
  alerts.publish(schedule(want.tone));
  tests::spin(static_cast<std::int64_t>((app::sound::lengthSeconds(want.tone) + 0.5) * 1e9));
  const std::int64_t until = boottimeNow() - kSecond / 10;
  tests::checkVerdicts(want, between(at16, from, until), 16'000);
  tests::checkVerdicts(want, between(at44, from, until), 44'100);
  tests::checkVerdicts(want, between(at48, from, until), 48'000);
}
