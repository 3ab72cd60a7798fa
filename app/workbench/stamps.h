#pragma once
// Turns drafts into events: ids, the device's own count, clocks. Counts continue from what the store last recorded, and
// advance only once the events are stored, so that an act that failed leaves no gap.
#include <string>
#include <vector>

#include "core/record/event.h"
#include "core/record/event_store.h"

namespace app::workbench {

class Stamps {
 public:
  explicit Stamps(std::string deviceId) : m_deviceId(std::move(deviceId)) {}

  const std::string& deviceId() const { return m_deviceId; }
  std::string benchStream() const { return "bench/" + m_deviceId; }
  void goOnFrom(const core::record::EventStore::Position& position) { m_position = position; }

  struct Act {
    std::string intentId;
    std::vector<core::record::Event> events;
    core::record::EventStore::Position position;  // to continue from once they are stored
  };
  // Drafts of the bench go to this device's own bench stream, the others to "job/<id>" or "design/<id>".
  Act stamp(const std::string& id, const std::vector<core::record::EventDraft>& drafts,
            const core::waits::ClockReading& now, const std::string& zone) const;

 private:
  std::string streamOf(core::record::EventDraft::Stream stream, const std::string& id) const;

  std::string m_deviceId;
  core::record::EventStore::Position m_position;
};

}  // namespace app::workbench
