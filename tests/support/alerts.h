#pragma once
// Schedules for tests of the sound, for which their texts do not matter.
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/alerts/alert_schedule.h"

namespace tests {

inline core::alerts::ScheduledAlert dueAlert(std::string wait, core::intents::AlertClass kind, std::int64_t due) {
  core::alerts::ScheduledAlert alert;
  alert.job = "job-1";
  alert.wait = std::move(wait);
  alert.alert = kind;
  alert.dueBoottimeNanoseconds = due;
  alert.level = kind == core::intents::AlertClass::Closing ? core::alerts::Level::High : core::alerts::Level::Medium;
  return alert;
}

inline std::shared_ptr<const core::alerts::AlertSchedule> scheduleOf(std::vector<core::alerts::ScheduledAlert> alerts,
                                                                     bool blade = false) {
  return std::make_shared<core::alerts::AlertSchedule>(core::alerts::AlertSchedule{std::move(alerts), {}, blade});
}

}  // namespace tests
