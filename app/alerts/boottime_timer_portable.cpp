#include <QTimer>
#include <algorithm>

#include "app/alerts/boottime_timer.h"

namespace app::alerts {

struct BoottimeTimer::Private {
  QTimer* timer = nullptr;  // a child, so that it moves to another thread with its parent
};

BoottimeTimer::BoottimeTimer(QObject* parent) : QObject(parent), d(std::make_unique<Private>()) {
  d->timer = new QTimer(this);
  d->timer->setSingleShot(true);
  d->timer->setTimerType(Qt::PreciseTimer);
  connect(d->timer, &QTimer::timeout, this, &BoottimeTimer::fired);
}

BoottimeTimer::~BoottimeTimer() = default;

void BoottimeTimer::setInterval(std::int64_t nanoseconds) {
  // Its clock may stand still while the machine sleeps: it fires early rather than late and is set again.
  const std::int64_t milliseconds = std::clamp<std::int64_t>(nanoseconds / 1'000'000, 0, 10'000);
  d->timer->start(std::chrono::milliseconds(milliseconds));
}

void BoottimeTimer::stop() { d->timer->stop(); }

}  // namespace app::alerts
