#pragma once
// Readings of the machine's clocks, and how much time lies between two of them.
//
// Within one boot the boot-time clock is the authority: it counts through sleep and nobody can set it. Across
// boots there is only the wall clock, which may be wrong; what cannot be known is said, never guessed.
#include <cstdint>
#include <string>
#include <vector>

#include "core/units/duration.h"

namespace core::waits {

struct ClockReading {
  std::int64_t utcMilliseconds = 0;  // since 1970-01-01T00:00Z
  std::string bootId;                // one for each boot of one device
  std::int64_t boottimeNanoseconds = 0;
  bool synced = false;  // whether the wall clock was known to be set by a time server

  friend bool operator==(const ClockReading&, const ClockReading&) = default;
};

// Heartbeats in the order they were written: the last sign of life of earlier boots.
struct ClockLog {
  std::vector<ClockReading> heartbeats;
};

struct Elapsed {
  units::Duration time;  // never negative
  // False where the reading crosses a boot and the wall clock ran backwards or beyond 30 days: then `time` is
  // the least it can be (awake time before and after), and the interface must say so.
  bool certain = true;
};

Elapsed elapsedBetween(const ClockReading& start, const ClockReading& now, const ClockLog& log);

}  // namespace core::waits
