#include "app/clocks/process_clocks.h"

#include <chrono>

#include "app/convert/uuid.h"

namespace app::clocks {

std::int64_t processSteadyNanoseconds() {
  using namespace std::chrono;
  return duration_cast<nanoseconds>(steady_clock::now().time_since_epoch()).count();
}

const std::string& processBootId() {
  using namespace std::chrono;
  static const std::string id =
      convert::newUuid(duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count());
  return id;
}

}  // namespace app::clocks
