#pragma once
// The state that belongs to the shop and to no single job: the room over time, how long the machine was off, the pieces
// cut and offcuts kept, the stock, and the lessons of this maker's own times. It is the fold of the bench streams, and
// a projection over all looks.
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
  // Heartbeats of this device, and the off-times the maker entered.
  waits::ClockLog clockLog;
  Learning learning;
  OnHand onHand;
  ShopStock stock;
};

// Folds events of the bench streams (any order; duplicates are ignored) into `shop`: rooms, sensor, entered off-times,
// pieces cut and offcuts kept, stock and batches. Members of an event that cannot be read are left out. The rest of
// `shop` does not change.
void foldShop(Shop& shop, std::vector<record::Event> events);

// Refusals: those of parseTemperature and parseHumidity; shop.no-such-boot, shop.off-time-out-of-range,
// and those of on_hand.h, settings.h and decide_stock.h.
base::Result<std::vector<record::EventDraft>, base::Message> decide(const Shop& shop, const waits::ClockReading& now,
                                                                    const intents::ShopIntent& intent);

}  // namespace core::shop
