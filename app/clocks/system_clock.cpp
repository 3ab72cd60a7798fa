#include "app/clocks/system_clock.h"

#include <QTimeZone>
#include <chrono>

#include "app/clocks/machine_clocks.h"
#include "app/convert/text.h"

namespace app::clocks {

core::waits::ClockReading SystemClock::now() const {
  using namespace std::chrono;
  const std::int64_t utc = duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
  const MachineTime machine = machineTime();
  return {utc, machineBootId(), machine.boottimeNanoseconds, machine.synced};
}

std::string SystemClock::zone() const {
  const QByteArray id = QTimeZone::systemTimeZoneId();
  return QTimeZone::isTimeZoneIdAvailable(id) ? convert::fromBytes(id) : "UTC";
}

}  // namespace app::clocks
