#pragma once
// Lists which alerts are sounded and when. The fold publishes an immutable schedule after each commit; the alert thread
// only sounds it. Delivery is at least once until heard is confirmed, never after; one entry for each wait and class.
#include <cstdint>
#include <string>
#include <vector>

#include "core/jobs/job_state.h"

namespace core::alerts {

enum class Level {
  Low,     // a tone, once, and a line on the bench; takes no screen
  Medium,  // the whole screen, called again until heard
  High,    // as medium, quicker: the piece suffers if nothing is done now
};

struct ScheduledAlert {
  std::string job;
  std::string wait;
  intents::AlertClass alert = intents::AlertClass::Over;
  // When it is due on the boot-time clock of this boot; may be in the past.
  std::int64_t dueBoottimeNanoseconds = 0;
  bool certain = true;  // false: how long the machine was off is not known, it "may be due"
  Level level = Level::Medium;
  bool shrinking = false;  // unheard, it matters more with every minute: a window is open
  base::Message say;       // to be spoken: piece, place and act, in few words

  bool high() const { return level == Level::High; }
  // Returns whether it covers the bench.
  bool takesScreen() const { return level != Level::Low || alert == intents::AlertClass::Missed; }
  friend bool operator==(const ScheduledAlert&, const ScheduledAlert&) = default;
};

// Spoken once at its time and then forgotten: how much of an open time is left. It has no tone and no screen.
struct SpokenCue {
  std::string job;
  std::string wait;
  std::int64_t dueBoottimeNanoseconds = 0;
  base::Message say;
  friend bool operator==(const SpokenCue&, const SpokenCue&) = default;
};

struct AlertSchedule {
  std::vector<ScheduledAlert> alerts;  // by due time, then job, wait, class; one for each wait and class
  std::vector<SpokenCue> cues;         // by due time
  // The maker holds a blade: only one soft tone sounds until the step is done or the pedal is pressed.
  bool bladeInHand = false;
  friend bool operator==(const AlertSchedule&, const AlertSchedule&) = default;
};

// Returns the alerts and cues of one job that are not yet heard and still call for an act. Of several alerts of one
// wait that are already due, only the last still matters.
AlertSchedule alertsOf(const jobs::JobAt& job);
// Combines the schedules of all jobs.
AlertSchedule merge(const std::vector<AlertSchedule>& jobs);

// The lengths for which an alert can be put off.
inline constexpr int kSnoozeMinutes[] = {2, 5};
// Returns whether a due alert may be put off that long: never past the moment its act has to begin.
bool mayBePutOff(const jobs::JobAt& job, const ScheduledAlert& alert, units::Duration length);

}  // namespace core::alerts
