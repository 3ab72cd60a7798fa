// Run in an empty place for a sound server (tests/support/with_sound.sh --empty). What goes wrong here goes wrong
// while an alert is due; each time it is the sound, or that there is none, that is judged.
#include <unistd.h>

#include <QCoreApplication>
#include <csignal>
#include <iostream>
#include <optional>

#include "tests/support/catch.h"
#include "tests/support/sound_faults.h"

using app::alerts::Alerts;
using core::intents::AlertClass;
using tests::becomes;
using tests::boottimeNow;
using tests::dueNow;
using tests::kSecond;
using tests::soundsAfter;
using Sound = Alerts::Sound;

namespace {

struct Bench {
  std::optional<tests::SoundServer> server;
  Alerts alerts{boottimeNow};

  Bench() {
    server.emplace();
    REQUIRE(tests::plugIn());
    REQUIRE(becomes(alerts, Sound::Ready, 5));
  }
};

// From the end of what was queued already.
constexpr std::int64_t kQueued = kSecond * 3 / 10;

}  // namespace

TEST_CASE("a server that is killed while an alert is due: heard again within 2 s of its return", "[server]") {
  Bench bench;
  bench.alerts.publish(dueNow(AlertClass::Closing));
  {
    const tests::SoundRecording recording;
    REQUIRE(recording.waitForSamples(3 * kSecond));
    REQUIRE(soundsAfter(recording, boottimeNow(), 6));
  }
  bench.server->send(SIGKILL);
  CHECK(becomes(bench.alerts, Sound::NoDevice, 2));
  tests::spin(kSecond / 2);
  bench.server.emplace();
  const std::int64_t back = bench.server->answeredAt();
  REQUIRE(tests::plugIn());
  const tests::SoundRecording recording;
  CHECK(soundsAfter(recording, back, 2));
}

TEST_CASE("a loudspeaker that is pulled out while an alert is due: heard from the other one within 2 s", "[server]") {
  Bench bench;
  REQUIRE(tests::shell("pactl load-module module-null-sink sink_name=spare") == 0);
  REQUIRE(tests::shell("pactl set-default-sink spare") == 0);
  tests::spin(kSecond / 2);
  bench.alerts.publish(dueNow(AlertClass::Open));
  const tests::SoundRecording recording;  // of the other one
  REQUIRE(recording.waitForSamples(3 * kSecond));
  CHECK_FALSE(recording.onset(boottimeNow() - kSecond / 2, boottimeNow()).has_value());
  REQUIRE(tests::shell("pactl unload-module \"$(pactl list short modules | grep sink_name=spare | cut -f1)\"") == 0);
  const std::int64_t pulled = boottimeNow();
  CHECK(soundsAfter(recording, pulled, 2));
  CHECK(becomes(bench.alerts, Sound::Ready, 1));
}

TEST_CASE("a player that is killed in the middle of a burst: heard again within 2 s", "[player]") {
  Bench bench;
  const tests::SoundRecording recording;
  REQUIRE(recording.waitForSamples(3 * kSecond));
  const pid_t player = tests::playerOf(getpid());
  REQUIRE(player > 0);
  bench.alerts.publish(dueNow(AlertClass::Open));
  REQUIRE(soundsAfter(recording, boottimeNow(), 1));
  kill(player, SIGKILL);
  const std::int64_t killed = boottimeNow();
  // The next burst of its own would come fifteen seconds after the first.
  CHECK(soundsAfter(recording, killed + kQueued, 1.7));
  CHECK(bench.alerts.sound() == Sound::Ready);
  const pid_t next = tests::playerOf(getpid());
  CHECK(next > 0);
  CHECK(next != player);
}

TEST_CASE("a player that hangs in the middle of a burst is replaced and heard within 3 s", "[player]") {
  Bench bench;
  const tests::SoundRecording recording;
  REQUIRE(recording.waitForSamples(3 * kSecond));
  const pid_t player = tests::playerOf(getpid());
  bench.alerts.publish(dueNow(AlertClass::Open));
  REQUIRE(soundsAfter(recording, boottimeNow(), 1));
  kill(player, SIGSTOP);
  const std::int64_t stopped = boottimeNow();
  CHECK(soundsAfter(recording, stopped + kQueued, 2.7));
  CHECK(tests::playerOf(getpid()) != player);
}

TEST_CASE("a device that is muted or turned down to nothing is said within 2 s, and what was due is heard after",
          "[mute]") {
  Bench bench;
  for (const auto& [off, on] : {std::pair("set-sink-mute bench 1", "set-sink-mute bench 0"),
                                std::pair("set-sink-volume bench 0", "set-sink-volume bench 100%")}) {
    INFO(off);
    REQUIRE(tests::shell(std::string("pactl ") + off) == 0);
    CHECK(becomes(bench.alerts, Sound::Muted, 2));
    bench.alerts.publish(dueNow(AlertClass::Open));
    const tests::SoundRecording recording;
    REQUIRE(recording.waitForSamples(3 * kSecond));
    REQUIRE(tests::shell(std::string("pactl ") + on) == 0);
    const std::int64_t back = boottimeNow();
    CHECK(becomes(bench.alerts, Sound::Ready, 2));
    CHECK(soundsAfter(recording, back, 2));
    bench.alerts.publish(std::make_shared<core::alerts::AlertSchedule>());
    tests::spin(kSecond / 2);
  }
}

