#pragma once
// What the shop has beside its offcuts: sheets, leaf, size, paste and paint on hand, and batches made or opened on a
// date. A part of the shop's state, from the events of the bench streams.
#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/intents/stock.h"
#include "core/record/event.h"

namespace core::shop {

struct StockItem {
  std::string id;  // of the event that entered it
  intents::StockEntry entry;
  // As entered or last counted, less what was taken out since. Below nothing where more was taken out than was there,
  // as two benches may have done: see overdrawn().
  std::int64_t quantity = 0;
  std::int64_t countedUtc = 0;  // ms; when it was entered, corrected or counted last
  std::int64_t there() const { return quantity < 0 ? 0 : quantity; }
  bool overdrawn() const { return quantity < 0; }
};

struct Batch {
  std::string id;  // of the event that entered it
  // What the maker writes on it, counted through the shop and never given twice by one bench.
  std::int64_t mark = 0;
  intents::BatchEntry entry;
  std::optional<std::int64_t> usedUpUtc;  // ms
};

struct ShopStock {
  std::vector<StockItem> items;  // there now, in the order they were entered
  std::vector<Batch> batches;    // all that ever were, the used up ones too: the record of old jobs names them
  std::int64_t lastMark = 0;
  std::string maker, contact;  // "" unsaid
  // Live acts, oldest first: what can be taken back. `about`: the item or batch, "" of a name.
  struct Act {
    std::string intentId;
    std::string about;
  };
  std::vector<Act> acts;

  const StockItem* item(const std::string& id) const;
  const Batch* batch(const std::string& id) const;
};

// Requires fold order. What cannot be read in an event is left out. An item is found whatever the order in which its
// own event and those about it came, so that two benches' clocks cannot hide one from the other.
ShopStock foldStock(const std::vector<record::Event>& events, const std::set<std::string>& voided);

// What stands against an age: nothing is ever said to be bad, that is for touch and smell to say.
enum class Shelf { Unknown, Within, LookBeforeUse };
// At an instant, ms. Unknown where no shelf life is stated or it is dated after the instant.
Shelf shelfAt(const Batch& batch, std::int64_t utc);
// What to say of a batch before it is used: batch.look-before-use {name} {days} {source}; an empty message where its
// shelf life is not over or not known. `days` is how long it keeps, whole days.
base::Message beforeUse(const Batch& batch, std::int64_t utc);
}  // namespace core::shop
