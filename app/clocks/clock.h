#pragma once
// The one clock port. The product has one implementation on the machine's clocks; the tests bring their own in
// their own executable.
#include <cstdint>
#include <string>

#include "core/waits/clock.h"

namespace app::clocks {

class Clock {
 public:
  virtual ~Clock() = default;
  virtual core::waits::ClockReading now() const = 0;
  // IANA id of the zone times are shown in ("Europe/London"); "UTC" where unknown.
  virtual std::string zone() const = 0;
};

}  // namespace app::clocks
