#pragma once
// Follows one climate sensor and tells what is worth telling.
#include <QBasicTimer>
#include <QObject>
#include <chrono>
#include <functional>
#include <optional>

#include "app/room/sensors.h"

namespace app::room {

class SensorWatch : public QObject {
  Q_OBJECT

 public:
  using Read = std::function<core::base::Result<SensorReading, core::base::Message>(const QString& folder)>;
  // `read` is called in other threads, one call at a time.
  explicit SensorWatch(QObject* parent = nullptr, Read read = readSensor,
                       std::chrono::milliseconds every = std::chrono::minutes(1));

  // Reads at once and then each time `every` has passed. Replaces the folder watched before; what was told of that one
  // is forgotten.
  void start(const QString& folder);
  void stop();

 signals:
  // The first reading, each that differs from the last one told by 0.5 K or 2 % or more, and the first after a trouble.
  void reading(app::room::SensorReading reading);
  // Those of readSensor, or sensor.silent {path} where the device has not answered when it is to be asked again. Not
  // repeated while the same file has the same trouble.
  void trouble(core::base::Message trouble);

 protected:
  void timerEvent(QTimerEvent* event) override;

 private:
  void ask();
  void take(const core::base::Result<SensorReading, core::base::Message>& answer);
  void tell(const core::base::Message& trouble);

  Read m_read;
  std::chrono::milliseconds m_every;
  QString m_folder;
  QBasicTimer m_timer;
  int m_course = 0;        // counts starts and stops: an answer to an earlier one is dropped
  bool m_waiting = false;  // for an answer of this course
  std::optional<SensorReading> m_told;
  std::optional<core::base::Message> m_trouble;
};

}  // namespace app::room
