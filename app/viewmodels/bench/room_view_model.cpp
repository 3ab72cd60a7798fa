#include "app/viewmodels/bench/room_view_model.h"

#include <algorithm>
#include <cmath>

#include "app/convert/text.h"
#include "app/viewmodels/times.h"
#include "app/words/words.h"
#include "core/waits/drying.h"

namespace app::viewmodels {

using convert::toQt;
using core::units::Humidity;
using core::units::Room;
using core::units::Temperature;

namespace {

constexpr double kKelvins = 0.5;
constexpr double kPercents = 1;
// The ends the core still takes.
constexpr double kColdest = -20;
constexpr double kWarmest = 60;
constexpr double kDriest = 1;
constexpr double kDampest = 99;
constexpr qsizetype kMostDigits = 2;
// What the label's times are for unless a technique says otherwise: ISO 291, 23/50.
constexpr Room kLabel{Temperature::celsius(23), Humidity::percent(50)};

// To the next whole number of steps that way, so that a sensor's 19.83 becomes 20 or 19.5.
double stepped(double value, double step, int by, double least, double most) {
  const double steps = value / step;
  const double next = by > 0 ? std::floor(steps + 1e-9) + 1 : std::ceil(steps - 1e-9) - 1;
  return std::clamp(next * step, least, most);
}

}  // namespace

RoomViewModel::RoomViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QObject(parent), m_workbench(workbench), m_clock(clock), m_room(kLabel) {}

void RoomViewModel::open() {
  m_touched = m_onHumidity = false;
  m_typed.clear();
  m_refusal.clear();
  m_found = m_find ? m_find() : QStringList();
  refresh();
}

void RoomViewModel::refresh() {
  const core::shop::Shop& shop = m_workbench.shop();
  m_sensor = toQt(shop.sensor);
  if (!m_touched) m_room = shop.rooms.empty() ? kLabel : shop.rooms.back().room;
  emit changed();
}

QString RoomViewModel::temperature() const {
  if (!m_onHumidity && keyed()) return m_typed + tr(" °C");
  return QString::number(m_room.temperature.inCelsius(), 'f', 1) + tr(" °C");
}

QString RoomViewModel::humidity() const {
  if (m_onHumidity && keyed()) return m_typed + tr(" %");
  return QString::number(std::lround(m_room.humidity.inPercent())) + tr(" %");
}

QString RoomViewModel::basis() const {
  const auto& rooms = m_workbench.shop().rooms;
  if (m_touched) return tr("as read now; Done enters it");
  if (rooms.empty()) return tr("not entered yet: the job's own room counts, or the label's");
  const core::waits::ClockReading now = m_clock.now();
  const QString when = clockTime(rooms.back().at.utcMilliseconds, now.utcMilliseconds, m_clock.zone());
  return rooms.back().bySensor ? tr("by the sensor, %1").arg(when) : tr("entered by hand, %1").arg(when);
}

QString RoomViewModel::effect(core::waits::DryingModel model) const {
  const auto factor = core::waits::dryingFactor(model, m_room, kLabel);
  if (!factor.ok()) return words::text(factor.error(), core::units::UnitSystem::Millimetres);
  return tr("about %1 times as long, computed").arg(factor.value().likely, 0, 'f', 1);
}

QString RoomViewModel::water() const { return effect(core::waits::DryingModel::Evaporation); }
QString RoomViewModel::oil() const { return effect(core::waits::DryingModel::Oxidation); }

QString RoomViewModel::sensor() const { return m_sensor.section(QLatin1Char('/'), -1); }

void RoomViewModel::step(int by) {
  m_touched = true;
  m_typed.clear();
  m_refusal.clear();
  if (m_onHumidity) {
    m_room.humidity = Humidity::percent(stepped(m_room.humidity.inPercent(), kPercents, by, kDriest, kDampest));
  } else {
    m_room.temperature =
        Temperature::celsius(stepped(m_room.temperature.inCelsius(), kKelvins, by, kColdest, kWarmest));
  }
  emit changed();
}

void RoomViewModel::more() { step(1); }
void RoomViewModel::less() { step(-1); }

void RoomViewModel::other() { choose(!m_onHumidity); }

void RoomViewModel::choose(bool humidity) {
  // What was keyed in for the one stands when the other is chosen.
  if (takeTyped()) m_onHumidity = humidity;
  emit changed();
}

void RoomViewModel::digit(int digit) {
  const auto point = m_typed.indexOf(QLatin1Char('.'));
  const bool full = point < 0 ? m_typed.size() >= kMostDigits : m_typed.size() - point > 1;
  if (digit < 0 || digit > 9 || full) return;
  m_refusal.clear();
  m_touched = true;
  m_typed += QString::number(digit);
  emit changed();
}

void RoomViewModel::part() {
  if (m_onHumidity || m_typed.contains(QLatin1Char('.'))) return;
  m_refusal.clear();
  m_touched = true;
  m_typed += m_typed.isEmpty() ? QStringLiteral("0.") : QStringLiteral(".");
  emit changed();
}

void RoomViewModel::erase() {
  m_refusal.clear();
  m_typed.chop(1);
  emit changed();
}

bool RoomViewModel::takeTyped() {
  if (!keyed()) return true;
  std::string text = m_typed.toStdString();
  if (text.back() == '.') text += '0';
  const auto said = [this](const core::base::Message& message) {
    m_refusal = words::text(message, core::units::UnitSystem::Millimetres);
    return false;
  };
  if (m_onHumidity) {
    const auto humidity = core::units::parseHumidity(text + " %");
    if (!humidity) return said(humidity.error());
    m_room.humidity = humidity.value();
  } else {
    const auto temperature = core::units::parseTemperature(text + " C");
    if (!temperature) return said(temperature.error());
    m_room.temperature = temperature.value();
  }
  m_typed.clear();
  return true;
}

void RoomViewModel::nextSensor() {
  const auto at = m_found.indexOf(m_sensor);
  const QString next = at + 1 < m_found.size() ? m_found[at + 1] : QString();
  const auto refused = m_workbench.submit(core::intents::OfShop{core::intents::ChooseSensor{convert::fromQt(next)}});
  m_refusal = refused.id.empty() ? QString() : words::text(refused, core::units::UnitSystem::Millimetres);
  refresh();
}

bool RoomViewModel::keep() {
  if (!takeTyped()) {
    emit changed();
    return false;
  }
  const auto refused = m_workbench.submit(core::intents::OfShop{core::intents::EnterRoom{m_room, false}});
  m_refusal = refused.id.empty() ? QString() : words::text(refused, core::units::UnitSystem::Millimetres);
  m_touched = !refused.id.empty();
  refresh();
  return refused.id.empty();
}

}  // namespace app::viewmodels
