// Run beside a real sound server (tests/support/with_sound.sh). Everything is judged by what the server played.
#include <QCoreApplication>
#include <QEventLoop>
#include <QThread>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <thread>

#include "app/alerts/alerts.h"
#include "tests/support/alerts.h"
#include "tests/support/catch.h"
#include "tests/support/sound_recording.h"
#include "tests/support/tone_measure.h"

using app::alerts::Alerts;
using core::alerts::AlertSchedule;
using core::alerts::ScheduledAlert;
using core::intents::AlertClass;
using tests::boottimeNow;
using tests::kRecordingRate;

namespace {

constexpr std::int64_t kSecond = 1'000'000'000;
constexpr double kPulseGap = 0.030;

struct Bench {
  tests::SoundRecording recording;
  Alerts alerts{boottimeNow};
  std::vector<std::vector<ScheduledAlert>> listed;

  Bench() {
    QObject::connect(&alerts, &Alerts::dueChanged, &alerts, [this](const auto& due) { listed.push_back(due->alerts); });
    const std::int64_t until = boottimeNow() + 5 * kSecond;
    while (alerts.sound() != Alerts::Sound::Ready && boottimeNow() < until) spin(kSecond / 20);
    REQUIRE(alerts.sound() == Alerts::Sound::Ready);
    REQUIRE(recording.waitForSamples(5 * kSecond));
    spin(kSecond / 2);
  }

  void spin(std::int64_t nanoseconds) { spinUntil(boottimeNow() + nanoseconds); }
  void spinUntil(std::int64_t instant) {
    while (boottimeNow() < instant) {
      QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
      QThread::msleep(5);
    }
  }
  void publish(std::vector<ScheduledAlert> due, bool blade = false) {
    alerts.publish(tests::scheduleOf(std::move(due), blade));
  }
  std::vector<float> heard(std::int64_t from, std::int64_t until) const {
    const auto all = recording.samples();
    // The recording goes on growing beside the copy.
    const std::size_t last = std::min(recording.sampleAt(until), all.size());
    const std::size_t first = std::min(recording.sampleAt(from), last);
    return {all.begin() + static_cast<std::ptrdiff_t>(first), all.begin() + static_cast<std::ptrdiff_t>(last)};
  }
  std::vector<tests::Stretch> pulses(std::int64_t from, std::int64_t until) const {
    return tests::soundingStretches(heard(from, until), kRecordingRate, kPulseGap);
  }
  // The tone's first sample is up to 10 ms after what the ear would call its onset; that is far inside the gates.
  double latency(std::int64_t due, std::int64_t until, const char* what) const {
    const auto onset = recording.onset(due, until);
    INFO(what);
    REQUIRE(onset.has_value());
    return static_cast<double>(recording.instantOf(*onset) - due) / 1e9;
  }
};

ScheduledAlert alert(std::string wait, AlertClass kind, std::int64_t due) {
  return tests::dueAlert(std::move(wait), kind, due);
}

}  // namespace

TEST_CASE("an alert is heard within a second of its time, by a recording another client's click has set") {
  Bench bench;
  tests::ClickClient clicks;
  bench.spin(kSecond / 2);
  // What a client sends before the server has linked its stream is dropped, or played late: click until one is played,
  // then once more. The alert gets no second try.
  for (int tries = 0; tries < 8; ++tries) {
    const std::int64_t triedAt = clicks.click();
    bench.spin(kSecond / 2);
    if (bench.recording.onset(triedAt, boottimeNow())) break;
  }
  bench.spin(kSecond / 2);
  const std::int64_t clickAt = clicks.click();
  bench.spin(kSecond / 2);
  const std::int64_t due = boottimeNow() + kSecond;
  bench.publish({alert("size", AlertClass::Open, due)});
  bench.spinUntil(due + 2 * kSecond);

  // The click shows that the recording's time is right, and how much of any delay is the server's own.
  const double floor = bench.latency(clickAt, due, "the other client's click");
  CHECK(floor > 0);
  CHECK(floor < 0.2);
  CHECK(bench.pulses(clickAt, due).size() == 1);
  const double latency = bench.latency(due, due + 2 * kSecond, "the alert");
  std::cout << "click " << floor * 1000 << " ms, alert " << latency * 1000 << " ms\n";
  CHECK(latency > 0);
  CHECK(latency < 1.0);
  CHECK(latency - floor < 1.0);

  const auto samples = bench.heard(due, due + 2 * kSecond);
  const auto pulses = tests::soundingStretches(samples, kRecordingRate, kPulseGap);
  REQUIRE(pulses.size() == 3);
  // A server short of time may drop a few samples of one pulse; the tone itself is measured elsewhere, to the letter.
  int true520 = 0;
  for (const auto& pulse : pulses) {
    const auto flat = std::span<const float>(samples).subspan(pulse.first + kRecordingRate / 20,
                                                              static_cast<std::size_t>(kRecordingRate * 0.12));
    const bool tone = tests::strongestFrequency(flat, kRecordingRate, 100, 1200) == Approx(520).margin(2);
    if (tone && tests::audiblePartials(flat, kRecordingRate, 520) >= 4) ++true520;
  }
  CHECK(true520 >= 2);
  for (const float sample : samples) REQUIRE(std::abs(sample) <= 0.98F);
  REQUIRE(bench.listed.size() == 1);
  CHECK(bench.listed[0].size() == 1);
}

