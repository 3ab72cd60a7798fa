#include "core/record/event.h"

#include <algorithm>
#include <charconv>
#include <tuple>

#include "core/record/happening.h"

namespace core::record {
namespace {

constexpr std::size_t kMillisecondDigits = 16;
constexpr std::size_t kCounterDigits = 6;

std::string padded(std::int64_t number, std::size_t digits) {
  std::string text = std::to_string(number);
  if (text.size() < digits) text.insert(0, digits - text.size(), '0');
  return text;
}

// Gives every event whose clock is not believable the clock of the event its device wrote before it.
void giveClocks(std::vector<Event>& events) {
  if (std::all_of(events.begin(), events.end(), [](const Event& event) { return isBelievable(event.hlc); })) return;
  std::vector<Event*> written;
  for (Event& event : events) written.push_back(&event);
  std::sort(written.begin(), written.end(), [](const Event* a, const Event* b) {
    return std::tie(a->deviceId, a->deviceSequence) < std::tie(b->deviceId, b->deviceSequence);
  });
  const Event* previous = nullptr;
  Hlc last;
  for (Event* event : written) {
    if (previous == nullptr || previous->deviceId != event->deviceId) last = {};
    if (isBelievable(event->hlc)) {
      last = std::max(last, event->hlc);
    } else {
      event->hlc = event->deviceSequence <= kLastOwnSequence ? last : Hlc();
    }
    previous = event;
  }
}

}  // namespace

bool isBelievable(const Hlc& hlc) {
  return hlc != Hlc() && hlc.milliseconds >= 0 && hlc.milliseconds <= kMostMilliseconds && hlc.counter >= 0;
}

Hlc tick(const Hlc& last, std::int64_t wallMilliseconds) {
  if (wallMilliseconds > last.milliseconds && wallMilliseconds <= kMostMilliseconds) return {wallMilliseconds, 0};
  if (last.counter < kMostCounts) return {last.milliseconds, last.counter + 1};
  if (last.milliseconds < kMostMilliseconds) return {last.milliseconds + 1, 0};
  return {kMostMilliseconds, kMostCounts};
}

waits::ClockReading Event::clock() const {
  const auto utc = std::clamp(occurredUtc, -waits::kLatestWritableUtc, waits::kLatestWritableUtc);
  return {utc, bootId, std::clamp<std::int64_t>(boottimeNanoseconds, 0, waits::kLongestUptime), synced};
}

std::string text(const Hlc& hlc) {
  return padded(hlc.milliseconds, kMillisecondDigits) + '-' + padded(hlc.counter, kCounterDigits);
}

Hlc parseHlc(std::string_view text) {
  if (text.size() < kMillisecondDigits + 1 + kCounterDigits || text[kMillisecondDigits] != '-') return {};
  Hlc hlc;
  const auto read = [](std::string_view digits, std::int64_t& number) {
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    return error == std::errc() && end == digits.data() + digits.size() && number >= 0;
  };
  if (!read(text.substr(0, kMillisecondDigits), hlc.milliseconds) ||
      !read(text.substr(kMillisecondDigits + 1), hlc.counter)) {
    return {};
  }
  return hlc;
}

bool before(const Event& a, const Event& b) {
  return std::tie(a.hlc, a.deviceId, a.deviceSequence) < std::tie(b.hlc, b.deviceId, b.deviceSequence);
}

std::string textOf(const base::Value& payload, std::string_view key) {
  const base::Value* value = payload.find(key);
  return value != nullptr && value->kind() == base::Value::Kind::Text ? value->asText() : std::string();
}

std::optional<std::int64_t> integerOf(const base::Value& payload, std::string_view key) {
  const base::Value* value = payload.find(key);
  if (value == nullptr || !value->isInteger()) return std::nullopt;
  return value->asInteger();
}

bool isPlainId(std::string_view text) {
  constexpr std::size_t kLongest = 100;  // ids here are 36 long; another program's may be others
  return !text.empty() && text.size() <= kLongest &&
         std::all_of(text.begin(), text.end(), [](char c) { return c > ' ' && c < '\x7f'; });
}

void arrange(std::vector<Event>& events) {
  giveClocks(events);
  std::sort(events.begin(), events.end(), before);
  std::set<std::string> seen;
  std::erase_if(events, [&](const Event& event) { return !seen.insert(event.eventId).second; });
}

std::set<std::string> voidedIntents(const std::vector<Event>& events) {
  std::set<std::string> voided;
  // From the newest: an undo that was itself undone voids nothing.
  for (auto event = events.rbegin(); event != events.rend(); ++event) {
    if (voided.contains(event->intentId)) continue;
    if (const auto undone = as<Undone>(*event)) voided.insert(undone->intent);
  }
  return voided;
}

}  // namespace core::record
