#include <QCoreApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QTemporaryDir>
#include <QThread>

#include "app/alerts/alerts.h"
#include "tests/support/alerts.h"
#include "tests/support/catch.h"
#include "tests/support/sound_recording.h"

using app::alerts::Alerts;
using core::alerts::AlertSchedule;
using core::intents::AlertClass;

namespace {

constexpr std::int64_t kSecond = 1'000'000'000;

template <typename Condition>
bool spinUntil(Condition condition, int milliseconds) {
  QElapsedTimer clock;
  clock.start();
  while (!condition() && clock.elapsed() < milliseconds) {
    QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
    QThread::msleep(2);
  }
  return condition();
}

}  // namespace

TEST_CASE("without a sound server the bench is told so and what is due is still shown in time") {
  QTemporaryDir empty;
  qputenv("XDG_RUNTIME_DIR", empty.path().toUtf8());
  qunsetenv("PULSE_SERVER");
  qunsetenv("PULSE_RUNTIME_PATH");
  int argc = 1;
  char name[] = "no_sound_test";
  char* argv[] = {name, nullptr};
  QCoreApplication application(argc, argv);

  Alerts alerts(tests::boottimeNow);
  std::vector<std::size_t> listed;
  std::int64_t firstAt = 0;
  QThread* listener = nullptr;
  QObject::connect(&alerts, &Alerts::dueChanged, &application, [&](const auto& due) {
    if (listed.empty()) firstAt = tests::boottimeNow();
    listed.push_back(due->alerts.size());
    listener = QThread::currentThread();
  });

  CHECK(spinUntil([&] { return alerts.sound() == Alerts::Sound::NoDevice; }, 2000));

  const std::int64_t due = tests::boottimeNow() + kSecond;
  alerts.publish(tests::scheduleOf({tests::dueAlert("size", AlertClass::Closing, due)}));
  REQUIRE(spinUntil([&] { return !listed.empty(); }, 3000));
  CHECK(listed == std::vector<std::size_t>{1});
  CHECK(firstAt >= due);
  CHECK(firstAt - due < kSecond / 4);  // by its timer, not by the slower look round
  CHECK(listener == QThread::currentThread());

  alerts.publish(std::make_shared<AlertSchedule>());
  CHECK(spinUntil([&] { return listed.size() == 2; }, 2000));
  CHECK(listed.back() == 0);

  alerts.publish(tests::scheduleOf({tests::dueAlert("size", AlertClass::Closing, tests::boottimeNow())}, true));
  CHECK_FALSE(spinUntil([&] { return listed.size() == 3; }, 500));
  alerts.releaseHeld();
  CHECK(spinUntil([&] { return listed.size() == 3; }, 2000));
  CHECK(listed.back() == 1);
}
