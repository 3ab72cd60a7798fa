#pragma once
#include "app/clocks/clock.h"

namespace app::clocks {

// The machine's own clocks. May be read from any thread.
class SystemClock : public Clock {
 public:
  core::waits::ClockReading now() const override;
  std::string zone() const override;
};

}  // namespace app::clocks
