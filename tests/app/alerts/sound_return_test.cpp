// Run in an empty place for a sound server (tests/support/with_sound.sh --empty): the test starts servers, stops
// them and takes their devices away, as cables, crashes and suspended speakers do.
#include <unistd.h>

#include <csignal>
#include <iostream>

#include "tests/support/catch.h"
#include "tests/support/sound_faults.h"

using app::alerts::Alerts;
using tests::becomes;
using tests::boottimeNow;
using tests::heard;
using tests::kSecond;
using Server = tests::SoundServer;

TEST_CASE("a sound server that comes late, and its devices that come and go, are followed", "[return]") {
  using Sound = Alerts::Sound;
  Alerts alerts(boottimeNow);
  CHECK(becomes(alerts, Sound::NoDevice, 2));
  {
    Server server;
    // A server without hardware shows a device that leads nowhere.
    CHECK_FALSE(becomes(alerts, Sound::Ready, 2));
    REQUIRE(tests::plugIn());
    CHECK(becomes(alerts, Sound::Ready, 3));
    CHECK(heard(alerts));
    REQUIRE(tests::pullOut());
    CHECK(becomes(alerts, Sound::NoDevice, 3));
    REQUIRE(tests::plugIn());
    CHECK(becomes(alerts, Sound::Ready, 3));
    CHECK(heard(alerts));
  }
  CHECK(becomes(alerts, Sound::NoDevice, 3));
}

TEST_CASE("a server that hangs or goes for a moment is taken up again", "[restart]") {
  using Sound = Alerts::Sound;
  Alerts alerts(boottimeNow);
  {
    Server server;
    REQUIRE(tests::plugIn());
    CHECK(becomes(alerts, Sound::Ready, 5));
    server.send(SIGSTOP);
    CHECK(becomes(alerts, Sound::Stalled, 10));
    server.send(SIGCONT);
    CHECK(becomes(alerts, Sound::Ready, 7));
    CHECK(heard(alerts));
  }
  CHECK(becomes(alerts, Sound::NoDevice, 3));
  // Longer than the multimedia library would wait before its only attempt to connect again.
  CHECK_FALSE(becomes(alerts, Sound::Ready, 5));
  for (int i = 0; i < 2; ++i) {
    Server server;
    // The second time it is back at once; it has no device yet.
    CHECK(becomes(alerts, Sound::NoDevice, 2));
    REQUIRE(tests::plugIn());
    CHECK(becomes(alerts, Sound::Ready, 8));
    CHECK(heard(alerts));
  }
}

TEST_CASE("the program ends in good time although the sound server hangs", "[hang]") {
  Server server;
  REQUIRE(tests::plugIn());
  std::int64_t ended = 0;
  {
    Alerts alerts(boottimeNow);
    CHECK(becomes(alerts, Alerts::Sound::Ready, 8));
    server.send(SIGSTOP);
    CHECK(becomes(alerts, Alerts::Sound::Stalled, 10));
    ended = boottimeNow();
  }
  CHECK(boottimeNow() - ended < kSecond);
  CHECK(tests::playerOf(getpid()) == 0);
  server.send(SIGCONT);
}

TEST_CASE("where nothing shows that there is no server one player goes on looking, and finds it when it comes",
          "[late]") {
  using Sound = Alerts::Sound;
  // In a form that names a server and does not say beforehand whether it is there.
  qputenv("PULSE_SERVER", " unix:" + qgetenv("XDG_RUNTIME_DIR") + "/pulse/native");
  Alerts alerts(boottimeNow);
  CHECK(becomes(alerts, Sound::NoDevice, 4));
  const pid_t player = tests::playerOf(getpid());
  REQUIRE(player != 0);
  const long before = tests::wakeUps(player);
  tests::spin(8 * kSecond);
  CHECK(tests::playerOf(getpid()) == player);
  const double rate = static_cast<double>(tests::wakeUps(player) - before) / 8;
  std::cout << rate << " wake-ups a second without a server\n";
  CHECK(rate < 10);
  {
    Server server;
    REQUIRE(tests::plugIn());
    CHECK(becomes(alerts, Sound::Ready, 6));
    CHECK(heard(alerts));
  }
  CHECK(becomes(alerts, Sound::NoDevice, 3));
  qunsetenv("PULSE_SERVER");
}
