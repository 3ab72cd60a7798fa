#include "core/record/event.h"

namespace core::record {

base::Value eventJson(const Event& event) {
  using base::Value;
  return Value::object()
      .set("boot_id", Value::text(event.bootId))
      .set("boottime_ns", Value::integer(event.boottimeNanoseconds))
      .set("device_id", Value::text(event.deviceId))
      .set("device_seq", Value::integer(event.deviceSequence))
      .set("event_id", Value::text(event.eventId))
      .set("hlc", Value::text(text(event.hlc)))
      .set("intent_id", Value::text(event.intentId))
      .set("occurred", Value::integer(event.occurredUtc))
      .set("payload", event.payload)
      .set("recorded", Value::integer(event.recordedUtc))
      .set("stream", Value::text(event.stream))
      .set("synced", Value::boolean(event.synced))
      .set("type", Value::text(event.type))
      .set("version", Value::integer(event.version))
      .set("zone", Value::text(event.zone));
}

}  // namespace core::record
