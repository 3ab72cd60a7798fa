#pragma once
// Instants and lengths of time as the screens write them.
#include <QDateTime>
#include <QString>
#include <cstdint>
#include <string>

#include "core/units/duration.h"

namespace app::viewmodels {

// Local time where the maker is; in UTC where the zone is not known.
QDateTime local(std::int64_t utcMilliseconds, const std::string& zone);
// "10:12"; with the day in front ("Thu 10:12") where it is not the day of `now`.
QString clockTime(std::int64_t utcMilliseconds, std::int64_t nowUtcMilliseconds, const std::string& zone);
// "10–25 min", "50 min to 2 h", "now to 25 min": what is left of a span that began `elapsed` ago.
QString leftText(core::units::Duration early, core::units::Duration late, core::units::Duration elapsed);
// The same, as the end of a sentence: "ready in 3–8 min", "ready within 2 h", "ready any moment now".
QString readyText(core::units::Duration early, core::units::Duration late, core::units::Duration elapsed);
// What is left of a window that is open: "3–8 min left", "up to 8 min left", "likely closed".
QString openText(core::units::Duration early, core::units::Duration late, core::units::Duration elapsed);
// Rounded to what a glance needs: "12 min", "1 h 20 min", "2 d 4 h". Never negative.
QString roughly(core::units::Duration duration);

}  // namespace app::viewmodels
