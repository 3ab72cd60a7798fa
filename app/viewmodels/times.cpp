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

QString roughly(core::units::Duration duration) {
  const std::int64_t minutes = std::max<std::int64_t>(0, (duration.inMilliseconds() + 30'000) / 60'000);
  if (minutes < 60) return say("%1 min").arg(minutes);
  const std::int64_t hours = minutes / 60;
  if (hours < 24) return minutes % 60 == 0 ? say("%1 h").arg(hours) : say("%1 h %2 min").arg(hours).arg(minutes % 60);
  return hours % 24 == 0 ? say("%1 d").arg(hours / 24) : say("%1 d %2 h").arg(hours / 24).arg(hours % 24);
}

QString leftText(core::units::Duration early, core::units::Duration late, core::units::Duration elapsed) {
  if (late <= elapsed) return say("any moment now");
  if (early <= elapsed) return say("within %1").arg(roughly(late - elapsed));
  const QString from = roughly(early - elapsed);
  const QString to = roughly(late - elapsed);
  if (from == to) return say("about %1").arg(to);
  // "3–8 min": the unit once, where both have the same one alone.
  const QStringList first = from.split(QLatin1Char(' '));
  const QStringList last = to.split(QLatin1Char(' '));
  if (first.size() == 2 && last.size() == 2 && first[1] == last[1]) return first[0] + QStringLiteral("–") + to;
  return say("%1 to %2").arg(from, to);
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
