#include <sys/timex.h>
#include <time.h>

#include <fstream>

#include "app/clocks/machine_clocks.h"
#include "app/clocks/process_clocks.h"

namespace app::clocks {
namespace {

bool steeredByTimeServer() {
  timex state{};  // modes 0: asks, sets nothing
  const int clockState = adjtimex(&state);
  return clockState >= 0 && clockState != TIME_ERROR && (state.status & STA_UNSYNC) == 0;
}

// Returns whether boot-time readings may be compared across runs of the program, which needs the kernel's own boot id.
bool readKernelBootId(std::string& id) {
  std::ifstream file("/proc/sys/kernel/random/boot_id");
  return static_cast<bool>(std::getline(file, id)) && id.size() == 36;
}

}  // namespace

MachineTime machineTime() {
  timespec now{};
  if (clock_gettime(CLOCK_BOOTTIME, &now) != 0) return {processSteadyNanoseconds(), steeredByTimeServer()};
  return {static_cast<std::int64_t>(now.tv_sec) * 1'000'000'000 + now.tv_nsec, steeredByTimeServer()};
}

const std::string& machineBootId() {
  static const std::string id = [] {
    std::string kernelId;
    return readKernelBootId(kernelId) ? kernelId : processBootId();
  }();
  return id;
}

}  // namespace app::clocks
