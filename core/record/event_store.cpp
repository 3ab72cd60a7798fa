#include "core/record/event_store.h"

#include <algorithm>
#include <map>

#include "core/base/text.h"

namespace core::record {

using base::Result;

namespace {

constexpr std::size_t kAtOnce = 500;

// Reads the whole feed; the first error, where there is one.
template <typename Take>
std::optional<StoreError> readFeed(EventStore& store, Take take) {
  std::string cursor;
  for (;;) {
    auto feed = store.since(cursor, kAtOnce);
    if (!feed) return feed.error();
    if (feed.value().events.empty()) return std::nullopt;
    for (const Event& event : feed.value().events) take(event);
    cursor = feed.value().cursor;
  }
}

bool isOwn(const Event& event, const std::string& deviceId) {
  return event.deviceId == deviceId && event.deviceSequence <= kLastOwnSequence;
}

}  // namespace

Result<std::vector<Event>, StoreError> EventStore::load(const std::string& stream) {
  std::vector<Event> events;
  const auto error = readFeed(*this, [&](const Event& event) {
    if (event.stream == stream) events.push_back(event);
  });
  if (error) return *error;
  arrange(events);
  return events;
}

Result<std::vector<std::string>, StoreError> EventStore::streams() {
  const auto all = heads();
  if (!all) return all.error();
  std::vector<std::string> names;
  for (const StreamHead& head : all.value()) names.push_back(head.stream);
  return names;
}

Result<std::vector<StreamHead>, StoreError> EventStore::heads() {
  std::map<std::string, std::string> newest;
  const auto error = readFeed(*this, [&](const Event& event) { newest[event.stream] = event.eventId; });
  if (error) return *error;
  std::vector<StreamHead> heads;
  for (const auto& [stream, arrived] : newest) heads.push_back({stream, arrived});
  return heads;
}

Result<std::optional<Event>, StoreError> EventStore::find(const std::string& eventId) {
  std::optional<Event> found;
  const auto error = readFeed(*this, [&](const Event& event) {
    if (event.eventId == eventId) found = event;
  });
  if (error) return *error;
  return found;
}

Result<std::string, StoreError> EventStore::written(const std::string& deviceId, std::int64_t deviceSequence) {
  std::string found;
  const auto error = readFeed(*this, [&](const Event& event) {
    if (event.deviceId == deviceId && event.deviceSequence == deviceSequence) found = event.eventId;
  });
  if (error) return *error;
  return found;
}

Result<std::string, StoreError> EventStore::newestIntentOf(const std::string& deviceId) {
  std::int64_t newest = -1;
  std::string intent;
  const auto error = readFeed(*this, [&](const Event& event) {
    if (!base::startsWith(event.stream, "job/") && !base::startsWith(event.stream, "bench/")) return;
    if (!isOwn(event, deviceId) || event.deviceSequence <= newest) return;
    newest = event.deviceSequence;
    intent = event.intentId;
  });
  if (error) return *error;
  return intent;
}

Result<std::vector<Summary>, StoreError> EventStore::summaries() { return std::vector<Summary>(); }

Result<std::vector<Summary>, StoreError> EventStore::summaryDetails() { return std::vector<Summary>(); }

Result<Done, StoreError> EventStore::keepSummaries(const std::vector<Summary>&) { return Done{}; }

Result<EventStore::Position, StoreError> EventStore::position(const std::string& deviceId) {
  Position position;
  const auto error = readFeed(*this, [&](const Event& event) {
    if (isOwn(event, deviceId)) position.deviceSequence = std::max(position.deviceSequence, event.deviceSequence);
    if (isBelievable(event.hlc)) position.hlc = std::max(position.hlc, event.hlc);
  });
  if (error) return *error;
  return position;
}

}  // namespace core::record
