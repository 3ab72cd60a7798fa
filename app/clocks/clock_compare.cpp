#include "app/clocks/clock_compare.h"

#include "app/clocks/machine_clocks.h"

namespace app::clocks {
namespace {

std::chrono::nanoseconds ahead(const ClockCompare::Times& times) { return times.wall - times.machine; }

}  // namespace

ClockCompare::Times ClockCompare::machineTimes() {
  return {std::chrono::system_clock::now().time_since_epoch(),
          std::chrono::nanoseconds(machineTime().boottimeNanoseconds)};
}

ClockCompare::ClockCompare(QObject* parent, std::function<Times()> now, std::chrono::milliseconds every)
    : QObject(parent), m_now(std::move(now)), m_ahead(ahead(m_now())), m_timer(this) {
  connect(&m_timer, &QTimer::timeout, this, &ClockCompare::look);
  m_timer.start(every);
}

void ClockCompare::look() {
  const auto now = ahead(m_now());
  const bool apart = std::chrono::abs(now - m_ahead) >= std::chrono::milliseconds(500);
  m_ahead = now;
  if (apart) emit jumped();
}

}  // namespace app::clocks
