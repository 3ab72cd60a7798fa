#pragma once
// Events with every column filled, for tests that do not care which.
#include <string>

#include "core/record/event.h"

namespace tests {

inline core::record::Event event(const std::string& device, std::int64_t sequence, std::int64_t milliseconds,
                                 const std::string& stream = "job/one") {
  core::record::Event event;
  event.eventId = device + "-event-" + std::to_string(sequence);
  event.deviceId = device;
  event.deviceSequence = sequence;
  event.hlc = {milliseconds, 0};
  event.intentId = device + "-intent-" + std::to_string(sequence);
  event.stream = stream;
  event.type = "StepDone";
  event.version = 1;
  event.occurredUtc = milliseconds;
  event.recordedUtc = milliseconds + 7;
  event.zone = "Europe/London";
  event.bootId = "boot-1";
  event.boottimeNanoseconds = 9'007'199'254'740'993;  // one more than a double can tell apart
  event.synced = sequence % 2 == 0;
  event.payload = core::base::Value::object();
  event.payload.set("step", core::base::Value::text("cut-windows/cut@\"top\" \xC3\xA9"));
  return event;
}

}  // namespace tests
