#include "app/room/sensor_watch.h"

#include <QTimerEvent>
#include <cmath>

#include "app/aside/aside.h"
#include "app/convert/text.h"

namespace app::room {
namespace {

using core::base::Message;

constexpr double kKelvin = 0.5;
constexpr double kPercent = 2;
constexpr double kLastBit = 1e-9;  // 21.5 - 21 from thousandths may come out a hair under a half

// A number out of range that goes on changing is one trouble.
bool same(const Message& one, const Message& other) {
  const auto* path = one.argument("path");
  const auto* otherPath = other.argument("path");
  return one.id == other.id && path != nullptr && otherPath != nullptr && *path == *otherPath;
}

}  // namespace

bool worthTelling(const SensorReading& one, const SensorReading& other) {
  return std::abs(one.celsius - other.celsius) > kKelvin - kLastBit ||
         std::abs(one.percent - other.percent) > kPercent - kLastBit;
}

SensorWatch::SensorWatch(QObject* parent, Read read, std::chrono::milliseconds every, std::chrono::milliseconds again)
    : QObject(parent), m_read(std::move(read)), m_every(every), m_again(again) {}

void SensorWatch::start(const QString& folder) {
  stop();
  m_folder = folder;
  // To the nearest second is near enough, and lets the machine wake for several things at once. Below a second that
  // would be no time at all.
  const Qt::TimerType type = m_every >= std::chrono::seconds(10) ? Qt::VeryCoarseTimer : Qt::CoarseTimer;
  m_timer.start(static_cast<int>(m_every.count()), type, this);
  ask();
}

void SensorWatch::stop() {
  m_timer.stop();
  ++m_course;
  m_waiting = false;
  m_told.reset();
  m_trouble.reset();
}

void SensorWatch::timerEvent(QTimerEvent* event) {
  if (event->timerId() != m_timer.timerId()) return QObject::timerEvent(event);
  if (m_waiting) return tell(Message("sensor.silent").with("path", convert::fromQt(m_folder)));
  ask();
}

void SensorWatch::ask() {
  m_waiting = true;
  aside::aside(this, [this, course = m_course, read = m_read, folder = m_folder] {
    return [this, course, answer = read(folder)] {
      if (course != m_course) return;
      m_waiting = false;
      take(answer);
    };
  });
}

void SensorWatch::take(const core::base::Result<SensorReading, Message>& answer) {
  if (!answer.ok()) return tell(answer.error());
  const bool mended = m_trouble.has_value();
  m_trouble.reset();
  const bool stale = m_told && m_sinceTold.hasExpired(m_again.count());
  if (!mended && !stale && m_told && !worthTelling(*m_told, answer.value())) return;
  m_told = answer.value();
  m_sinceTold.start();
  emit reading(answer.value());
}

void SensorWatch::tell(const Message& message) {
  if (m_trouble && same(*m_trouble, message)) return;
  m_trouble = message;
  emit trouble(message);
}

}  // namespace app::room
