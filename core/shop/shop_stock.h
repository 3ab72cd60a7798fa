#pragma once
// The shop's stock besides its offcuts: sheets, leaf, size, paste and paint on hand, and batches made or opened on a
// date. It is a part of the shop's state, from the events of the bench streams.
#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/intents/appearance.h"
#include "core/intents/stock.h"
#include "core/record/event.h"

namespace core::shop {

struct StockItem {
  std::string id;  // of the event that entered it
  intents::StockEntry entry;
  // As entered or last counted, less what was taken out since. Negative where more was taken out than was there, as two
  // benches may have done: see overdrawn().
  std::int64_t quantity = 0;
  std::int64_t countedUtc = 0;  // ms; when it was entered, corrected or counted last
  std::int64_t there() const { return quantity < 0 ? 0 : quantity; }
  bool overdrawn() const { return quantity < 0; }
};

struct Batch {
  std::string id;  // of the event that entered it
  // The number the maker writes on it, counted through the shop and never given twice by one bench.
  std::int64_t mark = 0;
  intents::BatchEntry entry;
  std::optional<std::int64_t> usedUpUtc;  // ms
};

struct ShopStock {
  std::vector<StockItem> items;  // there now, in the order they were entered
  std::vector<Batch> batches;    // all that ever were, also those used up: the record of old jobs names them
  std::int64_t lastMark = 0;
  std::string maker, contact;  // "" where not entered
  // How materials look that have a look of their own, by the name that jobs use.
  std::map<std::string, intents::Appearance, std::less<>> appearances;
  // Live acts, oldest first: these can be taken back. `about`: the item or batch, "" for the maker's name or a look.
  struct Act {
    std::string intentId;
    std::string about;
  };
  std::vector<Act> acts;

  const StockItem* item(const std::string& id) const;
  const Batch* batch(const std::string& id) const;
};

// Requires fold order. Members of an event that cannot be read are left out. An item is found whatever the order of its
// own event and those about it, so that two benches' clocks cannot hide one from the other.
ShopStock foldStock(const std::vector<record::Event>& events, const std::set<std::string>& voided);

// The result of comparing a batch's age with its shelf life. A batch is never called bad: only touch and smell can show
// that.
enum class Shelf { Unknown, Within, LookBeforeUse };
// At an instant, in ms. Unknown where no shelf life is stated or the batch is dated after the instant.
Shelf shelfAt(const Batch& batch, std::int64_t utc);
// Returns the warning shown before a batch is used, batch.look-before-use {name} {days} {source}; the message is empty
// where its shelf life is not over or not known. `days` is its shelf life in whole days.
base::Message beforeUse(const Batch& batch, std::int64_t utc);
}  // namespace core::shop
