#pragma once
// Wakes the machine from sleep at an instant, where the system lets this program do so. One file for each system that
// can, one for those that cannot.
#include <QObject>
#include <QString>
#include <cstdint>
#include <optional>

class QSocketNotifier;

namespace app::awake {

class WakeAlarm : public QObject {
  Q_OBJECT

 public:
  // `clocks` is where the kernel shows the machine's own clocks: one that can wake it has a file "wakealarm".
  explicit WakeAlarm(QObject* parent = nullptr, QString clocks = QStringLiteral("/sys/class/rtc"));
  ~WakeAlarm() override;

  // Replaces the alarm set before; without a value none is set. In nanoseconds of the boot-time clock. Returns whether
  // the system accepted it, which it may refuse at any time, and has a clock that can wake the machine. Whether the
  // machine then wakes is its firmware's affair and cannot be known.
  bool set(std::optional<std::int64_t> boottimeNanoseconds);

 signals:
  // The instant was reached, asleep or awake.
  void rang();

 private:
  bool arm(std::int64_t boottimeNanoseconds);

  QString m_clocks;
  int m_file = -1;
  QSocketNotifier* m_notifier = nullptr;
};

}  // namespace app::awake
