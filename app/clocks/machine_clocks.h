#pragma once
// Facts that only the operating system knows. There is one file for each system that reports them, one for the others.
#include <cstdint>
#include <string>

namespace app::clocks {

struct MachineTime {
  // Nanoseconds since the machine was started, time asleep included where the system counts it. Never set by
  // anybody, never running backwards within one boot id.
  std::int64_t boottimeNanoseconds = 0;
  // True where the wall clock is being steered by a time server. False where that is not known.
  bool synced = false;
};

MachineTime machineTime();

// Returns an id of this start of the machine. It is read once and is the same for as long as the program runs.
const std::string& machineBootId();

}  // namespace app::clocks
