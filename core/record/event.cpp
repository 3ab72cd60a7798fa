#include "core/record/event.h"

#include <algorithm>
#include <charconv>
#include <tuple>

namespace core::record {
namespace {

constexpr std::size_t kMillisecondDigits = 16;
constexpr std::size_t kCounterDigits = 6;

std::string padded(std::int64_t number, std::size_t digits) {
  std::string text = std::to_string(number);
  if (text.size() < digits) text.insert(0, digits - text.size(), '0');
  return text;
}

}  // namespace

Hlc tick(const Hlc& last, std::int64_t wallMilliseconds) {
  if (wallMilliseconds > last.milliseconds) return {wallMilliseconds, 0};
  return {last.milliseconds, last.counter + 1};
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

void arrange(std::vector<Event>& events) {
  std::sort(events.begin(), events.end(), before);
  std::set<std::string> seen;
  std::erase_if(events, [&](const Event& event) { return !seen.insert(event.eventId).second; });
}

EventDraft benchDraft(const char* type) {
  EventDraft draft;
  draft.stream = EventDraft::Stream::Bench;
  draft.type = type;
  draft.payload = base::Value::object();
  return draft;
}

std::set<std::string> voidedIntents(const std::vector<Event>& events) {
  std::set<std::string> voided;
  // From the newest: an undo that was itself undone voids nothing.
  for (auto event = events.rbegin(); event != events.rend(); ++event) {
    if (event->type != type::kUndone || event->version != 1 || voided.contains(event->intentId)) continue;
    voided.insert(textOf(event->payload, "intent"));
  }
  return voided;
}

}  // namespace core::record
