#pragma once
// Days as a maker writes them.
#include <QDate>
#include <QString>

#include "core/base/message.h"
#include "core/base/result.h"

namespace app::designing {

// Reads the day meant by "2026-12-11", "11 December", "Fri 11 Dec 2026", "11.12." or "11/12/2026"; a year that is not
// written is that of its next, or its last, occurrence, `today` included; one of two digits is in this century. The day
// comes before the month, as British makers write it. Refusals: day.unreadable; day.none {written} (the 31st of June);
// day.weekday {weekday} (of the day written, which is another); with strokes, day.either {one} {other}, where both
// orders give a day.
enum class Nearest { Coming, Past };
core::base::Result<QDate, core::base::Message> readDay(const QString& written, QDate today,
                                                       Nearest nearest = Nearest::Coming);

// "Friday 11 December 2026".
QString dayText(QDate day);

}  // namespace app::designing
