#include "app/clocks/machine_clocks.h"
#include "app/clocks/process_clocks.h"

namespace app::clocks {

MachineTime machineTime() { return {processSteadyNanoseconds(), false}; }

const std::string& machineBootId() { return processBootId(); }

}  // namespace app::clocks
