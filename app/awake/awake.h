#pragma once
// Keeps the machine awake while an alert is due, has it woken where it sleeps all the same, and reports how far that
// can be relied on. Decides nothing about alerts: it follows their schedule.
#include <QBasicTimer>
#include <QObject>
#include <QString>
#include <chrono>
#include <cstdint>
#include <functional>
#include <memory>

#include "app/awake/sleep_control.h"
#include "app/awake/wake_alarm.h"
#include "app/awake/wakefulness.h"
#include "core/alerts/alert_schedule.h"

namespace app::awake {

// The places where the machine reports its own state.
struct Places {
  Buses buses = machineBuses();
  QString power = QStringLiteral("/sys/class/power_supply");
  QString clocks = QStringLiteral("/sys/class/rtc");
};

// Lives in a thread with an event loop and never blocks it.
class Awake : public QObject {
  Q_OBJECT

 public:
  // `boottimeNow` gives the boot-time clock in nanoseconds. Services have `patience` to answer before they are reported
  // as not answering; everything is checked again each time `every` has passed.
  explicit Awake(std::function<std::int64_t()> boottimeNow, const Places& places = {}, QObject* parent = nullptr,
                 std::chrono::milliseconds patience = std::chrono::seconds(5),
                 std::chrono::milliseconds every = std::chrono::minutes(1));

  void follow(std::shared_ptr<const core::alerts::AlertSchedule> schedule);
  const Wakefulness& wakefulness() const { return m_known; }

 signals:
  void changed(const app::awake::Wakefulness& wakefulness);
  // These are SleepControl's signals, passed on.
  void sleeping();
  void woke();

 protected:
  void timerEvent(QTimerEvent* event) override;

 private:
  void look();
  void askBattery();
  void tell();

  std::function<std::int64_t()> m_boottimeNow;
  QString m_power;
  std::chrono::milliseconds m_patience;
  SleepControl m_control;
  WakeAlarm m_alarm;
  QBasicTimer m_timer;
  QBasicTimer m_patient;  // runs while services are given time
  std::shared_ptr<const core::alerts::AlertSchedule> m_schedule;
  bool m_askingBattery = false;
  Wakefulness m_now;
  Wakefulness m_known;  // as last reported
};

}  // namespace app::awake
