#include "app/caretaker/caretaker.h"

namespace app::caretaker {
namespace {

constexpr std::chrono::seconds kHeartbeat{30};

}  // namespace

Caretaker::Caretaker(workbench::Workbench& workbench, const clocks::Clock& clock, const awake::Places& places,
                     const QStringList& zoneFiles)
    : m_workbench(workbench),
      m_clockWatch(nullptr, zoneFiles),
      m_awake([&clock] { return clock.now().boottimeNanoseconds; }, places),
      m_sensor(workbench, clock) {
  using workbench::Workbench;
  connect(&m_heartbeat, &QTimer::timeout, this, &Caretaker::beat);
  connect(&m_clockWatch, &clocks::ClockWatch::jumped, this, &Caretaker::takeTime);
  connect(&m_clockWatch, &clocks::ClockWatch::zoneChanged, this, &Caretaker::takeTime);

  connect(&workbench, &Workbench::scheduleChanged, this, [this] { m_awake.follow(m_workbench.schedule()); });
  connect(&m_awake, &awake::Awake::sleeping, this, &Caretaker::beat);
  connect(&m_awake, &awake::Awake::woke, this, &Caretaker::takeTime);
  connect(&m_awake, &awake::Awake::changed, this, [this](const awake::Wakefulness& known) {
    emit troubleChanged(Trouble::Sleep, known.sleepTrouble());
    emit troubleChanged(Trouble::Battery, known.batteryTrouble());
  });
  connect(&m_sensor, &SensorFollow::trouble, this,
          [this](const core::base::Message& message) { emit troubleChanged(Trouble::Sensor, message); });
}

// A trouble that prevents recording a sign of life prevents recording every act, so it is reported before the next act
// is lost.
void Caretaker::beat() { emit troubleChanged(Trouble::Record, m_workbench.heartbeat()); }

void Caretaker::start() {
  beat();
  m_heartbeat.start(kHeartbeat);
  m_awake.follow(m_workbench.schedule());
  m_sensor.start();
}

void Caretaker::takeTime() {
  beat();
  emit timeChanged();
}

}  // namespace app::caretaker
