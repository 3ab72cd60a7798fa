#include <sys/timerfd.h>
#include <time.h>
#include <unistd.h>

#include <QDir>
#include <QFileInfo>
#include <QSocketNotifier>

#include "app/awake/wake_alarm.h"

namespace app::awake {
namespace {

constexpr std::int64_t kSecond = 1'000'000'000;

bool anyCanWake(const QString& clocks) {
  const QDir folder(clocks);
  for (const QString& name : folder.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
    if (QFileInfo::exists(folder.filePath(name + QStringLiteral("/wakealarm")))) return true;
  }
  return false;
}

}  // namespace

WakeAlarm::WakeAlarm(QObject* parent, QString clocks) : QObject(parent), m_clocks(std::move(clocks)) {}

WakeAlarm::~WakeAlarm() {
  delete m_notifier;
  if (m_file >= 0) ::close(m_file);
}

bool WakeAlarm::set(std::optional<std::int64_t> boottimeNanoseconds) {
  if (!boottimeNanoseconds) {
    const itimerspec none{};
    if (m_file >= 0) timerfd_settime(m_file, 0, &none, nullptr);
    return false;
  }
  // Only root, or a program given the right, may: the kernel says so here or when the alarm is armed.
  return anyCanWake(m_clocks) && arm(*boottimeNanoseconds);
}

bool WakeAlarm::arm(std::int64_t boottimeNanoseconds) {
  if (m_file < 0) {
    m_file = timerfd_create(CLOCK_BOOTTIME_ALARM, TFD_NONBLOCK | TFD_CLOEXEC);
    if (m_file < 0) return false;
    m_notifier = new QSocketNotifier(m_file, QSocketNotifier::Read, this);
    connect(m_notifier, &QSocketNotifier::activated, this, [this] {
      std::uint64_t times = 0;
      if (::read(m_file, &times, sizeof times) == sizeof times) emit rang();
    });
  }
  itimerspec spec{};
  // All noughts would mean no alarm at all.
  const std::int64_t at = boottimeNanoseconds > 0 ? boottimeNanoseconds : 1;
  spec.it_value.tv_sec = static_cast<time_t>(at / kSecond);
  spec.it_value.tv_nsec = static_cast<long>(at % kSecond);
  return timerfd_settime(m_file, TFD_TIMER_ABSTIME, &spec, nullptr) == 0;
}

}  // namespace app::awake
