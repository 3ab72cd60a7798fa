#pragma once
// Looks after a workbench while it is open: signs of life into the record, the clock and the zone, the room's sensor,
// and that the machine is awake when an alert falls due. Lives in the interface thread and never blocks it.
#include <QObject>
#include <QStringList>
#include <QTimer>

#include "app/awake/awake.h"
#include "app/caretaker/sensor_follow.h"
#include "app/clocks/clock.h"
#include "app/clocks/clock_watch.h"
#include "app/workbench/workbench.h"

namespace app::caretaker {

class Caretaker : public QObject {
  Q_OBJECT

 public:
  // The workbench has been loaded.
  Caretaker(workbench::Workbench& workbench, const clocks::Clock& clock, const awake::Places& places = {},
            const QStringList& zoneFiles = clocks::systemZoneFiles());

  // Begins; connect its signals before.
  void start();

  // Record: nothing can be written to it, neither a sign of life nor an act.
  enum class Trouble { Record, Sleep, Battery, Sensor };
  Q_ENUM(Trouble)

 signals:
  // The trouble has to be shown as long as it lasts; an empty message ends it.
  void troubleChanged(app::caretaker::Caretaker::Trouble trouble, const core::base::Message& message);
  // The wall clock was set, the zone changed or the machine woke: what shows times is to be shown anew. It is in the
  // record by then.
  void timeChanged();

 private:
  void beat();
  void takeTime();

  workbench::Workbench& m_workbench;
  clocks::ClockWatch m_clockWatch;
  awake::Awake m_awake;
  SensorFollow m_sensor;
  QTimer m_heartbeat;
};

}  // namespace app::caretaker
