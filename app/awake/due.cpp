#include "app/awake/due.h"

#include <algorithm>

namespace app::awake {
namespace {

constexpr std::int64_t kHorizonNanoseconds = kHorizon.inMilliseconds() * 1'000'000;
constexpr std::int64_t kWakeBeforeNanoseconds = kWakeBefore.inMilliseconds() * 1'000'000;

}  // namespace

bool dueWithinHorizon(const core::alerts::AlertSchedule& schedule, std::int64_t now) {
  return std::any_of(schedule.alerts.begin(), schedule.alerts.end(), [now](const auto& alert) {
    const std::int64_t due = alert.dueBoottimeNanoseconds;
    return due <= now + kHorizonNanoseconds && due >= now - kHorizonNanoseconds;
  });
}

std::optional<std::int64_t> nextWaking(const core::alerts::AlertSchedule& schedule, std::int64_t now) {
  std::optional<std::int64_t> first;
  for (const auto& alert : schedule.alerts) {
    const std::int64_t waking = alert.dueBoottimeNanoseconds - kWakeBeforeNanoseconds;
    if (waking > now && (!first || waking < *first)) first = waking;
  }
  return first;
}

}  // namespace app::awake
