// Run beside a real sound server (tests/support/with_sound.sh). What the speech service says is heard on the same
// null sink as the tones.
#include <algorithm>
#include <iostream>

#include "app/alerts/sound_process.h"
#include "tests/support/catch.h"
#include "tests/support/sound_faults.h"
#include "tests/support/tone_measure.h"

using app::alerts::Alerts;
using app::alerts::SoundProcess;
using core::alerts::AlertSchedule;
using core::alerts::SpokenCue;
using core::intents::AlertClass;
using tests::boottimeNow;
using tests::kSecond;
using tests::soundsAfter;
using tests::spin;
using Voice = core::alerts::Sounding::Voice;

namespace {

template <typename Condition>
bool within(double seconds, Condition condition) {
  const std::int64_t until = boottimeNow() + static_cast<std::int64_t>(seconds * 1e9);
  while (!condition() && boottimeNow() < until) spin(kSecond / 100);
  return condition();
}

std::vector<tests::Stretch> stretches(const tests::SoundRecording& recording, std::int64_t from, std::int64_t until) {
  const auto all = recording.samples();
  const std::size_t last = std::min(recording.sampleAt(until), all.size());
  const std::size_t first = std::min(recording.sampleAt(from), last);
  return tests::soundingStretches(std::span(all).subspan(first, last - first), tests::kRecordingRate, 0.02);
}

SpokenCue cueAt(std::int64_t instant) {
  const char* const wait = "a size that has a very long name, so that there is time enough to cut it short,";
  return {"job-1", "size", instant, core::base::Message("say.half-left").with("wait", std::string(wait))};
}

std::shared_ptr<const AlertSchedule> schedule(std::vector<core::alerts::ScheduledAlert> alerts,
                                              std::vector<SpokenCue> cues) {
  return std::make_shared<AlertSchedule>(AlertSchedule{std::move(alerts), std::move(cues), false});
}

}  // namespace

TEST_CASE("words are heard, their end is told, and they can be cut short", "[spoken]") {
  const tests::SoundRecording recording;
  REQUIRE(recording.waitForSamples(5 * kSecond));
  SoundProcess player(SoundProcess::besideTheProgram());
  player.start();
  const std::int64_t started = boottimeNow();
  REQUIRE(within(15, [&] { return player.voice() == Voice::Idle; }));
  std::cout << "a voice after " << double(boottimeNow() - started) / 1e9 << " s\n";
  CHECK_FALSE(recording.onset(started, boottimeNow()).has_value());

  std::int64_t from = boottimeNow();
  player.say("Oak frame.");
  CHECK(player.voice() == Voice::Speaking);
  CHECK(soundsAfter(recording, from, 2));
  CHECK(within(5, [&] { return player.voice() == Voice::Idle; }));

  from = boottimeNow();
  player.say("A sentence that would go on for a good many seconds if nobody were to cut it short.");
  CHECK(soundsAfter(recording, from, 2));
  player.quiet();
  CHECK(player.voice() == Voice::Idle);
  const std::int64_t cut = boottimeNow();
  spin(kSecond);
  CHECK_FALSE(recording.onset(cut + kSecond * 4 / 10, boottimeNow()).has_value());

  // Cut short before a word of it was heard.
  from = boottimeNow();
  player.say("Another sentence.");
  player.quiet();
  spin(kSecond * 2);
  CHECK_FALSE(recording.onset(from + kSecond * 9 / 10, boottimeNow()).has_value());
  // The end of those words is not taken for the end of the next.
  player.say("One more.");
  spin(kSecond / 20);
  CHECK(player.voice() == Voice::Speaking);
  CHECK(within(5, [&] { return player.voice() == Voice::Idle; }));
}

TEST_CASE("how much is left is said without a tone, gives way to a window that closes and ends when it is moot",
          "[spoken]") {
  const tests::SoundRecording recording;
  REQUIRE(recording.waitForSamples(5 * kSecond));
  Alerts alerts(boottimeNow);
  std::optional<std::size_t> onset;
  std::int64_t due = 0;
  std::vector<SpokenCue> cues;
  // The first ones find no voice yet.
  for (int tries = 0; tries < 8 && !onset; ++tries) {
    due = boottimeNow() + kSecond / 2;
    cues = {cueAt(due)};
    alerts.publish(schedule({}, cues));
    spin(kSecond * 2);
    onset = recording.onset(due, boottimeNow());
  }
  REQUIRE(onset.has_value());
  std::cout << "spoken " << double(recording.instantOf(*onset) - due) / 1e9 << " s after its time\n";

  const std::int64_t closing = boottimeNow();
  alerts.publish(schedule({tests::dueAlert("size", AlertClass::Closing, closing)}, cues));
  spin(kSecond * 36 / 10);
  // Nothing but the tone: ten pulses, with silence between them.
  const auto pulses = stretches(recording, closing + kSecond * 35 / 100, boottimeNow());
  CHECK(pulses.size() >= 8);
  CHECK(pulses.size() <= 10);
  for (const auto& pulse : pulses) CHECK(double(pulse.last - pulse.first) / tests::kRecordingRate < 0.23);
  alerts.publish(std::make_shared<AlertSchedule>());
  spin(kSecond / 2);

  due = boottimeNow();
  alerts.publish(schedule({}, {cueAt(due)}));
  CHECK(soundsAfter(recording, due, 2));
}

TEST_CASE("without a speech service the tones are as ever", "[speechless]") {
  qputenv("SPEECHD_ADDRESS", "unix_socket:/nowhere/speechd.sock");
  const tests::SoundRecording recording;
  REQUIRE(recording.waitForSamples(5 * kSecond));
  {
    SoundProcess player(SoundProcess::besideTheProgram());
    player.start();
    CHECK_FALSE(within(4, [&] { return player.voice() != Voice::Absent; }));
    player.say("Nobody hears this.");
    CHECK(player.voice() == Voice::Absent);
  }
  Alerts alerts(boottimeNow);
  REQUIRE(tests::becomes(alerts, Alerts::Sound::Ready, 5));
  CHECK(tests::heard(alerts));
  CHECK(alerts.sound() == Alerts::Sound::Ready);
}
