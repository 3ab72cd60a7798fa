#pragma once
// The event store without a file. A test can make its writes fail, to see what becomes of an act that is not stored.
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "core/record/event_store.h"

namespace tests {

class MemoryEventStore : public core::record::EventStore {
 public:
  template <typename Value>
  using Result = core::base::Result<Value, core::record::StoreError>;

  Result<core::record::Done> append(const std::vector<core::record::Event>& events,
                                    const std::vector<core::record::StoredText>& texts) override;
  Result<core::record::Feed> since(const std::string& cursor, std::size_t most) override;
  Result<std::vector<core::record::Event>> load(const std::string& stream) override;
  Result<std::vector<std::string>> streams() override;
  Result<std::optional<core::record::StoredText>> text(const std::string& hash) override;
  Result<std::vector<core::record::StreamHead>> heads() override;
  Result<std::optional<core::record::Event>> find(const std::string& eventId) override;
  Result<std::string> written(const std::string& deviceId, std::int64_t deviceSequence) override;
  Result<std::string> newestIntentOf(const std::string& deviceId) override;
  Result<std::vector<core::record::Summary>> summaries() override;
  Result<std::vector<core::record::Summary>> summaryDetails() override { return summaries(); }
  Result<core::record::Done> keepSummaries(const std::vector<core::record::Summary>& summaries) override;
  Result<Position> position(const std::string& deviceId) override;
  Result<core::record::Done> logClock(const std::string& deviceId, const std::string& kind,
                                      const core::waits::ClockReading& reading) override;
  Result<core::waits::ClockLog> clockLog(const std::string& deviceId) override;

  // From now on every write fails with this message; an empty one lets them through again.
  void failWrites(core::base::Message message) { m_failure = std::move(message); }
  // Damages a stored text; the next text written under that hash replaces it, as the correct one.
  void replaceText(const std::string& hash, const std::string& body) {
    m_texts.at(hash).body = body;
    m_damaged.insert(hash);
  }
  void forgetText(const std::string& hash) { m_texts.erase(hash); }
  void replaceSummary(const core::record::Summary& summary) { m_summaries.at(summary.stream) = summary; }
  void forgetSummaries() { m_summaries.clear(); }
  const std::map<std::string, core::record::Summary>& summariesKept() const { return m_summaries; }
  int loads() const { return m_loads; }  // streams read so far
  const std::vector<core::record::Event>& all() const { return m_events; }
  const std::map<std::string, core::record::StoredText>& texts() const { return m_texts; }

 private:
  struct ClockLine {
    std::string deviceId;
    std::string kind;
    core::waits::ClockReading reading;
  };
  std::vector<core::record::Event> m_events;
  std::map<std::string, core::record::StoredText> m_texts;
  std::map<std::string, core::record::Summary> m_summaries;
  std::set<std::string> m_damaged;
  int m_loads = 0;
  std::vector<ClockLine> m_clockLines;
  core::base::Message m_failure;
};

}  // namespace tests
