#include "app/viewmodels/times.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QTimeZone>
#include <algorithm>

namespace app::viewmodels {

QDateTime local(std::int64_t utcMilliseconds, const std::string& zone) {
  const QTimeZone timeZone(QByteArray::fromStdString(zone));
  return QDateTime::fromMSecsSinceEpoch(utcMilliseconds, timeZone.isValid() ? timeZone : QTimeZone::utc());
}

namespace {

QString say(const char* source) { return QCoreApplication::translate("times", source); }

}  // namespace

bool isOtherDay(std::int64_t utcMilliseconds, std::int64_t nowUtcMilliseconds, const std::string& zone) {
  return local(utcMilliseconds, zone).date() != local(nowUtcMilliseconds, zone).date();
}

QString clockTime(std::int64_t utcMilliseconds, std::int64_t nowUtcMilliseconds, const std::string& zone, Day day) {
  constexpr qint64 kDaysOfNames = 7;
  const QDateTime time = local(utcMilliseconds, zone);
  const QString clock = time.toString(QStringLiteral("H:mm"));
  const qint64 days = local(nowUtcMilliseconds, zone).date().daysTo(time.date());
  if (days == 0) return clock;
  const QString named =
      std::abs(days) < kDaysOfNames
          ? QLocale().dayName(time.date().dayOfWeek(), day == Day::Long ? QLocale::LongFormat : QLocale::ShortFormat)
          : QLocale().toString(time.date(), day == Day::Long ? QStringLiteral("d MMMM") : QStringLiteral("d MMM"));
  return named + QLatin1Char(' ') + clock;
}

std::int64_t rounded(std::int64_t utcMilliseconds, std::int64_t nowUtcMilliseconds, Expected expected) {
  constexpr std::int64_t kMinute = 60'000;
  constexpr std::int64_t kHalfAnHour = 30 * kMinute;
  const std::int64_t step = utcMilliseconds - nowUtcMilliseconds > kHalfAnHour ? 5 * kMinute : kMinute;
  const std::int64_t up = expected == Expected::Opening ? step - 1 : 0;
  return (utcMilliseconds + up) / step * step;
}

namespace {

// A span in at most two units, the smaller one left out where it is nought.
struct Rough {
  std::int64_t days = 0;
  std::int64_t hours = 0;
  std::int64_t minutes = 0;  // told where there are no days

  explicit Rough(core::units::Duration duration)
      : minutes(std::max<std::int64_t>(0, (duration.inMilliseconds() + 30'000) / 60'000)) {
    hours = minutes / 60;
    minutes %= 60;
    days = hours / 24;
    hours %= 24;
    if (days > 0) minutes = 0;
  }

  QString text() const {
    if (days > 0) return hours == 0 ? say("%1 d").arg(days) : say("%1 d %2 h").arg(days).arg(hours);
    if (hours > 0) return minutes == 0 ? say("%1 h").arg(hours) : say("%1 h %2 min").arg(hours).arg(minutes);
    return say("%1 min").arg(minutes);
  }
};

}  // namespace

QString roughly(core::units::Duration duration) { return Rough(duration).text(); }

}  // namespace app::viewmodels
