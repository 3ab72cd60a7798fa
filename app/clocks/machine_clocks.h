#pragma once
// What only the operating system knows. One file for each system that can say it, one for those that cannot.
#include <cstdint>
#include <string>

namespace app::clocks {

struct MachineTime {
  // Nanoseconds since the machine was started, time asleep included where the system counts it. Never set by
  // anybody, never running backwards within one boot id.
  std::int64_t boottimeNanoseconds = 0;
  // Whether the wall clock is being steered by a time server. False where that is not known.
  bool synced = false;
};

MachineTime machineTime();

// One for each start of the machine. Read once; the same for as long as the program runs.
const std::string& machineBootId();

}  // namespace app::clocks
