#pragma once
// What is to be sounded and when. The fold publishes an immutable schedule after each commit; the alert thread
// only sounds it. Delivery is at least once until heard is confirmed, never after.
#include <cstdint>
#include <string>
#include <vector>

#include "core/record/job_state.h"

namespace core::record {

struct ScheduledAlert {
  std::string job;
  std::string wait;
  intents::AlertClass alert = intents::AlertClass::Over;
  // When it falls due on the boot-time clock of this boot; may lie in the past.
  std::int64_t dueBoottimeNanoseconds = 0;
  bool certain = true;  // false: the off time is unknown, it "may be due"

  // Closing is high, the others medium.
  bool high() const { return alert == intents::AlertClass::Closing; }
  friend bool operator==(const ScheduledAlert&, const ScheduledAlert&) = default;
};

struct AlertSchedule {
  std::vector<ScheduledAlert> alerts;  // by due time, then job, wait, class; one for each wait and class
  // A blade is in the hand: one low tone and no more until the step is done or the pedal is pressed.
  bool bladeInHand = false;
};

// The alerts of one job that are not yet heard and still call for an act.
std::vector<ScheduledAlert> alertsOf(const JobAt& job);
// Whether the step being worked in this job has the hands on a blade.
bool bladeInHand(const JobAt& job);
AlertSchedule merge(std::vector<std::vector<ScheduledAlert>> jobs, bool bladeInHand);

}  // namespace core::record
