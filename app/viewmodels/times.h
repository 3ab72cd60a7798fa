#pragma once
// Instants, and lengths of work and of time off, as the screens write them. What a wait is told as is in told_wait.h.
#include <QDateTime>
#include <QString>
#include <cstdint>
#include <string>

#include "core/units/duration.h"

namespace app::viewmodels {

// Local time where the maker is; in UTC where the zone is not known.
QDateTime local(std::int64_t utcMilliseconds, const std::string& zone);
// "9:05", "Fri 9:05", "Friday 9:05": no leading nought, and another day is named before its hour; from a week on by its
// date ("11 Dec 9:05"), since its name would be another's as well.
enum class Day { Short, Long };
QString clockTime(std::int64_t utcMilliseconds, std::int64_t nowUtcMilliseconds, const std::string& zone,
                  Day day = Day::Short);
// What is expected is told to the minute, over half an hour away to five: an opening rounded up and a closing down, so
// that nobody comes too early or too late by the rounding.
enum class Expected { Opening, Closing };
std::int64_t rounded(std::int64_t utcMilliseconds, std::int64_t nowUtcMilliseconds, Expected expected);
bool isOtherDay(std::int64_t utcMilliseconds, std::int64_t nowUtcMilliseconds, const std::string& zone);
// Rounded to what a glance needs: "12 min", "1 h 20 min", "2 d 4 h". Never negative.
QString roughly(core::units::Duration duration);

}  // namespace app::viewmodels
