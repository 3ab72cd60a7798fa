#include <QFile>
#include <QThread>
#include <QTimeZone>

#include "app/clocks/process_clocks.h"
#include "app/clocks/system_clock.h"
#include "tests/support/catch.h"
#include "tests/support/fake_clock.h"

TEST_CASE("the system clock runs forwards on both clocks and at one rate") {
  const app::clocks::SystemClock clock;
  const auto first = clock.now();
  QThread::msleep(50);
  const auto second = clock.now();
  const auto passed = (second.boottimeNanoseconds - first.boottimeNanoseconds) / 1'000'000;
  CHECK(passed >= 50);
  CHECK(second.bootId == first.bootId);
  // Somebody may set the wall clock while this runs; a second of slack still tells seconds from milliseconds.
  CHECK(std::llabs((second.utcMilliseconds - first.utcMilliseconds) - passed) < 1000);
  CHECK(first.utcMilliseconds > 1'700'000'000'000);
}

TEST_CASE("the boot id is the kernel's where there is one") {
  QFile file("/proc/sys/kernel/random/boot_id");
  const std::string id = app::clocks::SystemClock().now().bootId;
  if (file.open(QIODevice::ReadOnly)) {
    CHECK(id == file.readAll().trimmed().toStdString());
  } else {
    CHECK(id == app::clocks::processBootId());
  }
}

TEST_CASE("the zone is one that the zone database knows") {
  const std::string zone = app::clocks::SystemClock().zone();
  CHECK(QTimeZone::isTimeZoneIdAvailable(QByteArray::fromStdString(zone)));
}

TEST_CASE("clocks of one run never run backwards and keep one boot id") {
  const auto first = app::clocks::processSteadyNanoseconds();
  CHECK(app::clocks::processSteadyNanoseconds() >= first);
  CHECK(app::clocks::processBootId().size() == 36);
  CHECK(app::clocks::processBootId() == app::clocks::processBootId());
}

TEST_CASE("the fake clock moves wall, boot time and boot apart") {
  tests::FakeClock clock;
  const auto start = clock.now();
  clock.advance(1000);
  CHECK(clock.now().utcMilliseconds == start.utcMilliseconds + 1000);
  CHECK(clock.now().boottimeNanoseconds == start.boottimeNanoseconds + 1'000'000'000);
  clock.jump(-5000);
  CHECK(clock.now().utcMilliseconds == start.utcMilliseconds - 4000);
  CHECK(clock.now().boottimeNanoseconds == start.boottimeNanoseconds + 1'000'000'000);
  clock.reboot(60'000, 10'000);
  CHECK(clock.now().bootId != start.bootId);
  CHECK(clock.now().boottimeNanoseconds == 10'000'000'000);
  CHECK(clock.now().utcMilliseconds == start.utcMilliseconds + 66'000);
}
