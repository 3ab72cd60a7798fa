#pragma once
// Clocks of this one run of the program: what any system has. A boot id that lasts only as long as the program
// makes the record fall back to the wall clock after a restart, which is the most that can be known then.
#include <cstdint>
#include <string>

namespace app::clocks {

std::int64_t processSteadyNanoseconds();
const std::string& processBootId();

}  // namespace app::clocks
