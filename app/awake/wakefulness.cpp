#include "app/awake/wakefulness.h"

#include <cstdint>

namespace app::awake {
namespace {

using core::base::Message;

constexpr int kLowPercent = 15;

}  // namespace

Message Wakefulness::sleepTrouble() const {
  if (!wanted || !settled || kept) return {};
  return wakeAlarm ? Message("awake.may-sleep-alarm") : Message("awake.may-sleep");
}

Message Wakefulness::batteryTrouble() const {
  if (!wanted || !batteryPercent || *batteryPercent >= kLowPercent) return {};
  return Message("awake.battery-low").with("percent", std::int64_t{*batteryPercent});
}

}  // namespace app::awake
