#pragma once
// What of an alert schedule bears on the machine's sleep. Instants are nanoseconds of the boot-time clock.
#include <cstdint>
#include <optional>

#include "core/alerts/alert_schedule.h"
#include "core/units/duration.h"

namespace app::awake {

// As far ahead as the machine is kept awake for an alert, and as long as one that nobody hears keeps it awake: a
// bench left for good must be able to rest.
inline constexpr core::units::Duration kHorizon = core::units::Duration::minutes(12 * 60);
// How long before an alert the machine is woken: waking takes some seconds, and the sound server comes after it.
inline constexpr core::units::Duration kWakeBefore = core::units::Duration::milliseconds(30'000);

// Whether an alert is due within the horizon, or has been due for no longer than that.
bool dueWithinHorizon(const core::alerts::AlertSchedule& schedule, std::int64_t now);

// The instant the machine is to be woken for the first alert that is more than kWakeBefore away, however far.
std::optional<std::int64_t> nextWaking(const core::alerts::AlertSchedule& schedule, std::int64_t now);

}  // namespace app::awake
