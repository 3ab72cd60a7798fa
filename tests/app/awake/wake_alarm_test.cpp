#include "app/awake/wake_alarm.h"

#include <linux/capability.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <functional>
#include <thread>

#include "app/clocks/machine_clocks.h"
#include "tests/support/catch.h"
#include "tests/support/event_loop.h"
#include "tests/support/folders.h"

using app::awake::WakeAlarm;

namespace {

constexpr std::int64_t kSecond = 1'000'000'000;

std::int64_t boottimeNow() { return app::clocks::machineTime().boottimeNanoseconds; }

// A machine whose clock can wake it, as the kernel shows one.
struct Machine {
  tests::Folders files;
  Machine() { REQUIRE(files.write("rtc0/wakealarm", "")); }
};

// Rights belong to a thread: the others keep theirs.
void withoutTheRight(const std::function<void()>& act) {
  bool dropped = false;
  std::thread([&] {
    __user_cap_header_struct header{_LINUX_CAPABILITY_VERSION_3, 0};
    __user_cap_data_struct rights[2]{};
    if (syscall(SYS_capget, &header, rights) != 0) return;
    for (auto* set : {&rights[1].effective, &rights[1].permitted, &rights[1].inheritable}) {
      *set &= ~CAP_TO_MASK(CAP_WAKE_ALARM);
    }
    if (syscall(SYS_capset, &header, rights) != 0) return;
    dropped = true;
    act();
  }).join();
  REQUIRE(dropped);
}

}  // namespace

TEST_CASE("without the right to wake the machine no alarm is granted") {
  const Machine machine;
  bool granted = true;
  withoutTheRight([&] { granted = WakeAlarm(nullptr, machine.files.path()).set(boottimeNow() + 3600 * kSecond); });
  CHECK_FALSE(granted);
}

TEST_CASE("a machine none of whose clocks can wake it grants no alarm, whatever the rights") {
  tests::Folders files;
  CHECK_FALSE(WakeAlarm(nullptr, files.path()).set(boottimeNow() + kSecond));
  CHECK_FALSE(WakeAlarm(nullptr, files.path("nowhere")).set(boottimeNow() + kSecond));
  REQUIRE(files.write("rtc0/time", "12:00:00"));
  CHECK_FALSE(WakeAlarm(nullptr, files.path()).set(boottimeNow() + kSecond));
}

TEST_CASE("no alarm set is no alarm granted") {
  const Machine machine;
  WakeAlarm alarm(nullptr, machine.files.path());
  CHECK_FALSE(alarm.set({}));
}

#ifndef NO_WAKE_ALARM

TEST_CASE("an alarm rings once at its instant, and one that was replaced or taken off does not") {
  const Machine machine;
  WakeAlarm alarm(nullptr, machine.files.path());
  int rings = 0;
  QObject::connect(&alarm, &WakeAlarm::rang, &alarm, [&] { ++rings; });
  const std::int64_t start = boottimeNow();
  REQUIRE(alarm.set(start + kSecond / 10));
  REQUIRE(alarm.set(start + kSecond / 2));
  tests::letPass(300);
  CHECK(rings == 0);
  REQUIRE(tests::becomesSo([&] { return rings == 1; }, 2000));
  CHECK(boottimeNow() >= start + kSecond / 2);
  REQUIRE(alarm.set(boottimeNow() + kSecond / 10));
  CHECK_FALSE(alarm.set({}));
  tests::letPass(300);
  CHECK(rings == 1);
}

TEST_CASE("an alarm for an instant that is past rings at once") {
  const Machine machine;
  WakeAlarm alarm(nullptr, machine.files.path());
  int rings = 0;
  QObject::connect(&alarm, &WakeAlarm::rang, &alarm, [&] { ++rings; });
  REQUIRE(alarm.set(0));
  CHECK(tests::becomesSo([&] { return rings == 1; }, 1000));
}

#endif
