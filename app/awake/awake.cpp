#include "app/awake/awake.h"

#include <QTimerEvent>

#include "app/aside/aside.h"
#include "app/awake/battery.h"
#include "app/awake/due.h"

namespace app::awake {

Awake::Awake(std::function<std::int64_t()> boottimeNow, const Places& places, QObject* parent,
             std::chrono::milliseconds patience, std::chrono::milliseconds every)
    : QObject(parent),
      m_boottimeNow(std::move(boottimeNow)),
      m_power(places.power),
      m_patience(patience),
      m_control(places.buses),
      m_alarm(nullptr, places.clocks),
      m_schedule(std::make_shared<core::alerts::AlertSchedule>()) {
  connect(&m_control, &SleepControl::changed, this, &Awake::tell);
  connect(&m_control, &SleepControl::sleeping, this, &Awake::sleeping);
  connect(&m_control, &SleepControl::woke, this, [this] {
    look();
    emit woke();
  });
  connect(&m_alarm, &WakeAlarm::rang, this, &Awake::look);
  // A machine that wakes for several things at once wakes seldom.
  const auto type = every >= std::chrono::seconds(10) ? Qt::VeryCoarseTimer : Qt::CoarseTimer;
  m_timer.start(static_cast<int>(every.count()), type, this);
}

void Awake::follow(std::shared_ptr<const core::alerts::AlertSchedule> schedule) {
  m_schedule = std::move(schedule);
  look();
}

void Awake::timerEvent(QTimerEvent* event) {
  if (event->timerId() == m_patient.timerId()) {
    m_patient.stop();
    tell();
  } else if (event->timerId() == m_timer.timerId()) {
    m_control.tryAgain();
    if (m_now.wanted) askBattery();
    look();
  } else {
    QObject::timerEvent(event);
  }
}

void Awake::look() {
  const std::int64_t now = m_boottimeNow();
  const bool wanted = dueWithinHorizon(*m_schedule, now);
  m_now.wakeAlarm = m_alarm.set(nextWaking(*m_schedule, now));
  if (wanted != m_now.wanted) {
    m_now.wanted = wanted;
    wanted ? m_patient.start(static_cast<int>(m_patience.count()), this) : m_patient.stop();
    m_now.batteryPercent.reset();
    if (wanted) askBattery();
    m_control.hold(wanted);
  }
  tell();
}

void Awake::askBattery() {
  // A controller that does not answer is not asked again meanwhile.
  if (m_askingBattery) return;
  m_askingBattery = true;
  aside::aside(this, [this, root = m_power]() -> aside::Told {
    return [this, percent = batteryRunningDown(root)] {
      m_askingBattery = false;
      m_now.batteryPercent = m_now.wanted ? percent : std::nullopt;
      tell();
    };
  });
}

void Awake::tell() {
  m_now.kept = m_control.kept();
  // Asking again later unsettles nothing: what is said on the bench would come and go.
  m_now.settled = m_now.wanted && (m_now.settled || !m_control.asking() || !m_patient.isActive());
  if (m_now == m_known) return;
  m_known = m_now;
  emit changed(m_known);
}

}  // namespace app::awake
