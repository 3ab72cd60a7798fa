#pragma once
// A shop that keeps what it is asked, on one device or on two.
#include <algorithm>
#include <random>
#include <string>
#include <vector>

#include "core/shop/shop.h"

namespace tests {

class TinyShop {
 public:
  explicit TinyShop(std::string device = "tablet") : m_device(std::move(device)) {}

  // Returns the id of the refusal, "" where it was kept.
  std::string ask(const core::intents::ShopIntent& intent) {
    const auto decided = decide(m_shop, m_now, intent);
    if (!decided) return decided.error().id;
    ++m_acts;
    m_now.utcMilliseconds += 1000;
    for (const core::record::EventDraft& draft : decided.value()) {
      core::record::Event event;
      event.eventId = m_device + "-e" + std::to_string(events.size());
      event.deviceId = m_device;
      event.deviceSequence = static_cast<std::int64_t>(events.size());
      event.hlc = {m_now.utcMilliseconds, 0};
      event.intentId = last();
      event.stream = "bench/" + m_device;
      event.type = draft.type;
      event.occurredUtc = event.recordedUtc = m_now.utcMilliseconds;
      event.payload = draft.payload;
      events.push_back(event);
    }
    foldShop(m_shop, events);
    return "";
  }
  // What another device wrote comes in.
  void hearOf(const std::vector<core::record::Event>& others) {
    events.insert(events.end(), others.begin(), others.end());
    foldShop(m_shop, events);
  }
  std::string last() const { return m_device + "-i" + std::to_string(m_acts); }
  const core::shop::Shop& shop() const { return m_shop; }
  const core::shop::ShopStock& stock() const { return m_shop.stock; }
  std::int64_t utc() const { return m_now.utcMilliseconds; }
  void advance(std::int64_t milliseconds) { m_now.utcMilliseconds += milliseconds; }

  std::vector<core::record::Event> events;

 private:
  std::string m_device;
  core::shop::Shop m_shop;
  core::waits::ClockReading m_now{1'764'000'000'000, "boot-1", 1'000'000, true};
  int m_acts = 0;
};

inline core::intents::StockEntry paperEntry(const std::string& name, std::int64_t sheets) {
  core::intents::StockEntry entry;
  entry.kind = core::intents::StockKind::Paper;
  entry.name = name;
  entry.quantity = sheets;
  entry.width = core::units::Length::wholeMillimetres(700);
  entry.height = core::units::Length::wholeMillimetres(500);
  return entry;
}

inline core::intents::BatchEntry pasteBatch(std::int64_t madeUtc) {
  core::intents::BatchEntry entry;
  entry.kind = core::intents::BatchKind::Paste;
  entry.name = "starch paste";
  entry.of = "wheat starch 1 : 7";
  entry.madeUtc = madeUtc;
  entry.keeps = core::units::Duration::minutes(7 * 24 * 60);
  entry.keepsSource = "common practice";
  return entry;
}

}  // namespace tests
