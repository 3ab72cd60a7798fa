#include "app/pages/care.h"

#include <QDateTime>
#include <QLocale>
#include <QTimeZone>

#include "app/words/words.h"

namespace app::pages {

using core::base::Message;
using core::sheets::CareKnown;
using core::sheets::CareLine;

namespace {

// In the zone it was written in; where this machine does not know that one, in UTC and said so.
std::string inZone(std::int64_t utc, const std::string& zone, const QString& format) {
  const QTimeZone there(QByteArray::fromStdString(zone));
  const QDateTime moment = QDateTime::fromMSecsSinceEpoch(utc, there.isValid() ? there : QTimeZone::utc());
  const QString shown = QLocale::c().toString(moment, format);
  return (there.isValid() ? shown : shown + QStringLiteral(" UTC")).toStdString();
}

}  // namespace

core::sheets::CareWords careWords() {
  core::sheets::CareWords words;
  words.moment = [](std::int64_t utc, const std::string& zone) {
    return inZone(utc, zone, QStringLiteral("yyyy-MM-dd HH:mm"));
  };
  words.day = [](std::int64_t utc, const std::string& zone) { return inZone(utc, zone, QStringLiteral("yyyy-MM-dd")); };
  words.figure = [](const core::design::Figure& figure) { return words::figureLabel(figure).toStdString(); };
  words.duration = [](core::units::Duration duration) { return words::duration(duration).toStdString(); };
  return words;
}

QString careKnown(const CareLine& line) {
  const auto said = [](const Message& message) { return words::text(message, core::units::UnitSystem::Millimetres); };
  switch (line.known) {
    case CareKnown::Entered: return said(Message("care.known-entered"));
    case CareKnown::Default: return said(Message("care.known-default"));
    case CareKnown::Computed: return said(Message("care.known-computed"));
    case CareKnown::Observed: return said(Message("care.known-observed"));
    case CareKnown::Unknown: return said(Message("care.known-unknown"));
    case CareKnown::Stated: break;
  }
  if (line.source.empty()) return said(Message("care.known-stated"));
  return said(Message("care.known-stated-by").with("source", line.source));
}

}  // namespace app::pages
