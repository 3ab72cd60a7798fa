#include <sys/timerfd.h>
#include <time.h>
#include <unistd.h>

#include <QSocketNotifier>
#include <cerrno>
#include <cstdint>

#include "app/clocks/clock_compare.h"
#include "app/clocks/jump_watch.h"

namespace app::clocks {
namespace {

// Arms the timer for an instant no bench will reach, to be notified when the clock is set meanwhile.
bool arm(int file) {
  itimerspec never{};
  never.it_value.tv_sec = 253'402'300'799;  // the last second of the year 9999
  if constexpr (sizeof(time_t) < 8) never.it_value.tv_sec = static_cast<time_t>(2'147'483'647);
  return timerfd_settime(file, TFD_TIMER_ABSTIME | TFD_TIMER_CANCEL_ON_SET, &never, nullptr) == 0;
}

}  // namespace

JumpWatch::JumpWatch(QObject* parent) : QObject(parent) {
  m_file = timerfd_create(CLOCK_REALTIME, TFD_NONBLOCK | TFD_CLOEXEC);
  if (m_file < 0 || !arm(m_file)) {
    connect(new ClockCompare(this), &ClockCompare::jumped, this, &JumpWatch::jumped);
    return;
  }
  m_notifier = new QSocketNotifier(m_file, QSocketNotifier::Read, this);
  connect(m_notifier, &QSocketNotifier::activated, this, [this] {
    std::uint64_t times = 0;
    const bool expired = read(m_file, &times, sizeof times) == sizeof times;
    if (!expired && errno != ECANCELED) return;
    // It is armed before the signal, so that a jump during the slots is reported as well.
    if (!arm(m_file)) m_notifier->setEnabled(false);
    emit jumped();
  });
}

JumpWatch::~JumpWatch() {
  delete m_notifier;
  if (m_file >= 0) close(m_file);
}

}  // namespace app::clocks
