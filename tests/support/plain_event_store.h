#pragma once
// A store that answers only what every store has to: everything else is read from its feed by the port itself.
#include "core/record/event_store.h"
#include "tests/support/memory_event_store.h"

namespace tests {

class PlainEventStore : public core::record::EventStore {
 public:
  template <typename Value>
  using Result = core::base::Result<Value, core::record::StoreError>;

  Result<core::record::Done> append(const std::vector<core::record::Event>& events,
                                    const std::vector<core::record::StoredText>& texts) override {
    return m_memory.append(events, texts);
  }
  Result<core::record::Feed> since(const std::string& cursor, std::size_t most) override {
    return m_memory.since(cursor, most);
  }
  Result<std::optional<core::record::StoredText>> text(const std::string& hash) override { return m_memory.text(hash); }
  Result<core::record::Done> logClock(const std::string& deviceId, const std::string& kind,
                                      const core::waits::ClockReading& reading) override {
    return m_memory.logClock(deviceId, kind, reading);
  }
  Result<core::waits::ClockLog> clockLog(const std::string& deviceId) override { return m_memory.clockLog(deviceId); }

 private:
  MemoryEventStore m_memory;
};

}  // namespace tests
