#include "app/viewmodels/bench/watch_view_model.h"

#include <QStringList>

#include "app/viewmodels/times.h"
#include "core/waits/clock.h"

namespace app::viewmodels {
namespace {

// The bench has room for two lines and the drawing.
constexpr int kMostLines = 2;

}  // namespace

WatchViewModel::WatchViewModel(const clocks::Clock& clock, QObject* parent) : QObject(parent), m_clock(clock) {}

QString WatchViewModel::clockTrouble(std::int64_t utcMilliseconds) {
  if (core::waits::isBelievable(utcMilliseconds)) return {};
  return utcMilliseconds < core::waits::kEarliestBelievableUtc
             ? tr("This tablet's clock was never set; waits count on, clock times are wrong.")
             : tr("This tablet's clock is far ahead: set it. Waits count on, clock times are wrong.");
}

void WatchViewModel::set(Trouble trouble, const QString& said) {
  if (said.isEmpty()) {
    if (m_troubles.erase(trouble) == 0) return;
  } else {
    QString& known = m_troubles[trouble];
    if (known == said) return;
    known = said;
  }
  emit changed();
}

void WatchViewModel::refresh() {
  const core::waits::ClockReading now = m_clock.now();
  m_time = clockTime(now.utcMilliseconds, now.utcMilliseconds, m_clock.zone());
  m_living = !m_ask || m_ask();
  set(Trouble::Alerts, m_living ? QString() : tr("The alerts do not answer: watch the shelf."));
  set(Trouble::Clock, clockTrouble(now.utcMilliseconds));
  emit changed();
}

QString WatchViewModel::troubles() const {
  QStringList lines;
  for (const auto& [trouble, said] : m_troubles) {
    if (lines.size() < kMostLines) lines << said;
  }
  return lines.join(QLatin1Char('\n'));
}

}  // namespace app::viewmodels
