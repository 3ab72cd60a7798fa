#pragma once
// Schedules for tests of the sound, which do not care what is said.
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/record/alert_schedule.h"

namespace tests {

inline core::record::ScheduledAlert dueAlert(std::string wait, core::intents::AlertClass kind, std::int64_t due) {
  core::record::ScheduledAlert alert;
  alert.job = "job-1";
  alert.wait = std::move(wait);
  alert.alert = kind;
  alert.dueBoottimeNanoseconds = due;
  alert.level = kind == core::intents::AlertClass::Closing ? core::record::Level::High : core::record::Level::Medium;
  return alert;
}

inline std::shared_ptr<const core::record::AlertSchedule> scheduleOf(std::vector<core::record::ScheduledAlert> alerts,
                                                                     bool blade = false) {
  return std::make_shared<core::record::AlertSchedule>(core::record::AlertSchedule{std::move(alerts), {}, blade});
}

}  // namespace tests
