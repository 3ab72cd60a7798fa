#include "app/caretaker/sensor_follow.h"

#include <cmath>

#include "app/convert/text.h"

namespace app::caretaker {
namespace {

using core::base::Message;
using core::units::Humidity;
using core::units::Temperature;

// A sensor's last places are noise.
double toATenth(double value) { return std::round(value * 10) / 10; }

}  // namespace

SensorFollow::SensorFollow(workbench::Workbench& workbench, const clocks::Clock& clock, room::SensorWatch::Read read,
                           std::chrono::milliseconds every)
    : m_workbench(workbench), m_clock(clock), m_watch(nullptr, std::move(read), every) {
  connect(&m_watch, &room::SensorWatch::reading, this, &SensorFollow::enter);
  connect(&m_watch, &room::SensorWatch::trouble, this, &SensorFollow::tell);
}

void SensorFollow::start() {
  connect(&m_workbench, &workbench::Workbench::shopChanged, this, &SensorFollow::choose);
  connect(&m_workbench, &workbench::Workbench::jobsChanged, this, &SensorFollow::choose);
  choose();
}

void SensorFollow::choose() {
  const std::string& folder = m_workbench.shop().sensor;
  if (folder == m_folder) return;
  m_folder = folder;
  tell({});
  folder.empty() ? m_watch.stop() : m_watch.start(convert::toQt(folder));
}

void SensorFollow::enter(const room::SensorReading& reading) {
  if (holdsAlready(reading)) return tell({});
  const core::units::Room room{Temperature::celsius(toATenth(reading.celsius)),
                               Humidity::percent(toATenth(reading.percent))};
  tell(m_workbench.submit(core::intents::OfShop{core::intents::EnterRoom{room, true}}));
}

// After a restart of the program the first reading is often the one entered last.
bool SensorFollow::holdsAlready(const room::SensorReading& reading) const {
  const core::shop::Shop& shop = m_workbench.shop();
  if (shop.rooms.empty() || !shop.rooms.back().bySensor) return false;
  const core::units::Room& last = shop.rooms.back().room;
  const auto since = core::waits::elapsedBetween(shop.rooms.back().at, m_clock.now(), shop.clockLog);
  return !room::worthTelling({last.temperature.inCelsius(), last.humidity.inPercent()}, reading) &&
         since.most.inMilliseconds() < std::chrono::milliseconds(room::kToldAgain).count();
}

void SensorFollow::tell(const Message& trouble) {
  if (trouble == m_told) return;
  m_told = trouble;
  emit this->trouble(trouble);
}

}  // namespace app::caretaker
