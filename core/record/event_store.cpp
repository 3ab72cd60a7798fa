#include "core/record/event_store.h"

#include "core/base/text.h"

namespace core::record {

using base::Result;

// What came in last is not known here; all ids together change whenever one comes in.
Result<std::vector<StreamHead>, StoreError> EventStore::heads() {
  const auto names = streams();
  if (!names) return names.error();
  std::vector<StreamHead> heads;
  for (const std::string& stream : names.value()) {
    const auto events = load(stream);
    if (!events) return events.error();
    std::string all;
    for (const Event& event : events.value()) all += event.eventId + '\n';
    heads.push_back({stream, all});
  }
  return heads;
}

namespace {

// The first event, in the order of the streams, of which that is true.
template <typename Is>
Result<std::optional<Event>, StoreError> firstThat(EventStore& store, Is is) {
  const auto names = store.streams();
  if (!names) return names.error();
  for (const std::string& stream : names.value()) {
    const auto events = store.load(stream);
    if (!events) return events.error();
    for (const Event& event : events.value()) {
      if (is(event)) return std::optional<Event>(event);
    }
  }
  return std::optional<Event>();
}

}  // namespace

Result<std::optional<Event>, StoreError> EventStore::find(const std::string& eventId) {
  return firstThat(*this, [&](const Event& event) { return event.eventId == eventId; });
}

Result<std::string, StoreError> EventStore::written(const std::string& deviceId, std::int64_t deviceSequence) {
  const auto found = firstThat(*this, [&](const Event& event) {
    return event.deviceId == deviceId && event.deviceSequence == deviceSequence;
  });
  if (!found) return found.error();
  return found.value() ? found.value()->eventId : std::string();
}

Result<std::string, StoreError> EventStore::newestIntentOf(const std::string& deviceId) {
  const auto names = streams();
  if (!names) return names.error();
  std::optional<Event> newest;
  for (const std::string& stream : names.value()) {
    if (!base::startsWith(stream, "job/") && !base::startsWith(stream, "bench/")) continue;
    const auto events = load(stream);
    if (!events) continue;  // what cannot be read is said where it is opened
    for (const Event& event : events.value()) {
      const bool own = event.deviceId == deviceId && event.deviceSequence <= kLastOwnSequence;
      if (own && (!newest || newest->deviceSequence < event.deviceSequence)) newest = event;
    }
  }
  return newest ? newest->intentId : std::string();
}

Result<std::vector<Summary>, StoreError> EventStore::summaries() { return std::vector<Summary>(); }

Result<std::vector<Summary>, StoreError> EventStore::summaryDetails() { return std::vector<Summary>(); }

Result<Done, StoreError> EventStore::keepSummaries(const std::vector<Summary>&) { return Done{}; }

}  // namespace core::record