TEST_CASE("the stream's own slider at nothing is said, too", "[mute]") {
  Bench bench;
  bench.alerts.publish(dueNow(AlertClass::Closing));
  tests::spin(kSecond);
  const auto everyStream = [](const char* volume) {
    return tests::shell(std::string("for stream in $(pactl list short sink-inputs | cut -f1); do pactl "
                                    "set-sink-input-volume \"$stream\" ") +
                        volume + "; done");
  };
  REQUIRE(everyStream("0") == 0);
  CHECK(becomes(bench.alerts, Sound::Muted, 2));
  REQUIRE(everyStream("100%") == 0);
  CHECK(becomes(bench.alerts, Sound::Ready, 2));
}

TEST_CASE("a server that hangs while an alert is due is said within 3 s, and heard within 3 s of its return",
          "[stall]") {
  Bench bench;
  bench.alerts.publish(dueNow(AlertClass::Closing));
  tests::spin(kSecond);
  bench.server->send(SIGSTOP);
  CHECK(becomes(bench.alerts, Sound::Stalled, 3));
  tests::spin(kSecond);
  CHECK(bench.alerts.sound() == Sound::Stalled);
  bench.server->send(SIGCONT);
  const std::int64_t back = boottimeNow();
  const tests::SoundRecording recording;
  CHECK(becomes(bench.alerts, Sound::Ready, 3));
  CHECK(soundsAfter(recording, back, 3));
}

TEST_CASE("a server that hangs while nothing is due is said within 10 s", "[stall]") {
  Bench bench;
  bench.server->send(SIGSTOP);
  CHECK(becomes(bench.alerts, Sound::Stalled, 10));
  bench.server->send(SIGCONT);
  CHECK(becomes(bench.alerts, Sound::Ready, 3));
}

TEST_CASE("idle with a wait running, the way to the server proves every eight seconds that it lives and hardly wakes",
          "[idle]") {
  Bench bench;
  bench.alerts.publish(tests::scheduleOf({tests::dueAlert("size", AlertClass::Open, boottimeNow() + 3600 * kSecond)}));
  tests::spin(6 * kSecond);  // until the sink rests and, mostly, the voice is there
  int beats = 0;
  QObject::connect(&bench.alerts, &Alerts::beat, &bench.alerts, [&beats] { ++beats; });
  const pid_t player = tests::playerOf(getpid());
  const auto wakes = [player] { return tests::wakeUps(getpid(), "alerts") + tests::wakeUps(player); };
  CHECK(wakes() > 0);
  double aSecond = 99;
  for (int tries = 0; tries < 4 && aSecond > 1.5; ++tries) {
    beats = 0;
    const long before = wakes();
    tests::spin(9 * kSecond);
    aSecond = static_cast<double>(wakes() - before) / 9;
    std::cout << aSecond << " wake-ups a second\n";
    CHECK(beats >= 1);
    CHECK(beats <= 2);
  }
  CHECK(aSecond <= 1.5);
  CHECK(bench.alerts.sinceBeat() < std::chrono::milliseconds(8500));
}

// The parent of the test after it.
TEST_CASE("sounds until it is ended", "[.sounding]") {
  Alerts alerts(boottimeNow);
  alerts.publish(dueNow(AlertClass::Closing));
  while (true) tests::spin(kSecond);
}

TEST_CASE("a program that is killed takes its player with it within a second, and is silent", "[orphan]") {
  tests::SoundServer server;
  REQUIRE(tests::plugIn());
  const tests::SoundRecording recording;
  REQUIRE(recording.waitForSamples(3 * kSecond));
  const std::string self = QCoreApplication::applicationFilePath().toStdString();
  pid_t player = 0;
  std::int64_t killed = 0;
  {
    tests::ChildProcess program({self, "[.sounding]"}, tests::ChildProcess::Pipe::None);
    REQUIRE(soundsAfter(recording, boottimeNow(), 5));
    player = tests::playerOf(program.pid());
    REQUIRE(player > 0);
    program.send(SIGKILL);
    killed = boottimeNow();
  }
  while (tests::isAlive(player) && boottimeNow() < killed + kSecond) tests::spin(kSecond / 100);
  CHECK_FALSE(tests::isAlive(player));
  tests::spin(7 * kSecond);  // longer than the burst's repetition
  CHECK_FALSE(recording.onset(killed + kQueued, boottimeNow()).has_value());
}
