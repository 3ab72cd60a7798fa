#include <sys/timerfd.h>
#include <time.h>
#include <unistd.h>

#include <QSocketNotifier>
#include <QTimer>
#include <algorithm>

#include "app/alerts/boottime_timer.h"

namespace app::alerts {

struct BoottimeTimer::Private {
  int file = -1;
  // Both are children of the timer, so that they move to its thread with it.
  QSocketNotifier* notifier = nullptr;
  QTimer* fallback = nullptr;  // where the kernel gives no such timer
};

BoottimeTimer::BoottimeTimer(QObject* parent) : QObject(parent), d(std::make_unique<Private>()) {
  d->file = timerfd_create(CLOCK_BOOTTIME, TFD_NONBLOCK | TFD_CLOEXEC);
  d->fallback = new QTimer(this);
  d->fallback->setSingleShot(true);
  d->fallback->setTimerType(Qt::PreciseTimer);
  connect(d->fallback, &QTimer::timeout, this, &BoottimeTimer::fired);
  if (d->file < 0) return;
  d->notifier = new QSocketNotifier(d->file, QSocketNotifier::Read, this);
  connect(d->notifier, &QSocketNotifier::activated, this, [this] {
    std::uint64_t times = 0;
    if (read(d->file, &times, sizeof times) == sizeof times) emit fired();
  });
}

BoottimeTimer::~BoottimeTimer() {
  delete d->notifier;
  if (d->file >= 0) close(d->file);
}

void BoottimeTimer::setInterval(std::int64_t nanoseconds) {
  constexpr std::int64_t kSecond = 1'000'000'000;
  const std::int64_t wait = std::max<std::int64_t>(nanoseconds, 1);
  itimerspec spec{};
  spec.it_value.tv_sec = static_cast<time_t>(wait / kSecond);
  spec.it_value.tv_nsec = static_cast<long>(wait % kSecond);
  if (d->file >= 0 && timerfd_settime(d->file, 0, &spec, nullptr) == 0) return;
  d->fallback->start(std::chrono::milliseconds(std::min<std::int64_t>(wait / 1'000'000, 60'000)));
}

void BoottimeTimer::stop() {
  const itimerspec none{};
  if (d->file >= 0) timerfd_settime(d->file, 0, &none, nullptr);
  d->fallback->stop();
}

}  // namespace app::alerts
