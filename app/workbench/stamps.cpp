#include "app/workbench/stamps.h"

#include <algorithm>

#include "app/convert/uuid.h"

namespace app::workbench {

Stamps::Act Stamps::stamp(const std::string& id, const std::vector<core::record::EventDraft>& drafts,
                          const core::waits::ClockReading& now, const std::string& zone) const {
  Act act;
  act.intentId = convert::newUuid(now.utcMilliseconds);
  act.position = m_position;
  for (const core::record::EventDraft& draft : drafts) {
    act.position.deviceSequence += 1;
    act.position.hlc = core::record::tick(act.position.hlc, now.utcMilliseconds);
    core::record::Event event;
    event.eventId = convert::newUuid(now.utcMilliseconds);
    event.deviceId = m_deviceId;
    event.deviceSequence = act.position.deviceSequence;
    event.hlc = act.position.hlc;
    event.intentId = act.intentId;
    event.stream = streamOf(draft.stream, id);
    event.type = draft.type;
    event.version = draft.version;
    // The machine's clock is recorded as read, within the range that can be written.
    event.occurredUtc =
        std::clamp(now.utcMilliseconds, -core::waits::kLatestWritableUtc, core::waits::kLatestWritableUtc);
    event.recordedUtc = event.occurredUtc;
    event.zone = zone;
    event.bootId = now.bootId;
    event.boottimeNanoseconds = now.boottimeNanoseconds;
    event.synced = now.synced;
    event.payload = draft.payload;
    act.events.push_back(std::move(event));
  }
  return act;
}

std::string Stamps::streamOf(core::record::EventDraft::Stream stream, const std::string& id) const {
  switch (stream) {
    case core::record::EventDraft::Stream::Job: return "job/" + id;
    case core::record::EventDraft::Stream::Bench: return benchStream();
    case core::record::EventDraft::Stream::Design: return "design/" + id;
  }
  return "";
}

}  // namespace app::workbench
