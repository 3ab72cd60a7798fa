// Says what the clock port reads, for a test that runs it where the boot-time clock was moved alone: nanoseconds of
// boot time, of the steady clock, and of the wall clock.
#include <iostream>

#include "app/clocks/process_clocks.h"
#include "app/clocks/system_clock.h"

int main() {
  const auto now = app::clocks::SystemClock().now();
  std::cout << now.boottimeNanoseconds << ' ' << app::clocks::processSteadyNanoseconds() << ' '
            << now.utcMilliseconds * 1'000'000 << ' ' << now.bootId << '\n';
}
