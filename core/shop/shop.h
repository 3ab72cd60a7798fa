#pragma once
// What belongs to the shop and to no job of its own: the room over time, how long the machine was off, what was
// cut up and kept, what is in stock, and what this maker's own times have taught. The fold of the bench streams, and a
// projection over all looks.
#include <map>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/intents/intent.h"
#include "core/record/event.h"
#include "core/shop/on_hand.h"
#include "core/shop/shop_stock.h"
#include "core/waits/clock.h"
#include "core/waits/learning.h"
#include "core/waits/room_track.h"
#include "core/waits/wait_state.h"

namespace core::shop {

using waits::Learning;

struct Shop {
  waits::RoomTrack rooms;
  std::string sensor;  // the folder it is read from; "" for none
  // Signs of life of this device, and the off-times the maker told.
  waits::ClockLog clockLog;
  Learning learning;
  OnHand onHand;
  ShopStock stock;
};

// Folds events of the bench streams (any order; duplicates are ignored) into `shop`: rooms, sensor, told off-times,
// what was cut and kept, stock and batches. What cannot be read in an event is left out. The rest of `shop` stays as it
// is.
void foldShop(Shop& shop, std::vector<record::Event> events);

// Refusals: those of parseTemperature and parseHumidity; shop.no-such-boot, shop.off-time-out-of-range,
// and those of on_hand.h, settings.h and decide_stock.h.
base::Result<std::vector<record::EventDraft>, base::Message> decide(const Shop& shop, const waits::ClockReading& now,
                                                                    const intents::ShopIntent& intent);

}  // namespace core::shop
