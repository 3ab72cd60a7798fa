#pragma once
// Reads the sensor the shop has chosen and enters what it shows as the room.
#include <QObject>
#include <chrono>

#include "app/clocks/clock.h"
#include "app/room/sensor_watch.h"
#include "app/workbench/workbench.h"

namespace app::caretaker {

class SensorFollow : public QObject {
  Q_OBJECT

 public:
  // Reads each time `every` has passed; begins with start().
  SensorFollow(workbench::Workbench& workbench, const clocks::Clock& clock,
               room::SensorWatch::Read read = room::readSensor,
               std::chrono::milliseconds every = std::chrono::minutes(1));

  void start();

 signals:
  // Reports the troubles of SensorWatch, and the workbench's message where a room cannot be entered; empty where all is
  // well again or no sensor is chosen. The room entered last remains in force.
  void trouble(const core::base::Message& trouble);

 private:
  void choose();
  void enter(const room::SensorReading& reading);
  bool holdsAlready(const room::SensorReading& reading) const;
  void tell(const core::base::Message& trouble);

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  room::SensorWatch m_watch;
  std::string m_folder;
  core::base::Message m_told;
};

}  // namespace app::caretaker