TEST_CASE("an alert is heard within a second of its time although the interface has stood still for five") {
  Bench bench;
  const std::int64_t due = boottimeNow() + 5 * kSecond;
  bench.publish({alert("size", AlertClass::Closing, due)});
  std::this_thread::sleep_for(std::chrono::seconds(6));
  const double latency = bench.latency(due - kSecond / 2, due + kSecond, "the alert") - 0.5;
  std::cout << "alert with the interface stopped " << latency * 1000 << " ms\n";
  CHECK(latency > 0);
  CHECK(latency < 1.0);
  CHECK(bench.listed.empty());
  bench.spin(kSecond / 10);
  CHECK(bench.listed.size() == 1);
}

TEST_CASE("nothing is heard any more once the alert has left the schedule") {
  Bench bench;
  const std::int64_t due = boottimeNow();
  bench.publish({alert("size", AlertClass::Closing, due)});
  bench.spin(kSecond);
  const std::int64_t gone = boottimeNow();
  bench.publish({});
  bench.spin(7 * kSecond);  // longer than its repetition
  CHECK(bench.pulses(due, gone).size() >= 3);
  CHECK(bench.pulses(gone + kSecond / 5, gone + 7 * kSecond - kSecond / 10).empty());
  CHECK(bench.listed.back().empty());
}

TEST_CASE("with a blade in the hand one low tone is heard and no more, until the hand is free") {
  Bench bench;
  const std::int64_t due = boottimeNow() + kSecond / 2;
  bench.publish({alert("size", AlertClass::Closing, due)}, true);
  bench.spinUntil(due + 6 * kSecond);
  const auto low = bench.heard(due, due + 6 * kSecond - kSecond / 10);
  const auto lowPulses = tests::soundingStretches(low, kRecordingRate, kPulseGap);
  REQUIRE(lowPulses.size() == 1);
  CHECK(bench.listed.empty());

  const std::int64_t freed = boottimeNow();
  bench.alerts.releaseHeld();
  bench.spin(4 * kSecond);
  CHECK(bench.latency(freed, freed + kSecond, "the alert") < 1.0);
  CHECK(bench.pulses(freed, freed + 4 * kSecond).size() == 10);
  REQUIRE(bench.listed.size() == 1);
  CHECK(bench.listed[0].size() == 1);
}

TEST_CASE("two alerts due at once are heard one after the other, the closing window first") {
  Bench bench;
  const std::int64_t due = boottimeNow() + kSecond / 2;
  bench.publish({alert("a", AlertClass::Open, due), alert("b", AlertClass::Closing, due)});
  bench.spinUntil(due + 48 * kSecond / 10);
  const auto samples = bench.heard(due, due + 48 * kSecond / 10);
  const auto pulses = tests::soundingStretches(samples, kRecordingRate, kPulseGap);
  REQUIRE(pulses.size() == 13);
  int clean = 0;
  for (std::size_t i = 0; i < pulses.size(); ++i) {
    INFO("pulse " << i);
    const double own = i < 10 ? 660 : 520;
    const double other = i < 10 ? 520 : 660;
    const auto flat = std::span<const float>(samples).subspan(pulses[i].first + kRecordingRate / 25,
                                                              static_cast<std::size_t>(kRecordingRate * 0.12));
    const double ownLevel = tests::levelAt(flat, kRecordingRate, own);
    CHECK(ownLevel > -40);
    const double otherLevel = tests::levelAt(flat, kRecordingRate, other);
    CHECK(otherLevel < ownLevel - 12);
    if (otherLevel < ownLevel - 40) ++clean;
  }
  // Samples that a server short of time drops are a click, which has a little of every frequency.
  CHECK(clean >= 10);
}
