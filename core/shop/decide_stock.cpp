#include "core/shop/decide_stock.h"

#include <algorithm>

#include "core/record/appearance_payload.h"
#include "core/record/happening.h"
#include "core/record/stock_payload.h"
#include "core/record/texts.h"

namespace core::shop {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using base::Message;
using Drafts = std::vector<EventDraft>;

Message noSuchItem() { return Message("stock.no-such-item"); }
Message noSuchBatch() { return Message("stock.no-such-batch"); }

// Line ends alike, so that a text reads back as it was judged.
intents::StockEntry tidied(intents::StockEntry entry) {
  entry.note = lines(entry.note);
  return entry;
}
intents::BatchEntry tidied(intents::BatchEntry entry) {
  entry.note = lines(entry.note);
  return entry;
}

Message refusedAt(const intents::BatchEntry& entry, std::int64_t nowUtc) {
  if (Message refused = refusedBatch(entry); !refused.id.empty()) return refused;
  return entry.madeUtc > nowUtc ? Message("batch.date-out-of-range") : Message();
}

}  // namespace

StockDecision decideStock(const ShopStock&, const intents::EnterStock& intent) {
  const intents::StockEntry entry = tidied(intent.entry);
  if (Message refused = refusedStock(entry); !refused.id.empty()) return refused;
  return Drafts{draftOf(StockEntered{entry})};
}

StockDecision decideStock(const ShopStock& stock, const intents::CorrectStock& intent) {
  if (stock.item(intent.item) == nullptr) return noSuchItem();
  const intents::StockEntry entry = tidied(intent.entry);
  if (Message refused = refusedStock(entry); !refused.id.empty()) return refused;
  return Drafts{draftOf(StockCorrected{intent.item, entry})};
}

StockDecision decideStock(const ShopStock& stock, const intents::CountStock& intent) {
  const StockItem* item = stock.item(intent.item);
  if (item == nullptr) return noSuchItem();
  if (!isQuantity(item->entry.measure, intent.quantity)) return Message("stock.quantity-out-of-range");
  return Drafts{draftOf(StockCounted{intent.item, intent.quantity})};
}

StockDecision decideStock(const ShopStock& stock, const intents::MoveStock& intent) {
  const StockItem* item = stock.item(intent.item);
  if (item == nullptr) return noSuchItem();
  if (intent.change == 0 || intent.change < -kMostMeasuredInStock || intent.change > kMostMeasuredInStock)
    return Message("stock.quantity-out-of-range");
  if (intent.change < 0 && item->there() + intent.change < 0) return Message("stock.not-so-much");
  if (intent.change > 0 && !isQuantity(item->entry.measure, item->there() + intent.change))
    return Message("stock.quantity-out-of-range");
  return Drafts{draftOf(StockMoved{intent.item, intent.change})};
}

StockDecision decideStock(const ShopStock& stock, const intents::RemoveStock& intent) {
  if (stock.item(intent.item) == nullptr) return noSuchItem();
  return Drafts{draftOf(StockRemoved{intent.item})};
}

StockDecision decideStock(const ShopStock& stock, const intents::EnterBatch& intent, std::int64_t nowUtc) {
  const intents::BatchEntry entry = tidied(intent.entry);
  if (Message refused = refusedAt(entry, nowUtc); !refused.id.empty()) return refused;
  return Drafts{draftOf(BatchEntered{stock.lastMark + 1, entry})};
}

StockDecision decideStock(const ShopStock& stock, const intents::UseUpBatch& intent) {
  const Batch* batch = stock.batch(intent.batch);
  if (batch == nullptr) return noSuchBatch();
  if (batch->usedUpUtc) return Message("batch.used-up-already");
  return Drafts{draftOf(BatchUsedUp{intent.batch})};
}

StockDecision decideStock(const ShopStock&, const intents::NameMaker& intent) {
  const std::string contact = lines(intent.contact);
  if (Message refused = refusedLine(intent.maker, true); !refused.id.empty()) return refused;
  if (Message refused = refusedText(contact, false); !refused.id.empty()) return refused;
  return Drafts{draftOf(MakerNamed{intent.maker, contact})};
}

StockDecision decideStock(const ShopStock& stock, const intents::GiveAppearance& intent) {
  intents::Appearance appearance = intent.appearance;
  if (Message refused = refusedAppearance(appearance); !refused.id.empty()) return refused;
  std::transform(appearance.colour.begin(), appearance.colour.end(), appearance.colour.begin(),
                 [](char c) { return c >= 'A' && c <= 'F' ? static_cast<char>(c - 'A' + 'a') : c; });
  const auto pictured = std::count_if(stock.appearances.begin(), stock.appearances.end(), [&](const auto& one) {
    return one.second.picture.has_value() && one.first != appearance.material;
  });
  if (appearance.picture && pictured >= kMostPictured)
    return Message("appearance.too-many-pictures").with("most", std::int64_t{kMostPictured});
  return Drafts{draftOf(AppearanceGiven{std::move(appearance)})};
}

bool isStockAct(const ShopStock& stock, const std::string& intentId) {
  return std::any_of(stock.acts.begin(), stock.acts.end(),
                     [&](const ShopStock::Act& act) { return act.intentId == intentId; });
}

StockDecision decideUndoStock(const ShopStock& stock, const std::string& intentId) {
  const auto act = std::find_if(stock.acts.begin(), stock.acts.end(),
                                [&](const ShopStock::Act& one) { return one.intentId == intentId; });
  if (act == stock.acts.end()) return Message("shop.no-such-cut");
  // An entry cannot be taken back once a later act concerns it; a change alone can always be taken back.
  const auto first = std::find_if(stock.acts.begin(), stock.acts.end(),
                                  [&](const ShopStock::Act& one) { return one.about == act->about; });
  const auto later =
      std::find_if(act + 1, stock.acts.end(), [&](const ShopStock::Act& one) { return one.about == act->about; });
  if (!act->about.empty() && first == act && later != stock.acts.end()) return Message("stock.changed-since");
  return Drafts{draftOf(Undone{intentId}, EventDraft::Stream::Bench)};
}

}  // namespace core::shop
