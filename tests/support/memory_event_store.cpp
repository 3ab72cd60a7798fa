#include "tests/support/memory_event_store.h"

#include <algorithm>
#include <set>

namespace tests {

using core::record::Done;
using core::record::Event;
using core::record::StoredText;

MemoryEventStore::Result<Done> MemoryEventStore::append(const std::vector<Event>& events,
                                                        const std::vector<StoredText>& texts) {
  if (!m_failure.id.empty()) return m_failure;
  std::vector<Event> next = m_events;
  for (const Event& event : events) {
    const bool there =
        std::any_of(next.begin(), next.end(), [&](const Event& e) { return e.eventId == event.eventId; });
    if (there) continue;
    const bool taken = std::any_of(next.begin(), next.end(), [&](const Event& e) {
      return e.deviceId == event.deviceId && e.deviceSequence == event.deviceSequence;
    });
    if (taken) return core::base::Message("store.failed").with("path", "memory").with("detail", event.eventId);
    next.push_back(event);
  }
  m_events = std::move(next);
  for (const StoredText& text : texts) {
    if (m_damaged.erase(text.hash) > 0) m_texts.erase(text.hash);
    m_texts.emplace(text.hash, text);
  }
  return Done{};
}

// As they lie here: none is taken out, none put between.
MemoryEventStore::Result<core::record::Feed> MemoryEventStore::since(const std::string& cursor, std::size_t most) {
  const std::size_t from = cursor.empty() ? 0 : std::stoul(cursor);
  const std::size_t to = std::min(m_events.size(), from + most);
  core::record::Feed feed;
  for (std::size_t i = from; i < to; ++i) feed.events.push_back(m_events[i]);
  feed.cursor = feed.events.empty() ? cursor : std::to_string(to);
  return feed;
}

MemoryEventStore::Result<std::vector<Event>> MemoryEventStore::load(const std::string& stream) {
  ++m_loads;
  std::vector<Event> found;
  std::copy_if(m_events.begin(), m_events.end(), std::back_inserter(found),
               [&](const Event& event) { return event.stream == stream; });
  std::sort(found.begin(), found.end(), core::record::before);
  return found;
}

MemoryEventStore::Result<std::vector<std::string>> MemoryEventStore::streams() {
  std::set<std::string> names;
  for (const Event& event : m_events) names.insert(event.stream);
  return std::vector<std::string>(names.begin(), names.end());
}

MemoryEventStore::Result<std::optional<StoredText>> MemoryEventStore::text(const std::string& hash) {
  const auto found = m_texts.find(hash);
  if (found == m_texts.end()) return std::optional<StoredText>();
  return std::optional<StoredText>(found->second);
}

MemoryEventStore::Result<std::vector<core::record::StreamHead>> MemoryEventStore::heads() {
  std::map<std::string, std::string> arrived;
  for (const Event& event : m_events) arrived[event.stream] = event.eventId;
  std::vector<core::record::StreamHead> heads;
  for (const auto& [stream, id] : arrived) heads.push_back({stream, id});
  return heads;
}

MemoryEventStore::Result<std::optional<Event>> MemoryEventStore::find(const std::string& eventId) {
  const auto found =
      std::find_if(m_events.begin(), m_events.end(), [&](const Event& event) { return event.eventId == eventId; });
  return found == m_events.end() ? std::optional<Event>() : std::optional<Event>(*found);
}

MemoryEventStore::Result<std::string> MemoryEventStore::written(const std::string& deviceId,
                                                                std::int64_t deviceSequence) {
  for (const Event& event : m_events) {
    if (event.deviceId == deviceId && event.deviceSequence == deviceSequence) return event.eventId;
  }
  return std::string();
}

MemoryEventStore::Result<std::string> MemoryEventStore::newestIntentOf(const std::string& deviceId) {
  const Event* newest = nullptr;
  for (const Event& event : m_events) {
    if (event.deviceId != deviceId || event.stream.rfind("design/", 0) == 0) continue;
    if (event.deviceSequence > core::record::kLastOwnSequence) continue;
    if (newest == nullptr || newest->deviceSequence < event.deviceSequence) newest = &event;
  }
  return newest == nullptr ? std::string() : newest->intentId;
}

MemoryEventStore::Result<std::vector<core::record::Summary>> MemoryEventStore::summaries() {
  std::vector<core::record::Summary> all;
  for (const auto& [stream, summary] : m_summaries) all.push_back(summary);
  return all;
}

MemoryEventStore::Result<Done> MemoryEventStore::keepSummaries(const std::vector<core::record::Summary>& summaries) {
  if (!m_failure.id.empty()) return m_failure;
  for (const core::record::Summary& summary : summaries) m_summaries.insert_or_assign(summary.stream, summary);
  return Done{};
}

MemoryEventStore::Result<MemoryEventStore::Position> MemoryEventStore::position(const std::string& deviceId) {
  Position position;
  for (const Event& event : m_events) {
    if (core::record::isBelievable(event.hlc)) position.hlc = std::max(position.hlc, event.hlc);
    if (event.deviceId == deviceId && event.deviceSequence <= core::record::kLastOwnSequence)
      position.deviceSequence = std::max(position.deviceSequence, event.deviceSequence);
  }
  return position;
}

MemoryEventStore::Result<Done> MemoryEventStore::logClock(const std::string& deviceId, const std::string& kind,
                                                          const core::waits::ClockReading& reading) {
  if (!m_failure.id.empty()) return m_failure;
  const auto last = std::find_if(m_clockLines.rbegin(), m_clockLines.rend(),
                                 [&](const ClockLine& line) { return line.deviceId == deviceId; });
  const bool renews =
      last != m_clockLines.rend() && kind == "heartbeat" && last->kind == kind &&
      last->reading.bootId == reading.bootId && last->reading.utcMilliseconds <= reading.utcMilliseconds &&
      last->reading.boottimeNanoseconds <= reading.boottimeNanoseconds && last->reading.synced <= reading.synced;
  if (renews) m_clockLines.erase(std::next(last).base());
  m_clockLines.push_back({deviceId, kind, reading});
  return Done{};
}

MemoryEventStore::Result<core::waits::ClockLog> MemoryEventStore::clockLog(const std::string& deviceId) {
  core::waits::ClockLog log;
  for (const ClockLine& line : m_clockLines) {
    if (line.deviceId == deviceId) log.heartbeats.push_back(line.reading);
  }
  return log;
}

}  // namespace tests
