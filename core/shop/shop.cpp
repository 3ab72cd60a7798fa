#include "core/shop/shop.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/record/happening.h"
#include "core/shop/decide_stock.h"
#include "core/shop/settings.h"
#include "core/units/climate.h"

namespace core::shop {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using base::Message;

// Texts as a person writes them, read by the same strict reader as a job's.
std::string written(units::Temperature temperature) { return base::shortestNumber(temperature.inCelsius()) + " C"; }
std::string written(units::Humidity humidity) { return base::shortestNumber(humidity.inPercent()) + " %"; }

struct ShopDecider {
  using Decision = base::Result<std::vector<EventDraft>, Message>;
  const Shop& shop;
  const waits::ClockReading& now;

  Decision operator()(const intents::EnterRoom& intent) const {
    const std::string temperature = written(intent.room.temperature);
    const std::string humidity = written(intent.room.humidity);
    if (const auto read = units::parseTemperature(temperature); !read) return read.error();
    if (const auto read = units::parseHumidity(humidity); !read) return read.error();
    return std::vector{draftOf(RoomEntered{temperature, humidity, intent.bySensor ? "sensor" : "maker"})};
  }

  Decision operator()(const intents::ChooseSensor& intent) const {
    return std::vector{draftOf(SensorChosen{intent.folder})};
  }

  Decision operator()(const intents::TellOffTime& intent) const {
    const auto& beats = shop.clockLog.heartbeats;
    const bool seen = intent.bootId == now.bootId ||
                      std::any_of(beats.begin(), beats.end(),
                                  [&](const waits::ClockReading& beat) { return beat.bootId == intent.bootId; });
    if (!seen) return Message("shop.no-such-boot");
    if (intent.off < units::Duration() || intent.off > waits::kLongestBelievedOff) {
      return Message("shop.off-time-out-of-range");
    }
    return std::vector{draftOf(OffTimeTold{intent.bootId, intent.off.inMilliseconds()})};
  }

  Decision operator()(const intents::ChooseSetting& intent) const { return decideSetting(intent); }
  Decision operator()(const intents::CutSheet& intent) const { return decideCut(shop.onHand, intent); }
  Decision operator()(const intents::DropOffcut& intent) const { return decideDrop(shop.onHand, intent); }
  Decision operator()(const intents::UndoInShop& intent) const {
    if (isStockAct(shop.stock, intent.intentId)) return decideUndoStock(shop.stock, intent.intentId);
    return decideUndo(shop.onHand, intent);
  }
  Decision operator()(const intents::EnterBatch& intent) const {
    return decideStock(shop.stock, intent, now.utcMilliseconds);
  }
  // The other intents on stock need no clock.
  template <typename OfStock>
  Decision operator()(const OfStock& intent) const {
    return decideStock(shop.stock, intent);
  }
};

void enterRoom(Shop& shop, const RoomEntered& entered, const waits::ClockReading& at) {
  const auto temperature = units::parseTemperature(entered.temperature);
  const auto humidity = units::parseHumidity(entered.humidity);
  if (!temperature || !humidity) return;
  shop.rooms.push_back({at, {temperature.value(), humidity.value()}, entered.by == "sensor"});
}

void takeTold(Shop& shop, const OffTimeTold& told) {
  if (!told.milliseconds) return;
  const auto off = units::Duration::milliseconds(*told.milliseconds);
  if (off < units::Duration() || off > waits::kLongestBelievedOff) return;
  shop.clockLog.toldOff[told.boot] = off;
}

}  // namespace

void foldShop(Shop& shop, std::vector<Event> events) {
  arrange(events);
  const std::set<std::string> voided = voidedIntents(events);
  shop.rooms.clear();
  shop.sensor.clear();
  shop.clockLog.toldOff.clear();
  shop.onHand = foldOnHand(events, voided);
  shop.stock = foldStock(events, voided);
  for (const Event& event : events) {
    if (voided.contains(event.intentId)) continue;
    if (const auto entered = as<RoomEntered>(event)) enterRoom(shop, *entered, event.clock());
    if (const auto chosen = as<SensorChosen>(event)) shop.sensor = chosen->folder;
    if (const auto told = as<OffTimeTold>(event)) takeTold(shop, *told);
  }
}

base::Result<std::vector<EventDraft>, Message> decide(const Shop& shop, const waits::ClockReading& now,
                                                      const intents::ShopIntent& intent) {
  return std::visit(ShopDecider{shop, now}, intent);
}

}  // namespace core::shop
