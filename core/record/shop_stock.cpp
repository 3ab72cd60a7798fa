#include "core/record/shop_stock.h"

#include <algorithm>

#include "core/record/stock_payload.h"
#include "core/record/texts.h"

namespace core::record {
namespace {

// Beyond what any shop comes to: what a record says above is not believed.
constexpr std::int64_t kMostMarks = 1'000'000'000;

template <typename Items>
auto withId(Items& items, const std::string& id) -> decltype(&items.front()) {
  const auto found = std::find_if(items.begin(), items.end(), [&](const auto& one) { return one.id == id; });
  return found == items.end() ? nullptr : &*found;
}

bool isOfStock(const std::string& type) {
  const std::string_view known[] = {type::kStockEntered,   type::kStockCorrected, type::kStockCounted,
                                    type::kStockMoved,     type::kStockRemoved,   type::kBatchEntered,
                                    type::kBatchCorrected, type::kBatchUsedUp,    type::kMakerNamed};
  return std::find(std::begin(known), std::end(known), type) != std::end(known);
}

class StockFolder {
 public:
  explicit StockFolder(ShopStock& stock) : m_stock(stock) {}

  void enter(const Event& event) {
    if (event.type == type::kStockEntered) {
      if (const auto entry = readStock(event.payload))
        m_stock.items.push_back({event.eventId, *entry, entry->quantity, event.occurredUtc});
    } else if (event.type == type::kBatchEntered) {
      const std::int64_t mark = integerOf(event.payload, "mark").value_or(0);
      if (const auto entry = readBatch(event.payload))
        m_stock.batches.push_back({event.eventId, std::clamp<std::int64_t>(mark, 0, kMostMarks), *entry, std::nullopt});
    }
  }

  void apply(const Event& event) {
    if (event.type == type::kMakerNamed) return nameMaker(event);
    if (event.type == type::kSheetCut) {
      if (StockItem* item = withId(m_stock.items, textOf(event.payload, "stock"))) --item->quantity;
      return;
    }
    if (StockItem* item = withId(m_stock.items, textOf(event.payload, "item"))) return change(*item, event);
    if (Batch* batch = withId(m_stock.batches, textOf(event.payload, "batch"))) change(*batch, event);
  }

 private:
  void nameMaker(const Event& event) {
    const std::string maker = shownLineOf(event.payload, "maker");
    const std::string contact = shownTextOf(event.payload, "contact");
    if (!refusedLine(maker, true).id.empty() || !refusedText(contact, false).id.empty()) return;
    m_stock.maker = maker;
    m_stock.contact = contact;
  }

  void change(StockItem& item, const Event& event) {
    if (event.type == type::kStockCorrected) {
      const auto entry = readStock(event.payload);
      if (!entry) return;
      item = {item.id, *entry, entry->quantity, event.occurredUtc};
    } else if (event.type == type::kStockCounted) {
      const auto quantity = integerOf(event.payload, "quantity");
      if (!quantity || !isQuantity(item.entry.measure, *quantity)) return;
      item.quantity = *quantity;
      item.countedUtc = event.occurredUtc;
    } else if (event.type == type::kStockMoved) {
      const auto change = integerOf(event.payload, "change");
      if (!change || *change < -kMostMeasuredInStock || *change > kMostMeasuredInStock) return;
      item.quantity = std::clamp(item.quantity + *change, -kMostMeasuredInStock, kMostMeasuredInStock);
    } else if (event.type == type::kStockRemoved) {
      const std::string id = item.id;
      std::erase_if(m_stock.items, [&](const StockItem& one) { return one.id == id; });
    }
  }

  static void change(Batch& batch, const Event& event) {
    if (event.type == type::kBatchCorrected) {
      if (const auto entry = readBatch(event.payload)) batch.entry = *entry;
    } else if (event.type == type::kBatchUsedUp) {
      batch.usedUpUtc = event.occurredUtc;
    }
  }

