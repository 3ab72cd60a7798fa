#pragma once
// Follows one climate sensor and reports the readings worth reporting.
#include <QBasicTimer>
#include <QElapsedTimer>
#include <QObject>
#include <chrono>
#include <functional>
#include <optional>

#include "app/room/sensors.h"

namespace app::room {

// Returns whether two readings differ by 0.5 K or 2 % or more.
bool worthTelling(const SensorReading& one, const SensorReading& other);
// How long after a report a reading is reported again even if it is unchanged, so that it is seen to be fresh.
inline constexpr std::chrono::hours kToldAgain{1};

class SensorWatch : public QObject {
  Q_OBJECT

 public:
  using Read = std::function<core::base::Result<SensorReading, core::base::Message>(const QString& folder)>;
  // `read` is called in other threads, one call at a time.
  explicit SensorWatch(QObject* parent = nullptr, Read read = readSensor,
                       std::chrono::milliseconds every = std::chrono::minutes(1),
                       std::chrono::milliseconds again = kToldAgain);

  // Reads at once and then each time `every` has passed. Replaces the folder watched before; its last report is
  // forgotten.
  void start(const QString& folder);
  void stop();

 signals:
  // Reports the first reading, each one worth telling compared with the last report, the first after a trouble, and the
  // first once `again` has passed.
  void reading(app::room::SensorReading reading);
  // Reports the errors of readSensor, or sensor.silent {path} where the device has not answered by the next reading. It
  // is not repeated while the same file has the same trouble.
  void trouble(core::base::Message trouble);

 protected:
  void timerEvent(QTimerEvent* event) override;

 private:
  void ask();
  void take(const core::base::Result<SensorReading, core::base::Message>& answer);
  void tell(const core::base::Message& trouble);

  Read m_read;
  std::chrono::milliseconds m_every;
  std::chrono::milliseconds m_again;
  QString m_folder;
  QBasicTimer m_timer;
  int m_course = 0;        // counts starts and stops: an answer to an earlier one is dropped
  bool m_waiting = false;  // for an answer of this course
  std::optional<SensorReading> m_told;
  QElapsedTimer m_sinceTold;
  std::optional<core::base::Message> m_trouble;
};

}  // namespace app::room
