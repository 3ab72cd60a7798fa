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

QString clockTime(std::int64_t utcMilliseconds, std::int64_t nowUtcMilliseconds, const std::string& zone) {
  const QDateTime time = local(utcMilliseconds, zone);
  const QString clock = time.toString(QStringLiteral("HH:mm"));
  if (time.date() == local(nowUtcMilliseconds, zone).date()) return clock;
  return QLocale().dayName(time.date().dayOfWeek(), QLocale::ShortFormat) + QLatin1Char(' ') + clock;
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
  // "3–8 min": the unit once, where both have the same one alone. "" where they have not.
  static QString both(const Rough& from, const Rough& to) {
    const QString range = QStringLiteral("%1–%2");
    const bool inDays = from.days > 0 && to.days > 0 && from.hours == 0 && to.hours == 0;
    if (inDays) return say("%1 d").arg(range.arg(from.days).arg(to.days));
    if (from.days > 0 || to.days > 0) return {};
    const bool inHours = from.hours > 0 && to.hours > 0 && from.minutes == 0 && to.minutes == 0;
    if (inHours) return say("%1 h").arg(range.arg(from.hours).arg(to.hours));
    const bool inMinutes = from.hours == 0 && to.hours == 0;
    return inMinutes ? say("%1 min").arg(range.arg(from.minutes).arg(to.minutes)) : QString();
  }
};

}  // namespace

QString roughly(core::units::Duration duration) { return Rough(duration).text(); }

QString leftText(core::units::Duration early, core::units::Duration late, core::units::Duration elapsed) {
  if (late <= elapsed) return say("any moment now");
  if (early <= elapsed) return say("within %1").arg(roughly(late - elapsed));
  const Rough from(early - elapsed);
  const Rough to(late - elapsed);
  if (from.text() == to.text()) return say("about %1").arg(to.text());
  const QString both = Rough::both(from, to);
  return both.isEmpty() ? say("%1 to %2").arg(from.text(), to.text()) : both;
}

QString readyText(core::units::Duration early, core::units::Duration late, core::units::Duration elapsed) {
  const QString left = leftText(early, late, elapsed);
  return early <= elapsed ? say("ready %1").arg(left) : say("ready in %1").arg(left);
}

QString openText(core::units::Duration early, core::units::Duration late, core::units::Duration elapsed) {
  if (late <= elapsed) return say("likely closed");
  if (early <= elapsed) return say("up to %1 left").arg(roughly(late - elapsed));
  return say("%1 left").arg(leftText(early, late, elapsed));
}

}  // namespace app::viewmodels
