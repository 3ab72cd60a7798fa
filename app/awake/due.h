#pragma once
// The parts of an alert schedule that matter for the machine's sleep. Instants are nanoseconds of the boot-time clock.
#include <cstdint>
#include <optional>

#include "core/alerts/alert_schedule.h"
#include "core/units/duration.h"

namespace app::awake {

// How far ahead the machine is kept awake for an alert, and how long an unheard alert keeps it awake: the machine of a
// bench that is left for good must be able to sleep.
inline constexpr core::units::Duration kHorizon = core::units::Duration::minutes(12 * 60);
// How long before an alert the machine is woken: waking takes some seconds, and the sound server is up only after that.
inline constexpr core::units::Duration kWakeBefore = core::units::Duration::milliseconds(30'000);

// Returns whether an alert is due within the horizon, or has been due for no longer than that.
bool dueWithinHorizon(const core::alerts::AlertSchedule& schedule, std::int64_t now);

// The instant the machine is to be woken for the first alert that is more than kWakeBefore away, however far.
std::optional<std::int64_t> nextWaking(const core::alerts::AlertSchedule& schedule, std::int64_t now);

}  // namespace app::awake
