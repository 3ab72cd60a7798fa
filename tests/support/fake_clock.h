#pragma once
// A clock that does not advance until the test sets it. Wall clock, boot-time clock and boot are moved independently,
// as they do on a real machine.
#include <cstdint>
#include <string>

#include "app/clocks/clock.h"

namespace tests {

class FakeClock : public app::clocks::Clock {
 public:
  core::waits::ClockReading now() const override { return m_reading; }
  std::string zone() const override { return m_zone; }

  // Time passes on both clocks, awake or asleep.
  void advance(std::int64_t milliseconds) {
    m_reading.utcMilliseconds += milliseconds;
    m_reading.boottimeNanoseconds += milliseconds * 1'000'000;
  }
  // Somebody, or a time server, sets the wall clock.
  void jump(std::int64_t milliseconds) { m_reading.utcMilliseconds += milliseconds; }
  // Off for that long, then on again: a new boot, `bootedFor` old, with a wall clock that kept time.
  void reboot(std::int64_t offMilliseconds, std::int64_t bootedForMilliseconds = 20'000) {
    m_boot += 1;
    m_reading.bootId = "boot-" + std::to_string(m_boot);
    m_reading.boottimeNanoseconds = bootedForMilliseconds * 1'000'000;
    m_reading.utcMilliseconds += offMilliseconds + bootedForMilliseconds;
  }
  void setSynced(bool synced) { m_reading.synced = synced; }
  void setZone(std::string zone) { m_zone = std::move(zone); }

 private:
  int m_boot = 1;
  core::waits::ClockReading m_reading{1'764'063'195'123, "boot-1", 3'600'000'000'000, true};
  std::string m_zone = "Europe/London";
};

}  // namespace tests
