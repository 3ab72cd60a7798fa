#pragma once
// Answers whether this machine will be awake when an alert falls due, as far as that can be known.
#include <QFlags>
#include <optional>

#include "core/base/message.h"

namespace app::awake {

// The services that may promise to keep the machine awake.
enum class Keeper {
  Sleep = 1,        // the login manager, against sleep and idling
  Idle = 2,         // the login manager, against idling alone
  ScreenSaver = 4,  // the session's screen saver
  Portal = 8,       // the session's portal
};
Q_DECLARE_FLAGS(Keepers, Keeper)
Q_DECLARE_OPERATORS_FOR_FLAGS(Keepers)

struct Wakefulness {
  bool wanted = false;   // an alert is due within the horizon
  bool settled = false;  // all keepers have answered, or were given the time to
  Keepers kept;
  bool wakeAlarm = false;             // the machine's own clock is set to wake it before the next alert
  std::optional<int> batteryPercent;  // of what the machine runs on, looked at while wanted; nothing on the mains

  // Returns awake.may-sleep, or awake.may-sleep-alarm where the wake alarm is set: an alert is due and no service
  // promised to keep the machine awake. Empty where there is no trouble, or none known yet.
  core::base::Message sleepTrouble() const;
  // awake.battery-low {percent}: an alert is due and the battery is below 15 %.
  core::base::Message batteryTrouble() const;

  friend bool operator==(const Wakefulness&, const Wakefulness&) = default;
};

}  // namespace app::awake