  ShopStock& m_stock;
};

// The item or batch an event is about.
std::string aboutOf(const Event& event) {
  if (event.type == type::kStockEntered || event.type == type::kBatchEntered) return event.eventId;
  const std::string item = textOf(event.payload, "item");
  return item.empty() ? textOf(event.payload, "batch") : item;
}

}  // namespace

const StockItem* ShopStock::item(const std::string& id) const { return withId(items, id); }
const Batch* ShopStock::batch(const std::string& id) const { return withId(batches, id); }

ShopStock foldStock(const std::vector<Event>& events, const std::set<std::string>& voided) {
  ShopStock stock;
  std::vector<const Event*> live;
  for (const Event& event : events) {
    // A sheet cut up is one less, where it came from the shop's stock.
    const bool cut = event.version == 1 && event.type == type::kSheetCut;
    if (cut && !voided.contains(event.intentId)) live.push_back(&event);
    if (event.version != 1 || !isOfStock(event.type)) continue;
    // A mark is not given again, so that a jar taken back and its successor are told apart.
    if (event.type == type::kBatchEntered) {
      const std::int64_t mark = integerOf(event.payload, "mark").value_or(0);
      if (mark <= kMostMarks) stock.lastMark = std::max(stock.lastMark, mark);
    }
    if (voided.contains(event.intentId)) continue;
    live.push_back(&event);
    stock.acts.push_back({event.intentId, aboutOf(event)});
  }
  StockFolder folder(stock);
  for (const Event* event : live) folder.enter(*event);
  for (const Event* event : live) folder.apply(*event);
  return stock;
}

Shelf shelfAt(const Batch& batch, std::int64_t utc) {
  if (!batch.entry.keeps || utc < batch.entry.madeUtc) return Shelf::Unknown;
  const bool within = utc - batch.entry.madeUtc <= batch.entry.keeps->inMilliseconds();
  return within ? Shelf::Within : Shelf::LookBeforeUse;
}

std::vector<const Batch*> pastShelfLife(const ShopStock& stock, std::int64_t utc) {
  std::vector<const Batch*> past;
  for (const Batch& batch : stock.batches) {
    if (!batch.usedUpUtc && shelfAt(batch, utc) == Shelf::LookBeforeUse) past.push_back(&batch);
  }
  std::stable_sort(past.begin(), past.end(),
                   [](const Batch* a, const Batch* b) { return a->entry.madeUtc < b->entry.madeUtc; });
  return past;
}

base::Message beforeUse(const Batch& batch, std::int64_t utc) {
  if (shelfAt(batch, utc) != Shelf::LookBeforeUse) return {};
  constexpr std::int64_t kDay = 24LL * 60 * 60 * 1000;
  return base::Message("batch.look-before-use")
      .with("name", batch.entry.name)
      .with("days", batch.entry.keeps->inMilliseconds() / kDay)
      .with("source", batch.entry.keepsSource);
}

intents::BatchEntry batchFrom(const workflow::WorkflowStep& step, std::int64_t madeUtc) {
  intents::BatchEntry entry;
  entry.kind = intents::BatchKind::Other;
  for (const std::string& fact : step.makes) {
    if (fact.rfind("size.", 0) == 0) entry.kind = intents::BatchKind::Size;
    if (fact.rfind("paste.", 0) == 0) entry.kind = intents::BatchKind::Paste;
    if (fact.rfind("adhesive.", 0) == 0) entry.kind = intents::BatchKind::Adhesive;
  }
  entry.name = step.techniqueTitle;
  entry.technique = step.technique;
  entry.madeUtc = madeUtc;
  entry.keeps = step.keeps;
  if (step.keeps) entry.keepsSource = step.keepsSource;
  return entry;
}

std::optional<StockPrice> priceOf(const ShopStock& stock, intents::StockKind kind, const std::string& name) {
  for (auto item = stock.items.rbegin(); item != stock.items.rend(); ++item) {
    if (item->entry.kind != kind || !item->entry.price || (!name.empty() && item->entry.name != name)) continue;
    return StockPrice{*item->entry.price, item->entry.currency, item->entry.measure};
  }
  return std::nullopt;
}

}  // namespace core::record
